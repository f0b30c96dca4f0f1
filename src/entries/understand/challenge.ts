import type {
  Challenge,
  Condition,
  FlyingRules,
  Limit,
  Scoring,
  TieBreak,
  TimingRules,
} from '../../model/challenge.ts';
import { significant } from '../../quantities/decimal.ts';
import { parseQuantity } from '../../quantities/parse.ts';
import type { Kind, Quantity } from '../../quantities/quantity.ts';
import { handWatch } from '../../timing/hand-watch.ts';
import type { ChallengeDraft, ChallengeFields } from '../check/challenge-check.ts';
import { challengeChecks } from '../check/challenge-checks.ts';
import { ofRefusal } from '../problems/issues-to-problems.ts';
import type { Problem } from '../problems/problem.ts';
import { challenge as schema } from '../schema/challenge.ts';
import { type Reading, refused } from '../schema/leaf.ts';
import type { Path, SourceDocument } from '../source/source.ts';
import { understandConditions } from './conditions.ts';
import { readFields } from './draft.ts';
import { readFigure, readLimit, readTieBreak } from './rule-words.ts';

/**
 * What the rules of a challenge mean, in SI, with every default filled in. Null where anything is wrong with them; every
 * mistake of the file is among the problems.
 */
export function understandChallenge(
  source: SourceDocument,
  { id }: { readonly id: string },
): { readonly challenge: Challenge | null; readonly problems: readonly Problem[] } {
  const { complete, draft, problems } = readFields(source, schema);
  const rules = readRules(source, draft);
  const all = [...problems, ...rules.problems, ...challengeChecks.flatMap((check) => check(draft, source))];
  if (complete === null || all.some(({ severity }) => severity === 'error'))
    return { challenge: null, problems: all };
  return { challenge: toChallenge(complete, rules, source, id), problems: all };
}

/** The rules that are written as sentences or name figures. */
interface Rules {
  readonly eligibility: readonly Condition[];
  readonly divisions: readonly (readonly Condition[])[];
  readonly tieBreaks: readonly TieBreak[];
  readonly launchHeight: Limit | null;
  readonly drop: Limit | null;
  readonly scaleReference: number;
  readonly resolution: string;
  readonly problems: readonly Problem[];
}

function readRules(source: SourceDocument, draft: ChallengeDraft): Rules {
  const problems: Problem[] = [];
  const read = <T>(path: Path, reading: Reading<T>): T | null => {
    if (reading.ok) return reading.value;
    problems.push(ofRefusal(source, path, reading.fault));
    return null;
  };
  const conditions = (path: Path, fields: Readonly<Record<string, unknown>>) => {
    const understood = understandConditions(source, path, fields);
    problems.push(...understood.problems);
    return understood.conditions;
  };
  const limit = (key: 'launch-height' | 'drop') => {
    const sentence = draft.flying?.[key];
    return sentence === undefined ? null : read(['flying', key], readLimit(sentence, 'length'));
  };
  const resolution = draft.timing?.resolution;
  const scale = draft.scoring?.scale;
  return {
    eligibility: draft.eligibility === undefined ? [] : conditions(['eligibility'], draft.eligibility),
    divisions: (draft.divisions ?? []).map((division, index) =>
      division === null ? [] : conditions(['divisions', index], division),
    ),
    tieBreaks: (draft['tie-break'] ?? []).flatMap((step, index) =>
      step === null ? [] : (read(['tie-break', index], readTieBreak(step)) ?? []),
    ),
    launchHeight: limit('launch-height'),
    drop: limit('drop'),
    scaleReference: scale?.by === undefined ? 1 : readScale(scale.by, scale.reference, read),
    resolution:
      resolution === undefined
        ? defaults.resolution
        : (read(['timing', 'resolution'], readResolution(resolution)) ?? defaults.resolution),
    problems,
  };
}

function readScale(
  by: string,
  reference: string | undefined,
  read: <T>(path: Path, reading: Reading<T>) => T | null,
): number {
  const figure = read(['scoring', 'scale', 'by'], readFigure(by));
  if (figure === null || reference === undefined) return 1;
  return read(['scoring', 'scale', 'reference'], readReference(reference, figure.kind)) ?? 1;
}

function readReference(text: string, kind: Kind): Reading<number> {
  const parsed = parseQuantity(text, kind);
  if (!parsed.ok) return parsed;
  if (parsed.value.value > 0) return { ok: true, value: parsed.value.value };
  return refused('impossible-value', `"${text}" is not above zero.`, text, 'a value above zero');
}

/** The step of rounding as exact decimal text, in seconds. */
function readResolution(resolution: Quantity): Reading<string> {
  const seconds = significant(resolution.value);
  if (seconds >= 0.001 && seconds <= 60 && Number.isInteger(significant(seconds * 1000)))
    return { ok: true, value: String(seconds) };
  return refused(
    'impossible-value',
    `"${resolution.written}" is no step to which times are rounded.`,
    resolution.written,
    'a step of 0.001 s to 60 s in whole milliseconds, such as 0.1 s',
  );
}

/** What holds where the challenge says nothing. */
const defaults = {
  starts: 'release',
  combine: 'mean',
  resolution: '0.1',
  round: 'down',
  watch: handWatch,
  video: 0.05,
  method: 'best',
  flights: 3,
  provisional: 'apart',
} as const;

function toChallenge(fields: ChallengeFields, rules: Rules, source: SourceDocument, id: string): Challenge {
  return {
    id,
    title: fields.title,
    opens: fields.opens,
    closes: fields.closes,
    reportBy: fields['report-by'] ?? null,
    final: fields.final ?? null,
    timeZone: fields['time-zone'] ?? null,
    target:
      fields.target === undefined
        ? null
        : { time: fields.target.time.value, label: fields.target.label ?? null },
    milestones: (fields.milestones ?? []).map(({ time, label }) => ({ time: time.value, label })),
    eligibility: rules.eligibility,
    flying: flyingRules(fields.flying ?? {}, rules),
    timing: timingRules(fields.timing ?? {}, rules),
    scoring: scoring(fields.scoring ?? {}, rules),
    tieBreaks: rules.tieBreaks,
    divisions: (fields.divisions ?? []).map((division, index) => ({
      id: division.id,
      name: division.name,
      conditions: rules.divisions[index] ?? [],
    })),
    rounds: (fields.rounds ?? []).map((round) => ({
      id: round.id,
      maximum: round.maximum.value,
      flyOff: round['fly-off'] ?? false,
      from: round.from ?? null,
      to: round.to ?? null,
    })),
    protests: fields.protests?.value ?? null,
    amendments: (fields.amendments ?? []).map(({ date, what, why }) => ({ date, what, why: why ?? null })),
    formerly: fields.formerly ?? [],
    body: source.body,
  };
}

function flyingRules(fields: NonNullable<ChallengeFields['flying']>, rules: Rules): FlyingRules {
  return {
    launch: fields.launch ?? null,
    launchHeight: rules.launchHeight,
    drop: rules.drop,
    release: fields.release ?? null,
    attemptBelow: fields['attempt-below']?.value ?? null,
    maximum: fields.maximum?.value ?? null,
    flightsPerDay: fields['flights-per-day'] ?? null,
    flights: fields.flights ?? null,
    timekeepers: fields.timekeepers ?? { atLeast: 0, orVideo: false },
    evidence: { links: fields.evidence?.links ?? 0, shows: fields.evidence?.shows ?? [] },
  };
}

function timingRules(fields: NonNullable<ChallengeFields['timing']>, rules: Rules): TimingRules {
  return {
    starts: fields.starts ?? defaults.starts,
    stops: {
      touchdown: fields.stops?.touchdown ?? true,
      outOfSight: fields.stops?.['out-of-sight']?.value ?? null,
    },
    combine: fields.combine ?? defaults.combine,
    resolution: rules.resolution,
    round: fields.round ?? defaults.round,
    uncertainty: {
      watch: fields.uncertainty?.watch?.value ?? defaults.watch,
      video: fields.uncertainty?.video?.value ?? defaults.video,
    },
  };
}

function scoring(fields: NonNullable<ChallengeFields['scoring']>, rules: Rules): Scoring {
  const { scale } = fields;
  return {
    method: fields.method ?? defaults.method,
    flights: fields.flights ?? defaults.flights,
    scale: scale === undefined ? null : { by: scale.by, reference: rules.scaleReference, power: scale.power },
    provisional: fields.provisional ?? defaults.provisional,
  };
}
