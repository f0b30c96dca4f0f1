/** One question at a terminal. */
export interface Asked {
  readonly title: string;
  /** What is meant, how it may be written, and an example. */
  readonly help: string;
  /** The words to choose from; null where anything may be typed. */
  readonly words: readonly string[] | null;
  /** What to show for each of the words; the words themselves where nothing is said. */
  readonly labels?: readonly string[];
  /** Whether no answer is an answer. */
  readonly isOptional: boolean;
  /** What is taken where nothing is typed. */
  readonly proposed?: string;
  /** What is wrong with an answer, in a sentence; null where nothing is. */
  check(answer: string): string | null;
}

/** Who answers: somebody at a terminal, or a test. Both questions throw Left where the one who is asked leaves. */
export interface Asker {
  /** The answer; null where there is none to an optional question. */
  ask(question: Asked): Promise<string | null>;
  /** @param proposed what Enter alone answers: no, where nothing is said */
  agree(title: string, proposed?: boolean): Promise<boolean>;
}

/** Whoever was asked has left: nothing is to be written. */
export class Left extends Error {}

/** Asks at a terminal; null where nobody sits at one. */
export async function terminalAsker(): Promise<Asker | null> {
  if (process.stdin.isTTY !== true || process.stdout.isTTY !== true) return null;
  const { confirm, isCancel, select, text } = await import('@clack/prompts');
  const answered = <Answer>(answer: Answer): Exclude<Answer, symbol> => {
    if (isCancel(answer)) throw new Left();
    return answer as Exclude<Answer, symbol>;
  };
  return {
    async ask({ title, help, words, labels, isOptional, proposed, check }) {
      if (words !== null) {
        // What Enter alone gives comes first: nothing, where nothing has to be said.
        const named = words.map((value, at) => ({ value, label: labels?.[at] ?? value }));
        const options = [...(isOptional ? [{ value: '', label: 'leave it out' }] : []), ...named];
        const chosen = await select({
          message: `${title}. ${help}`,
          withGuide: false,
          options,
        });
        return answered(chosen) || null;
      }
      const typed = await text({
        message: `${title}\n${help}`,
        withGuide: false,
        ...(proposed === undefined ? {} : { defaultValue: proposed }),
        placeholder: proposed ?? (isOptional ? 'Enter leaves it out' : ''),
        validate: (given) => {
          const answer = (given ?? '').trim();
          if (answer !== '') return check(answer) ?? undefined;
          return isOptional || proposed !== undefined ? undefined : 'This one is needed.';
        },
      });
      return answered(typed)?.trim() || (proposed ?? null);
    },
    async agree(title, proposed = false) {
      return answered(await confirm({ message: title, initialValue: proposed, withGuide: false }));
    },
  };
}
