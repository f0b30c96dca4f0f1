import { protestsUntil } from '../contest/rules/deadlines.ts';
import { nameOfFigure } from '../contest/rules/name-of-figure.ts';
import { figureDefinition } from '../figures/registry.ts';
import { kindOfFigure } from '../figures/unit-kind.ts';
import type { Challenge, Condition, FlyingRules, Limit, TieBreak } from '../model/challenge.ts';
import { words } from '../words.ts';
import { measureOf, plainIn, timeText } from './measure.ts';
import { raised } from './number-text.ts';
import { unitsOfFigure } from './units-shown.ts';

const say = words.rules;

/** One part of the rules: a heading and sentences. */
export interface RuleSection {
  readonly id: string;
  readonly title: string;
  readonly sentences: readonly string[];
  /** Where the order of the sentences is part of the rule. */
  readonly ordered: boolean;
}

type System = 'metric' | 'imperial';

/**
 * The rules in plain sentences, every one written from the rules as data. Limits stand in the units the organiser
 * wrote; what has none of its own stands in the system given.
 */
export function ruleSections(challenge: Challenge, system: System): RuleSection[] {
  const parts: [keyof typeof say.sections, readonly string[], boolean?][] = [
    ['dates', dates(challenge)],
    ['target', target(challenge)],
    ['eligibility', eligibility(challenge)],
    ['flying', flying(challenge)],
    ['timing', timing(challenge)],
    ['scoring', scoring(challenge, system)],
    ['rounds', rounds(challenge)],
    ['tieBreaks', tieBreaks(challenge), challenge.tieBreaks.length > 0],
    ['divisions', divisions(challenge)],
    ['evidence', evidence(challenge)],
    ['protests', protests(challenge)],
  ];
  return parts
    .filter(([, sentences]) => sentences.length > 0)
    .map(([id, sentences, ordered]) => ({
      id: id.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`),
      title: say.sections[id],
      sentences,
      ordered: ordered === true,
    }));
}

/** What a flight needs so that it can count: what whoever writes one down has to think of. */
export function flightSentences(challenge: Challenge): string[] {
  return [
    ...whenFlown(challenge),
    ...(challenge.rounds.length === 0 ? [] : [say.namesRound(challenge.rounds.map(({ id }) => id))]),
    ...evidenceNeeded(challenge.flying),
    ...timekeepersNeeded(challenge.flying),
    ...flightLimits(challenge.flying),
  ];
}

/** The name of a figure as pages say it; its id where it has none. */
export function figureName(id: string): string {
  return figureDefinition(id)?.name ?? id;
}

function whenFlown(challenge: Challenge): string[] {
  return [
    say.dates(challenge.opens, challenge.closes),
    ...(challenge.reportBy === null ? [] : [say.reportBy(challenge.reportBy)]),
  ];
}

function dates(challenge: Challenge): string[] {
  return [
    ...whenFlown(challenge),
    ...(challenge.final === null ? [] : [say.final(challenge.final)]),
    ...(challenge.timeZone === null ? [] : [say.timeZone(challenge.timeZone)]),
  ];
}

function target(challenge: Challenge): string[] {
  const { target: goal, milestones } = challenge;
  const first =
    goal === null
      ? []
      : [
          goal.label === null
            ? say.target(timeText(goal.time))
            : say.targetNamed(timeText(goal.time), goal.label),
        ];
  return [
    ...first,
    ...milestones.map((milestone) => say.milestone(timeText(milestone.time), milestone.label)),
  ];
}

function eligibility(challenge: Challenge): string[] {
  if (challenge.eligibility.length === 0) return [say.anyAircraft];
  return [...challenge.eligibility.map(conditionSentence), ...endsOf(limitsOf(challenge.eligibility))];
}

function limitsOf(conditions: readonly Condition[]): Limit[] {
  return conditions.flatMap((condition) => (condition.kind === 'figure' ? [condition.limit] : []));
}

/** What the words of these limits do with their ends; nothing where there are none. */
function endsOf(limits: readonly (Limit | null)[]): string[] {
  const forms = new Map<string, boolean>();
  for (const limit of limits) {
    if (limit === null) continue;
    const { low, high } = limit;
    if (low !== null && high !== null) forms.set('to', true);
    else if (low !== null) forms.set(low.included ? 'at least' : 'more than', low.included);
    else if (high !== null) forms.set(high.included ? 'at most' : 'less than', high.included);
  }
  const saying = (included: boolean) =>
    [...forms].filter(([, one]) => one === included).map(([form]) => form);
  return forms.size === 0 ? [] : [say.limitsExact(saying(true), saying(false))];
}

/** A condition of eligibility or of a division, as a sentence. */
export function conditionSentence(condition: Condition): string {
  if (condition.kind === 'figure')
    return say.figure(figureName(condition.figure), raised(condition.limit.written));
  if (condition.fact === 'junior') return say.junior(condition.allowed.includes('true'));
  const known: Readonly<Record<string, string>> = {
    ...words.control,
    ...words.onboard,
    ...words.layout,
    ...words.origin,
  };
  const allowed = condition.allowed.map((value) => known[value] ?? value);
  return condition.fact === 'onboard' ? say.onboard(allowed) : say.fact(words.fact[condition.fact], allowed);
}

function flying(challenge: Challenge): string[] {
  const sentences = flightLimits(challenge.flying);
  return sentences.length === 0 ? [say.noFlying] : sentences;
}

function flightLimits(rules: FlyingRules): string[] {
  return [
    rules.launch === null ? null : say.launch(rules.launch.map((way) => words.launch[way])),
    rules.launchHeight === null ? null : say.launchHeight(raised(rules.launchHeight.written)),
    rules.drop === null ? null : say.drop(raised(rules.drop.written)),
    rules.release === null ? null : rules.release === 'together' ? say.together : say.staged,
    rules.attemptBelow === null ? null : say.attempt(timeText(rules.attemptBelow)),
    rules.maximum === null ? null : say.maximum(timeText(rules.maximum)),
    rules.flightsPerDay === null ? null : say.perDay(rules.flightsPerDay),
    rules.flights === null ? null : say.allowance(rules.flights),
    ...endsOf([rules.launchHeight, rules.drop]),
  ].filter((sentence) => sentence !== null);
}

function timekeepersNeeded({ timekeepers: { atLeast, orVideo } }: FlyingRules): string[] {
  if (atLeast === 0) return [];
  return [orVideo ? say.timekeepersOrVideo(atLeast) : say.timekeepers(atLeast)];
}

function timing({ timing: rules, flying: flyingRules }: Challenge): string[] {
  return [
    ...timekeepersNeeded(flyingRules),
    rules.starts === 'release' ? say.startsRelease : say.startsGround,
    ...(rules.stops.touchdown ? [say.touchdown] : []),
    ...(rules.stops.outOfSight === null ? [] : [say.outOfSight(timeText(rules.stops.outOfSight))]),
    say.combine[rules.combine],
    say.resolution(`${rules.resolution}\u00a0s`, rules.round),
    say.uncertainty(timeText(rules.uncertainty.watch), timeText(rules.uncertainty.video)),
  ];
}

function scoring({ scoring: rules }: Challenge, system: System): string[] {
  const several = rules.method === 'sum' || rules.method === 'mean';
  return [
    words.board.of(rules.method, rules.flights),
    ...(several ? [say.missing] : []),
    ...(rules.scale === null ? [] : [scaleSentence(rules.scale, system)]),
    rules.provisional === 'apart' ? say.apart : say.ranked,
  ];
}

function scaleSentence(scale: { by: string; reference: number; power: number }, system: System): string {
  const definition = figureDefinition(scale.by);
  const kind = definition === undefined ? 'number' : kindOfFigure(definition);
  const reference = plainIn(measureOf(scale.reference, 0, kind, unitsOfFigure(scale.by, kind)), system);
  return say.scale(nameOfFigure(scale.by), reference, scale.power);
}

function rounds(challenge: Challenge): string[] {
  const lines = challenge.rounds.map((round) =>
    say.round(round.id, timeText(round.maximum), round.flyOff, say.roundDates(round.from, round.to)),
  );
  return challenge.rounds.some((round) => round.flyOff) ? [...lines, say.flyOffs] : lines;
}

function tieBreaks(challenge: Challenge): string[] {
  return challenge.tieBreaks.length === 0 ? [say.noTieBreak] : challenge.tieBreaks.map(tieBreakSentence);
}

function tieBreakSentence(step: TieBreak): string {
  if (step.kind === 'next-best-flight') return say.nextBest;
  if (step.kind === 'earlier-flight') return say.earlier;
  return step.prefers === 'larger'
    ? say.larger(nameOfFigure(step.figure))
    : say.smaller(nameOfFigure(step.figure));
}

function divisions(challenge: Challenge): string[] {
  if (challenge.divisions.length === 0) return [say.noDivisions];
  const lines = challenge.divisions.map((division) => {
    const conditions = division.conditions.map((condition) => conditionSentence(condition));
    return say.division(division.name, conditions);
  });
  return [...lines, ...endsOf(challenge.divisions.flatMap((division) => limitsOf(division.conditions)))];
}

function evidenceNeeded({ evidence: wanted }: FlyingRules): string[] {
  return [
    ...(wanted.links === 0 ? [] : [say.links(wanted.links)]),
    ...(wanted.shows.length === 0 ? [] : [say.shows(wanted.shows.map((what) => say.shown[what] ?? what))]),
  ];
}

function evidence({ flying: rules }: Challenge): string[] {
  const asked = evidenceNeeded(rules);
  return [...(asked.length === 0 ? [say.noEvidence] : asked), say.acceptance];
}

const secondsOfDay = 86_400;

function protests(challenge: Challenge): string[] {
  const { protests: span } = challenge;
  const last = protestsUntil(challenge);
  if (span === null || last === null) return [say.noProtests];
  const days = span / secondsOfDay;
  return [
    say.protests(Number.isInteger(days) ? say.days(days) : timeText(span)),
    say.protestsEnd(last, challenge.reportBy !== null),
  ];
}
