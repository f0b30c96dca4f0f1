/**
 * Weight to add at the nose, kg, that moves the balance forward by a shift: m·Δx/(x_cg + nose − Δx). Law of the lever,
 * moments about the new balance: the model pulls down behind it with m·Δx, the weight ahead of it with b·(arm − Δx).
 * Negative where the balance is to move back: so much has to come out of the nose. Null where the shift reaches the
 * place of the weight or goes beyond it: no weight does that.
 *
 * @param mass flying mass before, kg
 * @param arm from the balance forward to where the weight sits (x_cg + nose), m
 * @param shift of the balance, forward positive, m
 */
export function noseBallast(mass: number, arm: number, shift: number): number | null {
  return shift < arm ? (mass * shift) / (arm - shift) : null;
}
