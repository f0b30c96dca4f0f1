/** Links and ids of a page, and perhaps some that only a text speaks of. */
export interface GlancedPage {
  readonly links: ReadonlySet<string>;
  readonly ids: ReadonlySet<string>;
}

const glanced = /[\s"'](href|src|srcset|poster|id|name)\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"'>]+))/gi;

/**
 * Finds links and ids without looking where tags begin: quick, and never misses one, but a text that says `href="x"`
 * counts as well. Whoever finds fault with a link looks again with {@link scanPage}.
 *
 * @param letters the page's bytes, each as one letter (Latin-1)
 */
export function glanceAt(letters: string): GlancedPage {
  const links = new Set<string>();
  const ids = new Set<string>();
  for (const attribute of letters.matchAll(glanced)) {
    const value = withoutEntities(asText(attribute[2] ?? attribute[3] ?? attribute[4] ?? ''));
    switch ((attribute[1] ?? '').toLowerCase()) {
      case 'id':
      case 'name':
        ids.add(value);
        break;
      case 'srcset':
        for (const candidate of candidates(value)) links.add(candidate);
        break;
      default:
        links.add(value);
    }
  }
  return { links, ids };
}

const beyondAscii = /[\x80-\xff]/;

function asText(letters: string): string {
  return beyondAscii.test(letters) ? Buffer.from(letters, 'latin1').toString() : letters;
}

/** What the gate reads from one page, without building a tree. */
export interface ScannedPage {
  /** Values of href, src, srcset (each candidate) and poster, entities resolved, in order of appearance. */
  readonly links: readonly string[];
  /** Values of id and name. */
  readonly ids: ReadonlySet<string>;
  /** Text between tags, entities resolved; neither scripts nor styles nor comments. */
  readonly texts: readonly string[];
  /** Other attribute values that a visitor sees or hears. */
  readonly spoken: readonly string[];
}

// One alternative for what is skipped whole, one for a tag. Quoted attribute values may hold ">", so that text which
// only looks like a link is never taken for one.
const pieces =
  /<!--[\s\S]*?-->|<(script|style)\b((?:"[^"]*"|'[^']*'|[^'">])*)>[\s\S]*?<\/\1\s*>|<(?:\/?[a-z][^\s>/]*)((?:"[^"]*"|'[^']*'|[^'">])*)>/gi;
const attributes = /([a-z][^\s=>"'/]*)\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"'>]+))/gi;
const spokenNames = new Set(['alt', 'title', 'aria-label', 'content', 'placeholder', 'datetime']);

/** Reads links, ids and visible text of an HTML page in one pass. */
export function scanPage(html: string): ScannedPage {
  const links: string[] = [];
  const ids = new Set<string>();
  const texts: string[] = [];
  const spoken: string[] = [];
  let from = 0;
  for (const piece of html.matchAll(pieces)) {
    if (piece.index > from) addText(texts, html.slice(from, piece.index));
    from = piece.index + piece[0].length;
    for (const attribute of (piece[2] ?? piece[3] ?? '').matchAll(attributes)) {
      const name = (attribute[1] ?? '').toLowerCase();
      const value = withoutEntities(attribute[2] ?? attribute[3] ?? attribute[4] ?? '');
      if (name === 'href' || name === 'src' || name === 'poster') links.push(value);
      else if (name === 'srcset') links.push(...candidates(value));
      else if (name === 'id' || name === 'name') ids.add(value);
      else if (spokenNames.has(name)) spoken.push(value);
    }
  }
  if (from < html.length) addText(texts, html.slice(from));
  return { links, ids, texts, spoken };
}

function addText(texts: string[], raw: string): void {
  if (/\S/.test(raw)) texts.push(withoutEntities(raw).replace(/\s+/g, ' '));
}

function candidates(srcset: string): string[] {
  return srcset
    .split(',')
    .map((candidate) => candidate.trim().split(/\s+/)[0] ?? '')
    .filter((address) => address !== '');
}

const named: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  quot: '"',
  apos: "'",
  nbsp: ' ',
};

function withoutEntities(text: string): string {
  if (!text.includes('&')) return text;
  return text.replace(/&(?:#x([0-9a-f]{1,6})|#(\d{1,7})|([a-z]+));/gi, (whole, hex, decimal, name) => {
    const point =
      hex !== undefined ? Number.parseInt(hex, 16) : decimal !== undefined ? Number(decimal) : null;
    if (point !== null) return point <= 0x10ffff ? String.fromCodePoint(point) : whole;
    return named[name] ?? whole;
  });
}
