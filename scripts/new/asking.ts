/** One question at a terminal. */
export interface Asked {
  readonly title: string;
  /** What is meant, how it may be written, and an example. */
  readonly help: string;
  /** The words to choose from; null where anything may be typed. */
  readonly words: readonly string[] | null;
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
  agree(title: string): Promise<boolean>;
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
    async ask({ title, help, words, isOptional, proposed, check }) {
      if (words !== null) {
        // What Enter alone gives comes first: nothing, where nothing has to be said.
        const options = [...(isOptional ? [''] : []), ...words];
        const chosen = await select({
          message: `${title}. ${help}`,
          withGuide: false,
          options: options.map((value) => ({ value, label: value === '' ? 'leave it out' : value })),
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
    async agree(title) {
      return answered(await confirm({ message: title, initialValue: false, withGuide: false }));
    },
  };
}
