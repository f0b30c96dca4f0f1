import { todayIn } from '../../src/almanac/today.ts';
import { entryBeginning } from '../../src/entries/begin/entry.ts';
import { askNewEntry } from './ask-place.ts';
import { terminalAsker } from './asking.ts';
import { knownChallenge, refuseFinal } from './challenges.ts';
import { type Kind, runNew } from './command.ts';
import { finish } from './finish.ts';
import { newFile } from './making.ts';
import { entryPlace, freePlace } from './places.ts';

const kind: Kind = {
  name: 'entry',
  beginning: entryBeginning,
  takes: '<challenge>/<entry>',
  intro: `Writes entries/<challenge>/<entry>/entry.md. What is needed and not given is asked for at a terminal; elsewhere it stands in the
file as remarks to be filled in. Values are read as the site reads them: a wrong one is refused, and nothing is written.`,
};

/** Begins the file of an aircraft; gives the exit code. */
export function newEntry(argv: readonly string[]): Promise<number> {
  return runNew(kind, argv, async (told) => {
    const asker = await terminalAsker();
    const asked =
      told.named === undefined && asker !== null
        ? await askNewEntry(told.folder, told.now, told.fields, asker)
        : told;
    const { challenge, entry, file } = entryPlace(told.folder, asked.named ?? '');
    const known = knownChallenge(told.folder, challenge, told.now);
    refuseFinal(known);
    const address = `${challenge}/${entry}`;
    freePlace(told.folder, file, `\`npm run new -- flight ${address}\` adds a flight to it.`);
    // The day it is in UTC: a new file knows no place.
    const fields = { entered: todayIn(told.now, null), ...asked.fields };
    return finish(newFile(entryBeginning, file), { ...told, fields, asker, enters: known.challenge }, () => ({
      done: `Written to ${file}.`,
      next: [
        'Next: put photos and bench logs beside it and name them in it, write its build log below the fields, and hand the folder in.',
        `After each day of flying: npm run new -- flight ${address}`,
      ],
    }));
  });
}
