import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { pageWeight } from '../../../scripts/speed/page-weight.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'last-turn-weight-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function write(file: string, bytes: string | Uint8Array): void {
  mkdirSync(dirname(join(folder, file)), { recursive: true });
  writeFileSync(join(folder, file), bytes);
}

const weigh = () => pageWeight(folder, '/club/', 'a/index.html');

describe('the weight of a page', () => {
  it('takes fonts asked for at once as they are, and leaves other files of the same folder out', async () => {
    write('assets/latin.woff2', new Uint8Array(700));
    write('assets/greek.woff2', new Uint8Array(9_000));
    write(
      'a/index.html',
      '<link rel="preload" href="/club/assets/latin.woff2" as="font" type="font/woff2" crossorigin="anonymous">',
    );
    expect(await weigh()).toMatchObject({ fonts: 700, preloaded: ['/assets/latin.woff2'] });
  });

  it('takes the widest WebP of a picture, and a picture without one as it is, each once', async () => {
    write('p/1-480.webp', new Uint8Array(100));
    write('p/1-960.webp', new Uint8Array(300));
    write('p/1-960.jpg', new Uint8Array(5_000));
    write('p/2.jpg', new Uint8Array(20));
    const picture =
      '<picture><source type="image/webp" srcset="/club/p/1-480.webp 480w, /club/p/1-960.webp 960w">' +
      '<img src="/club/p/1-960.jpg" alt="a > b"></picture>';
    write('a/index.html', `${picture}${picture}<img src='/club/p/2.jpg' alt="">`);
    expect(await weigh()).toMatchObject({ images: 320 });
  });

  it('follows what a module imports, each file once', async () => {
    const one = 'import{b}from"./b.js";import "./c.js";';
    const two = 'import"./c.js";export const b=1;';
    const three = 'export{};';
    write('assets/a.js', one);
    write('assets/b.js', two);
    write('assets/c.js', three);
    write(
      'a/index.html',
      '<script type="module" src="/club/assets/a.js"></script><script>let x = 1;</script>',
    );
    // RFC 1952: a gzip member has a header of 10 bytes and a trailer of 8; such short texts hardly shrink.
    const least = [one, two, three].reduce((sum, text) => sum + text.length + 18, 0);
    const { script } = await weigh();
    expect(script).toBeGreaterThan(least - 15);
    expect(script).toBeLessThan(least + 15);
  });

  it('weighs style sheets and the page as gzip sends them', async () => {
    const long = `main{${'color:#123456;'.repeat(1000)}}`;
    write('assets/a.css', long);
    write(
      'a/index.html',
      '<!-- <link rel="stylesheet" href="gone.css"> --><link rel="stylesheet" href="/club/assets/a.css">',
    );
    const { css } = await weigh();
    expect(gunzipSync(gzipSync(long)).length).toBe(14_006);
    expect(css).toBeLessThan(300);
  });

  it('fails where a file that the page needs is not there', async () => {
    write('a/index.html', '<link rel="stylesheet" href="/club/assets/gone.css">');
    await expect(weigh()).rejects.toThrow(/gone\.css/);
  });
});
