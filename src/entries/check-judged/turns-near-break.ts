import { isPresent, type PresentFigure } from '../../figures/figure.ts';
import { formatMeasured } from '../../quantities/format.ts';
import type { Quantity } from '../../quantities/quantity.ts';
import { fieldName } from '../problems/field-name.ts';
import { problemAt } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { type CrossCheck, type Crossed, pathOfFlight } from './cross-check.ts';
import type { EntryWithFigures, FlightWithFigures } from './with-figures.ts';

/** Above this share of the break turns the next skein may well break; common practice, no source. */
const cautious = 0.95;

/** A flight has not more turns than its motors bear; of the motors of a flight, the one wound furthest is told of. */
export const checkTurnsNearBreak: CrossCheck = (crossed) =>
  crossed.state === 'final'
    ? []
    : crossed.record.flights.flatMap((flown): Problem[] => {
        const [furthest] = wound(crossed.record, flown).sort((a, b) => b.share - a.share);
        if (furthest === undefined || furthest.share <= cautious) return [];
        return [doubt(crossed, flown, furthest)];
      });

interface Wound {
  readonly turns: Quantity;
  readonly motor: number;
  readonly breakTurns: PresentFigure;
  readonly share: number;
  /** Standard uncertainty of the share; turns and break turns are independent. */
  readonly u: number;
}

function wound(record: EntryWithFigures, { flight, judged }: FlightWithFigures): Wound[] {
  if (flight.withdrawn) return [];
  const place = record.entry.setups.findIndex(({ id }) => id === judged.setup);
  const motors = record.setupFigures[place]?.motors ?? [];
  return motors.flatMap((figures, motor): Wound[] => {
    const breakTurns = figures.get('break-turns');
    const turns = flight.turns.length > 1 ? flight.turns[motor] : flight.turns[0];
    if (turns === undefined || turns.value === 0 || !isPresent(breakTurns)) return [];
    const share = turns.value / breakTurns.value;
    const u = share * Math.hypot(turns.u / turns.value, breakTurns.u / breakTurns.value);
    return [{ turns, motor, breakTurns, share, u }];
  });
}

function doubt(
  { record, source }: Crossed,
  { flight }: FlightWithFigures,
  { turns, motor, breakTurns, share, u }: Wound,
): Problem {
  const flightPath = pathOfFlight(source, flight.number).slice(0, -1);
  const path = [...flightPath, 'turns', ...(flight.turns.length > 1 ? [motor] : [])];
  const several = record.setupFigures.some(({ motors }) => motors.length > 1);
  const { value, u: uncertainty } = formatMeasured(breakTurns.value, breakTurns.u, 'turns', 'turns');
  const breaks = `${value}${uncertainty === '' ? '' : ` ± ${uncertainty}`} turns at which ${several ? `motor ${motor + 1}` : 'the motor'} should break`;
  const said = `${fieldName(source, path)} is "${turns.written}", ${Number(share.toPrecision(3))} of the ${breaks}`;
  return share > 1 + 2 * u
    ? problemAt(source, path, 'value', 'turns-above-break', {
        message: `${said}. Correct the turns, or test \`break-turns\` again.`,
        found: turns.written,
      })
    : problemAt(source, path, 'value', 'turns-near-break', {
        message: `${said}: the next skein may well break. Wear eye protection, and keep people out of line with it.`,
        found: turns.written,
      });
}
