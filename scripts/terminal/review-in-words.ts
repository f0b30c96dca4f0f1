import type { Wait } from '../../src/almanac/awaiting/awaiting.ts';
import type { ChangedPlace } from '../../src/almanac/review/changed-places.ts';
import type { Review } from '../../src/almanac/review/review.ts';
import type { Problem } from '../../src/entries/problems/problem.ts';
import { words } from '../../src/words.ts';
import { concernTold } from './review-concerns.ts';
import { entryTold, lines, table, valuesTold } from './review-entry.ts';
import { reviewGist } from './review-gist.ts';
import {
  type ReviewPart,
  type ReviewSection,
  type ReviewTold,
  secondsTold,
  type Telling,
} from './review-told.ts';

const say = words.review;

/** A review in words: what it does, what needs a person, places, and then everything, folded. */
export function reviewInWords(review: Review, telling: Telling): ReviewTold {
  const { most } = telling;
  const shown = review.entries.slice(0, most);
  const left = review.entries.length - shown.length;
  return {
    gist: reviewGist(review, telling.quote),
    sections: [
      section(say.headings.look, false, toLookAt(review, telling)),
      section(say.headings.places, false, places(review, telling)),
      section(say.headings.waits, false, waits(review, telling)),
      section(say.headings.divisions, true, divisions(review, telling)),
      section(say.headings.rules, true, rules(review, telling)),
      ...shown.map((entry) => entryTold(entry, review.handedIn ?? review.now.slice(0, 10), telling)),
      ...(left > 0 ? [section(say.more(left), true, lines(null, namesOf(review, most, telling), most))] : []),
      section(say.headings.files, true, files(review, telling)),
      section(
        say.headings.gone,
        true,
        lines(
          null,
          review.problems.gone.map((one) => problem(one, telling)),
          most,
        ),
      ),
    ].filter(({ parts }) => parts.length > 0),
  };
}

function section(title: string, folded: boolean, parts: readonly ReviewPart[]): ReviewSection {
  return { title, folded, parts };
}

function namesOf({ entries }: Review, from: number, { quote }: Telling): string[] {
  return entries.slice(from).map(({ name, challenge }) => `${quote(name)} (${quote(challenge)})`);
}

/** An acceptance that lapsed stands among the concerns, with what changed. */
const toldAsConcern = 'acceptance-lapsed';

const weight = { error: 0, warning: 1, note: 2 } as const;

function toLookAt({ problems, concerns, entries, files: changed }: Review, telling: Telling): ReviewPart[] {
  const fresh = problems.fresh
    .filter(({ code }) => code !== toldAsConcern)
    .sort((a, b) => weight[a.severity] - weight[b.severity]);
  const errors = fresh.filter(({ severity }) => severity === 'error');
  const others = fresh.filter(({ severity }) => severity !== 'error');
  const all = [
    ...errors.map((one) => problem(one, telling)),
    ...concerns.map((one) => concernTold(one, telling)),
    ...others.map((one) => problem(one, telling)),
  ];
  if (all.length > 0) return lines(null, all, telling.most);
  return entries.length + changed.length === 0
    ? []
    : [{ heading: null, lines: [say.headings.nothingToLook] }];
}

function problem({ file, line, severity, message }: Problem, { quote, sentence }: Telling): string {
  return say.problem(quote(`${file}:${line}`), severity, sentence(message));
}

function places({ places: all }: Review, { quote, most }: Telling): ReviewPart[] {
  return all.flatMap(({ challenge, overall }) =>
    placesTable(say.placesOf(quote(challenge), null), overall, quote, most),
  );
}

function divisions({ places: all }: Review, { quote, most }: Telling): ReviewPart[] {
  return all.flatMap(({ challenge, divisions: some }) =>
    some.flatMap(({ id, changed }) =>
      placesTable(say.placesOf(quote(challenge), quote(id)), changed, quote, most),
    ),
  );
}

function placesTable(
  heading: string,
  changed: readonly ChangedPlace[],
  quote: Telling['quote'],
  most: number,
): ReviewPart[] {
  return table(
    heading,
    [say.columns.aircraft, say.columns.before, say.columns.after, say.columns.score],
    changed.map((one) => placeRow(one, quote)),
    most,
  );
}

function placeRow(
  { name, before, after, scoreBefore, scoreAfter }: ChangedPlace,
  quote: Telling['quote'],
): string[] {
  const place = (one: number | null) => (one === null ? say.noPlace : String(one));
  const score = (one: number | null) => (one === null ? say.none : secondsTold(one));
  const scores =
    scoreBefore === scoreAfter ? score(scoreAfter) : `${score(scoreBefore)} → ${score(scoreAfter)}`;
  return [quote(name), place(before), place(after), scores];
}

function waits({ entries }: Review, { quote, sentence, most }: Telling): ReviewPart[] {
  const all = entries.flatMap(({ name, flights }) =>
    flights.flatMap(({ number, after, waits: open, place, change }) =>
      after === null || place === null || change === 'words' || change === 'judged'
        ? []
        : [
            say.waits(
              quote(name),
              number,
              secondsTold(after.seconds),
              open.map((one) => sentence(words.awaiting.wait(withoutChanges(one)))),
              place,
            ),
          ],
    ),
  );
  return lines(null, all, most);
}

/** What a ruling rests on that changed stands among what to look at. */
function withoutChanges(wait: Wait): Wait {
  return wait.kind === 'new-ruling' ? { ...wait, changes: [] } : wait;
}

function rules({ rules: all }: Review, { quote, most }: Telling): ReviewPart[] {
  return all.flatMap(({ challenge, changes }) =>
    table(
      quote(challenge),
      [say.columns.field, say.columns.before, say.columns.after],
      changes.map(({ field, before, after }) => [quote(field), quote(before), quote(after)]),
      most,
    ),
  );
}

function files({ files: all }: Review, telling: Telling): ReviewPart[] {
  const { quote, most } = telling;
  const told = all.map(
    ({ file, change, text }) => `${quote(file)}: ${say.change[change]}${text ? `, ${say.textChanged}` : ''}`,
  );
  return [
    ...lines(null, told, most),
    ...all
      .filter(({ kind, values }) => values.length > 0 && kind !== 'ruling')
      .slice(0, most)
      .flatMap(({ file, values }) =>
        valuesTold(values, telling).map((part) => ({ ...part, heading: quote(file) })),
      ),
  ];
}
