import type { Almanac } from '../almanac/almanac.ts';
import type { Happening } from '../almanac/happening.ts';
import { words } from '../words.ts';
import { entryLookup } from './board-rows.ts';
import { boardPath, entryPath, newsPath, rulesPath } from './link.ts';
import { secondsAt, timeText } from './measure.ts';

const say = words.feed;

/** A happening in words, with the page that tells more. */
export interface HappeningTold {
  readonly title: string;
  /** Site path, with a fragment where a part of the page is meant. */
  readonly path: string;
  /** Whose doing it was, as pages name people: juniors by handle only. Empty where it was the organiser's. */
  readonly people: readonly string[];
}

/** Tells a happening in words that stay true: no places, which others may take. */
export function happeningTold(almanac: Almanac, happening: Happening): HappeningTold {
  if (happening.kind === 'news')
    return { title: happening.post.title, path: newsPath(happening.post.id), people: [] };
  const { challenge, history } = happening.record;
  if (happening.kind === 'frozen')
    return { title: say.frozen(challenge.title), path: boardPath(challenge.id), people: [] };
  if (happening.kind === 'amended')
    return {
      title: say.amended(challenge.title, happening.amendment.what),
      path: `${rulesPath(challenge.id)}#amendments`,
      people: [],
    };

  const entries = entryLookup(almanac, happening.record);
  if (happening.kind === 'entered') {
    const { entry } = happening;
    return {
      title: say.entered(entries.name(entry), challenge.title),
      path: entryPath(challenge.id, entry),
      people: entries.builders(entry).map(({ name }) => name),
    };
  }

  const flights = happening.kind === 'accepted' ? happening.flights : [happening.flight];
  const longest = flights.reduce((best, flight) => (flight.seconds > best.seconds ? flight : best));
  const { entry, number } = longest;
  const known = entries.record(entry);
  const name = entries.name(entry);
  const time = secondsAt(longest.seconds, challenge.timing.resolution);
  const title = {
    accepted: () => say.accepted(name, time, flights.length),
    'best-time': () => say.bestTime(name, time, challenge.title),
    'target-reached': () => say.targetReached(name, time, targetText(history.target)),
  }[happening.kind]();
  // An aircraft that is being looked at has no flight to lead to.
  const shown = known?.flights.some(({ flight }) => flight.number === number) === true;
  return {
    title,
    path: shown ? `${entryPath(challenge.id, entry)}#flight-${number}` : boardPath(challenge.id),
    people: entries.builders(entry).map(({ name: person }) => person),
  };
}

function targetText(target: { readonly time: number; readonly label: string | null } | null): string {
  if (target === null) return '';
  return target.label === null ? timeText(target.time) : `${timeText(target.time)} (${target.label})`;
}
