import type { FlightRuling, Inspection, RuledValue, Ruling } from '../../model/ruling.ts';
import { withOrigin } from '../../quantities/make.ts';
import { parseQuantity } from '../../quantities/parse.ts';
import type { Quantity } from '../../quantities/quantity.ts';
import { checkFlightsRuledOnce } from '../check/flights-ruled-once.ts';
import { checkReasonsGiven } from '../check/reasons-given.ts';
import { checkSecondIsAnother } from '../check/second-is-another.ts';
import { ofRefusal } from '../problems/issues-to-problems.ts';
import type { Problem } from '../problems/problem.ts';
import { factKeys } from '../schema/conditions.ts';
import type { Reading } from '../schema/leaf.ts';
import { type RulingFields, ruling as schema } from '../schema/ruling.ts';
import type { Path, SourceDocument } from '../source/source.ts';
import { readFields } from './draft.ts';
import { readFigure } from './rule-words.ts';

/** What the organiser's decisions about one entry mean. Null where anything is wrong with the file. */
export function understandRuling(
  source: SourceDocument,
  { challenge, entry }: { readonly challenge: string; readonly entry: string },
): { readonly ruling: Ruling | null; readonly problems: readonly Problem[] } {
  const { complete, draft, problems } = readFields(source, schema);
  const asRuled = (draft.flights ?? []).map((flight, index) =>
    readAsRuled(source, ['flights', index, 'as-ruled'], flight?.['as-ruled'] ?? {}),
  );
  const all = [
    ...problems,
    ...asRuled.flatMap((read) => read.problems),
    ...checkFlightsRuledOnce(draft, source),
    ...checkReasonsGiven(draft, source),
    ...checkSecondIsAnother(draft, source),
  ];
  if (complete === null || all.some(({ severity }) => severity === 'error'))
    return { ruling: null, problems: all };
  const ruling: Ruling = {
    challenge,
    entry,
    inspections: (complete.inspected ?? []).map(toInspection),
    flights: (complete.flights ?? []).map((flight, index) =>
      toFlightRuling(flight, asRuled[index]?.values ?? {}),
    ),
    disqualified: complete.disqualified ?? null,
    body: source.body,
  };
  return { ruling, problems: all };
}

function toInspection(fields: NonNullable<RulingFields['inspected']>[number]): Inspection {
  const inspected = (quantity: Quantity | undefined) =>
    quantity === undefined ? null : withOrigin(quantity, 'inspected');
  return {
    date: fields.date,
    by: fields.by,
    span: inspected(fields.span),
    wingArea: inspected(fields['wing-area']),
    airframe: inspected(fields.airframe),
    rubber: inspected(fields.rubber),
    balance: inspected(fields.balance),
  };
}

function toFlightRuling(
  fields: NonNullable<RulingFields['flights']>[number],
  asRuled: Readonly<Record<string, RuledValue>>,
): FlightRuling {
  return {
    flight: fields.flight,
    verdict: fields.verdict,
    by: fields.by,
    date: fields.date,
    second: fields.second ?? null,
    received: fields.received ?? null,
    reason: fields.reason ?? null,
    time: fields.time?.value ?? null,
    seen: fields.seen ?? [],
    kept: fields.kept ?? null,
    seal: fields.seal ?? null,
    asRuled,
    earlier: (fields.earlier ?? []).map(({ verdict, by, date, reason }) => ({
      verdict,
      by: by ?? null,
      date: date ?? null,
      reason: reason ?? null,
    })),
  };
}

type Written = string | readonly (string | null)[] | null | undefined;

/** Facts as they are written, figures in SI. */
function readAsRuled(
  source: SourceDocument,
  path: Path,
  written: Readonly<Record<string, Written>>,
): { readonly values: Readonly<Record<string, RuledValue>>; readonly problems: readonly Problem[] } {
  const values: Record<string, RuledValue> = {};
  const problems: Problem[] = [];
  for (const [key, value] of Object.entries(written)) {
    if (value === null || value === undefined) continue;
    const at = [...path, key];
    if (key === 'onboard') values[key] = [value].flat().filter((item) => item !== null);
    else if (key === 'junior') values[key] = value === 'true';
    else if (facts.has(key)) values[key] = typeof value === 'string' ? value : '';
    else {
      const figure = readFigure(key);
      if (!figure.ok) {
        problems.push(ofRefusal(source, at, figure.fault, 'key'));
        continue;
      }
      const numbers = [value].flat().map((text, index): number => {
        const place = typeof value === 'string' ? at : [...at, index];
        const parsed: Reading<Quantity> = parseQuantity(text ?? '', figure.value.kind, { negative: true });
        if (parsed.ok) return parsed.value.value;
        problems.push(ofRefusal(source, place, parsed.fault));
        return 0;
      });
      values[key] = typeof value === 'string' ? (numbers[0] ?? 0) : numbers;
    }
  }
  return { values, problems };
}

const facts: ReadonlySet<string> = new Set(['setup', ...factKeys]);
