import { escaped } from '../../drawings/svg-text.ts';

/** A piece of HTML whose texts are escaped already. */
export class Html {
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
}

type Part = string | number | Html | readonly Html[] | null;

/** HTML as a template: whatever is put in is escaped, unless it is HTML itself. */
export function html(pieces: TemplateStringsArray, ...parts: readonly Part[]): Html {
  return new Html(pieces.reduce((text, piece, index) => text + written(parts[index - 1] ?? null) + piece));
}

function written(part: Part): string {
  if (part === null) return '';
  if (part instanceof Html) return part.text;
  if (typeof part === 'object') return part.map(({ text }) => text).join('');
  return escaped(String(part));
}
