/** What somebody chose to see; it stands in the address of the page. */
export interface PlotChoice {
  /** Ids of figures. */
  readonly x: string;
  readonly y: string;
  readonly logX: boolean;
  readonly logY: boolean;
  /** Id of the division told apart; null for none. */
  readonly division: string | null;
  /** True for the aircraft of all challenges, else of this one. */
  readonly everywhere: boolean;
  /** True where the ± of each value is drawn. */
  readonly bars: boolean;
}

/** Something in an address that this page cannot follow. */
export interface Ignored {
  readonly name: 'x' | 'y' | 'log' | 'division' | 'challenges' | 'bars';
  readonly value: string;
}

/** What an address may name. */
export interface Known {
  readonly figures: ReadonlySet<string>;
  readonly divisions: ReadonlySet<string>;
}

export const firstChoice: PlotChoice = {
  x: 'flying-mass',
  y: 'best-time',
  logX: false,
  logY: false,
  division: null,
  everywhere: false,
  bars: false,
};

/** Whether an address asks for all challenges: so much must be known before the rest of it can be read. */
export function asksForAll(search: string): boolean {
  return new URLSearchParams(search).get('challenges') === 'all';
}

/** The first choice, or the first figures there are where those are not among them. */
function usual({ figures }: Known): Pick<PlotChoice, 'x' | 'y'> {
  const [first = firstChoice.x, second = first] = figures;
  return figures.has(firstChoice.x) && figures.has(firstChoice.y)
    ? { x: firstChoice.x, y: firstChoice.y }
    : { x: first, y: second };
}

/**
 * Reads `?x=…&y=…&log=x,y&division=…&challenges=all&bars=shown`. What is not named, and what cannot be followed, is as in
 * {@link firstChoice}; the latter is reported. Names that are not of this page are somebody else's.
 */
export function readChoice(search: string, known: Known): { choice: PlotChoice; ignored: Ignored[] } {
  const asked = new URLSearchParams(search);
  const ignored: Ignored[] = [];
  const follow = (name: Ignored['name'], accepts: (value: string) => boolean): string | null => {
    const value = asked.get(name);
    if (value === null || value === '' || accepts(value)) return value || null;
    ignored.push({ name, value });
    return null;
  };
  const figure = (value: string) => known.figures.has(value);
  const x = follow('x', figure) ?? usual(known).x;
  const y = follow('y', figure) ?? usual(known).y;
  const log = (follow('log', (value) => /^(?:x|y|x,y|y,x)$/.test(value)) ?? '').split(',');
  return {
    choice: {
      x,
      y,
      logX: log.includes('x'),
      logY: log.includes('y'),
      division: follow('division', (value) => known.divisions.has(value)),
      everywhere: follow('challenges', (value) => value === 'all') !== null,
      bars: follow('bars', (value) => value === 'shown') !== null,
    },
    ignored,
  };
}

/** The part of an address behind the path that {@link readChoice} reads back. */
export function writtenChoice({ x, y, logX, logY, division, everywhere, bars }: PlotChoice): string {
  const log = [...(logX ? ['x'] : []), ...(logY ? ['y'] : [])].join(',');
  const parts = [
    ['x', x],
    ['y', y],
    ['log', log],
    ['division', division ?? ''],
    ['challenges', everywhere ? 'all' : ''],
    ['bars', bars ? 'shown' : ''],
  ].filter(([, value]) => value !== '');
  // A comma needs no escape in a query, and reads better without.
  return `?${parts.map(([name, value = '']) => `${name}=${encodeURIComponent(value).replaceAll('%2C', ',')}`).join('&')}`;
}
