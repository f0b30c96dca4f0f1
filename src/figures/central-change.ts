/**
 * What a moved input does to a figure: half the difference of up and down (JCGM 100:2008, 5.1.3, note 2). One-sided
 * where the figure cannot be worked out on the other side; null where it can on neither.
 */
export function centralChange(up: number, middle: number, down: number): number | null {
  const upIs = Number.isFinite(up);
  const downIs = Number.isFinite(down);
  if (upIs && downIs) return (up - down) / 2;
  if (upIs) return up - middle;
  return downIs ? middle - down : null;
}
