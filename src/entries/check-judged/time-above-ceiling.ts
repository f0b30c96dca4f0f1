import { isPresent } from '../../figures/figure.ts';
import { formatMeasured, formatSeconds } from '../../quantities/format.ts';
import { problemAt } from '../problems/make-problem.ts';
import { type CrossCheck, pathOfFlight } from './cross-check.ts';

/**
 * The best time of an entry beside what its own figures give in still air, both worked out for that flight. Nothing is
 * wrong with a longer one: air rises, and the figures are estimates.
 */
export const checkBestTime: CrossCheck = ({ record, source, challenge, state }) => {
  const best = record.judged.bestCounted ?? record.judged.bestProvisional;
  const flown = record.flights.find(({ flight }) => flight.number === best);
  if (flown === undefined || state === 'final') return [];
  const { seconds } = flown.judged.official;
  const predicted = flown.figures.entry.get('predicted-time');
  const ceiling = flown.figures.entry.get('ceiling-time');
  const above = isPresent(ceiling) && seconds > ceiling.value;
  const far = isPresent(predicted) && seconds > predicted.value + 3 * predicted.u;
  if (!above && !far) return [];
  const own = isPresent(predicted) ? inSeconds(predicted.value, predicted.u) : null;
  const most = isPresent(ceiling) ? `${Math.round(ceiling.value)} s` : null;
  const figures = [
    ...(own === null ? [] : [`the model's own figures give ${own}`]),
    ...(most === null ? [] : [`the best of everything gives ${most}`]),
  ];
  const flight = pathOfFlight(source, flown.flight.number);
  return [
    problemAt(source, flight, 'value', above ? 'time-above-ceiling' : 'time-above-prediction', {
      message: `Flight ${flown.flight.number} lasted ${formatSeconds(seconds, challenge.timing.resolution)}. For this flight in still air ${figures.join(', and ')}: it needs rising air, or another look at the numbers.`,
      found: String(seconds),
    }),
  ];
};

function inSeconds(time: number, uncertainty: number): string {
  const { value, u } = formatMeasured(time, uncertainty, 'time', 's');
  return u === '' ? `${value} s` : `${value} s ± ${u} s`;
}
