import { awaiting } from './words/awaiting.ts';
import { board } from './words/board.ts';
import { boardView } from './words/board-view.ts';
import { builder } from './words/builder.ts';
import { card } from './words/card.ts';
import { challenge } from './words/challenge.ts';
import { charts } from './words/charts.ts';
import { compare } from './words/compare.ts';
import { descriptions } from './words/descriptions.ts';
import { drawing } from './words/drawing.ts';
import { enter } from './words/enter.ts';
import { entry } from './words/entry.ts';
import { facts } from './words/facts.ts';
import { feed } from './words/feed.ts';
import { figures } from './words/figures.ts';
import { frame } from './words/frame.ts';
import { goneEntry } from './words/gone-entry.ts';
import { leftOut } from './words/left-out.ts';
import { moved } from './words/moved.ts';
import { news } from './words/news.ts';
import { notFound } from './words/not-found.ts';
import { pages } from './words/pages.ts';
import { plot } from './words/plot.ts';
import { records } from './words/records.ts';
import { review } from './words/review.ts';
import { rubber } from './words/rubber.ts';
import { rules } from './words/rules.ts';
import { schema } from './words/schema.ts';
import { trim } from './words/trim.ts';
import * as vocabulary from './words/vocabulary.ts';

export { counted, dateInWords, listed } from './words/texts.ts';

// Every word the interface says stands in this folder, in one language, one file for each page or part. Sentences with
// numbers are functions, so that a translation can order them its own way. What people wrote (names, notes, rules as
// sentences) is never here.
export const words = {
  language: 'en',
  generator: 'Last Turn',
  ...vocabulary,
  frame,
  pages,
  challenge,
  board,
  card,
  boardView,
  awaiting,
  review,
  drawing,
  enter,
  entry,
  facts,
  rules,
  builder,
  trim,
  records,
  charts,
  plot,
  compare,
  rubber,
  figures,
  schema,
  news,
  feed,
  leftOut,
  goneEntry,
  moved,
  notFound,
  descriptions,
} as const;
