import { existsSync } from 'node:fs';
import { copyFile, mkdir } from 'node:fs/promises';
import { basename, dirname, join, relative } from 'node:path';
import { batchBeginning } from '../../src/entries/begin/batch.ts';
import { setNamed } from '../../src/entries/begin/beginning.ts';
import { isPlainName } from '../../src/entries/folder/attachments.ts';
import { typedPath } from '../folders/project-folder.ts';
import { UsageError } from '../terminal/command-line.ts';
import { printable } from '../terminal/printable.ts';
import { askName } from './ask-place.ts';
import { terminalAsker } from './asking.ts';
import { type Kind, runNew, type Told } from './command.ts';
import { finish } from './finish.ts';
import { newFile } from './making.ts';
import { freePlace, goodName, insideOnly } from './places.ts';

const kind: Kind = {
  name: 'rubber',
  beginning: batchBeginning,
  takes: '<batch>',
  intro: `Writes rubber/<batch>.md, with a stretch test where its log, the length between its marks and the mass of that length are given.`,
  own: {
    log: 'log of a stretch test (CSV), which is copied beside the batch',
  },
};

/** Begins a batch of rubber; gives the exit code. */
export function newRubber(argv: readonly string[]): Promise<number> {
  return runNew(kind, argv, async (told) => {
    const asker = await terminalAsker();
    const id = told.named ?? (asker === null ? '' : await askName(asker, 'Batch', null));
    goodName(id);
    const file = `rubber/${id}.md`;
    freePlace(told.folder, file, 'A test is added to it by hand.');
    const log = logToCopy(told);
    const fields = log === null ? told.fields : withLog(told.fields, log.name);
    return finish(
      newFile(batchBeginning, file),
      { ...told, fields, asker, beside: log === null ? null : () => copy(told.folder, log) },
      () => ({
        done: `Written to ${file}.`,
        next: [`A skein names it with batch: ${id}, and may then leave its strip out.`],
      }),
    );
  });
}

interface Log {
  readonly from: string;
  readonly name: string;
}

/** The log that was named. Throws a UsageError where it is not there, or its name is taken or may not be one. */
function logToCopy({ own, folder }: Told): Log | null {
  if (own.log === undefined) return null;
  const from = typedPath(own.log, 'new');
  const name = basename(from);
  if (!existsSync(from)) throw new UsageError(`There is no file ${printable(own.log)}.`);
  if (!isPlainName(name) || !/\.csv$/i.test(name))
    throw new UsageError(
      `A log is a CSV file with a plain name, such as fen-a.csv, but "${printable(name)}" was given.`,
    );
  const to = `rubber/${name}`;
  insideOnly(folder, to);
  if (existsSync(join(folder, to)) && relative(from, join(folder, to)) !== '')
    throw new UsageError(`There is ${to} already, and it is left as it is. Give the log another name.`);
  return { from, name };
}

function withLog(fields: Told['fields'], name: string): Told['fields'] {
  const next = setNamed(batchBeginning.schema, fields, 'stretch-tests.file', name);
  if (!next.ok) throw new UsageError(next.message);
  return next.fields;
}

async function copy(folder: string, { from, name }: Log): Promise<void> {
  const to = join(folder, 'rubber', name);
  if (existsSync(to)) return;
  await mkdir(dirname(to), { recursive: true });
  await copyFile(from, to);
}
