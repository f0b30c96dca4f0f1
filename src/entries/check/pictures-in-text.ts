import type { Image, ImageReference, Root } from 'mdast';
import { visit } from 'unist-util-visit';
import { problemOver } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import type { SourceDocument } from '../source/source.ts';

const plainPicture = /^(?:\.\/)?([^/\\:]+\.(?:jpe?g|png|webp|avif))$/i;
/** What matters has been said after this many. */
const most = 20;

/** Whether a text holds the mark of a picture: without one it is not worth reading as Markdown. */
export function mayHavePictures(body: string): boolean {
  return body.includes('![');
}

/** Pictures in the text itself, which shows their words only: those of an entry belong under `photos`. */
export function picturesInText(source: SourceDocument, tree: Root, isEntry: boolean): Problem[] {
  const { body } = source;
  return picturesIn(tree)
    .slice(0, most)
    .map(({ start, end, address, alt }) => {
      const written = body.slice(start, end).replace(/\s+/g, ' ');
      const file = plainPicture.exec(address)?.[1] ?? null;
      const item = file === null ? null : `- { file: ${plainOrQuoted(file)}, alt: ${JSON.stringify(alt)} }`;
      const how = !isEntry
        ? 'Only entries have pictures. Take it out, or write a link to it, `[words](address)`.'
        : `Lay the picture beside entry.md and list it at the top of the file under \`photos\`, such as \`${item ?? '- { file: bench.jpg, alt: "The model on the bench" }'}\`; a picture listed there is shown already.`;
      return problemOver(source, source.bodyStart + start, source.bodyStart + end, 'picture-in-text', {
        message: `"${cut(written)}" is a picture in the text, where its words are shown instead of it. ${how}`,
        found: cut(written),
        accepted: isEntry ? 'pictures under `photos`' : 'text and links',
        suggestion: isEntry ? item : null,
      });
    });
}

interface PictureInText {
  /** Offsets in the text. */
  readonly start: number;
  readonly end: number;
  readonly address: string;
  readonly alt: string;
}

function picturesIn(tree: Root): PictureInText[] {
  const addresses = new Map<string, string>();
  visit(tree, 'definition', ({ identifier, url }) => {
    if (!addresses.has(identifier)) addresses.set(identifier, url);
  });
  const found: PictureInText[] = [];
  const add = ({ position, alt }: Image | ImageReference, address: string) => {
    const [start, end] = [position?.start.offset, position?.end.offset];
    if (start !== undefined && end !== undefined) found.push({ start, end, address, alt: alt ?? '' });
  };
  visit(tree, 'image', (image) => add(image, image.url));
  visit(tree, 'imageReference', (image) => add(image, addresses.get(image.identifier) ?? ''));
  return found.sort((a, b) => a.start - b.start);
}

function plainOrQuoted(file: string): string {
  return /^[\w.-]+$/.test(file) ? file : JSON.stringify(file);
}

function cut(written: string): string {
  return written.length > 60 ? `${written.slice(0, 60)}…` : written;
}
