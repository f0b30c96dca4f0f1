import type { Batch } from '../../model/batch.ts';
import type { ThrustLog, TorqueLog } from '../../model/bench-log.ts';
import type { Entry } from '../../model/entry.ts';
import type { Site } from '../../model/site.ts';
import { readStretchLog, readThrustLog, readTorqueLog } from '../logs/read-log.ts';
import { type ReadText, readNamedLog, type UsableLog } from '../logs/read-named-log.ts';
import { readNamedPhoto } from '../photos/read-named-photo.ts';
import { problemOver } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { limits } from '../source/limits.ts';
import type { SourceDocument } from '../source/source.ts';
import { type Attachments, namesBeside, type With } from './attachments.ts';
import type { ReadEntry, ReadPhoto, Understood } from './content.ts';
import { logsNamed, photosNamed, type Reference, testLogsNamed } from './references.ts';

/** An entry with its photos and logs; one that cannot be used is left away, with its problem. */
export async function attachToEntry(entry: Understood<Entry>, from: Attachments): Promise<With<ReadEntry>> {
  const { source } = entry;
  const problems: Problem[] = [];
  const named = new Map(
    photosNamed(source)
      .toReversed()
      .map((reference) => [reference.name, reference]),
  );
  const photos: ReadPhoto[] = [];
  for (const [index, { file, alt }] of entry.value.photos.entries()) {
    const reference = named.get(file);
    if (reference === undefined) continue;
    if (index >= limits.photos) {
      problems.push(tooManyPhotos(source, reference));
      break;
    }
    const photo = await readNamedPhoto(source, reference, from, 'photo-missing');
    problems.push(...photo.problems);
    if (photo.value !== null) photos.push({ ...photo.value, alt });
  }
  const thrust = new Map<string, ThrustLog>();
  const torque = new Map<string, TorqueLog>();
  const read = new Set<string>();
  for (const { kind, ...reference } of logsNamed(source)) {
    if (read.has(`${kind} ${reference.name}`)) continue;
    read.add(`${kind} ${reference.name}`);
    if (kind === 'thrust') problems.push(...(await addLog(thrust, source, reference, from, readThrustLog)));
    else problems.push(...(await addLog(torque, source, reference, from, readTorqueLog)));
  }
  const folder = namesBeside(source, from).filter((name) => name !== 'entry.md');
  return { value: { ...entry, folder, photos, logs: { thrust, torque } }, problems };
}

/** A batch of rubber with the points of its logs. */
export async function attachToBatch(
  batch: Understood<Batch>,
  from: Attachments,
): Promise<With<Understood<Batch>>> {
  const { source, value } = batch;
  const problems: Problem[] = [];
  const stretchTests: Batch['stretchTests'][number][] = [];
  const stretchNamed = testLogsNamed(source, 'stretch-tests');
  for (const [index, test] of value.stretchTests.entries()) {
    const log = await readTestLog(source, stretchNamed[index], from, (file, text) =>
      readStretchLog(file, text, test.length.value),
    );
    problems.push(...log.problems);
    stretchTests.push({ ...test, ...log.value });
  }
  const torqueTests: Batch['torqueTests'][number][] = [];
  const torqueNamed = testLogsNamed(source, 'torque-tests');
  for (const [index, test] of value.torqueTests.entries()) {
    const log = await readTestLog(source, torqueNamed[index], from, readTorqueLog);
    problems.push(...log.problems);
    torqueTests.push({ ...test, ...log.value });
  }
  return { value: { source, value: { ...value, stretchTests, torqueTests } }, problems };
}

/** The logo of the site; null where it names none or it cannot be used. */
export async function attachToSite(
  site: Understood<Site> | null,
  from: Attachments,
): Promise<With<ReadPhoto | null>> {
  const pair = site?.source.root.pairs.find(({ key }) => key.text === 'logo');
  if (site === null || pair?.value.kind !== 'scalar' || site.value.logo === null)
    return { value: null, problems: [] };
  const reference = { name: pair.value.text, node: pair.value };
  const logo = await readNamedPhoto(site.source, reference, from, 'logo-missing');
  return { value: logo.value === null ? null : { ...logo.value, alt: '' }, problems: logo.problems };
}

async function addLog<Point>(
  logs: Map<string, UsableLog<Point>>,
  source: SourceDocument,
  reference: Reference,
  from: Attachments,
  readWith: ReadText<Point>,
): Promise<readonly Problem[]> {
  const { value, problems } = await readNamedLog(source, reference, from, readWith);
  if (value !== null) logs.set(reference.name, value);
  return problems;
}

async function readTestLog<Point>(
  source: SourceDocument,
  reference: Reference | null | undefined,
  from: Attachments,
  readWith: ReadText<Point>,
): Promise<With<UsableLog<Point> | null>> {
  return reference == null ? { value: null, problems: [] } : readNamedLog(source, reference, from, readWith);
}

function tooManyPhotos(source: SourceDocument, { name, node }: Reference): Problem {
  return problemOver(source, node.start, node.end, 'photo-too-many', {
    message: `"${name}" is the ${limits.photos + 1}th photo; at most ${limits.photos} are published, so this one and those after it are left out.`,
    found: name,
    accepted: `at most ${limits.photos} photos`,
  });
}
