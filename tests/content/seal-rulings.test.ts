import { describe, expect, it } from 'vitest';
import { sealRulings } from '../../scripts/demo/seal-rulings.ts';

const known = {
  seal: '1-0345b3da7446da48',
  facts: { setup: 'none', control: 'free', onboard: [], junior: false, span: 3.2, 'rubber-share': 0.0479 },
};
const fields =
  'as-ruled: { setup: none, control: free, onboard: [], junior: false, span: 3.2 m, rubber-share: 4.79 % }';

const file = (flights: string): string =>
  `---\n# kept by hand\ninspected: { date: 2027-06-01, by: scales,  span: 3.190 m }\nflights:\n${flights}---\nWhy, in words.\n`;

describe('sealRulings', () => {
  it('adds seal and facts behind the last field of a ruling and leaves every other letter', () => {
    const before =
      '  - flight: 1\n    verdict: accepted   # seen twice\n    seen: [launch,landing]   # both\n';
    const written = sealRulings(file(before), () => known);
    const shape = written.replace(/^ {4}as-ruled: .*$/m, `    ${fields}`);
    expect(shape).toBe(file(`${before}    seal: ${known.seal}\n    ${fields}\n`));
  });

  it('writes figures with their unit, close enough to be read back within a thousandth', () => {
    const written = sealRulings(file('  - flight: 1\n    verdict: accepted\n'), () => known);
    expect(written).toMatch(
      /setup: none, control: free, onboard: \[\], junior: false, span: 3\.2 m, rubber-share: (4\.79 %|0\.0479) \}/,
    );
  });

  it('keeps a ruling that stands on one line on one line', () => {
    const written = sealRulings(
      file('  - { flight: 4, verdict: accepted, date: 2027-06-02 }\n'),
      () => known,
    );
    expect(written).toMatch(
      /\n {2}- \{ flight: 4, verdict: accepted, date: 2027-06-02, seal: 1-0345b3da7446da48, as-ruled: \{ .* \} \}\n/,
    );
  });

  it('replaces an old seal and old facts, so that sealing twice changes nothing', () => {
    const old = file(
      '  - flight: 1\n    seal: 1-0000000000000000\n    as-ruled: { setup: b }\n    verdict: accepted\n',
    );
    const once = sealRulings(old, () => known);
    expect(once).toContain('    seal: 1-0345b3da7446da48\n    as-ruled: { setup: none,');
    expect(once).not.toContain('setup: b');
    expect(sealRulings(once, () => known)).toBe(once);
  });

  it('leaves a refusal, a flight it knows nothing of and a file without flights alone', () => {
    const refused = file('  - flight: 1\n    verdict: refused\n');
    expect(sealRulings(refused, () => known)).toBe(refused);
    const accepted = file('  - flight: 1\n    verdict: accepted\n');
    expect(sealRulings(accepted, () => null)).toBe(accepted);
    const none = '---\ninspected: { date: 2027-06-01, by: scales }\n---\n';
    expect(sealRulings(none, () => known)).toBe(none);
  });
});
