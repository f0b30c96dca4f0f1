/** Area of a propeller's disc in m², of its diameter in m. */
export function discArea(diameter: number): number {
  return (Math.PI * diameter * diameter) / 4;
}

/**
 * What propellers add to the drag coefficient of a gliding model, on the wing's area: a coefficient on their discs' area
 * brought to the wing's. Orders of magnitude from practice: a folded propeller has about 0.005 of its disc, one that
 * freewheels 0.02, one that stands still 0.03. No source.
 */
export function propellerDrag(coefficient: number, discs: number, wingArea: number): number {
  return (coefficient * discs) / wingArea;
}
