import type { Status } from '../standing.ts';
import { ineligibleBecause } from './eligibility.ts';
import { type FlightCase, isSettled } from './flight-case.ts';

/** A status with its reason, null where nothing needs saying. */
export interface StatusWithReason {
  readonly status: Status;
  readonly reason: string | null;
}

type Answer = (one: FlightCase) => StatusWithReason | null;

/** In this order; the first that holds is the flight's status. */
const answers: readonly Answer[] = [
  withdrawn,
  voidOrRefused,
  outsideDates,
  reportedLate,
  ineligible,
  attempt,
  accepted,
];

/** The status of a flight: the first in the fixed order that holds, else provisional. */
export function statusOf(one: FlightCase): StatusWithReason {
  for (const answer of answers) {
    const found = answer(one);
    if (found !== null) return found;
  }
  return { status: 'provisional', reason: lapsed(one) };
}

function withdrawn({ flight }: FlightCase): StatusWithReason | null {
  return flight.withdrawn ? { status: 'withdrawn', reason: 'taken back by the builder' } : null;
}

/** These stand until ruled again, whatever became of the flight since. */
function voidOrRefused({ ruling }: FlightCase): StatusWithReason | null {
  if (ruling?.verdict === 'void')
    return { status: 'void', reason: ruling.reason ?? 'ruled void: it does not count' };
  if (ruling?.verdict === 'refused')
    return { status: 'refused', reason: ruling.reason ?? 'not accepted by the organiser' };
  return null;
}

/** The flight's own calendar date decides, whatever the offset. */
function outsideDates({ challenge, flight }: FlightCase): StatusWithReason | null {
  const day = flight.date.date;
  if (day < challenge.opens)
    return outside(`flown on ${day}, before the challenge opened on ${challenge.opens}`);
  return day > challenge.closes
    ? outside(`flown on ${day}, after the challenge closed on ${challenge.closes}`)
    : null;
}

function outside(reason: string): StatusWithReason {
  return { status: 'outside-dates', reason };
}

/** Known only where the organiser noted when the flight was handed in. */
function reportedLate({ challenge, ruling }: FlightCase): StatusWithReason | null {
  const received = ruling?.received ?? null;
  if (challenge.reportBy === null || received === null || received <= challenge.reportBy) return null;
  return {
    status: 'reported-late',
    reason: `handed in on ${received}; flights were to be handed in by ${challenge.reportBy}`,
  };
}

function ineligible(one: FlightCase): StatusWithReason | null {
  const reason = ineligibleBecause(one);
  return reason === null ? null : { status: 'ineligible', reason };
}

function attempt({ challenge, official }: FlightCase): StatusWithReason | null {
  const least = challenge.flying.attemptBelow;
  if (least === null || official.seconds >= least) return null;
  return { status: 'attempt', reason: `${official.seconds} s; a flight counts from ${least} s` };
}

function accepted(one: FlightCase): StatusWithReason | null {
  return isSettled(one) ? { status: 'accepted', reason: one.ruling?.reason ?? null } : null;
}

/** Why an acceptance no longer counts; null for a flight that nobody accepted. */
function lapsed({ ruling, stale }: FlightCase): string | null {
  if (ruling?.verdict !== 'accepted') return null;
  const changes = stale.map(({ what, ruled, now }) => {
    if (what !== 'seal') return `the ${what.replaceAll('-', ' ')} was ${ruled} then and is ${now} now`;
    return ruled === 'none'
      ? 'that ruling carries no seal'
      : 'what is written about the flight has changed since';
  });
  return `accepted on ${ruling.date}, but ${changes.join('; ')}: waits for a new ruling`;
}
