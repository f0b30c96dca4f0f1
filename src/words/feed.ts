export const feed = {
  label: 'Feed',
  title: (site: string) => `${site}: what happened`,
  lately: 'Lately',
  entered: (aircraft: string, challenge: string) => `${aircraft} entered in ${challenge}`,
  accepted: (aircraft: string, longest: string, flights: number) =>
    flights === 1
      ? `${aircraft}: ${longest} accepted`
      : `${aircraft}: ${flights} flights accepted, the longest ${longest}`,
  bestTime: (aircraft: string, time: string, challenge: string) =>
    `${aircraft}: ${time}, longer than every earlier flight of ${challenge}`,
  targetReached: (aircraft: string, time: string, target: string) =>
    `${aircraft}: ${time}, the first to reach ${target}`,
  amended: (challenge: string, what: string) => `${challenge}, rules amended: ${what}`,
  frozen: (challenge: string) => `${challenge}: the result is final`,
} as const;
