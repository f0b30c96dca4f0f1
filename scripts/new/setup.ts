import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { PlainMap } from '../../src/entries/begin/begin-file.ts';
import { setupBeginning } from '../../src/entries/begin/setup.ts';
import { askEntry } from './ask-place.ts';
import { terminalAsker } from './asking.ts';
import { type Kind, runNew } from './command.ts';
import { finish } from './finish.ts';
import { newItem } from './making.ts';
import { entryPlace, presentFile } from './places.ts';

const kind: Kind = {
  name: 'setup',
  beginning: setupBeginning,
  takes: '<challenge>/<entry>',
  intro: `Writes what was changed on an aircraft behind the last setup in its file, and leaves every other letter as it stands. It is laid over
what went before: only what differs is given. An id and the day from which it holds are needed.`,
};

/** Adds a setup to the file of an aircraft; gives the exit code. */
export function newSetup(argv: readonly string[]): Promise<number> {
  return runNew(kind, argv, async (told) => {
    const asker = await terminalAsker();
    const named = told.named ?? (asker === null ? '' : await askEntry(told.folder, told.now, asker));
    const place = entryPlace(told.folder, named);
    presentFile(told.folder, place);
    const old = await readFile(join(told.folder, place.file), 'utf8');
    return finish(
      newItem(setupBeginning, place.file, old, 'setups'),
      { ...told, asker, lacking },
      ({ id, from }) => ({
        done: `Setup ${id} is written into ${place.file}.`,
        next: [`Flights from ${from} on count for it, but for those that name another with \`setup:\`.`],
      }),
    );
  });
}

/** A setup says what differs from what went before. */
function lacking(fields: PlainMap): string | null {
  const changes = Object.keys(fields).filter((key) => key !== 'id' && key !== 'from');
  if (changes.length > 0) return null;
  return 'A setup without a change is none. Say what was changed with --change, or give what differs, such as --airframe "160 g" or --set "wing.incidence=3°".';
}
