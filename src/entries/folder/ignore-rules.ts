/** A kind of file that has nothing to do with the site and is passed over without a word. */
export interface IgnoreRule {
  readonly name: string;
  /** Tests the plain name of a file or folder. */
  readonly matches: RegExp;
}

export const ignoreRules: readonly IgnoreRule[] = [
  { name: 'hidden file', matches: /^\./ },
  { name: 'read-me', matches: /^(?:readme|contributing)(?:\.[a-z]+)?$/i },
  { name: 'licence', matches: /^(?:licen[cs]e|copying)(?:\.[a-z]+)?$/i },
  { name: 'backup of an editor', matches: /(?:~|\.bak|\.swp|\.swo|\.tmp|\.orig|\.rej)$|^#.*#$/i },
  { name: 'file of the operating system', matches: /^(?:thumbs\.db|desktop\.ini|icon\r)$/i },
];

/** The rule by which a file or folder of this name is ignored; null where none says so. */
export function ignoredBy(name: string): string | null {
  return ignoreRules.find(({ matches }) => matches.test(name))?.name ?? null;
}
