import type { Challenge } from '../../model/challenge.ts';
import type { Flight, Setup } from '../../model/entry.ts';
import type { FlightRuling, Inspection, RuledValue } from '../../model/ruling.ts';
import type { Contender } from '../contender.ts';
import { figuresForLimits } from '../rules/figures-for-limits.ts';
import { setupOfFlight } from '../rules/setup-of-flight.ts';
import type { Stale } from '../standing.ts';
import { valueAsRuled } from './as-ruled.ts';
import { changeInWords } from './change-in-words.ts';
import { fitsAsRuled } from './fits-as-ruled.ts';
import { sameAnswers } from './same-answers.ts';

/**
 * What a ruling rests on that is no longer so: the flight's seal, and each fact or figure the ruling wrote down. Empty
 * where the ruling fits. A ruling without a seal never fits, since nothing tells whether the flight was edited after
 * it: whoever rules by hand must write the seal too. What the ruling did not write down is not compared. A figure that
 * only an inspection moved still fits while every limit and division answers the same.
 */
export function staleOf(
  challenge: Challenge,
  contender: Contender,
  flight: Flight,
  ruling: FlightRuling,
): readonly Stale[] {
  const setup = setupOfFlight(contender.entry, flight);
  const figures = figuresForLimits(contender, flight, setup.id);
  const stale: Stale[] = [];
  const seal = contender.seals.get(flight.number) ?? 'none';
  if (ruling.seal === null || ruling.seal !== seal)
    stale.push({ what: 'seal', ruled: ruling.seal ?? 'none', now: seal });
  const moved: [string, RuledValue][] = [];
  for (const [id, ruled] of Object.entries(ruling.asRuled)) {
    const now =
      id === 'setup' ? (setup.id ?? 'none') : valueAsRuled(id, setup.design, contender.junior, figures);
    if (fitsAsRuled(ruled, now)) continue;
    if (isFigure(ruled) && now !== null) moved.push([id, ruled]);
    else stale.push(changeInWords(challenge, id, ruled, now, figures));
  }
  const byInspection = moved.length > 0 && onlyInspected(contender, flight, setup, moved);
  for (const [id, ruled] of moved) {
    if (byInspection && sameAnswers(challenge, id, ruled, figures)) continue;
    const now = valueAsRuled(id, setup.design, contender.junior, figures);
    stale.push(changeInWords(challenge, id, ruled, now, figures));
  }
  return stale;
}

function isFigure(value: RuledValue): boolean {
  return typeof value === 'number' || (Array.isArray(value) && typeof value[0] === 'number');
}

/**
 * True where the figures were just as ruled before some of the inspections: then nobody but the officials moved them.
 * They are tried away from the last to the first, in the order of their dates.
 */
function onlyInspected(
  contender: Contender,
  flight: Flight,
  setup: Setup,
  moved: readonly (readonly [string, RuledValue])[],
): boolean {
  const inspections = inOrder(contender.ruling?.inspections ?? []);
  for (let known = inspections.length - 1; known >= 0; known--) {
    const then = contender.figuresAtFlight(flight, setup.id, inspections.slice(0, known));
    const fits = moved.every(([id, ruled]) =>
      fitsAsRuled(ruled, valueAsRuled(id, setup.design, contender.junior, then)),
    );
    if (fits) return true;
  }
  return false;
}

function inOrder(inspections: readonly Inspection[]): readonly Inspection[] {
  return [...inspections].sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
}
