import type { PackedPlotData } from './plot-data.ts';

/** Gets what this site's build wrote for plots, each address once. Rejects where one cannot be had. */
export function plotDataFetcher(): (addresses: readonly string[]) => Promise<PackedPlotData[]> {
  const asked = new Map<string, Promise<PackedPlotData>>();
  return (addresses) =>
    Promise.all(
      addresses.map((address) => {
        const known = asked.get(address) ?? fetchOne(address);
        asked.set(address, known);
        // Whoever tries again gets another request, not the same refusal.
        known.catch(() => asked.delete(address));
        return known;
      }),
    );
}

async function fetchOne(address: string): Promise<PackedPlotData> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return answer.json();
}
