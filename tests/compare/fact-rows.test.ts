import { describe, expect, it } from 'vitest';
import { groupFacts } from '../../src/compare/fact-rows.ts';

const fact = (label: string, metric: string, imperial = metric) => ({ label, shown: { metric, imperial } });

describe('facts side by side', () => {
  const [motor, build] = groupFacts([
    { facts: [{ title: 'Motor', facts: [fact('Strands', '6'), fact('Braided', 'yes')] }] },
    {
      facts: [
        {
          title: 'Motor',
          facts: [fact('Strands', '8'), fact('Braided', 'yes'), fact('Lubricant', 'silicone')],
        },
        { title: 'Building', facts: [fact('Layout', 'canard')] },
      ],
    },
  ]);

  it('are parted into what differs and what is the same', () => {
    expect(motor?.different.map(({ label }) => label)).toEqual(['Strands', 'Lubricant']);
    expect(motor?.alike.map(({ label }) => label)).toEqual(['Braided']);
  });

  it('tell who has the group at all', () => {
    expect(motor?.has).toEqual([true, true]);
    expect(build?.has).toEqual([false, true]);
  });

  it('have a gap where an aircraft does not say', () => {
    expect(motor?.different[1]?.cells).toEqual([null, { metric: 'silicone', imperial: 'silicone' }]);
    expect(build?.different.map(({ cells }) => cells[0])).toEqual([null]);
  });
});
