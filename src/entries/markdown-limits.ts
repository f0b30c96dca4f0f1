/**
 * How much a text may hold for it to be read as Markdown. The reader's work grows with the square, and worse, of what stands
 * in one piece: a text of 32 kB that is nothing but stars and brackets keeps it busy for minutes. Ten pages of a build log
 * with tables and links stay far below these; within them the worst text takes well under a second.
 */
export const markdownLimits = {
  characters: 250_000,
  lines: 2500,
  /** Characters that Markdown gives a meaning to. */
  marks: 10_000,
  /** Of one piece, from one empty line to the next; bars between the cells of a table are not counted here. */
  marksInPiece: 1000,
  linesInPiece: 500,
  /** Quotes and items of lists, one for each mark at the beginning of a line. */
  containers: 1500,
  containersOfLine: 10,
  /** Width of the white space and marks a line begins with. */
  indentation: 100,
  /** Characters that references add when each is replaced by the address and title it stands for. */
  expansion: 500_000,
  /** Cells of all tables, those that a short row lacks included. */
  cells: 20_000,
} as const;

/** What a text has too much of, and where that is seen. */
export interface TooMuch {
  readonly of: keyof typeof markdownLimits;
  /** How many there are; of what is counted up to the limit only, one more than the limit. */
  readonly found: number;
  /** Where it begins: offset in the text. */
  readonly at: number;
}

const mark = /[*_~[\]<>&\\`@:]/g;
const bar = /\|/g;
const beginning = /^(?:[ \t]|>|[-+*](?=\s)|\d{1,9}[.)](?=\s))*/;
const container = />|[-+*](?=\s)|\d+[.)]/g;

/** What a text has too much of to be read as Markdown, by counting alone; null where nothing. Takes time in proportion to its length. */
export function tooMuchToRead(text: string): TooMuch | null {
  if (text.length > markdownLimits.characters) return { of: 'characters', found: text.length, at: 0 };
  let [lines, marks, containers, at] = [0, 0, 0, 0];
  let piece = { at: 0, lines: 0, marks: 0 };
  for (const line of text.split(/(?<=\n)/)) {
    lines += 1;
    if (lines > markdownLimits.lines) return { of: 'lines', found: lines, at };
    const begins = beginning.exec(line)?.[0] ?? '';
    const around = begins.match(container)?.length ?? 0;
    if (around > markdownLimits.containersOfLine) return { of: 'containersOfLine', found: around, at };
    containers += around;
    if (containers > markdownLimits.containers) return { of: 'containers', found: containers, at };
    const indentation = widthOf(begins);
    if (indentation > markdownLimits.indentation) return { of: 'indentation', found: indentation, at };
    const own = line.match(mark)?.length ?? 0;
    marks += own + (line.match(bar)?.length ?? 0);
    if (marks > markdownLimits.marks) return { of: 'marks', found: marks, at };
    piece =
      line.trim() === ''
        ? { at: at + line.length, lines: 0, marks: 0 }
        : { at: piece.at, lines: piece.lines + 1, marks: piece.marks + own };
    if (piece.lines > markdownLimits.linesInPiece)
      return { of: 'linesInPiece', found: piece.lines, at: piece.at };
    if (piece.marks > markdownLimits.marksInPiece)
      return { of: 'marksInPiece', found: piece.marks, at: piece.at };
    at += line.length;
  }
  return null;
}

/** A tab reaches to the next multiple of four (CommonMark 0.31, 2.2), so four is the most it takes. */
function widthOf(begins: string): number {
  return begins.length + 3 * (begins.match(/\t/g)?.length ?? 0);
}
