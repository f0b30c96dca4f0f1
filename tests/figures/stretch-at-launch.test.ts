import { describe, expect, it } from 'vitest';
import { isPresent } from '../../src/figures/figure.ts';
import { stretchesAtLaunch } from '../../src/figures/stretch-at-launch.ts';
import type { Subject } from '../../src/figures/subject.ts';
import { batch, design, flown, measured, motor, skein, stretchTest, subject } from './example-design.ts';

function stretches(of: Partial<Subject>): (number | string)[] {
  return stretchesAtLaunch(subject(of)).map((one) => (isPresent(one) ? one.value : one.absent));
}

describe('the stretch of a wound motor’s strands', () => {
  const wound = flown({ turns: [measured('turns', 400, 2)] });

  it('is that of the share wound', () => {
    // By hand: half of 800 turns, a default of 7.6 at break: √(1 + (7.6² − 1)/4) = √15.19 = 3.8974.
    expect(stretches({ flown: wound })).toEqual([expect.closeTo(3.8974, 4)]);
  });

  it('takes the break of its batch where a test went there', () => {
    // By hand: broke at 7: √(1 + 48/4) = √13 = 3.6056.
    const of = design({ motors: [motor({ skein: skein({ batch: 'fen-a' }) })] });
    const broken = batch({ stretchTests: [stretchTest({ broke: true })] });
    expect(stretches({ design: of, batches: new Map([['fen-a', broken]]), flown: wound })).toEqual([
      expect.closeTo(3.6056, 4),
    ]);
  });

  it('is told for each kind of motor', () => {
    const of = design({ motors: [motor(), motor({ breakTurns: [], skein: null })] });
    expect(stretches({ design: of, flown: wound })).toEqual([
      expect.closeTo(3.8974, 4),
      expect.stringMatching(/^needs /),
    ]);
  });
});
