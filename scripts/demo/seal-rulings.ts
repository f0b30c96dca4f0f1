import { isMap, isSeq, parseDocument, type YAMLMap } from 'yaml';
import { figureDefinition } from '../../src/figures/registry.ts';
import { kindOfFigure } from '../../src/figures/unit-kind.ts';
import type { RuledValue } from '../../src/model/ruling.ts';
import { formatQuantity } from '../../src/quantities/format.ts';

/** What a ruling writes down about the flight it accepts. */
export interface RuledOn {
  readonly seal: string;
  readonly facts: Readonly<Record<string, RuledValue>>;
}

/**
 * The text of a ruling file with seal and as-ruled facts written into every acceptance, in place of those it may have;
 * everything else stays as the organiser wrote it. A flight for which `ruledOn` knows nothing is left alone.
 */
export function sealRulings(text: string, ruledOn: (flight: number) => RuledOn | null): string {
  const [, frontMatter = '', body = ''] = /^---\n([\s\S]*?)^---\n([\s\S]*)$/m.exec(text) ?? [];
  // In the failsafe schema every value stays the text it is, so that nothing is rewritten that was not asked for.
  const document = parseDocument(frontMatter, { schema: 'failsafe' });
  const flights = document.get('flights');
  if (!isSeq(flights)) return text;
  for (const item of flights.items) {
    if (!isMap(item) || item.get('verdict') !== 'accepted') continue;
    const known = ruledOn(Number(item.get('flight')));
    if (known === null) continue;
    item.set('seal', known.seal);
    const facts: YAMLMap = document.createNode(
      Object.fromEntries(Object.entries(known.facts).map(([id, value]) => [id, written(id, value)])),
      { flow: true },
    ) as YAMLMap;
    item.set('as-ruled', facts);
  }
  return `---\n${document.toString({ lineWidth: 0, flowCollectionPadding: true })}---\n${body}`;
}

/** A fact as its word or words, a figure in its SI unit to six digits: far closer than the 0.1 % it is held to. */
function written(id: string, value: RuledValue): string | string[] {
  if (typeof value === 'number') return figure(id, value);
  if (typeof value === 'object')
    return value.map((item) => (typeof item === 'number' ? figure(id, item) : String(item)));
  return String(value);
}

function figure(id: string, value: number): string {
  const definition = figureDefinition(id);
  if (definition === undefined) throw new Error(`There is no figure ${id} to write into a ruling.`);
  return formatQuantity(Number(value.toPrecision(6)), kindOfFigure(definition), definition.unit);
}
