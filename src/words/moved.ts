export const moved = {
  title: 'This page has moved',
  lead: 'It is now at',
} as const;
