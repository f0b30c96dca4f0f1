import type { FigureSet } from '../../figures/figure.ts';
import { figureDefinition } from '../../figures/registry.ts';
import type { Challenge } from '../../model/challenge.ts';
import type { RuledValue } from '../../model/ruling.ts';
import { toUnit } from '../../quantities/format.ts';
import type { Kind } from '../../quantities/quantity.ts';
import { siUnit } from '../../quantities/units.ts';
import { figureValues } from '../rules/figure-values.ts';
import { limitsOn } from '../rules/limits-on.ts';
import { kindOf } from '../rules/name-of-figure.ts';
import { unitOfLimit } from '../rules/unit-of-limit.ts';
import type { Stale } from '../standing.ts';

/** What the bench reads, where it is not the SI unit. */
const benchUnits: Partial<Readonly<Record<Kind, string>>> = {
  mass: 'g',
  area: 'dm2',
  loading: 'g/dm2',
  torque: 'N·mm',
  'specific-energy': 'J/g',
  'mass-per-length': 'g/mm',
  'time-per-mass': 's/g',
  angle: '°',
  share: '%',
};

/** A fact or figure as it was ruled on and as it is now, both fit for a sentence. `now` is null where it is absent. */
export function changeInWords(
  challenge: Challenge,
  id: string,
  ruled: RuledValue,
  now: RuledValue | null,
  figures: FigureSet,
): Stale {
  if (now === null) return { what: id, ruled: words(challenge, id, ruled), now: absent(id, figures) };
  const [before, after] = [numbers(ruled), numbers(now)];
  if (before === null || after === null)
    return { what: id, ruled: words(challenge, id, ruled), now: words(challenge, id, now) };
  const { inside, unit } = scaleOf(challenge, id);
  const [then, today] = toSeeTheDifference(before.map(inside), after.map(inside));
  return { what: id, ruled: listed(then, unit), now: listed(today, unit) };
}

function words(challenge: Challenge, id: string, value: RuledValue): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  const figure = numbers(value);
  if (figure === null) return [value].flat().join(', ') || 'none';
  const { inside, unit } = scaleOf(challenge, id);
  return listed(
    figure.map((one) => String(Number(inside(one).toPrecision(leastDigits)))),
    unit,
  );
}

function numbers(value: RuledValue): readonly number[] | null {
  const items: readonly (string | number | boolean)[] = [value].flat();
  return items.length > 0 && items.every((item) => typeof item === 'number') ? items : null;
}

function absent(id: string, figures: FigureSet): string {
  const figure = figureValues(figures, id)[0];
  return figure !== undefined && 'absent' in figure ? `absent: ${figure.absent}` : 'absent';
}

/** How a figure is written: in the unit of the first limit on it, else in that of the bench. Turns go without theirs. */
function scaleOf(
  challenge: Challenge,
  id: string,
): { readonly inside: (value: number) => number; readonly unit: string } {
  const definition = figureDefinition(id);
  if (definition === undefined) return { inside: (value) => value, unit: '' };
  const kind = kindOf(definition);
  const [limit] = limitsOn(challenge, id);
  const symbol =
    limit === undefined ? (benchUnits[kind] ?? siUnit(kind).symbol) : unitOfLimit(limit, kind).symbol;
  const unit = kind === 'turns' || symbol === '1' ? '' : symbol === '°' ? symbol : ` ${symbol}`;
  return { inside: (value) => toUnit(value, kind, symbol), unit };
}

function listed(values: readonly string[], unit: string): string {
  return values.map((value) => `${value}${unit}`).join(', ');
}

const leastDigits = 3;
const mostDigits = 12;

/** Two lists of numbers to the same decimal place: three digits, or as many more as show that they differ. */
function toSeeTheDifference(before: readonly number[], after: readonly number[]): [string[], string[]] {
  const largest = Math.max(...[...before, ...after].map(Math.abs));
  const leading = largest === 0 ? 0 : Math.floor(Math.log10(largest));
  for (let digits = leastDigits; ; digits++) {
    const places = Math.max(0, digits - 1 - leading);
    const [then, today] = [before, after].map((list) => list.map((value) => value.toFixed(places))) as [
      string[],
      string[],
    ];
    if (then.join() !== today.join() || digits === mostDigits) return [then, today];
  }
}
