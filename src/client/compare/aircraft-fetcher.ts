import type { ComparedAircraft } from '../../compare/aircraft.ts';

/** Gets what this site's build wrote of an aircraft, each once. Rejects where it cannot be had. */
export function aircraftFetcher(from: string): (id: string) => Promise<ComparedAircraft> {
  const asked = new Map<string, Promise<ComparedAircraft>>();
  return (id) => {
    const known = asked.get(id) ?? fetchOne(`${from}${id}.json`);
    asked.set(id, known);
    // Whoever tries again gets another request, not the same refusal.
    known.catch(() => asked.delete(id));
    return known;
  };
}

async function fetchOne(address: string): Promise<ComparedAircraft> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return answer.json();
}
