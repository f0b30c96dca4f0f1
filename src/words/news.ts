export const news = { none: 'No news yet.', about: 'About' } as const;
