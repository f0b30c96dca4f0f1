import { figuresOfModel } from '../../figures/registry.ts';
import type { Kind } from '../../quantities/quantity.ts';
import type { TextForm } from '../schema/text-form.ts';
import { textPatterns } from '../schema/text-patterns.ts';
import type { JsonSchema } from './json-schema.ts';
import { balancePattern, inAnyCase, limitPattern, quantityPattern } from './quantity-pattern.ts';

/**
 * What an editor may check of a field that holds one text. The reader of the files takes every value as the text that
 * was written; an editor's reader of YAML 1.2 hands over numbers, true and false as such. So each form says which of
 * them its texts may come as, and a number is refused where a unit is missing. Patterns refuse nothing the reader accepts.
 * A text that is the word null alone has to stand in quotes for an editor, which cannot tell it from nothing.
 */
export function jsonOfText(form: TextForm): JsonSchema {
  switch (form.kind) {
    case 'quantity':
      return jsonOfQuantity(form);
    case 'balance':
      return matching(balancePattern());
    case 'limit':
      return matching(limitPattern());
    case 'count':
      return { type: ['integer', 'string'], minimum: form.least, pattern: wholeNumber };
    case 'number':
      return { type: ['number', 'string'], pattern: quantityPattern('number') };
    case 'text':
      // A word such as `no` is false to readers of older YAML.
      return { type: ['string', 'number', 'boolean'], minLength: 1, maxLength: form.longest };
    case 'word':
      return { enum: form.words };
    case 'yes-no':
      return {
        type: ['boolean', 'string'],
        pattern: `^(?:${['true', 'false', 'yes', 'no'].map(inAnyCase).join('|')})$`,
      };
    case 'date':
      return matching(`^\\s*${dates[form.precision]}\\s*$`);
    case 'figure':
      return { enum: idsOfModel };
    case 'tie-break':
      return matching(tieBreak);
    case 'format-number':
      return { enum: [1, '1'] };
    case 'file-name':
      return { type: 'string', minLength: 1 };
    case 'site-address':
      return matching(textPatterns.link.source, '[?#]');
    case 'allowance':
    case 'timekeepers':
    case 'slug':
      return { type: ['string', 'integer'], pattern: textPatterns[form.kind].source };
    default:
      return matching(textPatterns[form.kind].source);
  }
}

function jsonOfQuantity({ of, negative, bareZero }: TextForm & { readonly kind: 'quantity' }): JsonSchema {
  const pattern = quantityPattern(of);
  if (bareZero === true) return { anyOf: [{ enum: [0, '0'] }, matching(pattern)] };
  if (!bare.includes(of)) return matching(pattern);
  return {
    type: ['number', 'string'],
    ...(!negative && of !== 'number' && { minimum: 0 }),
    ...(of === 'share' && { maximum: 1 }),
    pattern,
  };
}

function matching(pattern: string, not?: string): JsonSchema {
  return { type: 'string', pattern, ...(not !== undefined && { not: { type: 'string', pattern: not } }) };
}

const idsOfModel = figuresOfModel.map(({ id }) => id);

const tieBreak = `^\\s*(?:next-best-flight|earlier\\s+flight|(?:larger|smaller)\\s+(?:${idsOfModel.join('|')}))\\s*$`;

/** Kinds that are written without a unit, and so may be numbers to a reader of YAML. */
const bare: readonly Kind[] = ['number', 'share', 'turns'];

/** Digits, with no letter but the e of a power of ten. */
const wholeNumber = '^[^A-DF-Za-df-z]*[0-9][^A-DF-Za-df-z]*$';

const day = '\\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\\d|3[01])';
const timeOfDay = '(?:[01]\\d|2[0-3]):[0-5]\\d(?::[0-5]\\d)?';
const offset = '(?:[Zz]|[+\\-−]\\d{2}:?\\d{2})';

const dates = {
  day,
  month: `\\d{4}-(?:0[1-9]|1[0-2])(?:-(?:0[1-9]|[12]\\d|3[01]))?`,
  moment: `${day}(?:(?:\\s+|[Tt])${timeOfDay}\\s*${offset}?)?`,
};
