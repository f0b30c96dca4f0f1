import { type FigureSet, isPresent } from '../../figures/figure.ts';
import type { Moment } from '../../model/calendar.ts';
import type { Challenge, TieBreak } from '../../model/challenge.ts';
import { figureValues } from '../rules/figure-values.ts';
import { latest, partByMoment } from './earlier.ts';
import { type Measured, partBySize } from './part-by-size.ts';
import type { Score } from './score.ts';

/** One entry in one table, before places. */
export interface Scored {
  readonly entry: string;
  readonly score: Score;
  /** Figures of the model in the headline setup; asked for only where a tie-break needs them. */
  readonly headline: () => FigureSet;
}

/** One step among entries of equal score: its name, and how it parts them, the better class first. */
export interface Step {
  readonly name: string;
  readonly part: (equal: readonly Scored[]) => readonly (readonly Scored[])[];
}

/** The steps that decide between entries of this equal score, in their order. */
export function stepsFor(challenge: Challenge, equal: readonly Scored[]): readonly Step[] {
  const acceptedFirst: readonly Step[] =
    challenge.scoring.provisional === 'ranked' ? [{ name: 'provisional', part: partProvisional }] : [];
  const flyOffs = challenge.rounds.filter(({ flyOff }) => flyOff);
  // Fly-offs alone decide between full scores; where the rules have none the tie-breaks must do.
  if (flyOffs.length > 0 && equal.every(({ score }) => score.full))
    return [...flyOffs.map(({ id }, index) => flyOffStep(id, index)), ...acceptedFirst];
  return [...acceptedFirst, ...challenge.tieBreaks.map(stepOf)];
}

function stepOf(step: TieBreak): Step {
  switch (step.kind) {
    case 'next-best-flight':
      return { name: 'next-best-flight', part: (equal) => partBy(equal, ({ score }) => score.left) };
    case 'figure':
      return {
        name: `${step.prefers} ${step.figure}`,
        part: (equal) =>
          partBySize(equal, (one) => headlineFigure(one, step.figure, step.prefers), step.prefers),
      };
    case 'earlier-flight':
      return { name: 'earlier flight', part: (equal) => partByMoment(equal, completed) };
  }
}

function flyOffStep(id: string, index: number): Step {
  return { name: id, part: (equal) => partBy(equal, ({ score }) => score.flyOffs.slice(index, index + 1)) };
}

function partProvisional(equal: readonly Scored[]): readonly (readonly Scored[])[] {
  const accepted = equal.filter(({ score }) => !score.provisional);
  const provisional = equal.filter(({ score }) => score.provisional);
  return [accepted, provisional].filter((part) => part.length > 0);
}

/** Parts by lists of numbers compared one after another, the larger first; who has none left comes after. */
function partBy(
  equal: readonly Scored[],
  listOf: (one: Scored) => readonly number[],
): readonly (readonly Scored[])[] {
  const classes = new Map<string, { readonly list: readonly number[]; readonly members: Scored[] }>();
  for (const one of equal) {
    const list = listOf(one);
    const known = classes.get(list.join(' '));
    if (known === undefined) classes.set(list.join(' '), { list, members: [one] });
    else known.members.push(one);
  }
  return [...classes.values()].sort((a, b) => compareLists(b.list, a.list)).map(({ members }) => members);
}

function compareLists(a: readonly number[], b: readonly number[]): number {
  const differing = a.findIndex((value, index) => value !== b[index]);
  if (differing < 0) return a.length - b.length;
  return (a[differing] ?? 0) - (b[differing] ?? Number.NEGATIVE_INFINITY);
}

/** Of a figure of motors, the one that serves the entry worst. */
function headlineFigure({ headline }: Scored, id: string, prefers: 'larger' | 'smaller'): Measured {
  const values = figureValues(headline(), id);
  const present = values.filter(isPresent);
  if (present.length === 0 || present.length < values.length) return null;
  return present.reduce((worst, one) => ((prefers === 'larger') === one.value < worst.value ? one : worst));
}

function completed({ score }: Scored): Moment {
  const [first, ...others] = score.used;
  if (first === undefined) throw new RangeError('a score without a flight');
  return latest([first.date, ...others.map(({ date }) => date)]);
}
