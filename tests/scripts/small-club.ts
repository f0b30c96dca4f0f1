import { spawn } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import sharp from 'sharp';

const start = resolve(import.meta.dirname, '../../scripts/start.mjs');

/** What a command printed and how it ended. */
export interface Outcome {
  readonly code: number | null;
  readonly out: string;
  readonly error: string;
}

/** Runs one of the project's commands in a process of its own, as npm would. */
export function run(
  command: string,
  args: readonly string[],
  environment: Readonly<Record<string, string>> = {},
): Promise<Outcome> {
  const { NODE_ENV: _, npm_lifecycle_event: __, SOURCE_DATE_EPOCH: ___, ...inherited } = process.env;
  return new Promise((done, failed) => {
    const child = spawn(process.execPath, [start, command, ...args], {
      env: { ...inherited, ...environment },
    });
    let out = '';
    let error = '';
    child.stdout.on('data', (text) => {
      out += text;
    });
    child.stderr.on('data', (text) => {
      error += text;
    });
    child.on('error', failed);
    child.on('close', (code) => done({ code, out, error }));
  });
}

/** Writes the smallest club with two entries and a photo; everything in it is invented. */
export async function writeSmallClub(content: string): Promise<void> {
  const write = (file: string, text: string) => {
    mkdirSync(dirname(join(content, file)), { recursive: true });
    writeFileSync(join(content, file), text);
  };
  write(
    'site.md',
    '---\nformat: 1\ntitle: Small club\naddress: https://small.example/air/\n---\nInvented.\n',
  );
  write(
    'challenges/summer.md',
    '---\ntitle: Summer\nopens: 2027-05-01\ncloses: 2027-09-30\ntarget: { time: 60 s }\ndivisions:\n' +
      '  - { id: free, name: Free flight, control: free }\n---\nFly.\n',
  );
  write(
    'entries/summer/lantern/entry.md',
    entryText('Lantern', 'pip', '\nphotos: [{ file: bench.png, alt: On the bench }]'),
  );
  write('entries/summer/moth/entry.md', entryText('Moth', 'sal', ''));
  const picture = { width: 600, height: 400, channels: 3, background: '#c0a070' } as const;
  writeFileSync(
    join(content, 'entries/summer/lantern/bench.png'),
    await sharp({ create: picture }).png().toBuffer(),
  );
}

/** A whole entry file, with more lines of front matter where given. */
export function entryText(name: string, builder: string, more: string): string {
  return `---
name: ${name}
builder: ${builder}
control: free${more}
wing: { span: 1.80 m, chord: 150 mm }
mass: { airframe: 168 g }
motors:
  - count: 1
    skein: { strip: { width: 1/8 in, thickness: 1.1 mm }, strands: 12, length: 620 mm, mass: 24.2 g }
flights:
  - { number: 1, date: 2027-05-22, time: 48.3 s, turns: 400 }
---
The glide was undefined at first, then good.
`;
}
