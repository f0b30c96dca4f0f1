import * as z from 'zod';
import { factWords } from './design.ts';
import { oneOrMany } from './one-or-many.ts';
import { limitText, shortText, slug } from './text-field.ts';
import { word, yesNo } from './word-field.ts';

const factShape = {
  control: oneOrMany(word(factWords.control))
    .meta({ title: 'Control', description: 'Which kinds of control are meant', example: '[free, guided]' })
    .optional(),
  onboard: oneOrMany(word(factWords.onboard))
    .meta({
      title: 'On board',
      description: 'Which devices may be on board; no other may',
      example: '[release, dethermaliser, locator]',
    })
    .optional(),
  layout: oneOrMany(word(factWords.layout))
    .meta({ title: 'Layout', description: 'Which layouts are meant', example: 'tail-aft' })
    .optional(),
  origin: oneOrMany(word(factWords.origin))
    .meta({ title: 'Origin', description: 'Whose design it may be', example: '[own, plan]' })
    .optional(),
  junior: yesNo()
    .meta({ title: 'Junior', description: 'Whether every builder is a junior', example: 'true' })
    .optional(),
};

/** Any other key is a figure of the model with a limit in words. */
const limitSentence = limitText().meta({
  title: 'Limit',
  description: 'A limit on a figure of the model, in words',
  example: 'at least 2.4 m',
});

/** Limits on figures of the model, and on what is declared of it. */
export const eligibility = z.object(factShape).catchall(limitSentence);

/** A board of its own, for what meets its conditions. */
export const division = z
  .object({
    id: slug().meta({ title: 'Id', description: 'A short name for addresses', example: 'free' }),
    name: shortText().meta({ title: 'Name', description: 'As it should be shown', example: 'Free flight' }),
    ...factShape,
  })
  .catchall(limitSentence);

/** The keys of eligibility and divisions that are no figures. */
export const factKeys = Object.keys(factShape) as (keyof typeof factShape)[];
