const written: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/**
 * What XML 1.0 has no place for, not even escaped (2.2, Char): control characters but tab and line ends, half a surrogate
 * pair, U+FFFE and U+FFFF. Of the control characters those that it allows but advises against are in it, too.
 */
const notInXml = /[^\P{Cc}\t\n\r]|\p{Cs}|[\uFFFE\uFFFF]/gu;

/** Text as it may stand in an element or attribute of XML; characters that XML cannot hold are dropped. */
export function xmlText(text: string): string {
  return text.replace(notInXml, '').replace(/[&<>"]/g, (sign) => written[sign] ?? sign);
}
