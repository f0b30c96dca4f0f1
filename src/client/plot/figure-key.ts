import { markSvg } from '../../charts/plot/draw-plot.ts';
import { plot as say } from '../../words/plot.ts';
import type { ChosenPlot } from './chosen-plot.ts';

/** What is said below a plot: which mark means what, and sentences on its frontier and its bars. */
export interface FigureKey {
  /** Marks that occur, each as a small drawing. */
  readonly marks: readonly { readonly svg: string; readonly text: string }[];
  readonly sentences: readonly string[];
}

/** The key of a plot. */
export function figureKey({ x, y, plot, rows }: ChosenPlot, division: string | null): FigureKey {
  const has = (test: (row: (typeof rows)[number]) => boolean) => rows.some(test);
  const marks = [
    { shown: has(({ best, waiting }) => !best && !waiting), svg: markSvg(''), text: say.key.plain },
    { shown: has(({ best }) => best), svg: markSvg('best'), text: say.key.best },
    {
      shown: division !== null && has(({ marked }) => marked),
      svg: markSvg('marked'),
      text: say.key.marked(division ?? ''),
    },
    { shown: has(({ waiting }) => waiting), svg: markSvg('waiting'), text: say.key.waiting },
  ].filter(({ shown }) => shown);
  const undirected = [...new Set([x, y])].filter(({ better }) => better === null);
  const best = rows.filter((row) => row.best).length;
  const frontier =
    x.better === null || y.better === null
      ? [say.noFrontier(undirected.map(({ name }) => name))]
      : best === 0
        ? []
        : [
            say.frontier(x.name, x.better, y.name, y.better),
            ...(best === 1 && rows.length > 1 ? [say.oneOnFrontier] : []),
          ];
  return {
    marks: marks.length < 2 ? [] : marks,
    sentences: rows.length === 0 ? [] : [...frontier, ...(plot.bars ? [say.barsExplained] : [])],
  };
}
