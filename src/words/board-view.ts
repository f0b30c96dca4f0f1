import { counted, listed } from './texts.ts';

/** What sorts, searches and compares the standings; also read by client/board. */
export const boardView = {
  title: 'Find in the standings',
  sought: 'Aircraft or builder',
  division: 'Division',
  builder: 'Builder',
  control: 'Control',
  all: 'all',
  span: 'Span',
  spanFrom: 'Span, at least',
  spanTo: 'Span, at most',
  rangeTo: 'to',
  reset: 'Show all, by place',
  /** `division` is the one whose places are shown, null for the whole challenge. */
  shown: (shown: number, all: number, division: string | null) => {
    if (shown === 0) return `0 of ${all}: no aircraft fits all of that.`;
    return `${shown} of ${all}${division === null ? '' : `, with the places in the division ${division}`}`;
  },
  more: (count: number) => `List the other ${count}, too`,
  announced: (shown: number, all: number) => `${shown} of ${all} aircraft shown.`,
  sorted: (column: string, by: 'letters' | 'size', largestFirst: boolean) => {
    const order = { letters: ['from A to Z', 'from Z to A'], size: ['smallest first', 'largest first'] };
    return `Sorted by ${column.toLowerCase()}, ${order[by][largestFirst ? 1 : 0]}.`;
  },
  compare: 'Compare',
  pick: (name: string) => `Compare ${name}`,
  /** `most` is the greatest number of aircraft, where it is reached. */
  picked: (names: readonly string[], most: number | null) => {
    if (names.length === 1) return `To compare: ${names[0]} and another one.`;
    return `To compare: ${listed(names)}.${most === null ? '' : ` ${counted(most, 'aircraft', 'aircraft')} are the most.`}`;
  },
  goCompare: (count: number) => `Compare these ${count}`,
  clearPicks: 'Clear the ticks',
} as const;
