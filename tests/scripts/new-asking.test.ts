import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { askFields } from '../../scripts/new/ask-fields.ts';
import { askEntry, askNewEntry } from '../../scripts/new/ask-place.ts';
import { type Asked, type Asker, Left } from '../../scripts/new/asking.ts';
import { finish } from '../../scripts/new/finish.ts';
import { newFile, newItem } from '../../scripts/new/making.ts';
import { entryBeginning } from '../../src/entries/begin/entry.ts';
import { flightBeginning } from '../../src/entries/begin/flight.ts';
import { challengeOf } from '../entries/written.ts';
import { entryText, writeSmallClub } from './small-club.ts';

const moth = newFile(entryBeginning, 'entries/summer/moth/entry.md');

/** Answers by title, and leaves out what it has no answer to; keeps what it was asked. */
function answering(answers: Readonly<Record<string, string>>, agreed: readonly string[] = []) {
  const asked: Asked[] = [];
  const offered: string[] = [];
  const asker: Asker = {
    ask: (question) => {
      asked.push(question);
      return Promise.resolve(answers[question.title] ?? null);
    },
    agree: (title) => {
      offered.push(title);
      return Promise.resolve(agreed.some((word) => title.includes(word)));
    },
  };
  return { asker, asked, offered, titles: () => asked.map(({ title }) => title) };
}

const answers = {
  Name: 'Moth',
  'Builder: handle': 'pip',
  Control: 'free',
  'Wing: span': '1.8 m',
  'Mass: airframe mass': '168 g',
  'Motors: how many': '1',
};

describe('asking for the fields of an entry', () => {
  it('asks one question for each that is needed, and for no flying mass where the airframe is known', async () => {
    const { asker, titles } = answering(answers);
    const fields = await askFields(moth, {}, asker);
    expect(titles()).toEqual([
      'Name',
      'Builder: handle',
      'Builder: name',
      'Builder: junior',
      'Control',
      'Wing: span',
      'Mass: airframe mass',
      'Motors: how many',
    ]);
    expect(moth.textWith(fields)).toContain('\nname: Moth\nbuilder: { handle: pip }\n');
  });

  it('does not ask for what is given', async () => {
    const { asker, titles } = answering(answers);
    await askFields(
      moth,
      { name: 'Moth', builder: 'pip', control: 'free', mass: { flying: '190 g' } },
      asker,
    );
    expect(titles()).toEqual(['Wing: span', 'Motors: how many']);
  });

  it('says what a field is, how it is written, and an example; words are to choose from', async () => {
    const { asker, asked } = answering(answers);
    await askFields(moth, {}, asker);
    expect(asked.find(({ title }) => title === 'Wing: span')?.help).toBe(
      'Projected, from tip to tip. Write a length in mm, cm, dm, m, in, ft or yd, such as 3.20 m ± 5 mm',
    );
    expect(asked.find(({ title }) => title === 'Control')?.words).toEqual(['free', 'guided']);
  });

  it('finds with an answer what check would find', async () => {
    const { asker, asked } = answering(answers);
    await askFields(moth, {}, asker);
    const span = asked.find(({ title }) => title === 'Wing: span');
    expect(span?.check('320')).toBe(
      '`wing.span`: "320" has no unit; write one of mm, cm, dm, m, in, ft or yd behind the number, such as "3.20 m".',
    );
    expect(span?.check('3.2 m')).toBeNull();
  });

  it('passes over groups that are declined, and asks each of those that are not', async () => {
    const { asker, offered, titles } = answering(
      { ...answers, 'Motors: skein: strip: width': '1/8 in', 'Motors: skein: strip: thickness': '1.1 mm' },
      ['rubber'],
    );
    const fields = await askFields(moth, {}, asker);
    expect(offered).toHaveLength(4);
    expect(titles().slice(8)).toEqual([
      'Motors: skein: batch',
      'Motors: skein: strip: width',
      'Motors: skein: strip: thickness',
      'Motors: skein: strands',
      'Motors: skein: made-up length',
      'Motors: skein: mass',
    ]);
    expect(moth.textWith(fields)).toContain(
      '\n    skein:\n      strip: { width: 1/8 in, thickness: 1.1 mm }\n',
    );
  });
});

describe('asking for what the limits of a challenge rest on', () => {
  const { challenge } = challengeOf(
    'title: Haul\nopens: 2027-03-01\ncloses: 2027-10-31\neligibility: { flying-mass: at most 5 kg }',
  );
  const proposals = async (given: Readonly<Record<string, string>>) => {
    const { asker } = answering(given);
    const proposed: string[] = [];
    const noting: Asker = {
      ...asker,
      agree: (title, isProposed) => {
        if (isProposed) proposed.push(title);
        return Promise.resolve(false);
      },
    };
    await askFields(moth, {}, noting, challenge);
    return proposed;
  };

  it('proposes the rubber where the flying mass has a limit, and says so', async () => {
    expect(await proposals(answers)).toEqual([
      'Do you want to say something of the rubber of one motor? Without it nobody can check what the rules ask (flying mass: at most 5 kg).',
    ]);
  });

  it('proposes nothing where the flying mass is told already', async () => {
    const { 'Mass: airframe mass': _, ...others } = answers;
    expect(await proposals({ ...others, 'Mass: flying mass': '190 g' })).toEqual([]);
  });
});

describe('asking for a challenge', () => {
  const folder = mkdtempSync(join(tmpdir(), 'last-turn-choosing-'));
  const now = '2027-06-01T00:00:00Z';
  const write = (file: string, text: string) => {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), text);
  };
  const rules = (title: string, opens: string, closes: string) =>
    `---\ntitle: ${title}\nopens: ${opens}\ncloses: ${closes}\n---\n`;
  beforeAll(() => {
    write('challenges/a-final.md', rules('Last year', '2026-05-01', '2026-09-30'));
    write('results/a-final.json', '{}');
    write('challenges/b-closed.md', rules('Spring', '2027-03-01', '2027-05-31'));
    write('challenges/c-announced.md', rules('Winter', '2027-11-01', '2028-02-28'));
    write('challenges/d-open.md', rules('Summer', '2027-06-01', '2027-09-30'));
    for (const name of ['a-final', 'd-open'])
      write(`entries/${name}/moth/entry.md`, entryText('Moth', 'pip', ''));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('for a new aircraft offers those it can enter, with title and state, the open one first', async () => {
    const { asker, asked } = answering({ Challenge: 'd-open', Name: 'Moth', Folder: 'moth' });
    await askNewEntry(folder, now, {}, asker);
    expect(asked[0]?.words).toEqual(['d-open', 'c-announced', 'b-closed']);
    expect(asked[0]?.labels).toEqual([
      'd-open (Summer, open)',
      'c-announced (Winter, announced)',
      'b-closed (Spring, closed)',
    ]);
  });

  it('for an aircraft that is there offers a final one last', async () => {
    const { asker, asked } = answering({ Challenge: 'd-open', Aircraft: 'moth' });
    expect(await askEntry(folder, now, asker)).toBe('d-open/moth');
    expect(asked[0]?.labels?.at(-1)).toBe('a-final (Last year, final)');
  });
});

it('a flight is asked for its date and its watches, whose answer may hold several', async () => {
  const file = 'entries/summer/moth/entry.md';
  const making = newItem(flightBeginning, file, entryText('Moth', 'pip', ''), 'flights');
  const { asker } = answering({ Date: '2027-05-29', Watches: '41.6 s, 41.8 s' });
  const fields = await askFields(making, { number: '2' }, asker);
  expect(making.textWith(fields)).toContain(
    '\n  - { number: 2, date: 2027-05-29, watches: [41.6 s, 41.8 s] }\n',
  );
});

it('an answer that has no place in any text is refused like a wrong one', async () => {
  const making = newItem(
    flightBeginning,
    'entries/summer/moth/entry.md',
    entryText('Moth', 'pip', ''),
    'flights',
  );
  const { asker, asked } = answering({ Date: '2027-05-29', Watches: '41.6 s' });
  await askFields(making, { number: '2' }, asker);
  const changed = asked.find(({ title }) => title === 'What was changed');
  expect(changed?.check('nose \u202eweight')).toContain('U+202E');
});

it('a file that was changed while its flight was asked for is left as it is', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'last-turn-meanwhile-'));
  const file = 'entries/summer/moth/entry.md';
  const path = join(folder, file);
  mkdirSync(dirname(path), { recursive: true });
  const old = entryText('Moth', 'pip', '');
  writeFileSync(path, old);
  const { asker } = answering({ Date: '2027-05-29', Watches: '41.6 s' });
  const editing: Asker = {
    ...asker,
    agree: () => {
      writeFileSync(path, old.replace('free', 'guided'));
      return Promise.resolve(false);
    },
  };
  const told = {
    folder,
    fields: { number: '2' },
    now: '2027-06-01T00:00:00Z',
    isDryRun: false,
    asker: editing,
  };
  const making = newItem(flightBeginning, file, old, 'flights');
  await expect(finish(making, told, () => ({ done: '', next: [] }))).rejects.toThrow('was changed meanwhile');
  expect(readFileSync(path, 'utf8')).toBe(old.replace('free', 'guided'));
  rmSync(folder, { recursive: true });
});

it('who leaves is asked nothing more', async () => {
  const { asker, asked } = answering(answers);
  const leaving: Asker = { ...asker, agree: () => Promise.reject(new Left()) };
  await expect(askFields(moth, {}, leaving)).rejects.toBeInstanceOf(Left);
  expect(asked).toHaveLength(8);
});

describe('at a terminal', () => {
  let folder = '';
  const file = () => join(folder, 'entries/summer/wren/entry.md');
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'last-turn-asking-'));
    await writeSmallClub(folder);
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  /** Runs the command in a terminal of its own; each answer is typed once its question is on the screen. */
  function atTerminal(
    args: readonly string[],
    answers: readonly (readonly [question: string, typed: string])[],
  ) {
    const start = resolve(import.meta.dirname, '../../scripts/start.mjs');
    const words = [process.execPath, start, 'new', ...args, '--content', folder, '--now', '2027-06-01'];
    const line = `stty cols 100 rows 40; exec ${words.map((word) => `'${word}'`).join(' ')}`;
    // `script` gives a command a terminal, of no size; that of Linux (util-linux) and that of macOS are called differently.
    const call =
      process.platform === 'darwin' ? ['-q', '/dev/null', 'sh', '-c', line] : ['-qec', line, '/dev/null'];
    const child = spawn('script', call, { env: { ...process.env, TERM: 'xterm' } });
    const waiting = [...answers];
    let screen = '';
    let unread = '';
    child.stdout.on('data', (text) => {
      screen += text;
      unread += text;
      const next = waiting[0];
      if (next === undefined || !unread.includes(next[0])) return;
      waiting.shift();
      unread = '';
      // A person reads before answering; what is typed before the terminal listens key by key is read as a line.
      setTimeout(() => child.stdin.write(next[1]), 200);
    });
    return new Promise<{ readonly code: number | null; readonly screen: string }>((done, failed) => {
      child.on('error', failed);
      child.on('close', (code) => done({ code, screen }));
    });
  }

  const given = ['--name', 'Wren', '--builder', 'pip', '--airframe', '160 g', '--count', '1'];

  it('leaves nothing behind where one leaves with Ctrl-C', async () => {
    const { code, screen } = await atTerminal(
      ['entry', 'summer/wren', ...given],
      [
        ['Control', '\r'],
        ['span', '\u0003'],
      ],
    );
    expect({ code, there: existsSync(file()) }).toEqual({ code: 2, there: false });
    expect(screen).toContain('Nothing is written.');
  });

  it('asks anew after a wrong answer and writes what was answered', async () => {
    const { code, screen } = await atTerminal(
      ['entry', 'summer/wren', ...given],
      [
        ['Control', '\r'],
        ['span', '320\r'],
        ['has no unit', ' cm\r'],
        ['rubber of one motor?', '\r'],
        ['propeller?', '\u001b[D'],
        ['Yes', '\r'],
        ['diameter', '\r'],
        ['pitch', '\r'],
        ['blades', '\r'],
        ['after the motor run', '\r'],
        ['area of the wing?', '\r'],
        ['tail and balance?', '\r'],
      ],
    );
    expect(code).toBe(0);
    expect(screen).toContain('finds nothing wrong with it.');
    expect(readFileSync(file(), 'utf8')).toContain('\n  span: 320 cm\n');
    expect(readFileSync(file(), 'utf8')).toContain('\ncontrol: free\n');
    // Enter alone leaves out what need not be said.
    expect(readFileSync(file(), 'utf8')).toContain('\n    # propeller: ');
  });
});
