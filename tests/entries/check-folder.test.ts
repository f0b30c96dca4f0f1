import { describe, expect, it } from 'vitest';
import { folderChecks } from '../../src/entries/check-folder/folder-checks.ts';
import { readContent } from '../../src/entries/folder/read-folder.ts';
import { contentOf, entryFile, type Files, inFolder } from './content-folder.ts';

async function problemsOf(files: Files) {
  const { problems } = await contentOf(files);
  return problems.map(({ code, file, line, message }) => ({ code, file, line, message }));
}

describe('between files', () => {
  it('the site needs its file', async () => {
    const { problems } = await inFolder({ 'pages/a.md': '---\ntitle: x\n---\n' }, readContent);
    expect(problems.map(({ message }) => message)).toEqual([
      'The content folder has no site.md, so the site has no title: write one with `format: 1` and a `title`.',
    ]);
  });

  it('the site says where it is published', async () => {
    expect(await problemsOf({ 'site.md': '---\nformat: 1\ntitle: Long Haul\n---\n' })).toEqual([
      {
        code: 'no-address',
        file: 'site.md',
        line: 1,
        message:
          '`address` is missing: links are made for a site at the top of its host, and the feed and the pictures for shared links go by none. Once you know where the site is published, write it down with its path.',
      },
    ]);
  });

  it('an entry needs its challenge', async () => {
    expect(await problemsOf({ 'entries/hall/teal/entry.md': entryFile('Teal') })).toEqual([
      {
        code: 'unknown-challenge',
        file: 'entries/hall/teal/entry.md',
        line: 1,
        message: 'There is no challenge "hall": the file challenges/hall.md is missing. Did you mean "haul"?',
      },
    ]);
  });

  it('a flight names a round of its challenge, and none where there are none', async () => {
    const flight = (round: string) =>
      entryFile('Teal', `flights: [{ number: 1, date: 2027-05-09, time: 12 s, round: ${round} }]`);
    expect(await problemsOf({ 'entries/haul/teal/entry.md': flight('r1') })).toEqual([
      {
        code: 'unknown-round',
        file: 'entries/haul/teal/entry.md',
        line: 8,
        message: '`round` in flight 1 is "r1", but "Long Haul" is flown without rounds: leave the round out.',
      },
    ]);
    const rounds =
      'scoring: { method: rounds }\nrounds: [{ id: r1, maximum: 180 s }, { id: r2, maximum: 180 s }]';
    const challenge = `---\ntitle: Rounds\nopens: 2027-03-01\ncloses: 2027-10-31\n${rounds}\n---\n`;
    const inRounds = { 'challenges/rounds.md': challenge };
    expect(await problemsOf({ ...inRounds, 'entries/rounds/teal/entry.md': flight('r2') })).toEqual([]);
    const [problem] = await problemsOf({ ...inRounds, 'entries/rounds/teal/entry.md': flight('rr2') });
    expect(problem?.message).toBe(
      '`round` in flight 1 is "rr2", but "Rounds" has no such round; it has r1, r2. Did you mean "r2"?',
    );
  });

  it('a ruling needs its entry', async () => {
    expect(await problemsOf({ 'rulings/haul/plower.md': '---\nflights: []\n---\n' })).toEqual([
      {
        code: 'unknown-entry',
        file: 'rulings/haul/plower.md',
        line: 1,
        message:
          'There is no entry "haul/plower" for this ruling: entries/haul/plower/entry.md is missing. Did you mean "haul/plover"?',
      },
    ]);
  });

  it('a ruling needs its flight, and both places are shown', async () => {
    const { problems } = await contentOf({
      'entries/haul/plover/entry.md': entryFile(
        'Plover',
        'flights: [{ number: 2, date: 2027-05-09, time: 12 s }]',
      ),
      'rulings/haul/plover.md':
        '---\nflights:\n  - { flight: 3, verdict: refused, reason: Not seen., by: otter, date: 2027-05-12 }\n---\n',
    });
    expect(problems).toMatchObject([
      {
        code: 'unknown-flight',
        file: 'rulings/haul/plover.md',
        line: 3,
        column: 15,
        message: 'The ruling is about flight 3, but "Plover" has the flights 2.',
        related: { file: 'entries/haul/plover/entry.md', line: 8, column: 1 },
      },
    ]);
  });

  it('nobody rules on a model of their own', async () => {
    const { problems } = await contentOf({
      'entries/haul/plover/entry.md': entryFile(
        'Plover',
        'flights: [{ number: 2, date: 2027-05-09, time: 12 s }]',
      ),
      'rulings/haul/plover.md':
        '---\nflights:\n  - { flight: 2, verdict: accepted, by: amarsh, date: 2027-05-12 }\n---\n',
    });
    expect(problems).toMatchObject([
      {
        code: 'ruled-by-builder',
        severity: 'warning',
        line: 3,
        column: 41,
        message:
          'Flight 2 is ruled by "amarsh", who built "Plover". Let somebody else look at it and rule again.',
        related: { file: 'entries/haul/plover/entry.md', line: 3 },
      },
    ]);
  });

  it('nobody rules on a flight before it was flown, or had it in hand', async () => {
    const files = (ruling: string) => ({
      'entries/haul/plover/entry.md': entryFile(
        'Plover',
        'flights: [{ number: 2, date: 2027-05-09, time: 12 s }]',
      ),
      'rulings/haul/plover.md': `---\nflights:\n  - { flight: 2, verdict: refused, reason: Not seen., by: otter, ${ruling} }\n---\n`,
    });
    expect((await contentOf(files('date: 2027-05-04'))).problems).toMatchObject([
      {
        code: 'ruled-before-flight',
        severity: 'warning',
        line: 3,
        column: 72,
        message:
          'Flight 2 of "Plover" is ruled on 2027-05-04, before it was flown on 2027-05-09. Correct whichever day is wrong.',
        related: { file: 'entries/haul/plover/entry.md', line: 8 },
      },
    ]);
    expect((await problemsOf(files('date: 2027-05-12, received: 2027-04-30')))[0]?.message).toContain(
      'Flight 2 of "Plover" is handed in on 2027-04-30, before it was flown on 2027-05-09.',
    );
    // Ruled on at once on the other side of the date line, where it is still the day before.
    expect(await problemsOf(files('date: 2027-05-08'))).toEqual([]);
  });

  it('an acceptance names all that the evidence must show, until the challenge is final', async () => {
    const files = {
      'challenges/haul.md':
        '---\ntitle: Long Haul\nopens: 2027-03-01\ncloses: 2027-10-31\nflying: { evidence: { shows: [launch, landing, span] } }\n---\n',
      'entries/haul/plover/entry.md': entryFile(
        'Plover',
        'flights: [{ number: 2, date: 2027-05-09, time: 12 s }]',
      ),
      'rulings/haul/plover.md':
        '---\nflights:\n  - { flight: 2, verdict: accepted, by: otter, date: 2027-05-12, seen: [landing] }\n---\n',
    };
    expect((await contentOf(files)).problems).toMatchObject([
      {
        code: 'evidence-not-seen',
        severity: 'note',
        line: 3,
        column: 72,
        message:
          '`seen`: the acceptance of flight 2 does not name launch, span, which the challenge wants the evidence to show.',
        suggestion: 'seen: [launch, landing, span]',
        related: { file: 'challenges/haul.md', line: 5, column: 30 },
      },
    ]);
    const { problems } = await contentOf({ ...files, 'results/haul.json': '{}' });
    expect(problems.map(({ code }) => code)).not.toContain('evidence-not-seen');
  });

  it('a motor needs its batch of rubber', async () => {
    const entry = entryFile('Plover').replace(
      'count: 2',
      'count: 2, skein: { batch: fen-b, strands: 4, length: 300 mm }',
    );
    expect(
      await problemsOf({ 'entries/haul/plover/entry.md': entry, 'rubber/fen-a.md': '---\nlabel: A\n---\n' }),
    ).toEqual([
      {
        code: 'unknown-batch',
        file: 'entries/haul/plover/entry.md',
        line: 7,
        message:
          'There is no batch of rubber "fen-b": rubber/fen-b.md is missing, and the motor is reckoned with usual rubber. Did you mean "fen-a"?',
      },
    ]);
  });

  it('what is named elsewhere must be there', async () => {
    const found = await problemsOf({
      'site.md':
        '---\nformat: 1\ntitle: x\naddress: https://haul.example/\nfeatured: houl\nlogo: logo.png\n---\n',
      'news/2027-05-09-a.md': '---\ntitle: x\ndate: 2027-05-09\nchallenge: other\n---\n',
      'entries/haul/plover/entry.md': entryFile('Plover', 'also: elsewhere/plover'),
    });
    expect(found.map(({ message }) => message)).toEqual([
      '`also` names the entry "elsewhere/plover", which does not exist.',
      '`challenge` names the challenge "other", which does not exist.',
      '`featured` names the challenge "houl", which does not exist. Did you mean "haul"?',
      '"logo.png" is named here, but there is no such file beside this one.',
    ]);
  });

  it("the builder's own file counts", async () => {
    const { problems } = await contentOf({
      'entries/haul/plover/entry.md': entryFile('Plover').replace(
        'amarsh',
        '{ handle: amarsh, name: A. Mersh }',
      ),
      'builders/amarsh.md': '---\nname: A. Marsh\n---\n',
    });
    expect(problems).toMatchObject([
      {
        code: 'builder-differs',
        severity: 'note',
        line: 3,
        message:
          'The name of "amarsh" is "A. Mersh" here and "A. Marsh" in the builder\'s own file, which is the one that counts.',
        related: { file: 'builders/amarsh.md', line: 2 },
      },
    ]);
  });

  it('an old name leads to one place', async () => {
    const page = (old: string) => `---\ntitle: x\nformerly: [${old}]\n---\n`;
    const found = await problemsOf({
      'pages/a.md': page('b'),
      'pages/b.md': page('c'),
      'pages/d.md': page('c'),
    });
    expect(found.map(({ file, message }) => `${file}: ${message}`)).toEqual([
      'pages/a.md: The old name "b" already leads to pages/b.md: an address leads to one place only.',
      'pages/d.md: The old name "c" already leads to pages/b.md: an address leads to one place only.',
    ]);
  });

  it('a file that nothing names is pointed out', async () => {
    const found = await problemsOf({ 'entries/haul/plover/x.csv': 'x', 'rubber/y.csv': 'x', 'z.png': 'x' });
    expect(found.map(({ message }) => message)).toEqual([
      '"x.csv" is here, but entry.md does not name it, so it is not published: name it, or delete it.',
      '"y.csv" is here, but no batch of rubber names it, so it is not published: name it, or delete it.',
      '"z.png" is here, but site.md does not name it, so it is not published: name it, or delete it.',
    ]);
  });
});

describe('the list of checks', () => {
  it('has each code once', () => {
    const codes = folderChecks.map(({ code }) => code);
    expect(new Set(codes).size).toBe(codes.length);
  });
});
