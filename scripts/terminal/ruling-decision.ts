import { sealFlights } from '../../src/almanac/seal-flights.ts';
import { factsAsRuled } from '../../src/contest/verdicts/as-ruled.ts';
import { addInspection, disqualify, reinstate } from '../../src/entries/write/rule-entry.ts';
import { ruleFlight } from '../../src/entries/write/rule-flight.ts';
import type { Decision } from './ruled-file.ts';
import type { Asked, Values } from './ruling-asked.ts';
import { CannotRule, type Subject } from './ruling-subject.ts';
import { liftedText } from './ruling-text.ts';

/** What the arguments ask for, as changes of the file. Throws CannotRule for a flight or a disqualification there is none of. */
export function decisionFor(
  { challenge, entrant }: Subject,
  asked: Asked,
  values: Values,
  { by, date }: { readonly by: string; readonly date: string },
): Decision {
  const { contender, read } = entrant;
  const { entry, ruling } = contender;
  if (asked.is === 'inspect')
    return fieldsOnly(
      addInspection({
        date,
        by,
        span: values.span ?? null,
        'wing-area': values['wing-area'] ?? null,
        airframe: values.airframe ?? null,
        rubber: values.rubber ?? null,
        balance: values.balance ?? null,
      }),
    );
  const already = ruling?.disqualified ?? null;
  const reason = values.reason ?? '';
  if (asked.is === 'disqualify') {
    if (already !== null)
      throw new CannotRule(
        `"${entry.name}" is disqualified already, since ${already.date} by ${already.by}: ${already.reason} To lift that, use \`reinstate\`.`,
      );
    return fieldsOnly(disqualify({ reason, by, date }));
  }
  if (asked.is === 'reinstate') {
    if (already === null)
      throw new CannotRule(`"${entry.name}" is not disqualified: there is nothing to lift.`);
    return { changes: reinstate(), remark: liftedText(already, { reason, by, date }) };
  }
  const flight = entry.flights.find(({ number }) => number === asked.flight);
  const seal = sealFlights(read).get(asked.flight);
  if (flight === undefined || seal === undefined) {
    const has = entry.flights.map(({ number }) => number).join(', ');
    throw new CannotRule(
      `"${entry.name}" has no flight ${asked.flight}; it has ${has === '' ? 'no flights at all' : `the flights ${has}`}.`,
    );
  }
  const verdict = {
    verdict: asked.verdict,
    time: values.time ?? null,
    reason: values.reason ?? null,
    by,
    second: values.second ?? null,
    date,
    received: values.received ?? null,
    seen: values.seen?.split(',').map((word) => word.trim()) ?? null,
    kept: values.kept ?? null,
  };
  return fieldsOnly(
    ruleFlight(ruling, asked.flight, verdict, { seal, facts: factsAsRuled(challenge, contender, flight) }),
  );
}

function fieldsOnly(changes: Decision['changes']): Decision {
  return { changes, remark: null };
}
