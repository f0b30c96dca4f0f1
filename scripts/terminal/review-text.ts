import type { Review } from '../../src/almanac/review/review.ts';
import { printable } from './printable.ts';
import { reviewInWords } from './review-in-words.ts';
import type { ReviewPart, ReviewSection } from './review-told.ts';

/** A review for a terminal. No line begins with what somebody wrote: a build server might take it for a command. */
export function reviewText(review: Review): string {
  const { gist, sections } = reviewInWords(review, { quote: inline, sentence: inline, most: 200 });
  return `${[gist, ...sections.flatMap(sectionLines)].join('\n').replaceAll('\u00a0', ' ')}\n`;
}

function inline(text: string): string {
  return printable(text.replaceAll(/\s+/g, ' '));
}

function sectionLines({ title, parts }: ReviewSection): string[] {
  return ['', `- ${title}`, ...parts.flatMap(partLines)];
}

function partLines(part: ReviewPart): string[] {
  const heading = part.heading === null ? [] : [`  - ${part.heading}`];
  if ('lines' in part) return [...heading, ...part.lines.map((line) => `    - ${line}`)];
  const rows = part.rows.map((cells) =>
    cells
      .flatMap((cell, index) =>
        cell === '' ? [] : [index === 0 ? cell : `${column(part.columns[index])}${cell}`],
      )
      .join(', '),
  );
  return [...heading, ...rows.map((row) => `    - ${row}`)];
}

function column(name: string | undefined): string {
  return name === undefined || name === '' ? '' : `${name.toLowerCase()} `;
}
