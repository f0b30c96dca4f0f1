/** Colours of paper and ink in the two schemes; the style sheet names the same ones. */
const paper = { light: '#fbfaf5', dark: '#171613' } as const;

/** The colour of links and rules where a club names none. */
const ownAccent = '#7c3210';

/** WCAG 2.2, success criterion 1.4.3: contrast of text of normal size. */
const enough = 4.5;

/** On a dark ground thin letters need more to look as strong as they do on paper. */
const enoughInTheDark = 6;

/** A style sheet that sets the club's accent in both schemes, moved towards ink until text in it can be read. */
export function accentStyle(accent: string | null): string {
  const base = parseColour(accent ?? ownAccent) ?? parseColour(ownAccent)!;
  const light = accentOnPaper(accent);
  const dark = readable(base, parseColour(paper.dark)!, 255, enoughInTheDark);
  return `:root{--club:${light}}\n@media (prefers-color-scheme:dark){:root{--club:${dark}}}\n@media print{:root{--club:${light}}}\n`;
}

/** The club's accent as it stands on paper; the site's own where a club names none. */
export function accentOnPaper(accent: string | null): string {
  const base = parseColour(accent ?? ownAccent) ?? parseColour(ownAccent)!;
  return readable(base, parseColour(paper.light)!, 0, enough);
}

type Colour = readonly [number, number, number];

/** `#rgb` or `#rrggbb`; null for anything else. */
export function parseColour(text: string): Colour | null {
  const long = text.replace(/^#([0-9a-f])([0-9a-f])([0-9a-f])$/i, '#$1$1$2$2$3$3');
  const digits = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(long);
  return digits === null
    ? null
    : [Number.parseInt(digits[1]!, 16), Number.parseInt(digits[2]!, 16), Number.parseInt(digits[3]!, 16)];
}

/** Contrast ratio of two colours, 1 to 21, as WCAG 2.2 defines it. */
export function contrast(a: Colour, b: Colour): number {
  const [darker, lighter] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (lighter + 0.05) / (darker + 0.05);
}

/** Relative luminance, WCAG 2.2. */
function luminance([red, green, blue]: Colour): number {
  const linear = (channel: number): number => {
    const share = channel / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
}

/** The colour, mixed with black (0) or white (255) in steps of a twentieth until it can be read on the ground. */
function readable(colour: Colour, ground: Colour, ink: 0 | 255, least: number): string {
  for (let step = 0; step <= 20; step += 1) {
    const mixed = colour.map((channel) => Math.round(channel + ((ink - channel) * step) / 20));
    const candidate: Colour = [mixed[0]!, mixed[1]!, mixed[2]!];
    if (contrast(candidate, ground) >= least) return hex(candidate);
  }
  return hex([ink, ink, ink]);
}

function hex(colour: Colour): string {
  return `#${colour.map((channel) => channel.toString(16).padStart(2, '0')).join('')}`;
}
