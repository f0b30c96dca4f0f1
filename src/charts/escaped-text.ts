const written: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text as it may stand in SVG, in an element or an attribute. */
export function escapedText(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => written[sign] ?? sign);
}
