import { describe, expect, it } from 'vitest';
import { printable, printableLine } from '../../scripts/terminal/printable.ts';
import { problemAnnotation } from '../../scripts/terminal/problem-annotation.ts';
import { problemText } from '../../scripts/terminal/problem-text.ts';
import type { Problem } from '../../src/entries/problems/problem.ts';

const problem: Problem = {
  file: 'entries/a/b/entry.md',
  line: 3,
  column: 9,
  endLine: 3,
  endColumn: 13,
  code: 'missing-unit',
  severity: 'error',
  message: 'The span "3.20" has no unit.',
  found: '3.20',
  accepted: 'a length such as 3.20 m',
  suggestion: 'span: 3.20 m',
  related: null,
};

const text = (change: Partial<Problem>, lines: string[], colour = false) =>
  problemText(
    { ...problem, ...change },
    { colour, pathOf: (file) => `content/${file}`, linesOf: () => lines },
  );

describe('a problem at a terminal', () => {
  it('has its place, a sentence, the line with a mark, and a way out', () => {
    expect(text({}, ['---', 'wing:', '  span: 3.20', '---'])).toBe(
      [
        'content/entries/a/b/entry.md:3:9 error missing-unit',
        '  The span "3.20" has no unit.',
        '  3 |   span: 3.20',
        '    |         ^^^^',
        '  accepted: a length such as 3.20 m',
        '  try: span: 3.20 m',
        '',
      ].join('\n'),
    );
  });

  it('points at the other end of a contradiction', () => {
    const related = {
      file: 'site.md',
      line: 2,
      column: 1,
      endLine: 2,
      endColumn: 3,
      message: 'It is first here.',
    };
    expect(text({ related }, [])).toContain('  see content/site.md:2:1: It is first here.');
  });

  it('shows the part of a long line that matters', () => {
    const line = `${'x'.repeat(5000)}3.20`;
    const shown = text({ column: 5001, endColumn: 5005 }, ['', '', line]);
    expect(shown).toContain(`  3 | ${'x'.repeat(20)}3.20\n    | ${' '.repeat(20)}^^^^\n`);
  });

  it('survives a place beyond the end of the file', () => {
    expect(text({ line: 99, endLine: 99 }, ['---'])).not.toContain('^');
    expect(text({ column: 500, endColumn: 501 }, ['', '', 'short'])).toContain('^');
  });

  it('lets nothing in a file act on the terminal', () => {
    // ECMA-48: a control sequence begins with ESC (U+001B); Unicode UAX #9: U+202E turns the direction of text.
    const shown = text({ message: 'red \u001b[31m and \u202e turned' }, ['', '', '  span: \u001b]0;x\u0007']);
    for (const character of ['\u001b', '\u0007', '\u202e']) expect(shown).not.toContain(character);
    expect(shown).toContain('red <U+001B>[31m and <U+202E> turned');
  });

  it('lets no line of a file stand first', () => {
    const shown = text({ suggestion: 'a: 1\n::error::gotcha', message: 'x\n::error::gotcha' }, []);
    expect(shown.split('\n').filter((line) => line.trim().startsWith('::'))).toEqual([]);
    expect(shown).toContain('  try: a: 1\n     | ::error::gotcha\n');
  });

  it('is coloured only where asked', () => {
    expect(text({}, [])).not.toContain('\u001b[');
    expect(text({}, [], true)).toContain('\u001b[31m');
  });
});

describe('a problem as an annotation', () => {
  const annotation = (change: Partial<Problem>) =>
    problemAnnotation({ ...problem, ...change }, (file) => file);

  // Form and escapes: the documentation of workflow commands and the toolkit's escapeData and escapeProperty
  // (percent, carriage return and line feed in the message; colon and comma too in a property); from memory.
  it('is one command with file, lines, columns and title', () => {
    expect(annotation({})).toBe(
      '::error file=entries/a/b/entry.md,line=3,endLine=3,col=9,endColumn=13,title=missing-unit' +
        '::The span "3.20" has no unit.%0ATry: span: 3.20 m\n',
    );
    expect(annotation({ severity: 'warning' })).toMatch(/^::warning /);
    expect(annotation({ severity: 'note' })).toMatch(/^::notice /);
  });

  it('gives no end column where it ends on another line', () => {
    expect(annotation({ endLine: 5 })).not.toContain('endColumn');
  });

  it('lets a contributor start no command of their own', () => {
    const evil = 'x\n::set-env name=PATH::/evil\r\n::error::gotcha 100%';
    const shown = annotation({ message: evil, file: 'a,line=1::b:c.md', suggestion: evil });
    expect(shown.trimEnd().split(/[\r\n]/)).toHaveLength(1);
    expect(shown).toContain('file=a%2Cline=1%3A%3Ab%3Ac.md,line=3');
    expect(shown).toContain('100%25');
  });

  it('carries no terminal escapes', () => {
    expect(annotation({ message: '\u001b[2J' })).toContain('<U+001B>[2J');
  });
});

describe('printable text', () => {
  it('keeps letters of every language and signs', () => {
    const text = 'Šárka’s Ωmega — 3.2 m² ± 5 mm, 春';
    expect(printable(text)).toBe(text);
  });

  it('names what has no shape', () => {
    expect(printable('a\u0000b\u2028c\u009bd')).toBe('a<U+0000>b<U+2028>c<U+009B>d');
  });

  it('begins no line with what a build server takes for a command', () => {
    expect(printableLine('  ::error::Take me')).toBe('  <U+003A>:error::Take me');
    expect(printableLine('Reedling::Two')).toBe('Reedling::Two');
  });
});
