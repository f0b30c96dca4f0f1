import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { restore } from '../../src/publish/restore.ts';
import { refusalToBuildInto } from '../../src/publish/site-folder.ts';
import { swap, swapSteps } from '../../src/publish/swap.ts';
import { placesBeside } from '../../src/publish/swap-places.ts';

const child = join(import.meta.dirname, 'killed-swap.ts');
let folder = '';
let out = '';
let built = '';

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'last-turn-swap-'));
  out = join(folder, 'dist');
  built = join(folder, 'built');
  writeSite(built, 'new');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function writeSite(path: string, words: string): void {
  mkdirSync(join(path, 'page'), { recursive: true });
  writeFileSync(join(path, 'index.html'), words);
  writeFileSync(join(path, 'page', 'index.html'), words);
  writeFileSync(join(path, 'addresses.json'), '{"format":1,"addresses":["/","/page/"]}');
}

/** The site's word where every file is there and says the same; null for a broken or absent site. */
function wholeSite(path: string): string | null {
  try {
    const words = ['index.html', 'page/index.html'].map((file) => readFileSync(join(path, file), 'utf8'));
    readFileSync(join(path, 'addresses.json'));
    return words[0] === words[1] ? (words[0] ?? null) : null;
  } catch {
    return null;
  }
}

function killAt(step: string) {
  return spawnSync(process.execPath, [child, built, out, step], { encoding: 'utf8' });
}

describe('a swap', () => {
  it('puts the new site in place of the old one and leaves nothing beside it', async () => {
    writeSite(out, 'old');
    const steps: string[] = [];
    await swap(built, out, { reached: (step) => void steps.push(step) });
    expect(wholeSite(out)).toBe('new');
    expect(steps).toEqual([...swapSteps]);
    expect(readdirSync(folder)).toEqual(['dist']);
  });

  it('works where there is no old site and no folder above it yet', async () => {
    const deep = join(folder, 'a', 'b', 'dist');
    await swap(built, deep, { reached: () => {} });
    expect(wholeSite(deep)).toBe('new');
  });

  it.each(swapSteps)('killed after "%s" leaves a whole site that the next command restores', async (step) => {
    writeSite(out, 'old');
    const killed = killAt(step);
    expect(killed.signal, killed.stderr).toBe('SIGKILL');
    const { next, last } = placesBeside(out);
    const sites = [out, next, last].map(wholeSite);
    expect(sites.some((words) => words === 'old' || words === 'new')).toBe(true);
    await restore(out);
    expect(wholeSite(out)).toBe(step === 'staged' ? 'old' : 'new');
    expect(readdirSync(folder).filter((name) => name.startsWith('.dist'))).toEqual([]);
  });

  it.each(swapSteps.slice(1))('killed after "%s" of a first build leaves the new site', async (step) => {
    expect(killAt(step).signal).toBe('SIGKILL');
    await restore(out);
    expect(wholeSite(out)).toBe('new');
  });

  it('never stands without a whole site and its marker while it runs', async () => {
    writeSite(out, 'old');
    const seen: (string | null)[] = [];
    await swap(built, out, {
      reached: () => {
        const { next, last } = placesBeside(out);
        seen.push(wholeSite(out) ?? wholeSite(next) ?? wholeSite(last));
      },
    });
    expect(seen).not.toContain(null);
  });

  it('refuses while another living process swaps there', async () => {
    writeSite(out, 'old');
    // The process that started this one is alive and not this one.
    writeFileSync(placesBeside(out).owner, String(process.ppid));
    await expect(swap(built, out, { reached: () => {} })).rejects.toThrow(
      /Another build is putting its site/,
    );
    expect(wholeSite(out)).toBe('old');
  });
});

describe('restoring', () => {
  it('does nothing where no swap was under way', async () => {
    writeSite(out, 'old');
    expect(await restore(out)).toBe('nothing');
    expect(wholeSite(out)).toBe('old');
  });

  it('brings the old site back where only that is left', async () => {
    const { last, marker } = placesBeside(out);
    writeSite(last, 'old');
    writeFileSync(marker, '{}');
    expect(await restore(out)).toBe('brought back');
    expect(wholeSite(out)).toBe('old');
  });

  it('can be killed itself: a second run ends where the first would have', async () => {
    writeSite(out, 'old');
    killAt('marked');
    const { last, next } = placesBeside(out);
    // What a restore leaves when it is killed between its two moves.
    rmSync(last, { recursive: true, force: true });
    mkdirSync(last);
    rmSync(out, { recursive: true });
    expect(wholeSite(next)).toBe('new');
    await restore(out);
    expect(wholeSite(out)).toBe('new');
  });
});

describe('a folder to build into', () => {
  it('may be absent, empty, or a site built here', async () => {
    expect(await refusalToBuildInto(out)).toBeNull();
    mkdirSync(out);
    expect(await refusalToBuildInto(out)).toBeNull();
    writeSite(out, 'old');
    expect(await refusalToBuildInto(out)).toBeNull();
  });

  it('is refused where it holds anything else', async () => {
    mkdirSync(out);
    writeFileSync(join(out, 'thesis.txt'), 'mine');
    expect(await refusalToBuildInto(out)).toBe(
      `${out} holds files that no build of this generator made (there is no addresses.json in it), ` +
        'so it is left alone. Choose another place with --out, or empty the folder.',
    );
    expect(await refusalToBuildInto(join(out, 'thesis.txt'))).toContain('is a file, not a folder');
  });
});
