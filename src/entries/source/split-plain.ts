/** A file taken apart. Offsets are from the start of the text. */
export interface SplitText {
  /** The lines between the two `---`, without the line end before the second. */
  readonly frontMatter: string;
  readonly frontMatterStart: number;
  /** What follows the second `---` and its line end. */
  readonly body: string;
  readonly bodyStart: number;
}

/** Separates front matter and body of a text whose frame has been checked (`frame.ts`). */
export type Split = (text: string) => SplitText;

/** The splitter that needs nothing but the text: for the browser, and for files that are not on a disk. */
export const splitPlain: Split = (text) => {
  const frontMatterStart = text.indexOf('\n') + 1;
  const closing = text.indexOf('\n---', frontMatterStart - 1);
  const closingEnd = text.indexOf('\n', closing + 1);
  const bodyStart = closingEnd === -1 ? text.length : closingEnd + 1;
  const frontMatter = text.slice(frontMatterStart, Math.max(frontMatterStart, closing)).replace(/\r$/, '');
  return { frontMatter, frontMatterStart, body: text.slice(bodyStart), bodyStart };
};
