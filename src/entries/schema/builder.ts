import { formerly } from './entry.ts';
import { fields } from './fields.ts';
import { link, shortText } from './text-field.ts';
import { yesNo } from './word-field.ts';

/** A person, once; what stands here holds in every entry. */
export const builderFile = fields({
  name: shortText()
    .meta({ title: 'Name', description: 'As it should be shown', example: 'A. Marsh' })
    .optional(),
  club: shortText()
    .meta({ title: 'Club', description: 'The club they fly with', example: 'Fenside Flyers' })
    .optional(),
  junior: yesNo()
    .meta({ title: 'Junior', description: 'Juniors are shown by their handle only', example: 'true' })
    .optional(),
  link: link()
    .meta({ title: 'Link', description: 'A page of their own', example: 'https://amarsh.example' })
    .optional(),
  formerly,
});
