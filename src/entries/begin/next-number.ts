/** The number of a new flight: one more than the highest that was ever given, since none is given twice. */
export function nextNumber(given: Iterable<number>): number {
  let highest = 0;
  for (const number of given) if (Number.isSafeInteger(number) && number > highest) highest = number;
  return highest + 1;
}
