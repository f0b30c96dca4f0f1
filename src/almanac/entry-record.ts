import type { JudgedEntry } from '../contest/standing.ts';
import type { EntryRecord, FlightRecord } from './almanac.ts';
import type { Entrant } from './entrants.ts';
import { textOfSection } from './peoples-text.ts';
import { whenAsked } from './when-asked.ts';

/** One entry with its verdicts and figures, as its page shows it. */
export function recordEntry(
  { read, contender, figures }: Entrant,
  judged: JudgedEntry,
  fileToChange: string | null,
): EntryRecord {
  const { entry, ruling, junior } = contender;
  const judgedByNumber = new Map(judged.flights.map((flight) => [flight.number, flight]));
  const flights = entry.flights.flatMap((flight): FlightRecord[] => {
    const verdict = judgedByNumber.get(flight.number);
    // A flight added to an entry after its challenge became final has no part in the frozen result.
    if (verdict === undefined) return [];
    const ofFlight = whenAsked(() => figures.flight({ flight, official: verdict.official }, verdict.setup));
    return [
      {
        flight,
        judged: verdict,
        get figures() {
          return ofFlight();
        },
      },
    ];
  });
  const standsFor = judged.bestCounted ?? judged.bestProvisional;
  const best = flights.find(({ flight }) => flight.number === standsFor);
  const flown = best === undefined ? null : { flight: best.flight, official: best.judged.official };
  const headline = whenAsked(() => figures.headline(flown, judged.headlineSetup));
  const account = whenAsked(() => figures.account(flown, judged.headlineSetup));
  const ballasts = whenAsked(() => figures.noseBallasts(judged.headlineSetup));
  const html = whenAsked(() => textOfSection(entry.body));
  return {
    entry,
    challenge: entry.challenge,
    ruling,
    judged,
    headline: entry.setups.find(({ id }) => id === judged.headlineSetup) ?? entry.setups[0],
    get figures() {
      return headline();
    },
    setupFigures: entry.setups.map(({ id }) => figures.model(id)),
    get noseBallasts() {
      return ballasts();
    },
    get energyAccount() {
      return account().energy;
    },
    get stretchesAtLaunch() {
      return account().stretches;
    },
    get timeParts() {
      return account().parts;
    },
    flights,
    logs: read.logs,
    photos: read.photos,
    get html() {
      return html();
    },
    junior,
    fileToChange,
  };
}
