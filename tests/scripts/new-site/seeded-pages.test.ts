import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { seeds } from '../../../scripts/new/site/seeded-files.ts';
import { readMarkdown } from '../../../src/entries/read-markdown.ts';
import { floors, massFloor } from '../../../src/quantities/floors.ts';

const pages = join(seeds, 'common/content/pages');
const text = (name: string) => readFileSync(join(pages, name), 'utf8');
const measuring = text('how-to-measure.md');

/** The cells of a table's rows whose first cell is a name. */
function rows(of: string, heading: string): [string, string][] {
  const [, table = ''] = of.split(`| ${heading}`);
  return [...(table.split('\n\n')[0] ?? '').matchAll(/^\| ([^|-][^|]*) \| ([^|]*) \|$/gm)].map(
    ([, name = '', value = '']) => [name, value],
  );
}

describe('the pages a new club begins with', () => {
  it.each(readdirSync(pages))(
    '%s is Markdown, names no club and draws no line too wide for a phone',
    (name) => {
      expect(readMarkdown(text(name)).tooMuch).toBeNull();
      expect(text(name)).not.toMatch(/Tallowick|Elastic Society|demo/i);
      const blocks = [...text(name).matchAll(/```\n([\s\S]*?)```/g)].map(([, block = '']) => block);
      for (const line of blocks.flatMap((block) => block.split('\n')))
        expect(line.length, line).toBeLessThan(33);
    },
  );

  it('rule in their example on all that the rules they come with ask the evidence to show', () => {
    const asked = /shows: \[([^\]]+)\]/.exec(
      readFileSync(join(seeds, 'common/content/challenges/season.md'), 'utf8'),
    )?.[1];
    const seen = /--seen \\?\s*(\S+)/.exec(text('handbook.md'))?.[1];
    expect(asked?.split(', ').sort()).toEqual(['landing', 'launch', 'whole-flight']);
    expect(seen?.split(',').sort()).toEqual(['landing', 'launch', 'whole-flight']);
  });

  it('say every drawing in words too', () => {
    const drawings = measuring.split('```\n').length - 1;
    expect(drawings / 2).toBe(6);
    expect(measuring.match(/```\n\nIn words: /g)).toHaveLength(6);
  });
});

describe('everything a new club begins with', () => {
  const files = readdirSync(seeds, { recursive: true, withFileTypes: true })
    .filter((item) => item.isFile())
    .map((item) => join(item.parentPath, item.name));

  it('names commands that exist', () => {
    const { scripts } = JSON.parse(
      readFileSync(resolve(import.meta.dirname, '../../../package.json'), 'utf8'),
    );
    const named = files.flatMap((file) =>
      [...readFileSync(file, 'utf8').matchAll(/npm run ([a-z-]+)/g)].map(([, command]) => command),
    );
    expect(named.length).toBeGreaterThan(20);
    expect(named.filter((command) => !Object.hasOwn(scripts, command ?? ''))).toEqual([]);
  });
});

describe('how to measure', () => {
  // What the page promises is what the site takes: the code is the one source, the page repeats it.
  it('names the ± that the site takes', () => {
    const share = ({ share }: { share: number }) => `${Number((share * 100).toPrecision(3))} %`;
    expect(rows(measuring, 'measured')).toEqual([
      ['span', share(floors.span)],
      ['chord', share(floors.chord)],
      ['arm', share(floors.arm)],
      ['area', share(floors.area)],
      ['balance', `${floors.balance.least * 1000} mm`],
      ['mass', share(massFloor)],
      ['width and thickness of strip', share(floors.strip)],
      ['length of a skein', share(floors['skein-length'])],
      ['diameter of a propeller', share(floors['propeller-diameter'])],
      ['pitch of a propeller', share(floors.pitch)],
      ['break turns', share(floors['break-turns'])],
      ['angle', `${(floors.angle.least * 180) / Math.PI}°`],
    ]);
  });

  // sin 2° = 0.034899, sin 6° = 0.104528, sin 12° = 0.207912 (tables of sines).
  it('gives the rise of a panel by its sine', () => {
    expect(rows(measuring, 'rise over one metre of panel')).toEqual([
      ['35 mm', '2°'],
      ['105 mm', '6°'],
      ['208 mm', '12°'],
    ]);
  });

  // By hand: 3.25 g / (100 cm × 0.93 g/cm³) = 0.03495 cm²; 3.175 mm × 1.1 mm = 3.4925 mm². tan 28° = 0.5317 (tables).
  it('works its examples out rightly', () => {
    expect(measuring).toContain('3.25 ÷ 0.93 = 3.49 mm²');
    expect(measuring).toContain('3.175 mm × 1.1 mm');
    expect(measuring).toContain('2π × 110 mm × 0.5317 = 367 mm');
    expect(3.25 / 0.93).toBeCloseTo(3.175 * 1.1, 1);
    expect(Math.round(2 * Math.PI * 110 * 0.5317)).toBe(367);
  });
});
