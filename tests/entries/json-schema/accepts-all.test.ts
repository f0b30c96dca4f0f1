import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { parse } from 'yaml';
import type * as z from 'zod';
import { describeShape } from '../../../src/entries/describe/describe-shape.ts';
import { jsonOfShape } from '../../../src/entries/json-schema/json-of-shape.ts';
import { limitPattern, quantityPattern } from '../../../src/entries/json-schema/quantity-pattern.ts';
import { date, moment, monthOrDate } from '../../../src/entries/schema/date-field.ts';
import { flying } from '../../../src/entries/schema/flying-rules.ts';
import { balance, count, plainNumber, quantity } from '../../../src/entries/schema/quantity-field.ts';
import {
  colour,
  entryAddress,
  link,
  mailAddress,
  siteAddress,
  slug,
  text,
} from '../../../src/entries/schema/text-field.ts';
import { timeZone } from '../../../src/entries/schema/time-zone.ts';
import { yesNo } from '../../../src/entries/schema/word-field.ts';
import { readLimit, readTieBreak } from '../../../src/entries/understand/rule-words.ts';
import { figureDefinitions } from '../../../src/figures/registry.ts';
import { parseQuantity } from '../../../src/quantities/parse.ts';
import { spellingsOf } from '../../../src/quantities/units.ts';
import { kinds } from '../../quantities/kinds.ts';
import { strict } from './editor.ts';

// The law: what the reader of the files accepts, an editor accepts. Texts are made from the pieces that people write, and
// only those count that the reader accepts; each test sees to it that these are many.

const run = { seed: 20270509, numRuns: 400 } as const;

const numbers = fc.constantFrom(
  '3',
  '0',
  '3.20',
  '3,2',
  '.5',
  '1e3',
  '1/8',
  '3 1/8',
  '3-1/8',
  '½',
  '3½',
  '-4',
  '−4',
  '+2',
  '54 x 10',
  '54×10',
);
const gaps = fc.constantFrom('', ' ', '  ', '\u00a0', '\u202f', '-', ' - ', '·', '.');
const joints = fc.constantFrom('.', '·', '*', ' ', '-', ' · ', '×');

/** A unit of a kind as people write it: any case, any sign between its factors, any form of its powers. */
const unitOf = (kind: (typeof kinds)[number]) =>
  fc
    .tuple(
      fc.constantFrom(...spellingsOf(kind).keys()),
      joints,
      fc.constantFrom('2', '²', '^2'),
      fc.constantFrom('asIs', 'upper', 'lower', 'square'),
      fc.constantFrom('"', '″', '”', "''"),
      fc.constantFrom('°', 'º', '˚'),
    )
    .map(([unit, joint, power, form, inches, degrees]) => {
      const written = unit
        .replaceAll('.', joint)
        .replace(/2$/, power)
        .replaceAll('"', inches)
        .replaceAll('°', degrees);
      if (form === 'square') return written.replace(/^sq/, 'square');
      return form === 'upper' ? written.toUpperCase() : form === 'lower' ? written.toLowerCase() : written;
    });

describe('a quantity that the reader accepts', () => {
  test.each(kinds)('%s: has the pattern of its kind', (kind) => {
    const pattern = new RegExp(quantityPattern(kind), 'u');
    const one = fc.tuple(numbers, gaps, unitOf(kind)).map((parts) => parts.join(''));
    const whole = fc.oneof(
      one,
      fc.tuple(one, fc.constantFrom(' ± ', ' +/- ', ' '), one).map((parts) => parts.join('')),
      fc.tuple(numbers, fc.constantFrom(' ± ', '±'), one).map((parts) => parts.join('')),
    );
    let accepted = 0;
    fc.assert(
      fc.property(whole, (written) => {
        if (!parseQuantity(written, kind, { negative: true }).ok) return;
        accepted++;
        expect(written).toMatch(pattern);
      }),
      { ...run, numRuns: 1500 },
    );
    expect(accepted).toBeGreaterThan(100);
  });

  test.each([
    ['temperature', '14℃'],
    ['temperature', '57 ℉'],
    ['time', '2:05.4'],
    ['length', '10′ 6″'],
    ['length', '3.20 ± 0.01 m'],
    ['pressure', '29.9 "Hg'],
  ] as const)('%s: %s', (kind, written) => {
    expect(parseQuantity(written, kind).ok).toBe(true);
    expect(written).toMatch(new RegExp(quantityPattern(kind), 'u'));
  });

  test('a limit in words has the pattern of limits, and of limits on its kind', () => {
    const sentence = fc
      .constantFrom(...kinds)
      .chain((kind) =>
        fc
          .tuple(
            fc.constantFrom(
              'at least ',
              'At  most ',
              'MORE THAN ',
              ' less than ',
              '',
              '17 to ',
              '1 m to ',
              '0.1  TO  ',
            ),
            numbers,
            gaps,
            unitOf(kind),
          )
          .map((parts) => ({ kind, written: parts.join('') })),
      );
    let accepted = 0;
    fc.assert(
      fc.property(sentence, ({ kind, written }) => {
        if (!readLimit(written, kind).ok) return;
        accepted++;
        expect(written).toMatch(new RegExp(limitPattern(), 'u'));
        expect(written).toMatch(new RegExp(limitPattern(kind), 'u'));
      }),
      { ...run, numRuns: 4000 },
    );
    expect(accepted).toBeGreaterThan(300);
  });
});

const digits = fc.stringMatching(/^[ +]?[0-9]{1,4}(\.0|e0|,5)?$/);
const dates = fc.stringMatching(/^ ?20[0-3][0-9]-[01][0-9]-[0-3][0-9] ?$/);
const moments = fc
  .tuple(
    fc.stringMatching(/^20[0-3][0-9]-0[1-9]-[012][0-9]$/),
    fc.constantFrom(' ', 'T', 't', '  '),
    fc.stringMatching(/^[012][0-9]:[0-5][0-9](:[0-5][0-9])?$/),
    fc.constantFrom('', 'Z', ' z', '+01:00', '-0330', '−05:00', ' +13:45'),
  )
  .map((parts) => parts.join(''));
const addresses = fc
  .tuple(
    fc.constantFrom('https://', 'HTTP://', 'ftp://', ''),
    fc.webAuthority(),
    fc.constantFrom('', '/', '/a/b?c=d#e', '#top', '?q'),
  )
  .map((parts) => parts.join(''));
const names = fc.stringMatching(/^[a-z0-9-]{1,70}$/);
const rule = (key: 'flights' | 'timekeepers') => flying.shape[key].unwrap();

/** Each form of text, with texts of the kind; the share of them that the reader has to accept for the test to mean something. */
const forms: readonly (readonly [string, z.ZodType, fc.Arbitrary<string>])[] = [
  ['count', count(1), digits],
  ['plain number', plainNumber(), fc.oneof(digits, numbers)],
  ['turns', quantity('turns'), fc.oneof(digits, numbers)],
  [
    'share',
    quantity('share'),
    fc.oneof(fc.stringMatching(/^[01]?[.,][0-9]{1,2}$/), fc.stringMatching(/^[0-9]{1,2} ?%$/)),
  ],
  [
    'balance',
    balance(),
    fc.tuple(numbers, fc.constantFrom(' %', '%', ' mm', ' in', '"')).map((parts) => parts.join('')),
  ],
  [
    'yes or no',
    yesNo(),
    fc.constantFrom('true', 'True', 'TRUE', 'yes', 'YES', 'No', 'false', 'FALSE', 'maybe'),
  ],
  ['date', date(), dates],
  ['moment', moment(), fc.oneof(dates, moments)],
  ['month or date', monthOrDate(), fc.oneof(dates, fc.stringMatching(/^20[0-9]{2}-[01][0-9]$/))],
  ['slug', slug(), names],
  ['entry address', entryAddress(), fc.tuple(names, names).map((parts) => parts.join('/'))],
  ['link', link(), addresses],
  ['site address', siteAddress(), addresses],
  ['mail address', mailAddress(), fc.emailAddress()],
  ['colour', colour(), fc.stringMatching(/^#[0-9A-Fa-f]{5,7}$/)],
  ['time zone', timeZone(), fc.stringMatching(/^[A-Z][a-z]{2,5}(\/[A-Z][a-z_]{2,6}){0,2}$/)],
  [
    'allowance',
    rule('flights'),
    fc.tuple(fc.constantFrom('', 'at most ', ' at  most  '), digits).map((parts) => parts.join('')),
  ],
  [
    'timekeepers',
    rule('timekeepers'),
    fc.tuple(digits, fc.constantFrom('', ' or video', ' or  video ')).map((parts) => parts.join('')),
  ],
  ['text', text(), fc.string({ minLength: 1, maxLength: 40 })],
];

describe('a text that the reader accepts, an editor accepts', () => {
  it('a step of a tie-break', () => {
    const validate = new Ajv2020(strict).compile(jsonOfShape({ kind: 'tie-break' }));
    const ids = figureDefinitions.map(({ id }) => id);
    const steps = fc
      .tuple(
        fc.constantFrom('larger', 'smaller', 'earlier', 'longer'),
        fc.constantFrom(' ', '  '),
        fc.constantFrom('flight', ...ids),
      )
      .map((parts) => parts.join(''));
    let accepted = 0;
    fc.assert(
      fc.property(fc.oneof(steps, fc.constantFrom('next-best-flight', ' next-best-flight ')), (step) => {
        if (!readTieBreak(step).ok) return;
        accepted++;
        expect([step, validate(step)]).toEqual([step, true]);
      }),
      run,
    );
    expect(accepted).toBeGreaterThan(40);
  });

  it.each(forms)('%s', (_, schema, texts) => {
    const validate = new Ajv2020(strict).compile(jsonOfShape(describeShape(schema)));
    let accepted = 0;
    fc.assert(
      fc.property(texts, (written) => {
        if (!schema.safeParse(written).success) return;
        accepted++;
        expect([written, validate(written)]).toEqual([written, true]);
        const plain = asPlainText(written);
        if (plain !== null) expect([plain, validate(plain)]).toEqual([plain, true]);
      }),
      run,
    );
    expect(accepted).toBeGreaterThan(40);
  });
});

/** What a reader of YAML 1.2 makes of the text without quotes, where that is a number or a truth value of the same text. */
function asPlainText(written: string): unknown {
  if (!/^[\w.+-]+$/.test(written)) return null;
  const read: unknown = parse(written);
  return typeof read === 'number' || typeof read === 'boolean' ? read : null;
}
