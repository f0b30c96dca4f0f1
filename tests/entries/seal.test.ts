import { describe, expect, it } from 'vitest';
import { canonicalFlight } from '../../src/entries/seal.ts';
import { sealOf } from '../../src/entries/seal-of.ts';
import { readSource } from '../../src/entries/source/read-source.ts';
import { splitPlain } from '../../src/entries/source/split-plain.ts';

function canonical(...fields: string[]): string | null {
  const flight = fields.map((field) => `    ${field}\n`).join('');
  const { source } = readSource('entry.md', `---\nflights:\n  -\n${flight}---\n`, splitPlain);
  return source === null ? null : canonicalFlight(source, 0);
}

// The example of content format 1, under "rulings".
const example = [
  'number: 1',
  'date: 2027-05-09',
  'watches: [41.62 s, 41.80 s]',
  'turns: 54 x 10',
  'launch: hand',
  'launch-height: 1.9 m',
  'weather: { wind: 1.5 m/s, temperature: 14 °C }',
  'timekeepers: [otter, heron]',
  'evidence: [https://video.example/abc]',
];

describe('the seal of a flight', () => {
  it('is the one content format 1 gives for its example', () => {
    const text = canonical(...example);
    expect(text).toBe(
      '{"date":"2027-05-09","evidence":["https://video.example/abc"],"launch":"hand","launch-height":1.9,"number":1,"timekeepers":["otter","heron"],"turns":540,"watches":[41.62,41.8],"weather":{"temperature":287.15,"wind":1.5}}',
    );
    expect(sealOf(text ?? '')).toBe('1-0345b3da7446da48');
  });

  it('does not see order, form, or what may still be written afterwards', () => {
    expect(canonical(...[...example].reverse())).toBe(canonical(...example));
    expect(canonical('launch-height: "1900 mm ± 5 mm"')).toBe('{"launch-height":1.9}');
    expect(canonical('number: 1', 'note: a', 'changed: b', 'damage: c', 'withdrawn: true')).toBe(
      '{"number":1}',
    );
  });

  it('sees everything else', () => {
    expect(canonical('number: 1', 'ended: water')).toBe('{"ended":"water","number":1}');
    expect(canonical('setup: none', 'round: 3')).toBe('{"round":"3","setup":"none"}');
    expect(canonical('time: 1 min 2.4 s')).toBe('{"time":62.4}');
    expect(canonical('drop: -2 m')).toBe('{"drop":-2}');
  });

  it('keeps a balance as a length or as a share', () => {
    expect(canonical('balance: 101 mm')).toBe('{"balance":0.101}');
    expect(canonical('balance: 38 %')).toBe('{"balance":0.38}');
  });

  it('writes text in NFC (Unicode Standard Annex #15: e and U+0301 are é)', () => {
    expect(canonical('flyer: "rene\u0301"')).toBe('{"flyer":"ren\u00e9"}');
  });

  it('sorts keys by code point, which is not the order of UTF-16 (RFC 3629: U+FF61 before U+1F600)', () => {
    expect(canonical('"\u{1f600}": a', '"\uff61": b')).toBe('{"\uff61":"b","\u{1f600}":"a"}');
  });

  it('is null for a flight that is not there', () => {
    const { source } = readSource('entry.md', '---\nname: a\n---\n', splitPlain);
    expect(source && canonicalFlight(source, 0)).toBeNull();
  });
});
