import { existsSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Nodes } from 'mdast';
import { remark } from 'remark';
import remarkGfm from 'remark-gfm';
import { visit } from 'unist-util-visit';
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { main } from '../../scripts/review.ts';
import { run } from './small-club.ts';
import { type SmallHistory, smallHistory } from './small-history.ts';

// Two aircraft with accepted flights of 40 and 30 s, and four branches that change something. Expected values are worked
// out by hand beside each check; Markdown is read by remark with its GFM extension, which this project did not write.

const at = '2027-06-01';
let folder: string;
let history: SmallHistory;

const rules = `---
title: Long Haul
opens: 2027-03-01
closes: 2027-10-31
report-by: 2027-11-14
eligibility: { span: at least 0.9 m, flying-mass: at most 2 kg }
flying: { attempt-below: 4 s }
---
Fly.
`;

function aircraft(name: string, builder: string, time: string, airframe = '150 g'): string {
  return `---
name: ${name}
builder: ${builder}
control: free
wing: { span: 1.2 m, chord: 150 mm }
mass: { airframe: ${airframe} }
motors: [{ count: 1, skein: { mass: 20.0 g } }]
flights:
  - { number: 1, date: 2027-05-01, time: ${time} }
---
Built over a winter.
`;
}

const reedling = `---
name: Reedling
builder: amarsh
entered: 2027-05-10
control: free
wing: { span: "3,20 m ± 5 mm", chord: 10 1/2 in }
mass: { airframe: 612 g }
motors:
  - count: 2
    skein: { strip: { width: 1/8 in, thickness: 1.1 mm }, strands: 10, mass: 15.4 g }
flights:
  - { number: 1, date: 2027-05-22, time: "1:30", turns: 54 x 10, launch: hand }
  - { number: 2, date: 2027-05-23, time: 28.0 s, launch: hand }
---
Two skeins, one wing.
`;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'review-'));
  history = smallHistory(folder);
  history.write('site.md', '---\nformat: 1\ntitle: Long Haul\n---\n');
  history.write('challenges/haul.md', rules);
  history.write('entries/haul/plover/entry.md', aircraft('Plover', 'hettie', '40.0 s'));
  history.write('entries/haul/dunlin/entry.md', aircraft('Dunlin', 'jago', '30.0 s'));
  for (const entry of ['plover', 'dunlin']) {
    const args = [`haul/${entry}`, '1', 'accept', '--by', 'otter', '--date', '2027-05-10'];
    const { error } = await run('ruling', [...args, '--content', history.content, '--now', at]);
    expect(error).toBe('');
  }
  history.commit('desk', '2027-05-12');
}, 60_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

beforeEach(tidy);

/** The disk as `main` has it. */
function tidy(): void {
  history.git('checkout', '--quiet', '--force', 'main');
  history.git('clean', '--quiet', '--force', '-d');
}

function branch(name: string, change: () => void, author = 'amarsh', day = '2027-05-25'): void {
  tidy();
  history.git('checkout', '--quiet', '-b', name, 'main');
  change();
  history.commit(author, day);
  tidy();
}

function edit(file: string, from: string, to: string): void {
  const before = readFileSync(join(history.content, file), 'utf8');
  expect(before).toContain(from);
  history.write(file, before.replace(from, to));
}

/** Runs the command in this process, which is quicker than one of its own, and gives what it printed. */
async function printed(...args: string[]): Promise<string> {
  let told = '';
  const spy = vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    told += text;
    return true;
  });
  try {
    expect(await main([...args, '--now', at])).toBe(0);
  } finally {
    spy.mockRestore();
  }
  return told;
}

const review = (...args: string[]) => printed('--content', history.content, ...args);

const known = new Map<string, Promise<string>>();

/** What is told of a branch; the same is asked for once. */
function ofBranch(name: string, format: string): Promise<string> {
  const key = `${name} ${format}`;
  const told = known.get(key) ?? review('--base', 'main', '--head', name, '--format', format);
  known.set(key, told);
  return told;
}

describe('a clean new entry', () => {
  beforeAll(() => branch('clean', () => history.write('entries/haul/reedling/entry.md', reedling)));

  it('is told in one sentence, then what waits, then how each number was understood', async () => {
    const told = await ofBranch('clean', 'markdown');
    // 90 s would lead, before 40 and 30 s; 28 s would be third. 10.5 in of 25.4 mm
    // are 266.7 mm, an eighth of one 3.175 mm; 54 × 10 turns are 540.
    expect(told.slice(0, told.indexOf('**Figures**')).replaceAll('\u00a0', ' ')).toBe(
      [
        '**Adds the aircraft `Reedling` (`haul`) with 2 flights; nobody’s place changes.**',
        '### For a person to look at',
        '- Nothing here asks for a second look.',
        '### What the new flights wait for',
        [
          '- `Reedling`, flight 1, 90.00 s: waits for a ruling. If accepted, it would be placed 1st.',
          '- `Reedling`, flight 2, 28.00 s: waits for a ruling. If accepted, it would be placed 3rd.',
        ].join('\n'),
        '<details>\n<summary>',
        '`Reedling` (`haul`): new',
        '</summary>',
        '- Says it was entered on 10 May 2027; handed in on 25 May 2027.',
        '**Flights**',
        [
          '| Flight | Flown | Time | Status | Change |',
          '| --- | --- | --- | --- | --- |',
          '| 1 | 2027-05-22 | 90.00 s | provisional | new |',
          '| 2 | 2027-05-23 | 28.00 s | provisional | new |',
        ].join('\n'),
        '**What was understood**',
        [
          '| Field | Now | Understood |',
          '| --- | --- | --- |',
          '| `name` | `Reedling` |  |',
          '| `builder` | `amarsh` |  |',
          '| `entered` | `2027-05-10` |  |',
          '| `control` | `free` |  |',
          '| `wing.span` | `3,20 m ± 5 mm` | 3.2000 ± 0.0050 m |',
          '| `wing.chord` | `10 1/2 in` | 266.7 mm |',
          '| `mass.airframe` | `612 g` | as written |',
          '| `count in motor 1` | `2` |  |',
          '| `skein.strip.width in motor 1` | `1/8 in` | 3.175 mm |',
          '| `skein.strip.thickness in motor 1` | `1.1 mm` | as written |',
          '| `skein.strands in motor 1` | `10` |  |',
          '| `skein.mass in motor 1` | `15.4 g` | as written |',
          '| `date in flight 1` | `2027-05-22` |  |',
          '| `time in flight 1` | `1:30` | 90 s |',
          '| `turns in flight 1` | `54 x 10` | 540 turns |',
          '| `launch in flight 1` | `hand` |  |',
          '| `date in flight 2` | `2027-05-23` |  |',
          '| `time in flight 2` | `28.0 s` | as written |',
          '| `launch in flight 2` | `hand` |  |',
        ].join('\n'),
        '',
      ].join('\n\n'),
    );
  });

  it('has its figures, with what was taken for granted', async () => {
    const told = await ofBranch('clean', 'text');
    // 612 g and two skeins of 15.4 g; ± of 0.5 % of 612 g and twice 0.1 g: √(3.06² + 0.2²) = 3.07 g.
    expect(told).toContain('- Flying mass, now 642.8 ± 3.1 g');
    expect(told).toContain('- the landing was 0 ± 0.5 m below the launch ground');
  });

  it('is the same as data', async () => {
    const data = JSON.parse(await ofBranch('clean', 'json'));
    expect(data.format).toBe(1);
    expect(data.concerns).toEqual([]);
    expect(data.places).toEqual([]);
    const [entry] = data.entries;
    expect(entry).toMatchObject({ entry: 'reedling', change: 'added', builders: ['amarsh'] });
    const span = entry.values.find(({ field }: { field: string }) => field === '`wing.span`');
    expect(span.read).toEqual([{ written: '3,20 m ± 5 mm', kind: 'length', value: 3.2, u: 0.005 }]);
    expect(entry.flights[0]).toMatchObject({ number: 1, place: { before: null, after: 1 } });
  });

  it('asks who hands it in, where that is told and is nobody of its builders', async () => {
    const told = await review('--base', 'main', '--head', 'clean', '--author', 'wilf');
    expect(told).toContain('- Reedling (haul) is by amarsh, and this comes from wilf.');
  });

  it('is told from the disk too, before anything is committed', async () => {
    history.write('entries/haul/reedling/entry.md', reedling);
    expect(await review()).toMatch(/^Adds the aircraft Reedling \(haul\) with 2 flights; /);
  });
});

describe('a flight changed behind its ruling', () => {
  beforeAll(() =>
    branch(
      'behind',
      () => {
        edit('entries/haul/plover/entry.md', '40.0 s', '44.0 s');
        edit('entries/haul/dunlin/entry.md', '150 g', '120 g');
      },
      'hettie',
    ),
  );

  it('is shown with both values, and so is a fact of the aircraft that a ruling rests on', async () => {
    const told = await ofBranch('behind', 'text');
    expect(told).toContain(
      '- Plover (haul), flight 1: accepted on 10 May 2027, and changed with this: time was 40.0 s and is 44.0 s. It waits for a new ruling.',
    );
    // 150 g and 20 g of rubber are 170 g, 120 g and 20 g are 140 g; the rules write this limit in kg.
    expect(told).toContain(
      '- Dunlin (haul), flight 1: accepted on 10 May 2027, and changed with this: the flying mass was 0.170 kg then and is 0.140 kg now. It waits for a new ruling.',
    );
  });

  it('says who moves', async () => {
    const told = await ofBranch('behind', 'text');
    expect(told).toMatch(/; 2 aircraft have another place\.\n/);
    expect(told).toContain('- Plover, before 1, now no place, score 40.00 s → –');
  });

  it('counts the accepted flights that nobody wrote anew and that would count no more', async () => {
    // Dunlin's flight stands as it was; its airframe lost a fifth of its mass.
    expect(await ofBranch('behind', 'text')).toContain(
      '- haul: 1 accepted flight of 1 aircraft, written as before, would not count any more.',
    );
  });

  it('says that files of several builders change, and that others wrote in them', async () => {
    const told = await ofBranch('behind', 'text');
    expect(told).toContain('- Files of several builders change at once: hettie and jago.');
    expect(told).toContain(
      '- entries/haul/dunlin/entry.md and entries/haul/plover/entry.md: until now others wrote in them.',
    );
  });
});

describe('what would pass quietly', () => {
  it('a flight changed and ruled anew in one go is told with who ruled', async () => {
    branch('both', () => {
      edit('entries/haul/dunlin/entry.md', 'time: 30.0 s', 'time: 99.0 s');
      edit('rulings/haul/dunlin.md', 'by: otter', 'by: somebody');
      const seal = /seal: 1-[0-9a-f]{16}/.exec(
        readFileSync(join(history.content, 'rulings/haul/dunlin.md'), 'utf8'),
      );
      edit('rulings/haul/dunlin.md', String(seal?.[0]), 'seal: 1-0123456789abcdef');
    });
    expect(await review('--base', 'main', '--head', 'both')).toContain(
      '- Dunlin (haul), flight 1: ruled accepted by somebody on 10 May 2027; before: accepted by otter on 10 May 2027. ' +
        'What is ruled on changes in the same go.',
    );
  });

  it('a ruling that is taken out is told', async () => {
    branch('unruled', () => history.git('rm', '--quiet', 'content/rulings/haul/dunlin.md'));
    expect(await review('--base', 'main', '--head', 'unruled')).toContain(
      '- Dunlin (haul), flight 1: the ruling is taken out; before: accepted by otter on 10 May 2027.',
    );
  });

  it('files outside the content folder come first', async () => {
    branch('outside', () => writeFileSync(join(folder, 'build.sh'), 'true\n'));
    expect(await review('--base', 'main', '--head', 'outside')).toMatch(
      /look at\n\s+- build\.sh: outside the content folder; an entry needs none of it\.\n/,
    );
  });

  it('a commit is not taken for older than what it was made from', async () => {
    const early = reedling.replace('2027-05-22', '2027-03-10').replace('2027-05-23', '2027-03-11');
    branch('early', () => history.write('entries/haul/early/entry.md', early), 'amarsh', '2027-03-12');
    // Made from a commit of 12 May: 63 and 62 days after the flights.
    const told = await review('--base', 'main', '--head', 'early');
    expect(told).toContain('flight 1: flown 10 March 2027, handed in 12 May 2027, 63 days later.');
  });

  it('rules that change are looked at as of now, whatever day the commit gives itself', async () => {
    const change = () => edit('challenges/haul.md', 'at least 0.9 m', 'at least 1.1 m');
    branch('backdated', change, 'desk', '2027-02-01');
    expect(await review('--base', 'main', '--head', 'backdated')).toContain('No amendment tells of it.');
  });

  it('a new folder whose file is a link takes nothing out', async () => {
    branch('linked', () => {
      history.write('entries/haul/linked/notes.txt', 'A link beside.\n');
      symlinkSync('/etc/hostname', join(history.content, 'entries/haul/linked/entry.md'));
    });
    const told = await review('--base', 'main', '--head', 'linked');
    expect(told).toContain('linked');
    expect(told).not.toContain('taken out');
    expect(told).not.toContain('takes out');
  });
});

describe('flights that are on record', () => {
  it('are missed where they are taken out or numbered anew', async () => {
    branch('gone', () => {
      history.git('rm', '--quiet', '-r', 'content/entries/haul/dunlin');
      edit('entries/haul/plover/entry.md', 'number: 1', 'number: 2');
    });
    const told = await ofBranch('gone', 'text');
    expect(told).toContain('- Dunlin (haul) is taken out.');
    expect(told).toContain('- Plover (haul), flight 1 is now flight 2.');
  });
});

describe('a rule that changes while the challenge is open', () => {
  const change = () => edit('challenges/haul.md', 'attempt-below: 4 s', 'attempt-below: 35 s');

  it('is told with both values, and that no amendment tells of it', async () => {
    branch('rule', change, 'desk');
    const told = await ofBranch('rule', 'text');
    expect(told).toContain(
      '- haul: rules change while it is open: flying.attempt-below was 4 s and is 35 s. No amendment tells of it.',
    );
    // Of 40 and 30 s the shorter is an attempt now.
    expect(told).toMatch(/^Changes the challenge haul; Dunlin loses its place\.\n/);
    expect(told).toContain('challenges/haul.md: organisers answer for this file.');
  });

  it('names the amendment that came with it', async () => {
    branch(
      'amended',
      () => {
        change();
        edit(
          'challenges/haul.md',
          'flying:',
          'amendments: [{ date: 2027-05-25, what: Longer attempts }]\nflying:',
        );
      },
      'desk',
    );
    expect(await ofBranch('amended', 'text')).toContain('It may be told by the amendment of 25 May 2027.');
  });
});

describe('dates that do not go with the day of handing in', () => {
  it('are told: a flight after it, and one of long before', async () => {
    branch('dates', () =>
      history.write(
        'entries/haul/reedling/entry.md',
        reedling
          .replace('amarsh', 'hettie')
          .replace('2027-05-22', '2027-05-29')
          .replace('2027-05-23', '2027-04-01'),
      ),
    );
    const told = await ofBranch('dates', 'text');
    expect(told).toContain('flight 1: dated 29 May 2027, after 25 May 2027, when it was handed in.');
    // From 1 April to 25 May: 29 days of April and 25 of May. The rules leave 14 days after the last day of flying.
    expect(told).toContain('flight 2: flown 1 April 2027, handed in 25 May 2027, 54 days later.');
    expect(told).toContain('names hettie, and what there was of hettie came from others.');
  });
});

describe('a hostile branch', () => {
  const nasty = [
    '@octocat #1 https://evil.example www.evil.example <img src=x onerror=alert(1)> <!-- --> </details>',
    '| a | b \\| [x](javascript:alert(1)) ![y](https://evil.example/y.png) `code` ``` ::error::x ##[error]x $x$',
  ].join(' ');
  const quoted = JSON.stringify(nasty);
  const marker = () => join(folder, 'was-run');

  beforeAll(() => {
    branch('hostile', () => {
      const texts = reedling
        .replace('name: Reedling', `name: ${JSON.stringify(nasty.slice(0, 90))}`)
        .replace('builder: amarsh', `builder: { handle: wilf, name: ${JSON.stringify(nasty.slice(0, 60))} }`)
        .replace(
          'number: 1,',
          `number: 1, changed: ${quoted}, note: ${quoted}, damage: ${quoted}, evidence: [${quoted}],`,
        )
        .replace('control: free', `control: ${quoted}`);
      history.write(
        'entries/haul/reedling/entry.md',
        texts.replace(`control: ${quoted}`, 'control: free').replace(`evidence: [${quoted}],`, ''),
      );
      history.write('entries/haul/stint/entry.md', texts);
      history.write('entries/haul/@octocat | <b>x/entry.md', texts);
      history.write('entries/haul/escape/entry.md', `---\nname: "\\e[31mRed\\u202e"\n::error::x\n---\n`);
      edit('entries/haul/plover/entry.md', 'name: Plover', `name: ${JSON.stringify(nasty.slice(90, 170))}`);
      edit('rulings/haul/plover.md', 'by: otter', 'by: wilf');
      symlinkSync('/etc/passwd', join(history.content, 'entries/haul/reedling/secret.csv'));
      symlinkSync('/etc', join(history.content, 'pages'));
      writeFileSync(join(folder, '.gitattributes'), '*.md filter=own diff=own\n');
    });
    const command = `touch ${marker()} && cat`;
    for (const [setting, value] of [
      ['core.fsmonitor', `touch ${marker()}; false`],
      ['core.hooksPath', join(folder, 'hooks')],
      ['filter.own.smudge', command],
      ['filter.own.clean', command],
      ['diff.own.textconv', command],
    ] as const)
      history.git('config', setting, value);
    rmSync(marker(), { force: true });
  });

  afterAll(() => {
    for (const section of ['filter.own', 'diff.own']) history.git('config', '--remove-section', section);
    for (const setting of ['core.fsmonitor', 'core.hooksPath']) history.git('config', '--unset', setting);
  });

  it('makes no markup, no link, no name to notify and no broken table of the Markdown', async () => {
    const told = await ofBranch('hostile', 'markdown');
    expect(existsSync(marker())).toBe(false);
    expect(Buffer.byteLength(told)).toBeLessThanOrEqual(60_000);
    const tree = remark().use(remarkGfm).parse(told);
    const kinds = new Map<string, string[]>();
    const rows: number[][] = [];
    visit(tree, (node: Nodes) => {
      kinds.set(node.type, [...(kinds.get(node.type) ?? []), 'value' in node ? node.value : '']);
      if (node.type === 'table') rows.push(node.children.map(({ children }) => children.length));
    });
    for (const made of ['link', 'image', 'linkReference', 'imageReference', 'definition', 'code'])
      expect(kinds.has(made), made).toBe(false);
    const tags = (kinds.get('html') ?? []).flatMap((html) => html.split('\n'));
    expect(new Set(tags)).toEqual(new Set(['<details>', '<summary>', '</summary>', '</details>']));
    for (const text of kinds.get('text') ?? []) expect(text).not.toMatch(/@\w|#\d|:\/\/|www\./);
    expect(rows.length).toBeGreaterThan(2);
    for (const cells of rows) expect(new Set(cells).size).toBe(1);
    expect(told).toContain('@octocat');
  });

  it('begins no line of a log with a command, and moves no cursor', async () => {
    const told = await ofBranch('hostile', 'text');
    expect(told).toContain('::error::x');
    for (const line of told.split('\n')) expect(line).not.toMatch(/^\s*::|##\[/);
    expect(told).not.toMatch(/(?!\n)[\p{Cc}\p{Cf}]/u);
  });

  it('follows no link, and says where one stands', async () => {
    const told = await ofBranch('hostile', 'text');
    expect(told).toContain('"secret.csv" is a link or a device and is not followed');
    expect(told).not.toContain('root:');
  });

  it('is told whose files it touches, and what cannot be read', async () => {
    const told = await ofBranch('hostile', 'text');
    expect(told).toContain('rulings/haul/plover.md: organisers answer for');
    expect(told).toContain('stint (haul) cannot be read as it stands and would be left out.');
  });

  it('says the same of two folders, where git is not asked at all', async () => {
    const out = mkdtempSync(join(tmpdir(), 'review-head-'));
    try {
      history.git('worktree', 'add', '--quiet', '--detach', join(out, 'tree'), 'hostile');
      rmSync(join(out, 'tree/.git'));
      rmSync(marker(), { force: true });
      const told = await printed('--base-content', history.content, '--content', join(out, 'tree/content'));
      expect(told).toContain('"secret.csv" is a link or a device and is not followed');
      expect(told).not.toContain('root:');
      expect(existsSync(marker())).toBe(false);
    } finally {
      rmSync(out, { recursive: true, force: true });
      history.git('worktree', 'prune');
    }
  });
});

describe('a wrong use', () => {
  it('of two ways at once is refused', async () => {
    const { code, error } = await run('review', [
      '--base',
      'main',
      '--base-content',
      history.content,
      '--now',
      at,
    ]);
    expect(code).toBe(2);
    expect(error).toContain('choose one');
  });

  it('of a commit that is not there is refused, and none of its letters is taken for an option', async () => {
    for (const name of ['no-such', '-no-such']) {
      const { code, error } = await run('review', [
        `--base=${name}`,
        '--content',
        history.content,
        '--now',
        at,
      ]);
      expect(code).toBe(2);
      expect(error).toContain(`in no git repository with a commit "${name}"`);
    }
  });
});
