import type { ContestResult, JudgedFlight } from '../../src/contest/standing.ts';
import type { Ruling } from '../../src/model/ruling.ts';
import { status as statusWords } from '../../src/words/vocabulary.ts';

/** An entry under its rulings before and after a new one. */
export interface Effect {
  readonly entry: string;
  readonly name: string;
  readonly before: ContestResult;
  readonly after: ContestResult;
  /** The flight that was ruled; null for a ruling on the whole entry. */
  readonly flight: number | null;
}

/** What a ruling brought about, a line each: the flight's status, other flights that changed, the place. */
export function effectText({ entry, name, before, after, flight }: Effect): string {
  const now = after.entries.get(entry)?.flights ?? [];
  const then = new Map((before.entries.get(entry)?.flights ?? []).map((each) => [each.number, each]));
  const lines = now.flatMap((judged): string[] => {
    const was = then.get(judged.number);
    const changed = was !== undefined && was.status !== judged.status;
    if (judged.number !== flight && !changed) return [];
    const from = changed ? ` (was: ${statusWords[was.status]})` : '';
    return [`Flight ${judged.number} is now: ${statusWords[judged.status]}${from}.${why(judged)}`];
  });
  return [...lines, placeText(entry, name, before, after)].map((line) => `${line}\n`).join('');
}

function why({ reason }: JudgedFlight): string {
  return reason === null ? '' : ` ${reason}`;
}

function placeText(entry: string, name: string, before: ContestResult, after: ContestResult): string {
  const place = (result: ContestResult) => result.standings.find((row) => row.entry === entry)?.place ?? null;
  const [was, is] = [place(before), place(after)];
  if (is === null) {
    const reason = after.unplaced.find((row) => row.entry === entry)?.reason ?? null;
    return `"${name}" has no place${reason === null ? '' : ` (${reason})`}${was === null ? '' : `; it had place ${was}`}.`;
  }
  if (was === is) return `"${name}" keeps place ${is}.`;
  return `"${name}" has place ${is}${was === null ? ', and had none' : ` (was: ${was})`}.`;
}

type Disqualified = NonNullable<Ruling['disqualified']>;

/** What stays on record of a disqualification that is lifted, in words. */
export function liftedText(disqualified: Disqualified, lifted: Disqualified): string {
  return `Disqualified on ${disqualified.date} by ${disqualified.by}: ${sentence(disqualified.reason)} Lifted on ${lifted.date} by ${lifted.by}: ${sentence(lifted.reason)}`;
}

function sentence(text: string): string {
  return /[.!?]$/.test(text) ? text : `${text}.`;
}
