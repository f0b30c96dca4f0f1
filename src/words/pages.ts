export const pages = {
  board: 'Board',
  challenges: 'Challenges',
  rules: 'Rules',
  rubber: 'Rubber',
  figures: 'Figures',
  builders: 'Builders',
  news: 'News',
  leftOut: 'Left out',
} as const;
