import type { SourceDocument, SourceNode, SourceScalar } from '../source/source.ts';

/** Another file that a file names, with the text that names it. */
export interface Reference {
  readonly name: string;
  readonly node: SourceScalar;
}

export interface LogMention extends Reference {
  readonly kind: 'thrust' | 'torque';
}

export interface FlightEvidence extends Reference {
  /** The flight's number, as written. */
  readonly flight: string;
}

/** Every photo an entry names, those of its setups included, in the order written. */
export function photosNamed(source: SourceDocument): Reference[] {
  return designsOf(source).flatMap((design) => itemsOf(fieldOf(design, 'photos')).flatMap(fileNamed));
}

/** Every bench log an entry names, in all setups. */
export function logsNamed(source: SourceDocument): LogMention[] {
  return motorsOf(source).flatMap((motor) =>
    (['thrust', 'torque'] as const).flatMap((kind) =>
      fileNamed(fieldOf(motor, `${kind}-log`)).map((reference) => ({ ...reference, kind })),
    ),
  );
}

/** Every batch of rubber an entry names, in all setups. */
export function batchesNamed(source: SourceDocument): Reference[] {
  return motorsOf(source).flatMap((motor) => asReference(fieldOf(fieldOf(motor, 'skein'), 'batch')));
}

/** Every link that an entry shows for its flights, in the order written; one link within a flight is told once. */
export function evidenceNamed(source: SourceDocument): FlightEvidence[] {
  return itemsOf(fieldOf(source.root, 'flights')).flatMap((flight) => {
    const number = fieldOf(flight, 'number');
    const links = itemsOf(fieldOf(flight, 'evidence')).flatMap(asReference);
    return links
      .filter(({ name }, index) => links.findIndex((link) => link.name === name) === index)
      .map((link) => ({ ...link, flight: number?.kind === 'scalar' ? number.text : '' }));
  });
}

/** The logs of a batch's stretch and torque tests, test by test; null where a test names none. */
export function testLogsNamed(
  source: SourceDocument,
  tests: 'stretch-tests' | 'torque-tests',
): (Reference | null)[] {
  return itemsOf(fieldOf(source.root, tests)).map((test) => fileNamed(test)[0] ?? null);
}

function designsOf(source: SourceDocument): SourceNode[] {
  return [source.root, ...itemsOf(fieldOf(source.root, 'setups'))];
}

function motorsOf(source: SourceDocument): SourceNode[] {
  return designsOf(source).flatMap((design) => itemsOf(fieldOf(design, 'motors')));
}

function fileNamed(node: SourceNode | null): Reference[] {
  return asReference(node?.kind === 'map' ? fieldOf(node, 'file') : node);
}

function asReference(node: SourceNode | null): Reference[] {
  return node?.kind === 'scalar' && node.text !== '' ? [{ name: node.text, node }] : [];
}

function fieldOf(node: SourceNode | null, key: string): SourceNode | null {
  if (node?.kind !== 'map') return null;
  return node.pairs.find((pair) => pair.key.text === key)?.value ?? null;
}

function itemsOf(node: SourceNode | null): readonly SourceNode[] {
  if (node === null) return [];
  return node.kind === 'list' ? node.items : [node];
}
