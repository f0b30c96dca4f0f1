const plainWord = /^[A-Za-z]+$/;
/** A sign of multiplication that joins nothing; a point may end an abbreviation, a hyphen may join `3-inch`. */
const loose = /^ *(?:[*×.]|- )|[·⋅∙•×*-] *$/;

/**
 * The spelling of a unit without its typography: `.` for whatever stands between factors (`·`, `*`, `×`, `-`, a
 * space), digits for powers, no space round a stroke: `ft · lbf / lb` → `ft.lbf/lb`, `sq. in` and `square in` → `sq.in`.
 */
export function unitKey(text: string): string {
  if (plainWord.test(text) || loose.test(text)) return text;
  return text
    .replaceAll('²', '2')
    .replaceAll('³', '3')
    .replace(/\*\*|\^/g, '')
    .replace(/[\s·⋅∙•×*.-]+/g, '.')
    .replace(/\.?\/\.?/g, '/')
    .replace(/^\.|\.$/g, '')
    .replace(/\bsquare\b/g, 'sq');
}
