import type { PlainMap } from '../../src/entries/begin/begin-file.ts';
import { challengeBeginning, rulesThatHoldAnyway } from '../../src/entries/begin/challenge.ts';
import { isMap } from '../../src/entries/write/yaml-text.ts';
import { askName } from './ask-place.ts';
import { terminalAsker } from './asking.ts';
import { type Kind, runNew } from './command.ts';
import { finish } from './finish.ts';
import { newFile } from './making.ts';
import { freePlace, goodName } from './places.ts';

const kind: Kind = {
  name: 'challenge',
  beginning: challengeBeginning,
  takes: '<challenge>',
  intro: `Writes challenges/<challenge>.md: its dates; timing and scoring as they hold where nothing is said; and as remarks every other rule there
may be. Title, opening and closing are needed; they are asked for at a terminal, and stand as remarks to be filled in elsewhere.`,
};

/** Begins the rules of a challenge; gives the exit code. */
export function newChallenge(argv: readonly string[]): Promise<number> {
  return runNew(kind, argv, async (told) => {
    const asker = await terminalAsker();
    const id = told.named ?? (asker === null ? '' : await askName(asker, 'Challenge', null));
    goodName(id);
    const file = `challenges/${id}.md`;
    freePlace(told.folder, file, 'Its rules are changed by hand.');
    const fields = withDefaults(told.fields);
    return finish(newFile(challengeBeginning, file), { ...told, fields, asker }, () => ({
      done: `Written to ${file}.`,
      next: [
        'Next: read its remarks one by one and take away the # of each rule that is to hold, with values of your own; then write below the',
        'fields what the challenge is for. Once it is open, a change of the rules is written down under amendments.',
        `An aircraft enters with npm run new -- entry ${id}/<entry>`,
      ],
    }));
  });
}

/** The rules that hold anyway, under those that are given. */
function withDefaults(given: PlainMap): PlainMap {
  const laid = Object.entries(rulesThatHoldAnyway).map(([key, rules]) => {
    const own = given[key];
    return [
      key,
      own === undefined ? rules : isMap(own) && isMap(rules) ? { ...rules, ...own } : own,
    ] as const;
  });
  return { ...given, ...Object.fromEntries(laid) };
}
