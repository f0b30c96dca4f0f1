import type { History } from '../../../src/contest/history/history.ts';

/** The history of a challenge in which nothing has been accepted. */
export const noHistory: History = {
  flights: [],
  target: null,
  time: [],
  span: [],
  honour: [],
  milestones: [],
  records: [],
  personalBests: [],
};
