import { formerly } from './entry.ts';
import { fields } from './fields.ts';
import { plainNumber } from './quantity-field.ts';
import { text } from './text-field.ts';

/** A page of the club's own. */
export const page = fields({
  title: text().meta({ title: 'Title', description: 'Of the page', example: 'How to measure' }),
  order: plainNumber()
    .meta({ title: 'Order', description: 'Its place among the pages, the smallest first', example: '2' })
    .optional(),
  formerly,
});
