import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Almanac } from '../../src/almanac/almanac.ts';
import { readAlmanac } from '../../src/almanac/read-almanac.ts';
import { type Figure, type FigureSet, isPresent, type PresentFigure } from '../../src/figures/figure.ts';
import { humidAirDensity } from '../../src/flight/humid-air.ts';

// A second implementation, in Python, of the written definitions of the figures; it shares no code with the project, and was
// written without a look at it. Its inputs (second-opinion-inputs.json) were copied by hand from four aircraft of the demo:
// one motor with a batch and folding blades, four motors in a second setup, one of which hardly anything is known, and one
// in inches with test glides. In one place the definitions can be read in two ways, and it follows the project: where only
// one of two strands of a batch was pulled until it broke, the stretch at which it did is the whole batch's.
//
// To make its answers anew, after one of these aircraft was changed:
//
//     python3 tests/figures/second-opinion.py

interface Opinion {
  readonly aircraft: Readonly<
    Record<
      string,
      {
        readonly figures: Readonly<Record<string, number>>;
        readonly uncertainties: Readonly<Record<string, number>>;
      }
    >
  >;
  readonly batches: Readonly<Record<string, Readonly<Record<string, number>>>>;
}

interface Inputs {
  readonly aircraft: Readonly<Record<string, { readonly air: Partial<Record<string, readonly number[]>> }>>;
}

const read = (file: string): unknown => JSON.parse(readFileSync(resolve(import.meta.dirname, file), 'utf8'));
const opinion = read('second-opinion.json') as Opinion;
const inputs = read('second-opinion-inputs.json') as Inputs;
const tolerance = 1e-6;

/**
 * Uncertainties that the two reach in different ways. Test glides: the least uncertainty of a mean of throws is one input
 * there and a part beside the readings here. Tested rubber: there the length of the strand moves every stretch of the log,
 * here it counts with the energy of the test alone.
 */
function toleranceOfUncertainty(craft: string, figure: string): number {
  if (!/^(sink-speed|energy-per-gram|predicted-time)$/.test(figure)) return tolerance;
  if (craft.endsWith('/treadle')) return 1e-4;
  return figure !== 'sink-speed' && /\/(shuttle|dluga-nic)$/.test(craft) ? 0.02 : tolerance;
}

const rowsOf = (kind: 'figures' | 'uncertainties') =>
  Object.entries(opinion.aircraft).flatMap(([craft, told]) =>
    Object.entries(told[kind])
      .filter(([figure]) => figure !== 'air-density')
      .map(([figure, value]) => [craft, figure, value] as const),
  );

let almanac: Almanac;

beforeAll(async () => {
  const content = resolve(import.meta.dirname, '../../content');
  almanac = await readAlmanac({ content, now: '2026-11-25T12:00:00Z' });
});

function ours(craft: string, named: string): PresentFigure {
  const [challenge, entry] = craft.split('/');
  const record = almanac.challenges
    .find((each) => each.challenge.id === challenge)
    ?.entries.find((each) => each.entry.id === entry);
  if (record === undefined) throw new Error(`the demo has no ${craft}`);
  const [id, motor] = named.split(' of motor ');
  const from = motor === undefined ? record.figures.entry : record.figures.motors[Number(motor) - 1];
  return present(from?.get(id ?? ''), `${named} of ${craft}`);
}

function present(figure: Figure | undefined, what: string): PresentFigure {
  if (figure === undefined || !isPresent(figure)) throw new Error(`absent: ${what}`);
  return figure;
}

function batchFigure(set: FigureSet | undefined, id: string): number {
  return present(set?.entry.get(id), id).value;
}

describe('a second implementation agrees', () => {
  it.each(rowsOf('figures'))('%s: %s is %d', (craft, figure, value) => {
    expect(Math.abs(ours(craft, figure).value / value - 1)).toBeLessThan(tolerance);
  });

  it.each(rowsOf('uncertainties'))('%s: the uncertainty of %s is %d', (craft, figure, value) => {
    const within = toleranceOfUncertainty(craft, figure);
    expect(Math.abs(ours(craft, figure).u / value - 1)).toBeLessThan(within);
  });

  it.each(Object.keys(opinion.aircraft))('on the density of the air %s flew in', (craft) => {
    const { temperature, pressure, humidity } = inputs.aircraft[craft]?.air ?? {};
    // Where nothing was read: 15 °C and 1013.25 hPa, as at sea level in the US Standard Atmosphere 1976, and 50 %.
    const density = humidAirDensity(
      temperature?.[0] ?? 288.15,
      pressure?.[0] ?? 101_325,
      humidity?.[0] ?? 0.5,
    );
    expect(Math.abs(density / opinion.aircraft[craft]!.figures['air-density']! - 1)).toBeLessThan(tolerance);
  });

  it.each(
    Object.entries(opinion.batches).flatMap(([batch, figures]) =>
      Object.entries(figures).map(([figure, value]) => [batch, figure, value] as const),
    ),
  )('%s: %s is %d', (id, figure, value) => {
    const set = almanac.batches.find(({ batch }) => batch.id === id)?.figures;
    expect(Math.abs(batchFigure(set, figure) / value - 1)).toBeLessThan(tolerance);
  });
});
