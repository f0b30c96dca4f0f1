import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { PlainMap } from '../../src/entries/begin/begin-file.ts';
import { flightBeginning } from '../../src/entries/begin/flight.ts';
import { nextNumber } from '../../src/entries/begin/next-number.ts';
import { askEntry } from './ask-place.ts';
import { terminalAsker } from './asking.ts';
import { type Kind, runNew } from './command.ts';
import { finish } from './finish.ts';
import { numbersGiven } from './flight-numbers.ts';
import { newItem } from './making.ts';
import { entryPlace, presentFile } from './places.ts';

const kind: Kind = {
  name: 'flight',
  beginning: flightBeginning,
  takes: '<challenge>/<entry>',
  intro: `Writes a flight behind the last in the file of its aircraft, under the next number that was never used, and leaves every other letter
as it stands. A date and a time, or what the watches showed, are needed.`,
};

/** Adds a flight to the file of an aircraft; gives the exit code. */
export function newFlight(argv: readonly string[]): Promise<number> {
  return runNew(kind, argv, async (told) => {
    const asker = await terminalAsker();
    const named = told.named ?? (asker === null ? '' : await askEntry(told.folder, told.now, asker));
    const place = entryPlace(told.folder, named);
    presentFile(told.folder, place);
    const old = await readFile(join(told.folder, place.file), 'utf8');
    const number = String(nextNumber(await numbersGiven(told.folder, place, old)));
    const fields: PlainMap = { number, ...told.fields };
    return finish(newItem(flightBeginning, place.file, old, 'flights'), { ...told, fields, asker }, () => ({
      done: `Flight ${number} is written into ${place.file}.`,
      next: [
        'Next: hand the file in. The flight is listed apart until an organiser has looked at its evidence.',
      ],
    }));
  });
}
