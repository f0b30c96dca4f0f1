import { date } from './date-field.ts';
import { formerly } from './entry.ts';
import { fields } from './fields.ts';
import { slug, text } from './text-field.ts';

/** An announcement. */
export const news = fields({
  title: text().meta({ title: 'Title', description: 'Of the announcement', example: 'The season is open' }),
  date: date().meta({ title: 'Date', description: 'The day it is of', example: '2027-03-01' }),
  challenge: slug()
    .meta({ title: 'Challenge', description: 'The challenge it is about', example: 'long-haul-2027' })
    .optional(),
  summary: text()
    .meta({
      title: 'Summary',
      description: 'One sentence for lists and the feed',
      example: 'Entries are welcome from today.',
    })
    .optional(),
  formerly,
});
