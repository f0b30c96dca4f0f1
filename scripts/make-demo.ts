import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { entrantsOf } from '../src/almanac/entrants.ts';
import { sealFlights } from '../src/almanac/seal-flights.ts';
import { freeze } from '../src/contest/frozen/freeze.ts';
import { judge } from '../src/contest/judge.ts';
import { factsAsRuled } from '../src/contest/verdicts/as-ruled.ts';
import { readContent } from '../src/entries/folder/read-folder.ts';
import { rewrite } from '../src/entries/write/rewrite.ts';
import { sealAcceptance } from '../src/entries/write/rule-flight.ts';
import { frozenFile } from '../src/publish/frozen-file.ts';
import { demoLogs } from './demo/demo-logs.ts';
import { benchPictures, encoded, planPictures } from './demo/demo-pictures.ts';
import { contentFolder } from './folders/content-folder.ts';
import { generatorVersion } from './folders/generator-version.ts';
import { seeds } from './new/site/seeded-files.ts';
import { runCommand } from './terminal/command-line.ts';

/** The demo's closed seasons, and the day on which the result of each was frozen. */
const closedSeasons = [
  { challenge: 'slow-thread-2025', closed: '2025-12-03' },
  { challenge: 'hall-thread-2026', closed: '2026-04-22' },
] as const;

/** Pages of every new club that the demo shows too, and what the demo called one before. */
const seededPages = [
  { page: 'field-safety', formerly: null },
  { page: 'glossary', formerly: 'words-of-the-shed' },
  { page: 'how-to-measure', formerly: null },
] as const;

const help = `npm run make-demo -- [--content DIR]

Makes what the demo's people did not write: drawings, bench logs, the pages it shares with every new club, the seals and
facts of the rulings, and the frozen results of the closed seasons. What it makes is committed; it is needed again only where the demo itself changes.

  --content DIR   the demo's folder (else content)`;

const command = { name: 'make-demo', help, options: { content: 'value' }, takes: null } as const;

/** Makes the demo's drawings, logs, shared pages, seals and frozen results; gives the exit code. */
export function main(argv: readonly string[]): Promise<number> {
  return runCommand(command, argv, async (values) => {
    const content = contentFolder(values.content, command.name);
    await writeLogs(content);
    await writePictures(content);
    await writePages(content);
    await writeSeals(content);
    for (const season of closedSeasons) await writeFrozenResult(content, season);
    return 0;
  });
}

async function writeLogs(content: string): Promise<void> {
  for (const [file, log] of Object.entries(demoLogs)) await write(content, file, log());
}

/** Plans are drawn from the measurements of their entries, so that drawing and entry cannot differ. */
async function writePictures(content: string): Promise<void> {
  const { entries } = await readContent(content);
  const plans = planPictures((wanted) => {
    const found = entries.find(({ value }) => `${value.challenge}/${value.id}` === wanted)?.value;
    if (found === undefined)
      throw new Error(`The entry ${wanted} cannot be read; \`npm run check\` says why.`);
    return { name: found.name, design: found.setups[0].design };
  });
  for (const [file, draw] of Object.entries({ ...benchPictures, ...plans }))
    await write(content, file, await encoded(draw(), file));
}

/** One text on measuring, not two: whoever mends it mends the seed. */
async function writePages(content: string): Promise<void> {
  for (const { page, formerly } of seededPages) {
    const file = `pages/${page}.md`;
    const seed = await readFile(join(seeds, 'common/content', file), 'utf8');
    const changes = formerly === null ? [] : [{ do: 'set', at: ['formerly'], value: [formerly] } as const];
    const shared = rewrite(file, seed, changes);
    if (!shared.ok) throw new Error(shared.why);
    await write(content, file, shared.text);
  }
}

async function writeSeals(content: string): Promise<void> {
  const read = await readContent(content);
  const challenges = new Map(read.challenges.map(({ value }) => [value.id, value]));
  for (const { read: entry, contender } of entrantsOf(read, sealFlights)) {
    const challenge = challenges.get(contender.entry.challenge);
    if (contender.ruling === null || challenge === undefined) continue;
    const seals = sealFlights(entry);
    const file = `rulings/${contender.entry.challenge}/${contender.entry.id}.md`;
    const text = await readFile(join(content, file), 'utf8');
    const changes = contender.ruling.flights.flatMap(({ flight: number, verdict }, index) => {
      const flight = contender.entry.flights.find((each) => each.number === number);
      const seal = seals.get(number);
      if (verdict !== 'accepted' || flight === undefined || seal === undefined) return [];
      return sealAcceptance(index, { seal, facts: factsAsRuled(challenge, contender, flight) });
    });
    const sealed = rewrite(file, text, changes);
    if (!sealed.ok) throw new Error(sealed.why);
    await write(content, file, sealed.text);
  }
}

async function writeFrozenResult(content: string, season: (typeof closedSeasons)[number]): Promise<void> {
  const read = await readContent(content);
  const challenge = read.challenges.find(({ value }) => value.id === season.challenge)?.value;
  if (challenge === undefined)
    throw new Error(`The challenge ${season.challenge} cannot be read; \`npm run check\` says why.`);
  const contenders = entrantsOf(read, sealFlights)
    .map(({ contender }) => contender)
    .filter(({ entry }) => entry.challenge === challenge.id);
  const result = judge(challenge, contenders, { now: season.closed, frozen: null });
  const frozen = freeze(challenge, result, contenders, {
    generator: await generatorVersion(),
    closed: season.closed,
  });
  await write(content, `results/${challenge.id}.json`, frozenFile(frozen));
}

async function write(content: string, file: string, written: string | Buffer): Promise<void> {
  const path = join(content, file);
  await mkdir(dirname(path), { recursive: true });
  await writeFile(path, written);
}
