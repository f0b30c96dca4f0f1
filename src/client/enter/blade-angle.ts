import type { Plain } from '../../entries/source/source.ts';

/** A pitch that was typed as a blade angle with its radius, such as `28° at 110 mm`, as the map it is written as; else as it is. */
export function withBladeAngle(typed: string): Plain {
  const match = /^\{?\s*(?:angle:\s*)?([\d.,]+\s*(?:°|deg))\s*(?:at|@|,\s*at:)\s*(\d[^}]*?)\s*\}?$/i.exec(
    typed,
  );
  const [, angle, at] = match ?? [];
  return angle === undefined || at === undefined ? typed : { angle, at };
}
