import { describe, expect, it } from 'vitest';
import { checkText } from '../../../src/entries/check/text-checks.ts';
import { readSource } from '../../../src/entries/source/read-source.ts';
import { splitPlain } from '../../../src/entries/source/split-plain.ts';
import { told } from '../written.ts';

function toldOf(body: string, isEntry = true, lineEnd = '\n'): string[] {
  const text = `---\nname: Plover\n---\n${body}`.replaceAll('\n', lineEnd);
  const { source } = readSource('entry.md', text, splitPlain);
  if (source === null) throw new Error('unreadable');
  return checkText(source, isEntry).map(told);
}

describe('a picture in the text', () => {
  it('is said to belong under `photos`, with the line to write there', () => {
    expect(toldOf('The wing:\n\n![Wing](wing.jpg)\n')).toEqual([
      '6:1 picture-in-text: "![Wing](wing.jpg)" is a picture in the text, where its words are shown instead of it. Lay the picture beside entry.md and list it at the top of the file under `photos`, such as `- { file: wing.jpg, alt: "Wing" }`; a picture listed there is shown already.\n-> - { file: wing.jpg, alt: "Wing" }',
    ]);
  });

  it('is found at its place with the line ends of Windows', () => {
    expect(toldOf('One\n\na ![Wing](wing.jpg)\n', true, '\r\n')[0]).toMatch(/^6:3 picture-in-text/);
  });

  it('is found by its reference too, and every one of them', () => {
    const found = toldOf('![a][w] ![b](https://x.example/b.png)\n\n[w]: <wing 2.jpg>\n');
    expect(found).toHaveLength(2);
    expect(found[0]).toContain('- { file: "wing 2.jpg", alt: "a" }');
    expect(found[1]).toContain('`- { file: bench.jpg, alt: "The model on the bench" }`');
  });

  it('is none in code, in an escape, or where no picture is named (CommonMark 0.31.2, 6.4)', () => {
    expect(
      toldOf('`![a](b.jpg)`\n\n    ![a](b.jpg)\n\n```\n![a](b.jpg)\n```\n\n\\![a](b.jpg) ![a] x\n'),
    ).toEqual([]);
  });

  it('has no place at all outside an entry', () => {
    expect(toldOf('![Club](club.jpg)', false)).toEqual([
      '4:1 picture-in-text: "![Club](club.jpg)" is a picture in the text, where its words are shown instead of it. Only entries have pictures. Take it out, or write a link to it, `[words](address)`.',
    ]);
  });
});
