import { createHash } from 'node:crypto';

/** The seal of a flight: `1-` and the first 16 hexadecimal digits of the SHA-256 of its canonical JSON as UTF-8. */
export function sealOf(canonical: string): string {
  return `1-${createHash('sha256').update(canonical, 'utf8').digest('hex').slice(0, 16)}`;
}
