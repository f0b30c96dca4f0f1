import type { FlyingRules } from '../../model/challenge.ts';
import type { Flight } from '../../model/entry.ts';

/**
 * For each flight beyond what is allowed on one day or in all, by number, why. Flights count in the order of their
 * numbers, and every one but a void flight uses up the allowance, whatever else became of it.
 */
export function beyondAllowance(
  flights: readonly Flight[],
  rules: Pick<FlyingRules, 'flights' | 'flightsPerDay'>,
  isVoid: (flight: Flight) => boolean,
): ReadonlyMap<number, string> {
  const beyond = new Map<number, string>();
  if (rules.flights === null && rules.flightsPerDay === null) return beyond;
  const byDay = new Map<string, number>();
  let all = 0;
  for (const flight of [...flights].sort((a, b) => a.number - b.number)) {
    if (isVoid(flight)) continue;
    const day = flight.date.date;
    const today = (byDay.get(day) ?? 0) + 1;
    byDay.set(day, today);
    all += 1;
    if (rules.flightsPerDay !== null && today > rules.flightsPerDay)
      beyond.set(flight.number, `flight ${today} of ${day}; ${rules.flightsPerDay} a day are allowed`);
    else if (rules.flights !== null && all > rules.flights)
      beyond.set(flight.number, `flight ${all} of the entry; ${rules.flights} in all are allowed`);
  }
  return beyond;
}
