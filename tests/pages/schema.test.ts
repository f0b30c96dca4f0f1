import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { fieldSections } from '../../src/components/schema/field-sections.ts';
import { measurementsWritten } from '../../src/components/schema/measurements-written.ts';
import { describeShape } from '../../src/entries/describe/describe-shape.ts';
import { fileKinds } from '../../src/entries/schema/file-kinds.ts';
import { almanacOf } from './almanac-fixture.ts';
import { type BuiltPages, base, buildPages } from './build-site.ts';

function sectionsOf(name: string) {
  const found = fileKinds.find(({ kind }) => kind === name);
  if (found === undefined) throw new Error(`no kind ${name}`);
  return fieldSections(describeShape(found.schema));
}

describe('the tables of fields', () => {
  it('are the file, then each map in it, in the order of the content format', () => {
    expect(sectionsOf('entry').map(({ path }) => path)).toEqual([
      '',
      'builder',
      'photos',
      'wing',
      'wing.panels',
      'tailplane',
      'fin',
      'mass',
      'trim',
      'motors',
      'motors.skein',
      'motors.skein.strip',
      'motors.propeller',
      'motors.propeller.pitch',
      'motors.thrust-log',
      'setups',
      'setups.wing',
      'glides',
      'flights',
      'flights.release',
      'flights.weather',
      'flights.rubber',
      'withdrawn',
    ]);
  });

  it('lead from a map listed before to where it was', () => {
    const setups = sectionsOf('entry').find(({ path }) => path === 'setups');
    const inside = new Map(setups?.rows.map((row) => [row.path, row.inside]));
    expect(inside.get('setups.tailplane')).toBe('tailplane');
    // A setup may leave out the span, an entry may not.
    expect(inside.get('setups.wing')).toBe('setups.wing');
    expect(inside.get('setups.balance')).toBeNull();
  });

  it('say where any figure of the model may stand', () => {
    const open = sectionsOf('challenge').filter(({ figures }) => figures !== null);
    expect(open.map(({ path }) => path)).toEqual(['eligibility', 'divisions']);
  });
});

describe('the measurements', () => {
  it('are those that files have fields for, each with its units', () => {
    const accepted = new Map(measurementsWritten().map(({ name, accepted: forms }) => [name, forms]));
    expect(accepted.get('speed')).toBe('m/s, km/h, mph, kn or ft/s, such as "1.5 m/s" or "5 km/h"');
    expect(accepted.get('number of turns')).toBe('such as "640" or "54 x 10"');
    // Figures have impulses; nobody writes one into a file.
    expect(accepted.has('impulse')).toBe(false);
  });
});

describe('the pages', () => {
  let site: BuiltPages;
  beforeAll(async () => {
    site = await buildPages(almanacOf([]));
  });
  afterAll(() => site.remove());

  it.each(fileKinds.map(({ kind }) => kind))(
    '%s: every link within the page has its place, each once',
    async (kind) => {
      const html = await site.page(`schema/${kind}/`);
      const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
      const wanted = [...html.matchAll(/ href="#([^"]+)"/g)].map(([, id]) => id);
      expect(wanted.length).toBeGreaterThan(0);
      expect(wanted.filter((id) => !ids.includes(id))).toEqual([]);
      expect(new Set(ids).size).toBe(ids.length);
    },
  );

  it('have a line for each field, under its keys', async () => {
    const html = await site.page('schema/entry/');
    expect(html).toMatch(/<th scope="row" id="motors\.skein\.strip\.width">/);
    expect(html).toMatch(/<th scope="row" id="flights\.launch-height">/);
  });

  it('publish each schema under its own address', async () => {
    for (const { kind } of fileKinds) {
      const schema = JSON.parse(await site.page(`schema/${kind}.json`));
      expect(schema.$id).toBe(`https://marsh.example${base}schema/${kind}.json`);
    }
  });

  it('tell how an editor is pointed at it', async () => {
    const html = await site.page('schema/');
    expect(html).toContain(`# yaml-language-server: $schema=https://marsh.example${base}schema/entry.json`);
    for (const { kind } of fileKinds) expect(html).toContain(`href="${base}schema/${kind}/"`);
  });
});
