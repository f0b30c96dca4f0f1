import { type ComparedAircraft, type ComparedNumber, isThere, type Shown } from '../../compare/aircraft.ts';
import {
  factorOf,
  type LogRatio,
  partNames,
  splitTimes,
  type TimeNumbers,
  type TimeSplit,
  timeNumbers,
} from '../../compare/time-ratio.ts';
import { weigh } from '../../compare/why.ts';
import { compare as say } from '../../words/compare.ts';
import { type Html, html } from './html.ts';
import { both, ledger, type Place, plainNumber, toldFactor } from './parts.ts';

/** Why the longest flight was longer than each of the others, in numbers and in sentences. */
export function whyLonger(aircraft: readonly ComparedAircraft[], on: Place): Html {
  const told = aircraft.map((one) => ({ one, numbers: timeNumbers(one.flown) }));
  const missing = told.flatMap(({ one, numbers }) =>
    'absent' in numbers ? [html`<p>${say.noSplit(one.name, numbers.absent)}</p>`] : [],
  );
  const known = told
    .flatMap(({ one, numbers }) => ('absent' in numbers ? [] : [{ one, numbers }]))
    .toSorted((a, b) => b.numbers.time.value - a.numbers.time.value);
  const [longest, ...others] = known;
  const pairs =
    longest === undefined ? [] : others.map((other) => pair(longest, other, others.length > 1, on));
  const heading = longest === undefined || pairs.length === 0 ? say.whyNot : say.why(longest.one.name);
  return html`<h3>${heading}</h3>${pairs}${missing}`;
}

interface Known {
  readonly one: ComparedAircraft;
  readonly numbers: TimeNumbers;
}

function pair(longer: Known, shorter: Known, several: boolean, on: Place): Html {
  const split = splitTimes(longer.numbers, shorter.numbers);
  const title = several ? html`<h4>${say.whyAgainst(longer.one.name, shorter.one.name)}</h4>` : null;
  if (split === null) return html`${title}<p>${say.notPositive}</p>`;
  return html`${title}<p class="verdict">${sentences(longer.one, shorter.one, split).join(' ')}</p>${table(longer.one, shorter.one, split, on)}`;
}

/** What the split says, in sentences; nothing that its uncertainty does not bear. */
export function sentences(
  longer: Pick<ComparedAircraft, 'name' | 'flown'>,
  shorter: Pick<ComparedAircraft, 'name' | 'flown'>,
  split: TimeSplit,
): string[] {
  const times = [longer.flown.told, shorter.flown.told] as const;
  const { differs, longer: forIt, shorter: against, alike, most, largest } = weigh(split);
  if (!differs) return [say.sameTime(longer.name, shorter.name, times)];
  const rest = forIt.filter((name) => name !== most);
  return [
    say.ratio(longer.name, shorter.name, toldFactor(factorOf(split.total).value), times),
    ...(most === null ? [] : [say.most(most, toldFactor(factorOf(split.parts[most]).value))]),
    ...(rest.length === 0 ? [] : [say.longer(rest, most !== null)]),
    ...(against.length === 0 ? [] : [say.shorter(against)]),
    ...(forIt.length + against.length === 0
      ? [say.nothingClear(largest)]
      : alike.length === 0
        ? []
        : [say.alike(alike)]),
    ...([...forIt, ...against].includes('use') ? [say.useIsTheRest] : []),
  ];
}

function table(longer: ComparedAircraft, shorter: ComparedAircraft, split: TimeSplit, on: Place): Html {
  const rows = [
    ...partNames.map((name) => ({ title: say.partTitle(name), of: name, ratio: split.parts[name] })),
    { title: say.timeTitle, of: 'time' as const, ratio: split.total },
  ];
  const reach = Math.max(...rows.map(({ ratio }) => Math.abs(ratio.ln) + ratio.u));
  const head = html`<tr><th scope="col">${say.part}</th><th scope="col" class="number">${longer.name}</th><th scope="col" class="number">${shorter.name}</th><th scope="col" class="number">${say.makesTime}</th><th scope="col" class="number">${say.inLogs}</th></tr>`;
  return ledger(
    on,
    say.splitTable(longer.name, shorter.name),
    'compare split',
    head,
    rows.map(({ title, of, ratio }) => {
      const value = (aircraft: ComparedAircraft) =>
        html`<td class="number" data-of="${aircraft.name}">${both(shownOf(aircraft.flown[of]))}</td>`;
      return html`<tr class="${of === 'time' ? 'whole' : 'share'}"><th scope="row">${title}</th>${value(longer)}${value(shorter)}<td class="number" data-of="${say.makesTime}">${say.times(plainNumber(factorOf(ratio)))}</td><td class="number" data-of="${say.inLogs}">${plainNumber({ value: ratio.ln, u: ratio.u })}${bar(ratio, reach)}</td></tr>`;
    }),
  );
}

/** The logarithm as a bar from the middle, with its ± as a line; the number stands beside it. */
function bar({ ln, u }: LogRatio, reach: number): Html {
  if (!(reach > 0)) return html``;
  const at = (value: number) => Math.round(((value / reach) * 49 + 50) * 10) / 10;
  const [from, to] = [Math.min(at(0), at(ln)), Math.max(at(0), at(ln))];
  return html`<svg class="log-bar" viewBox="0 0 100 12" preserveAspectRatio="none" aria-hidden="true"><rect x="${from}" y="2" width="${Math.round((to - from) * 10) / 10}" height="8"/><path class="spread" d="M${at(ln - u)} 6H${at(ln + u)}"/><path class="zero" d="M50 0V12"/></svg>`;
}

function shownOf(number: ComparedNumber): Shown {
  return isThere(number) ? number.shown : { metric: '–', imperial: '–' };
}
