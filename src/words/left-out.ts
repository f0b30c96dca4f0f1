export const leftOut = {
  lead: 'Entries that could not be published as they are written now. Each one’s page says that it is being looked at; the rest of the site is not affected.',
  none: 'Nothing is left out: every entry that was handed in is published.',
  noticeTitle: (entry: string) => `Being looked at: ${entry}`,
  notice:
    'This entry is being looked at and is not shown for the moment. Nothing else on the site is affected by it.',
  toBoard: 'Go to the board',
  all: 'All entries that are being looked at',
} as const;
