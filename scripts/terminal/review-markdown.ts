import type { Review } from '../../src/almanac/review/review.ts';
import { inCode, inText } from './markdown-text.ts';
import { reviewInWords } from './review-in-words.ts';
import type { ReviewPart, ReviewSection } from './review-told.ts';

/** A forge shows a summary of up to about a megabyte; nobody reads that much on a phone. */
const mostBytes = 60_000;
const lengths = [60, 25, 10, 4, 1];

/** A review as Markdown for the summary of a job: at most 60 kB, for long lists are told in part, with how many more there are. */
export function reviewMarkdown(review: Review): string {
  const written = lengths.map((most) => () => {
    const { gist, sections } = reviewInWords(review, { quote: inCode, sentence: inText, most });
    return `${[`**${gist}**`, ...sections.map(sectionText)].join('\n\n')}\n`;
  });
  for (const write of written) {
    const text = write();
    if (Buffer.byteLength(text) <= mostBytes) return text;
  }
  return `${(written.at(-1)?.() ?? '').split('\n\n').slice(0, 4).join('\n\n')}\n`;
}

function sectionText({ title, folded, parts }: ReviewSection): string {
  const body = parts.map(partText).join('\n\n');
  if (!folded) return `### ${title}\n\n${body}`;
  return `<details>\n<summary>\n\n${title}\n\n</summary>\n\n${body}\n\n</details>`;
}

function partText(part: ReviewPart): string {
  const heading = part.heading === null ? '' : `**${part.heading}**\n\n`;
  if ('lines' in part) return heading + part.lines.map((line) => `- ${line}`).join('\n');
  const row = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  const rule = row(part.columns.map(() => '---'));
  return heading + [row(part.columns), rule, ...part.rows.map(row)].join('\n');
}
