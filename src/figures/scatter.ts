/** Mean and sample standard deviation (n − 1) of a list; the deviation of a single value is 0, of none NaN. */
export function scatter(values: readonly number[]): { mean: number; deviation: number } {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  if (values.length === 1) return { mean, deviation: 0 };
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, deviation: Math.sqrt(squares / (values.length - 1)) };
}
