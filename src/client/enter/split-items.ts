/**
 * The values that were typed as one text: parted by semicolons, or by commas that stand for no decimals (`41,6 s, 45,6 s` are
 * two), with or without brackets around all and quotes around each. One value is one item; nothing is none.
 */
export function splitItems(typed: string): string[] {
  const inside = /^\s*\[(.*)\]\s*$/s.exec(typed)?.[1] ?? typed;
  // A comma of a web address, or of decimals, has no space behind it.
  const isOne = /^[a-z]+:\/\/\S+$/i.test(inside.trim());
  const items = isOne ? [inside] : inside.split(/\s*;\s*|\s*,(?:\s+|$)|(?<!\d\s*),|,(?!\s*\d)/);
  return items
    .map((item) =>
      item
        .trim()
        .replace(/^"(.*)"$|^'(.*)'$/, '$1$2')
        .trim(),
    )
    .filter((item) => item !== '');
}
