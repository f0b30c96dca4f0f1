export const descriptions = {
  home: (title: string, club: string | null) =>
    club === null
      ? `${title}: an open duration challenge for rubber-powered model aircraft.`
      : `${title}: an open duration challenge of ${club} for rubber-powered model aircraft.`,
  board: (title: string) => `Standings of ${title}, with spans, loadings and times.`,
  rules: (title: string) =>
    `The rules of ${title}: dates, eligibility, flying, timing, scoring and evidence.`,
  entry: (name: string, builders: string, challenge: string) =>
    `${name} by ${builders} in ${challenge}: measures, motors, figures and every flight.`,
  builder: (name: string) => `Aircraft entered by ${name}.`,
  batch: (label: string) => `Rubber batch ${label}: strip, tests and figures.`,
  page: (title: string, site: string) => `${title}: a page of ${site}.`,
} as const;
