import type { JudgedEntry } from '../contest/standing.ts';
import type { EntryRecord, FlightRecord } from './almanac.ts';
import type { Entrant } from './assemble.ts';
import { textOfSection } from './peoples-text.ts';

/** One entry with its verdicts and figures, as its page shows it. */
export function recordEntry({ read, contender, figures }: Entrant, judged: JudgedEntry): EntryRecord {
  const { entry, ruling, junior } = contender;
  const judgedByNumber = new Map(judged.flights.map((flight) => [flight.number, flight]));
  const flights = entry.flights.flatMap((flight): FlightRecord[] => {
    const verdict = judgedByNumber.get(flight.number);
    // A flight added to an entry after its challenge became final has no part in the frozen result.
    if (verdict === undefined) return [];
    return [
      {
        flight,
        judged: verdict,
        figures: figures.flight({ flight, official: verdict.official }, verdict.setup),
      },
    ];
  });
  const standsFor = judged.bestCounted ?? judged.bestProvisional;
  let html: string | undefined;
  const best = flights.find(({ flight }) => flight.number === standsFor);
  return {
    entry,
    challenge: entry.challenge,
    ruling,
    judged,
    headline: entry.setups.find(({ id }) => id === judged.headlineSetup) ?? entry.setups[0],
    figures: figures.headline(
      best === undefined ? null : { flight: best.flight, official: best.judged.official },
      judged.headlineSetup,
    ),
    setupFigures: entry.setups.map(({ id }) => figures.model(id)),
    flights,
    photos: read.photos,
    // Rendering takes longer than all the rest together, and checking shows no page: so it waits for the first reader.
    get html() {
      html ??= textOfSection(entry.body);
      return html;
    },
    junior,
  };
}
