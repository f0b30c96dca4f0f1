import type { Challenge } from '../../model/challenge.ts';
import { significant } from '../../quantities/decimal.ts';
import { formatSeconds } from '../../quantities/format.ts';
import type { JudgedFlight } from '../standing.ts';
import { listed } from './listed.ts';
import { roundName } from './tie-break-name.ts';

/** A flight of a score, and the round it was flown in; null without rounds, and where that is not known any more. */
export interface FlightOfScore {
  readonly flight: JudgedFlight;
  readonly round: string | null;
}

/** A score as it is compared and shown: as fine as the times it is made of, in thousandths where it is averaged or scaled. */
export function scoreText({ scoring, timing }: Challenge, score: number): string {
  const timesOnly = scoring.method !== 'mean' && scoring.scale === null;
  return secondsText(score, timesOnly ? timing.resolution : '0.001');
}

/**
 * How a score came about, such as "flight 3, mean of 41.62 s and 41.80 s, rounded down to 0.1 s". The flights are those
 * of the standing, in its order; empty where a frozen result does not name them.
 */
export function scoreInWords(challenge: Challenge, flights: readonly FlightOfScore[]): string {
  const { method } = challenge.scoring;
  const [first] = flights;
  if (first === undefined) return 'flights not named in the final result';
  if (method === 'rounds') return roundsInWords(challenge, flights);
  if (method === 'best') return bestInWords(challenge, first.flight);
  const { flights: taken } = challenge.scoring;
  const how = method === 'sum' ? 'sum' : 'mean';
  const list = listed(
    flights.map(({ flight }) => `${contribution(challenge, flight)} (flight ${flight.number})`),
  );
  const missing = taken - flights.length;
  if (missing <= 0) return flights.length === 1 ? list : `${how} of ${list}`;
  const absent =
    missing === 1 ? 'one missing flight, counted as 0 s' : `${missing} missing flights, counted as 0 s`;
  return `${how} of ${list} and ${absent}`;
}

function bestInWords(challenge: Challenge, flight: JudgedFlight): string {
  const { maximum } = challenge.flying;
  const { official } = flight;
  const capped = maximum !== null && official.seconds > maximum;
  const factor = factorInWords(challenge, flight);
  const told = `flight ${flight.number}, ${official.explanation}`;
  if (!capped && factor === null) return told;
  const time = timeText(challenge, official.seconds);
  const counted = capped ? `, counted as the maximum of ${timeText(challenge, maximum)}` : '';
  return `${told}: ${time}${counted}${factor === null ? '' : `, ${factor}`}`;
}

/** What one flight gives to a sum or mean. */
function contribution(challenge: Challenge, flight: JudgedFlight): string {
  const { maximum } = challenge.flying;
  const capped = maximum !== null && flight.official.seconds > maximum;
  const time = timeText(challenge, capped ? maximum : flight.official.seconds);
  const factor = factorInWords(challenge, flight);
  return factor === null ? time : `${time} ${factor}`;
}

/** Such as "× 1.155 for the handicap"; null where there is none, or where it is not known any more. */
function factorInWords({ scoring, flying }: Challenge, { official, score }: JudgedFlight): string | null {
  if (scoring.scale === null || score === null) return null;
  const time = flying.maximum === null ? official.seconds : Math.min(official.seconds, flying.maximum);
  return time > 0 ? `× ${significant(score / time, 4)} for the handicap` : null;
}

function roundsInWords(challenge: Challenge, flights: readonly FlightOfScore[]): string {
  if (flights.every(({ round }) => round === null))
    return `flights ${listed(flights.map(({ flight }) => String(flight.number)))}`;
  const flown = challenge.rounds.map((round) => {
    const found = flights.find((one) => one.round === round.id)?.flight.official.seconds ?? null;
    return {
      round,
      seconds: found,
      full: found !== null && found >= round.maximum,
    };
  });
  const tell = ({ round, seconds, full }: (typeof flown)[number]): string => {
    if (seconds === null) return `${round.id} not flown`;
    return full
      ? `${roundName(round)} ${timeText(challenge, round.maximum)} (full)`
      : `${roundName(round)} ${timeText(challenge, seconds)}`;
  };
  const rounds = flown.filter(({ round }) => !round.flyOff);
  const flyOffs = flown.filter(({ round, seconds }) => round.flyOff && seconds !== null);
  const inRounds = rounds.every(({ full }) => full)
    ? `full in ${rounds.length === 1 ? 'the round' : `all ${rounds.length} rounds`}`
    : rounds.map(tell).join(', ');
  return [inRounds, ...flyOffs.map(tell)].join('; ');
}

function timeText({ timing }: Challenge, seconds: number): string {
  return secondsText(seconds, timing.resolution);
}

/** At the resolution of the rules; a ruled time or a maximum may be finer, and is then shown as it is. */
function secondsText(seconds: number, resolution: string): string {
  const atResolution = formatSeconds(seconds, resolution);
  const exact = `${significant(seconds)} s`;
  return exact.length > atResolution.length ? exact : atResolution;
}
