import type { ErrorCode } from 'yaml';

/** Where the YAML reader stumbled, in plain words: what is wrong there and what to write instead. */
export function yamlSentence(code: ErrorCode, detail: string): string {
  return `${sentences[code] ?? fromDetail(detail)} The front matter cannot be read from here on.`;
}

const sentences: Partial<Record<ErrorCode, string>> = {
  BAD_DQ_ESCAPE:
    'Inside double quotes a backslash begins a code, and this one is unknown: write `\\\\` for a backslash, or use single quotes.',
  BAD_INDENT:
    'The indentation does not fit: lines of one map or list begin at the same column, what belongs to a key is indented further, and `{` or `[` needs its closing bracket.',
  BAD_SCALAR_START: 'A value cannot begin with this character: put the value in quotes.',
  BLOCK_AS_IMPLICIT_KEY:
    'A second colon stands on this line: put a text that holds a colon and a space in quotes, or the inner key on a line of its own.',
  BLOCK_IN_FLOW: 'Inside `{ }` and `[ ]` write items with commas, not on lines with hyphens.',
  KEY_OVER_1024_CHARS: 'A key is longer than 1,024 characters: a quote or a bracket is probably not closed.',
  MULTILINE_IMPLICIT_KEY:
    'A line has no colon after its key, or a text runs on where a key was expected: write `key: value`.',
  TAB_AS_INDENT: 'A tab indents this line: indent with spaces.',
};

const details: readonly (readonly [RegExp, string])[] = [
  [
    /at node end|in YAML stream/,
    'This line does not go on with what stands above it: the fields of the file all begin at the same column, and a list is no field.',
  ],
  [/Not a YAML token|Block scalar header/, 'A value cannot begin with `>` or `|`: put the value in quotes.'],
  [
    /block-seq-ind on same line/,
    'A list begins on the line of its key: write its items on lines of their own, or as `[a, b]`.',
  ],
  [/Missing closing .*quote/, 'A quote is opened and never closed.'],
  [/Missing , between|Missing , or :/, 'A comma is missing between two items in brackets.'],
  [/Missing space after :/, 'A space is missing after the colon.'],
  [/must end with a ([\]}])/, 'A bracket is opened and never closed.'],
  [/Unexpected (empty item|,)/, 'A comma stands where an item was expected.'],
  [/directive/i, 'A line that begins with `%` is an instruction to the reader: put the text in quotes.'],
  [/not enough indentation|sufficiently indented/, 'This line must be indented further.'],
  [/Unexpected flow-(map|seq)-end/, 'A bracket is closed that was never opened.'],
  [/Tabs are not allowed/, 'A tab stands where only spaces may: indent with spaces.'],
  [
    /[Cc]omment/,
    'A space is missing before `#`, which begins a remark: put the text in quotes, or a space before it.',
  ],
];

function fromDetail(detail: string): string {
  const known = details.find(([pattern]) => pattern.test(detail));
  return (
    known?.[1] ??
    'This does not fit YAML: write `key: value`, and put text with special characters in quotes.'
  );
}
