export const news = {
  none: 'No news yet.',
  about: 'about',
  ofChallenge: 'News',
  all: 'All news',
  lead: 'What the organiser has to say, the newest first.',
  feed: 'The feed tells what happened on the field, too.',
} as const;
