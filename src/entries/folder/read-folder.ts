import type { Dirent } from 'node:fs';
import { open, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { folderChecks } from '../check-folder/folder-checks.ts';
import { readPhoto, tooManyBytes } from '../photos/read-photo.ts';
import { problemOf } from '../problems/make-problem.ts';
import type { Problem } from '../problems/problem.ts';
import { splitFile } from '../source/split-file.ts';
import { account } from './account.ts';
import { attachToBatch, attachToEntry, attachToSite } from './attach.ts';
import { type Attachments, foldersOf } from './attachments.ts';
import { concurrently } from './concurrently.ts';
import type { Content, FileAccount } from './content.ts';
import type { Disk } from './disk.ts';
import { gather } from './gather.ts';
import { ignoredBy } from './ignore-rules.ts';
import { checkListing, type Listing } from './listing.ts';

/** How many entries have their photos and logs read at a time. */
const atATime = 4;

/**
 * Reads a whole content folder: every file understood, every photo and log read, everything checked against everything
 * else, every file accounted for. Says what is wrong and decides nothing: strict or tolerant is the caller's. Bad input of
 * any kind is a problem; nothing throws.
 */
export async function readContent(directory: string): Promise<Content> {
  const listing = await listFolder(directory);
  const disk = diskAt(directory);
  const { gathered, problems } = await gather(listing, disk, splitFile);
  const from: Attachments = { disk, folders: foldersOf(listing.files), readPhoto, tooManyBytes };
  const logo = await attachToSite(gathered.site, from);
  const entries = await concurrently(gathered.entries, atATime, (entry) => attachToEntry(entry, from));
  const batches = await concurrently(gathered.batches, atATime, (batch) => attachToBatch(batch, from));
  const all: Problem[] = [
    ...listing.problems,
    ...checkListing(listing),
    ...problems,
    ...logo.problems,
    ...entries.flatMap(({ problems: ofEntry }) => ofEntry),
    ...batches.flatMap(({ problems: ofBatch }) => ofBatch),
    ...folderChecks.flatMap(({ check }) => check(gathered)),
  ];
  const everything = {
    ...gathered,
    logo: logo.value,
    entries: entries.map(({ value }) => value),
    batches: batches.map(({ value }) => value),
  };
  return account(listing, everything, all);
}

function diskAt(directory: string): Disk {
  return {
    async readBytes(path, limit) {
      try {
        const file = await open(join(directory, path), 'r');
        try {
          const { size } = await file.stat();
          return size > limit ? { is: 'too-large', size } : { is: 'read', bytes: await file.readFile() };
        } finally {
          await file.close();
        }
      } catch (fault) {
        return { is: 'unreadable', why: reasonOf(fault) };
      }
    },
  };
}

interface Found {
  readonly files: string[];
  readonly links: string[];
  readonly ignored: FileAccount[];
  readonly problems: Problem[];
}

async function listFolder(directory: string): Promise<Listing> {
  const found: Found = { files: [], links: [], ignored: [], problems: [] };
  for (let level = ['']; level.length > 0; ) {
    const deeper = await concurrently(level, atATime * 4, (folder) => listOne(directory, folder, found));
    level = deeper.flat();
  }
  found.files.sort();
  found.links.sort();
  return found;
}

/** Notes what stands in one folder and gives the folders below it. Links are noted and not followed. */
async function listOne(directory: string, folder: string, found: Found): Promise<string[]> {
  const items = await readdir(join(directory, folder), { withFileTypes: true }).catch(
    (fault: unknown): Dirent[] => {
      found.problems.push(unreadableFolder(folder, fault));
      return [];
    },
  );
  const below: string[] = [];
  for (const item of items) {
    const path = folder + item.name;
    const rule = ignoredBy(item.name);
    if (rule !== null)
      found.ignored.push({ file: item.isDirectory() ? `${path}/` : path, fate: 'ignored', why: rule });
    else if (item.isDirectory()) below.push(`${path}/`);
    else if (item.isFile()) found.files.push(path);
    else found.links.push(path);
  }
  return below;
}

function unreadableFolder(folder: string, fault: unknown): Problem {
  return problemOf(folder === '' ? '.' : folder, 'unreadable-folder', {
    message: `The folder could not be read from the disk (${reasonOf(fault)}).`,
    accepted: 'a folder that is there and may be read',
  });
}

function reasonOf(fault: unknown): string {
  return fault instanceof Error && 'code' in fault ? String(fault.code) : 'unknown reason';
}
