import { globSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checked } from '../../../src/client/enter/checked.ts';
import type { Control } from '../../../src/client/enter/control.ts';
import { controlMarkup } from '../../../src/client/enter/control-markup.ts';
import { idOf } from '../../../src/client/enter/id-of.ts';
import { formOf } from '../../../src/client/enter/sections.ts';
import { withField } from '../../../src/client/enter/with-field.ts';
import { describeFields } from '../../../src/entries/describe/describe-shape.ts';
import { entry } from '../../../src/entries/schema/entry.ts';
import type { Path, Plain } from '../../../src/entries/source/source.ts';

const root = resolve(import.meta.dirname, '../../..');
const nowhere = { challenge: 'c', id: 'e' };
/** Every entry of the demo that can be read, and those of the museum of the format. */
const texts = globSync(['content/entries/*/*/entry.md', 'tests/cases/format-1/**/entries/*/*/entry.md'], {
  cwd: root,
})
  .sort()
  .map((file) => readFileSync(join(root, file), 'utf8'))
  .filter((text) => checked(text, nowhere).plain !== null);

function plainOf(text: string): Plain {
  const { plain } = checked(text, nowhere);
  if (plain === null) throw new Error('cannot be read');
  return plain;
}

/** All fields of the form, those within parts and lists too. */
function allOf(plain: Plain): Control[] {
  const within = (control: Control): Control[] => {
    if (control.kind === 'group')
      return [control, ...[...control.inSight, ...control.folded].flatMap(within)];
    if (control.kind === 'items') return [control, ...control.items.flatMap(within)];
    if (control.kind === 'named') return [control, ...control.rows.flatMap(within)];
    return [control];
  };
  return formOf(plain, new Set()).flatMap(({ inSight, more }) => [...inSight, ...more].flatMap(within));
}

type Line = Extract<Control, { kind: 'line' }>;

const lineOf = (plain: Plain, path: Path) =>
  allOf(plain).find(
    (control): control is Line => control.kind === 'line' && idOf(control.path) === idOf(path),
  );

describe('the form', () => {
  it('sees entries of many kinds', () => {
    expect(texts.length).toBeGreaterThan(20);
  });

  it('asks for every key of an entry once', () => {
    const asked = formOf({}, new Set()).flatMap(({ inSight, more }) =>
      [...inSight, ...more].map(({ path }) => String(path[0])),
    );
    expect(asked.sort()).toEqual(
      describeFields(entry)
        .map(({ key }) => key)
        .sort(),
    );
  });

  it('has a field for everything that people wrote', () => {
    for (const text of texts) {
      const odd = allOf(plainOf(text)).filter(({ kind }) => kind === 'odd');
      expect(odd.map(({ path }) => path.join('.'))).toEqual([]);
    }
  });

  it('gives every part of it an id of its own, whatever is unfolded', () => {
    const everything = { has: () => true } as unknown as ReadonlySet<string>;
    for (const text of texts.slice(0, 8)) {
      const markup = formOf(plainOf(text), new Set())
        .flatMap(({ inSight, more }) => [...inSight, ...more])
        .map((control) => controlMarkup(control, everything).text)
        .join('');
      const ids = [...markup.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
      expect(ids.length).toBeGreaterThan(100);
      expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
    }
  });

  it('writes texts of people as text', () => {
    const name = '"><script>alert(1)</script>';
    const markup = formOf({ name, structure: { [name]: name } }, new Set())
      .flatMap(({ inSight, more }) => [...inSight, ...more])
      .map((control) => controlMarkup(control, new Set()).text)
      .join('');
    expect(markup).not.toContain('<script');
    expect(markup).toContain('&lt;script&gt;');
  });
});

describe('a field of the form', () => {
  // A law: whatever line of whatever entry is changed, the text says it afterwards, and nothing else.
  it('shows what was put in it, and puts back what stood there', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...texts),
        fc.nat(),
        fc.constantFrom('12 mm', 'a: b # c', '1,5 m', 'x'),
        (text, nth, value) => {
          const lines = allOf(plainOf(text)).filter((control): control is Line => control.kind === 'line');
          const line = lines[nth % lines.length];
          if (line === undefined) return;
          const put = withField(text, checked(text, nowhere), line.path, value);
          if (!put.ok) throw new Error(`${line.path.join('.')}: ${put.why}`);
          expect(lineOf(plainOf(put.text), line.path)?.written).toBe(value);
          const back = withField(
            put.text,
            checked(put.text, nowhere),
            line.path,
            line.written === '' ? null : line.written,
          );
          if (!back.ok) throw new Error(`${line.path.join('.')}: ${back.why}`);
          expect(allOf(plainOf(back.text)).filter(({ kind }) => kind === 'line')).toEqual(lines);
        },
      ),
      { seed: 20261125, numRuns: 80 },
    );
  }, 120_000);

  it('leaves the text as it is where it says what stands there', () => {
    const text = '---\nname: "Heddle"\nonboard: [ release ]\n---\n';
    expect(withField(text, checked(text, nowhere), ['name'], 'Heddle')).toEqual({ ok: true, text });
    expect(withField(text, checked(text, nowhere), ['onboard'], ['release'])).toEqual({ ok: true, text });
  });

  it('says why nothing can be put into a text that cannot be read', () => {
    const text = '---\nname: [Heddle\n---\n';
    const put = withField(text, checked(text, nowhere), ['name'], 'Heddle');
    expect(put.ok ? '' : put.why).toMatch(/^The text cannot be read/);
  });
});
