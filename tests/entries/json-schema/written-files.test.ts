import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { splitPlain } from '../../../src/entries/source/split-plain.ts';
import type { Change } from '../../../src/entries/write/after.ts';
import { rewrite } from '../../../src/entries/write/rewrite.ts';
import { ruleFlight } from '../../../src/entries/write/rule-flight.ts';
import { editorOf, faultsOf } from './editor.ts';

// What commands and the form write, an editor accepts as well.

function written(file: string, text: string, changes: readonly Change[]): unknown {
  const made = rewrite(file, text, changes);
  if (!made.ok) throw new Error(made.why);
  return parse(splitPlain(made.text).frontMatter);
}

test('a ruling that the command wrote', () => {
  const changes = ruleFlight(
    null,
    1,
    {
      verdict: 'accepted',
      time: '43.1 s',
      reason: 'Third watch read from the video: 43.1.',
      by: 'otter',
      second: 'heron',
      date: '2027-05-12',
      received: '2027-05-10',
      seen: ['launch', 'landing'],
      kept: 'https://video.example/kept/abc',
    },
    {
      seal: '1-0345b3da7446da48',
      facts: {
        setup: 'none',
        control: 'free',
        onboard: [],
        junior: false,
        span: 3.2,
        'rubber-share': 0.0479,
      },
    },
  );
  expect(faultsOf(editorOf('ruling'), written('ruling.md', '---\n---\n', changes))).toEqual([]);
});

test('any sentence that the writer puts into a field', () => {
  const editor = editorOf('entry');
  const entry =
    '---\nname: Plover\nbuilder: amarsh\ncontrol: free\nwing: { span: 1.2 m }\nmass: { airframe: 100 g }\nmotors: [{ count: 2 }]\n---\n';
  const sentence = fc.oneof(
    fc.stringMatching(/^[ -~]{1,40}$/),
    fc.constantFrom(
      '14',
      '1.5',
      '-3',
      'no',
      'true',
      '# not a remark',
      'a: b',
      '{ a }',
      '- x',
      "it's",
      '"so"',
      '012',
      '1e3',
    ),
  );
  let tried = 0;
  fc.assert(
    fc.property(
      sentence.filter((text) => text.trim() !== ''),
      (text) => {
        const changes: Change[] = [
          { do: 'set', at: ['name'], value: text },
          { do: 'set', at: ['structure'], value: { wing: text } },
        ];
        expect(faultsOf(editor, written('entry.md', entry, changes))).toEqual([]);
        tried++;
      },
    ),
    { seed: 20270509, numRuns: 150 },
  );
  expect(tried).toBeGreaterThanOrEqual(150);
});
