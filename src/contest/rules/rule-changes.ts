import type { Challenge, Condition, Division, Limit, Round, TieBreak } from '../../model/challenge.ts';
import { significant } from '../../quantities/decimal.ts';

/** One rule that differs: the field as the file of the challenge names it, and what it said, in words. */
export interface RuleChange {
  readonly field: string;
  readonly before: string;
  readonly after: string;
}

const none = 'none';
const secondsOfDay = 86_400;

/**
 * What differs between the rules of a challenge then and now, field by field in a fixed order; empty where they are the
 * same. A rule is whatever can change a status, a time, a score, a place, a division, a list that names who reached
 * something, or a date somebody relies on. No rule, and so never among them: title, text, the names of the target, of
 * milestones and of divisions, former addresses, and amendments, which tell of changes and are none.
 */
export function ruleChanges(before: Challenge, after: Challenge): readonly RuleChange[] {
  const [then, now] = [rulesInWords(before), rulesInWords(after)];
  return [...new Set([...then.keys(), ...now.keys()])].flatMap((field) => {
    const [old, fresh] = [then.get(field) ?? none, now.get(field) ?? none];
    return old === fresh ? [] : [{ field, before: old, after: fresh }];
  });
}

/** Every rule in words, by the name of its field; what is not there is left out or says `none`. */
function rulesInWords(challenge: Challenge): ReadonlyMap<string, string> {
  const { flying, timing, scoring, protests, target } = challenge;
  return new Map<string, string>([
    ['opens', challenge.opens],
    ['closes', challenge.closes],
    ['report-by', challenge.reportBy ?? none],
    ['final', challenge.final ?? none],
    ['time-zone', challenge.timeZone ?? none],
    ['target.time', seconds(target === null ? null : target.time)],
    ['milestones', list(challenge.milestones.map(({ time }) => seconds(time)))],
    ...challenge.eligibility.map((one) => [`eligibility.${nameOf(one)}`, conditionInWords(one)] as const),
    ['flying.launch', flying.launch === null ? none : list([...flying.launch].sort())],
    ['flying.launch-height', limit(flying.launchHeight)],
    ['flying.drop', limit(flying.drop)],
    ['flying.release', flying.release ?? none],
    ['flying.attempt-below', seconds(flying.attemptBelow)],
    ['flying.maximum', seconds(flying.maximum)],
    ['flying.flights-per-day', count(flying.flightsPerDay)],
    ['flying.flights', count(flying.flights)],
    ['flying.timekeepers', `${flying.timekeepers.atLeast}${flying.timekeepers.orVideo ? ' or video' : ''}`],
    ['flying.evidence.links', String(flying.evidence.links)],
    ['flying.evidence.shows', list([...flying.evidence.shows].sort())],
    ['timing.starts', timing.starts],
    ['timing.stops.touchdown', timing.stops.touchdown ? 'yes' : 'no'],
    ['timing.stops.out-of-sight', seconds(timing.stops.outOfSight)],
    ['timing.combine', timing.combine],
    ['timing.resolution', `${timing.resolution} s`],
    ['timing.round', timing.round],
    ['timing.uncertainty.watch', seconds(timing.uncertainty.watch)],
    ['timing.uncertainty.video', seconds(timing.uncertainty.video)],
    ['scoring.method', scoring.method],
    ['scoring.flights', String(scoring.flights)],
    ['scoring.scale', scaleInWords(scoring.scale)],
    ['scoring.provisional', scoring.provisional],
    [
      'tie-break',
      challenge.tieBreaks.length === 0 ? none : challenge.tieBreaks.map(stepInWords).join(', then '),
    ],
    ...challenge.divisions.map((one) => [`divisions.${one.id}`, divisionInWords(one)] as const),
    ...challenge.rounds.map((one) => [`rounds.${one.id}`, roundInWords(one)] as const),
    ['protests', protests === null ? none : `${significant(protests / secondsOfDay)} days`],
  ]);
}

function seconds(value: number | null): string {
  return value === null ? none : `${significant(value)} s`;
}

function count(value: number | null): string {
  return value === null ? none : String(value);
}

function limit(value: Limit | null): string {
  return value === null ? none : value.written;
}

function list(items: readonly string[]): string {
  return items.length === 0 ? none : items.join(', ');
}

function nameOf(condition: Condition): string {
  return condition.kind === 'fact' ? condition.fact : condition.figure;
}

function conditionInWords(condition: Condition): string {
  if (condition.kind === 'figure') return condition.limit.written;
  return condition.allowed.length === 0 ? 'nothing' : [...condition.allowed].sort().join(', ');
}

function divisionInWords({ conditions }: Division): string {
  if (conditions.length === 0) return 'everybody';
  return conditions
    .map((one) => `${nameOf(one)} ${conditionInWords(one)}`)
    .sort()
    .join('; ');
}

function roundInWords({ maximum, flyOff, from, to }: Round): string {
  return [
    `maximum ${seconds(maximum)}`,
    ...(flyOff ? ['fly-off'] : []),
    ...(from === null ? [] : [`from ${from}`]),
    ...(to === null ? [] : [`to ${to}`]),
  ].join(', ');
}

function scaleInWords(scale: Challenge['scoring']['scale']): string {
  if (scale === null) return none;
  return `by ${scale.by}, reference ${significant(scale.reference, 6)} in SI units, power ${significant(scale.power, 6)}`;
}

function stepInWords(step: TieBreak): string {
  return step.kind === 'figure' ? `${step.prefers} ${step.figure}` : step.kind.replaceAll('-', ' ');
}
