import type { Reader } from './definition.ts';
import type { Subject } from './subject.ts';

/** How high in m the hand was above the ground; a hand launch is taken where the flight does not say. */
function readLaunchHeight(from: Reader, { flown }: Subject): number {
  const { launch = null, launchHeight = null } = flown?.flight ?? {};
  if (launchHeight !== null) return from.value(launchHeight, 'the launch height');
  if (launch === null || launch === 'hand') return from.assume('launch-height');
  from.note(`the ${launch} launch was at the height of the ${launch}`);
  return 0;
}

/** How high in m the launch was above the landing. */
export function readHeightAboveLanding(from: Reader, subject: Subject): number {
  const drop = subject.flown?.flight.drop ?? null;
  const below = drop === null ? from.assume('drop') : from.value(drop, 'the drop of the ground');
  return readLaunchHeight(from, subject) + below;
}
