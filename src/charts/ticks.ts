/** What is left over where a number is divided by a step it is a multiple of. */
const rounding = 1e-12;

/** The step of 1, 2 or 5 times a power of ten that parts a span into about so many parts. The span must be above 0. */
export function tickStep(span: number, about: number): number {
  const rough = span / about;
  const power = 10 ** Math.floor(Math.log10(rough));
  const share = rough / power;
  // Halfway between neighbours on a logarithmic scale: √2, √10, √50.
  return power * (share < Math.SQRT2 ? 1 : share < Math.sqrt(10) ? 2 : share < Math.sqrt(50) ? 5 : 10);
}

/** Multiples of a step from one number to another, both included, without the crumbs of binary fractions. */
export function multiples(step: number, low: number, high: number): readonly number[] {
  const first = Math.ceil(low / step - rounding);
  const last = Math.floor(high / step + rounding);
  const places = placesOf(step);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) =>
    Number(((first + index) * step).toFixed(places)),
  );
}

/** How many decimals the multiples of a step need. */
export function placesOf(step: number): number {
  return Math.max(0, -Math.floor(Math.log10(step) + rounding));
}
