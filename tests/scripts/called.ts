import type { Outcome } from './small-club.ts';

/** Takes the place of a stream's `write`. */
type Write = typeof process.stdout.write;

/**
 * Calls one of the project's commands in this process, with what it prints caught: the same command without the second or
 * more that a process of its own takes to begin. That `npm run` reaches it is for `run` to show, once for each command.
 * One call at a time: it holds the streams and the environment meanwhile.
 */
export async function call(
  command: string,
  args: readonly string[],
  environment: Readonly<Record<string, string>> = {},
): Promise<Outcome> {
  const { main } = (await import(`../../scripts/${command}.ts`)) as {
    main: (argv: readonly string[]) => Promise<number>;
  };
  const before = { env: process.env, out: process.stdout.write, error: process.stderr.write };
  let out = '';
  let error = '';
  const { NODE_ENV: _, npm_lifecycle_event: __, SOURCE_DATE_EPOCH: ___, ...inherited } = process.env;
  process.env = { ...inherited, ...environment };
  process.stdout.write = caught((text) => {
    out += text;
  });
  process.stderr.write = caught((text) => {
    error += text;
  });
  try {
    const code = await main(args);
    return { code, out, error };
  } finally {
    process.env = before.env;
    process.stdout.write = before.out;
    process.stderr.write = before.error;
  }
}

function caught(take: (text: string) => void): Write {
  return (chunk: string | Uint8Array) => {
    take(typeof chunk === 'string' ? chunk : Buffer.from(chunk).toString());
    return true;
  };
}
