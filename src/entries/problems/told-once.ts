import type { Problem } from './problem.ts';

/** What was understood to be wrong, without characters that reading the file has told of on the same line. */
export function toldOnce(ofFile: readonly Problem[], understood: readonly Problem[]): Problem[] {
  const reported = new Set(ofFile.map(({ code, line }) => `${code} ${line}`));
  return understood.filter(
    ({ code, line }) => code !== 'forbidden-character' || !reported.has(`${code} ${line}`),
  );
}
