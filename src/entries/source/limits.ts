/** How large what people commit may be. Kilobytes and megabytes are powers of ten, as file managers show them. */
export const limits = {
  frontMatterBytes: 256_000,
  fileBytes: 1_000_000,
  nesting: 8,
  /** Items of a list, where nothing else is said: far more than any of them needs. */
  items: 100,
  /** One item for each kind of motor. */
  motors: 12,
  /** Of one half of a wing. */
  panels: 20,
  flights: 1000,
  glides: 1000,
  photos: 12,
  photoBytes: 15_000_000,
  photoBytesUnusual: 3_000_000,
  photoPixels: 60_000_000,
  logBytes: 20_000_000,
  logRows: 200_000,
} as const;

/** How many bytes a text takes as UTF-8; 0 for one that surely keeps within the limit. */
export function bytesBeyond(text: string, limit: number): number {
  if (text.length * 3 <= limit) return 0;
  const bytes = new TextEncoder().encode(text).length;
  return bytes > limit ? bytes : 0;
}
