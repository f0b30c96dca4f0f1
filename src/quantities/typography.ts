const fractions: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅐': '1/7',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅑': '1/9',
  '⅒': '1/10',
};

const onlyPlain = /^[ -~]*$/;

/**
 * The same text in plain typing: minus signs and dashes as `-`, all kinds of space as a space, marks of feet and inches
 * as `'` and `"`, `½` as `1/2`, `²` as `^2` (so that 10² never becomes 102), `+/-` as `±`.
 */
export function plainTypography(text: string): string {
  const typed = onlyPlain.test(text)
    ? text
    : text
        .normalize('NFC')
        .replace(/[\u2010-\u2015\u2212\uFE63\uFF0D]/g, '-')
        .replace(/[\s\u200B\u2060]/g, ' ')
        .replace(/[\u2019\u2018\u2032\u02B9\u00B4]/g, "'")
        .replace(/[\u201C\u201D\u2033\u02BA]/g, '"')
        .replace(/[\u00BA\u02DA]/g, '°')
        .replace(/[\u2044\u2215]/g, '/')
        .replaceAll('℃', '°C')
        .replaceAll('℉', '°F')
        .replaceAll('²', '^2')
        .replaceAll('³', '^3')
        .replace(/(\d?)([½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒])/g, (_, before: string, sign: string) =>
          before === '' ? (fractions[sign] ?? sign) : `${before} ${fractions[sign] ?? sign}`,
        );
  const spaced = typed.includes('  ') ? typed.replace(/ {2,}/g, ' ') : typed;
  return spaced
    .replaceAll("''", '"')
    .replace(/\+ ?\/ ?-|\+-/g, '±')
    .trim();
}
