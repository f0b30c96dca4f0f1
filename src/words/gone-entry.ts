export const goneEntry = {
  description: (name: string, challenge: string) => `${name} in the final result of ${challenge}.`,
  notice:
    'This aircraft is no longer told of here. The result of its challenge is final and keeps its place and its flights, as they stand below.',
  noFlights: 'The final result has no flight of it.',
} as const;
