import * as z from 'zod';

const status = z.enum([
  'withdrawn',
  'void',
  'refused',
  'outside-dates',
  'reported-late',
  'ineligible',
  'attempt',
  'accepted',
  'provisional',
]);

const standing = z.strictObject({
  place: z.int().min(1),
  entry: z.string(),
  divisions: z.array(z.string()),
  score: z.number(),
  provisional: z.boolean(),
  flights: z.array(z.int()),
  'tie-break': z.string().nullable(),
  'within-timing-error-of': z.array(z.string()),
});

const claim = z.strictObject({ entry: z.string(), score: z.number(), flights: z.array(z.int()) });

const ruledValue = z.union([z.string(), z.boolean(), z.number(), z.array(z.string()), z.array(z.number())]);

const entryOfResult = z.strictObject({
  id: z.string(),
  name: z.string(),
  builders: z.array(z.string()),
  flights: z.array(
    z.strictObject({
      number: z.int(),
      date: z.string(),
      flown: z.string().optional(),
      official: z.number(),
      status,
      reason: z.string().nullable(),
      span: z.number().optional(),
    }),
  ),
  facts: z.record(z.string(), ruledValue),
});

/** `results/<challenge>.json`: JSON, written by a command, with numbers as numbers. */
export const frozenResult = z.strictObject({
  format: z.literal(1),
  generator: z.string(),
  closed: z.string(),
  challenge: z.strictObject({
    id: z.string(),
    title: z.string(),
    opens: z.string(),
    closes: z.string(),
    state: z.literal('final').optional(),
    target: z.number().nullable().optional(),
  }),
  standings: z.array(standing),
  divisions: z.record(
    z.string(),
    z.array(z.strictObject({ place: z.int().min(1), entry: z.string(), score: z.number() })),
  ),
  claims: z.array(claim),
  unplaced: z.array(z.strictObject({ entry: z.string(), reason: z.string() })),
  records: z.array(
    z.strictObject({
      kind: z.enum(['best-time', 'span']),
      division: z.string().nullable(),
      value: z.number(),
      entry: z.string(),
      flight: z.int(),
      date: z.string(),
    }),
  ),
  entries: z.array(entryOfResult),
});
