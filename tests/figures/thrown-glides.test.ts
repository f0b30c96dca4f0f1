import { describe, expect, it } from 'vitest';
import { thrownGlides } from '../../src/figures/thrown-glides.ts';
import type { Glide, Setup } from '../../src/model/entry.ts';
import { design, glide, measured } from './example-design.ts';

const setup = (id: string | null, from: string | null): Setup => ({
  id,
  from,
  change: null,
  design: design(),
  overrides: [],
});
const setups: [Setup, Setup, Setup] = [setup(null, null), setup('b', '2031-05-01'), setup('c', '2031-06-01')];

const countedIn = (place: number, ...glides: Glide[]) => thrownGlides({ glides }, setups, place, 0.15);

describe('the test glides that tell of a setup', () => {
  it('are those thrown in it or before it', () => {
    const glides = ['2031-04-30', '2031-05-01', '2031-06-02'].map((date) => glide({ date }));
    const dates = [0, 1, 2].map((place) => countedIn(place, ...glides).map((each) => each.glide.date));
    expect(dates).toEqual([
      ['2031-04-30'],
      ['2031-04-30', '2031-05-01'],
      ['2031-04-30', '2031-05-01', '2031-06-02'],
    ]);
  });

  it('come with the aircraft as it was thrown', () => {
    const [first, second] = countedIn(2, glide({ date: '2031-04-30' }), glide({ date: '2031-05-09' }));
    expect(first!.design).toBe(setups[0].design);
    expect(second!.design).toBe(setups[1].design);
  });

  it('are of the entry as first written where they have no date', () => {
    expect(countedIn(0, glide({ date: null }))[0]!.design).toBe(setups[0].design);
  });

  it('went cleanly, or do not say how they went', () => {
    const all = [[], ['clean'], ['stalled'], ['clean', 'gust']] as const;
    const counted = countedIn(0, ...all.map((behaviour) => glide({ date: null, behaviour })));
    expect(counted.map((each) => each.glide.behaviour)).toEqual([[], ['clean']]);
  });

  it('were timed as well as a watch can, unless they say better', () => {
    const time = measured('time', 9.5, 0.03);
    const stated = { ...time, written: '9.5 s ± 0.03 s' };
    const [plain, better] = countedIn(0, glide({ date: null, time }), glide({ date: null, time: stated }));
    expect(plain!.glide.time).toEqual({ ...time, u: 0.15 });
    expect(better!.glide.time).toBe(stated);
  });
});
