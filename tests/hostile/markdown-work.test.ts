import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkText } from '../../src/entries/check/text-checks.ts';
import { renderMarkdown } from '../../src/entries/markdown.ts';
import { markdownLimits, tooMuchToRead } from '../../src/entries/markdown-limits.ts';
import { readSource } from '../../src/entries/source/read-source.ts';
import { splitPlain } from '../../src/entries/source/split-plain.ts';

// Texts that keep a reader of Markdown busy with the square of their length or worse, as published for several readers
// (the "pathological input" tests of CommonMark's reference implementations), and more of the kind. Written from memory.
const units = [
  '**a*',
  '_a__',
  '*a ',
  '*a_ ',
  'a***b ',
  'a**b_c ',
  '~a~~',
  '[',
  '![',
  '[a](',
  '[a][b] ',
  'a]',
  '](',
  '[*a](b) ',
  '<',
  '<a ',
  '<!--',
  '<!A ',
  '<?',
  '<![CDATA[',
  '<a b="',
  '`` a ` ',
  '\\',
  '&',
  '&aaaa',
  'a@b.c ',
  'www.',
  'http://a.b ',
  '[a](<b',
  '[a](b "',
  '(',
  'a  \n',
  'a\\\n',
  'a\n=\n',
  'a\n-\n',
  '- a\n',
  '- a\n  - b\n',
  '1. a\n   1. b\n      1. c\n',
  '- - - - - - - - - a\n',
  '> - 1. > - a\n',
  '> a\nb\n',
  '> > > > > > > > > a\n',
  '- [ ] a\n',
  '# a\n',
  '```\n',
  '```a\n~~~\n',
  '    a\n',
  '<div>\n',
  '|a|b|\n',
  'a|b\n',
  '|-',
  '[^a]',
  '[^1]: x\n',
  '[a]: /x\n',
  'a\n\n',
  '- a\n\n',
  '\n',
  ' ',
  '\t',
  '>',
  '- ',
  '1. ',
  '*',
  'a',
];

/** Processor time in milliseconds: what other work on the same computer takes is not counted. */
function timeOf(work: () => unknown): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

function sourceOf(body: string) {
  const { source } = readSource('entry.md', `---\nname: Plover\n---\n${body}`, splitPlain);
  if (source === null) throw new Error('unreadable');
  return source;
}

/** The longest text of so many repetitions that is still read. */
function longestRead(unit: string): string {
  let [low, high] = [1, Math.floor(markdownLimits.characters / unit.length)];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (tooMuchToRead(unit.repeat(middle)) === null) low = middle;
    else high = middle - 1;
  }
  return unit.repeat(low);
}

// The promise is two seconds for check and build; a computer half as fast as the one this was written on keeps it, too.
const soon = 2000;

describe('a text made to keep the reader busy', () => {
  it.each(units)('of a megabyte of %j is checked and shown within the time', (unit) => {
    const body = unit.repeat(Math.floor(990_000 / unit.length));
    const source = sourceOf(body);
    let shown = '';
    const time = timeOf(() => {
      const problems = checkText(source, true);
      shown = renderMarkdown(source.body);
      if (body.trim() !== '') expect(problems.map(({ code }) => code)).toEqual(['text-as-written']);
    });
    expect(time).toBeLessThan(soon);
    expect(shown.length).toBeLessThan(6 * body.length);
  });

  it.each(units)('as long as is still read, of %j, is shown within the time', (unit) => {
    const body = longestRead(unit);
    expect(timeOf(() => renderMarkdown(body))).toBeLessThan(soon);
  });

  it('in many pieces, each as full as may be, is shown within the time', () => {
    const piece = '**a*'.repeat(300);
    let body = piece;
    while (tooMuchToRead(`${body}\n\n${piece}`) === null) body += `\n\n${piece}`;
    expect(renderMarkdown(body)).not.toMatch(/^<pre>/);
    expect(timeOf(() => renderMarkdown(body))).toBeLessThan(soon);
  });

  it('of any mixture is shown within the time', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom(...units), fc.integer({ min: 1, max: 400 })), { maxLength: 12 }),
        (parts) => {
          const body = parts.map(([unit, times]) => unit.repeat(times)).join('');
          expect(timeOf(() => renderMarkdown(body))).toBeLessThan(soon);
        },
      ),
      { seed: 41, numRuns: 40 },
    );
  });
});

describe('a text that grows when it is shown', () => {
  const told = (body: string) => checkText(sourceOf(body), true).map(({ code, line }) => `${code} ${line}`);

  it('by references to a long address is shown as it was written', () => {
    const body = `[a]: /${'x'.repeat(100_000)}\n\n${'[a] '.repeat(2000).replaceAll(/(.{400})/g, '$1\n\n')}`;
    expect(renderMarkdown(body).length).toBeLessThan(2 * body.length);
    expect(told(body)).toEqual(['text-as-written 6']);
  });

  it('by the rows of a wide table is shown as it was written', () => {
    const body = `${'|a'.repeat(900)}|\n${'|-'.repeat(900)}|\n${'a\n'.repeat(400)}`;
    expect(renderMarkdown(body).length).toBeLessThan(2 * body.length);
    expect(told(body)).toEqual(['text-as-written 4']);
  });
});

describe('the limits of what is read as Markdown', () => {
  it('leave a long build log alone', () => {
    const day = [
      '## 9 May, *calm* until [noon](https://weather.example/noon)',
      '',
      ...Array.from(
        { length: 12 },
        (_, turn) => `- Flight ${turn}: **41.${turn} s**, \`54 x 10\` turns[^${turn}].`,
      ),
      '',
      '| Flight | Turns | Time | Note |',
      '|---|---:|---:|---|',
      ...Array.from({ length: 20 }, (_, row) => `| ${row} | 540 | 41.${row} s | *left* turn |`),
      '',
      '> A second motor broke.',
      '',
    ].join('\n');
    const season = day.repeat(30);
    expect(tooMuchToRead(season)).toBeNull();
    expect(renderMarkdown(season)).toContain('<table>');
  });

  it('are told with what there may be and where the text has more', () => {
    const body = `First.\n\n${'*a '.repeat(1001)}\n`;
    const [problem] = checkText(sourceOf(body), true);
    expect(problem).toMatchObject({ code: 'text-as-written', severity: 'warning', line: 6, column: 1 });
    expect(problem?.message).toBe(
      'The text has more in it than is read as Markdown, so it is shown as it was written: it may have at most 1,000 characters with a meaning in Markdown (* _ [ ] < ` | and their like) without an empty line between them. Break it up with empty lines.',
    );
  });

  it('stand where they are said to stand', () => {
    const most = (unit: string, times: number) => tooMuchToRead(unit.repeat(times))?.of ?? null;
    expect([most('a', 250_000), most('a', 250_001)]).toEqual([null, 'characters']);
    expect([most('\n', 2499), most('\n', 2501)]).toEqual([null, 'lines']);
    expect([most('*a\n\n', 1000), most('**********\n\n', 1001)]).toEqual([null, 'marks']);
    expect([most('a\n', 500), most('a\n', 501)]).toEqual([null, 'linesInPiece']);
    expect([most('> ', 10), most('> ', 11)]).toEqual([null, 'containersOfLine']);
    expect([most('- a\n\n', 1000), most('- - - a\n\n', 501)]).toEqual([null, 'containers']);
    expect([most(' ', 100), most(' ', 101)]).toEqual([null, 'indentation']);
  });

  it('shows a text beyond them with nothing of it active', () => {
    expect(renderMarkdown(`${'>'.repeat(20)} <b>&amp;</b>`)).toBe(
      `<pre>${'>'.repeat(20)} &lt;b>&amp;amp;&lt;/b></pre>`,
    );
  });
});
