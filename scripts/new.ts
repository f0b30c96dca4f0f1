import { didYouMean } from '../src/entries/problems/did-you-mean.ts';

const help = `npm run new -- entry <challenge>/<entry> [options]      an aircraft
npm run new -- flight <challenge>/<entry> [options]     a flight, written into the file of its aircraft
npm run new -- setup <challenge>/<entry> [options]      what was changed on an aircraft, likewise
npm run new -- challenge <challenge> [options]          the rules of a challenge
npm run new -- rubber <batch> [options]                 a batch of rubber strip
npm run new -- site <folder> [options]                  a club's own folder: content, checks, publishing

Writes a new file of the content folder, or a flight or a setup into one that is there, and says what \`check\` says of it. At a
terminal it asks for what is missing. No file is ever written over, and nothing is written that cannot be read.
Each kind lists its options with --help, such as \`npm run new -- entry --help\`.

Exit code: 0, 2 for a wrong use.`;

type Maker = (argv: readonly string[]) => Promise<number>;

/** Each kind in a file of its own, read when it is asked for. */
const kinds: Readonly<Record<string, () => Promise<Maker>>> = {
  entry: async () => (await import('./new/entry.ts')).newEntry,
  flight: async () => (await import('./new/flight.ts')).newFlight,
  setup: async () => (await import('./new/setup.ts')).newSetup,
  challenge: async () => (await import('./new/challenge.ts')).newChallenge,
  rubber: async () => (await import('./new/rubber.ts')).newRubber,
  site: async () => (await import('./new/site.ts')).newSite,
};

/** Begins something new in a content folder; gives the exit code. */
export async function main([kind = '--help', ...rest]: readonly string[]): Promise<number> {
  if (kind === '--help' || kind === '-h') {
    process.stdout.write(`${help}\n`);
    return 0;
  }
  const maker = Object.hasOwn(kinds, kind) ? kinds[kind] : undefined;
  if (maker !== undefined) return (await maker())(rest);
  const known = Object.keys(kinds);
  const near = didYouMean(kind, known);
  process.stderr.write(
    `\`new\` knows ${known.join(', ')}, but "${kind}" was given.${near === null ? '' : ` Did you mean ${near}?`}\n` +
      '`npm run new -- --help` says what each is.\n',
  );
  return 2;
}
