import { isMap, isNode, isSeq, parseDocument, type YAMLMap } from 'yaml';
import { figureDefinition } from '../../src/figures/registry.ts';
import { kindOfFigure } from '../../src/figures/unit-kind.ts';
import type { RuledValue } from '../../src/model/ruling.ts';
import { formatQuantity } from '../../src/quantities/format.ts';

/** What a ruling writes down about the flight it accepts. */
export interface RuledOn {
  readonly seal: string;
  readonly facts: Readonly<Record<string, RuledValue>>;
}

interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/**
 * The text of a ruling file with seal and as-ruled facts written into every acceptance, in place of those it has;
 * every other letter stays as the organiser wrote it. A flight for which `ruledOn` knows nothing is left alone.
 */
export function sealRulings(text: string, ruledOn: (flight: number) => RuledOn | null): string {
  const frontMatter = /^---\n([\s\S]*?\n)---$/m.exec(text)?.[1] ?? '';
  const shift = '---\n'.length;
  const flights = parseDocument(frontMatter, { schema: 'failsafe' }).get('flights');
  if (!isSeq(flights)) return text;
  const edits = flights.items.flatMap((item): Edit[] => {
    if (!isMap(item) || item.get('verdict') !== 'accepted') return [];
    const known = ruledOn(Number(item.get('flight')));
    if (known === null) return [];
    return [
      ...fieldEdits(frontMatter, item, 'seal', known.seal),
      ...fieldEdits(frontMatter, item, 'as-ruled', factsText(known.facts)),
    ];
  });
  // From the end to the start, so that places stay true; two at one place go in backwards and so stand in order.
  return edits
    .toReversed()
    .toSorted((a, b) => b.start - a.start)
    .reduce(
      (written, { start, end, text: piece }) =>
        written.slice(0, start + shift) + piece + written.slice(end + shift),
      text,
    );
}

/** Puts a value in the place of the one a ruling has, else behind its last field. */
function fieldEdits(frontMatter: string, ruling: YAMLMap, key: string, value: string): Edit[] {
  const present = ruling.get(key, true);
  if (isNode(present) && present.range)
    return [{ start: present.range[0], end: present.range[1], text: value }];
  const last = ruling.items.at(-1)?.value;
  if (!isNode(last) || !last.range) return [];
  const end = frontMatter.slice(0, last.range[1]).trimEnd().length;
  if (ruling.flow) return [{ start: end, end, text: `, ${key}: ${value}` }];
  const lineEnd = frontMatter.indexOf('\n', end);
  const start = ruling.range?.[0] ?? 0;
  const indent = ' '.repeat(start - (frontMatter.lastIndexOf('\n', start - 1) + 1));
  return [{ start: lineEnd, end: lineEnd, text: `\n${indent}${key}: ${value}` }];
}

/** The facts as a ruling writes them, on one line. */
function factsText(facts: RuledOn['facts']): string {
  return `{ ${Object.entries(facts)
    .map(([id, value]) => `${id}: ${valueText(id, value)}`)
    .join(', ')} }`;
}

/** A fact as its word or words, a figure in its SI unit to six digits: far closer than the 0.1 % it is held to. */
function valueText(id: string, value: RuledValue): string {
  if (typeof value === 'number') return figureText(id, value);
  if (typeof value !== 'object') return String(value);
  return `[${value.map((item) => (typeof item === 'number' ? figureText(id, item) : item)).join(', ')}]`;
}

function figureText(id: string, value: number): string {
  const definition = figureDefinition(id);
  if (definition === undefined) throw new Error(`There is no figure ${id} to write into a ruling.`);
  return formatQuantity(Number(value.toPrecision(6)), kindOfFigure(definition), definition.unit);
}
