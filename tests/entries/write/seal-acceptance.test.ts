import { describe, expect, it } from 'vitest';
import { rewrite } from '../../../src/entries/write/rewrite.ts';
import { sealAcceptance } from '../../../src/entries/write/rule-flight.ts';

const known = {
  seal: '1-0345b3da7446da48',
  facts: { setup: 'none', control: 'free', onboard: [], junior: false, span: 3.2, 'rubber-share': 0.0479 },
};
const fields =
  /as-ruled: \{ setup: none, control: free, onboard: \[\], junior: false, span: 3\.2 m, rubber-share: (4\.79 %|0\.0479) \}/;

const file = (flights: string): string =>
  `---\n# kept by hand\ninspected: { date: 2027-06-01, by: scales,  span: 3.190 m }\nflights:\n${flights}---\nWhy, in words.\n`;

function sealed(text: string): string {
  const rewritten = rewrite('ruling.md', text, sealAcceptance(0, known));
  if (!rewritten.ok) throw new Error(rewritten.why);
  return rewritten.text;
}

describe('sealing an acceptance', () => {
  it('adds seal and facts behind its last field, figures with their unit, and leaves every other letter', () => {
    const before =
      '  - flight: 1\n    verdict: accepted   # seen twice\n    seen: [launch,landing]   # both\n';
    expect(sealed(file(before)).replace(fields, 'FACTS')).toBe(
      file(`${before}    seal: ${known.seal}\n    FACTS\n`),
    );
  });

  it('keeps a ruling that stands on one line on one line', () => {
    expect(sealed(file('  - { flight: 4, verdict: accepted, date: 2027-06-02 }\n'))).toMatch(
      /\n {2}- \{ flight: 4, verdict: accepted, date: 2027-06-02, seal: 1-0345b3da7446da48, as-ruled: \{ .* \} \}\n/,
    );
  });

  it('replaces an old seal and old facts, so that sealing twice changes nothing', () => {
    const old = file(
      '  - flight: 1\n    seal: 1-0000000000000000\n    as-ruled: { setup: b }\n    verdict: accepted\n',
    );
    const once = sealed(old);
    expect(once).toContain('    seal: 1-0345b3da7446da48\n    as-ruled: { setup: none,');
    expect(once).not.toContain('setup: b');
    expect(sealed(once)).toBe(once);
  });
});
