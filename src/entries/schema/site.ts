import * as z from 'zod';
import { fields } from './fields.ts';
import { leaf, refused, taken } from './leaf.ts';
import { colour, fileName, link, mailAddress, siteAddress, slug, text } from './text-field.ts';
import { word } from './word-field.ts';

const format = () =>
  leaf({ kind: 'format-number' }, (written) =>
    written === '1'
      ? taken(written)
      : refused<'1'>(
          'unknown-word',
          `"${written}" is not a content format that this version of the generator reads.`,
          written,
          '1, or take a version that reads it',
        ),
  );

/** The club, the address, links and default units. */
export const site = fields({
  format: format().meta({
    title: 'Format',
    description: 'The version of the content format these files are written in',
    example: '1',
  }),
  title: text().meta({ title: 'Title', description: 'Of the whole site', example: 'Fenside Long Haul' }),
  club: text().meta({ title: 'Club', description: 'Who runs it', example: 'Fenside Flyers' }).optional(),
  address: siteAddress()
    .meta({
      title: 'Address',
      description: 'Where it is published; its path is the base path',
      example: 'https://fenside.example/long-haul/',
    })
    .optional(),
  repository: fields({
    kind: word(['github', 'gitlab', 'forgejo']).meta({
      title: 'Kind',
      description: 'The software of the host',
      example: 'github',
    }),
    url: link().meta({
      title: 'Address',
      description: 'Of the repository',
      example: 'https://github.com/fenside/long-haul',
    }),
    branch: text().meta({ title: 'Branch', description: 'Where entries go', example: 'main' }).optional(),
  })
    .meta({
      title: 'Repository',
      description: 'Where the content lives, for links that edit it',
      example: '{ kind: github, url: https://github.com/fenside/long-haul, branch: main }',
    })
    .optional(),
  'send-to': mailAddress()
    .meta({
      title: 'Send to',
      description: 'Where a builder without an account sends the finished file',
      example: 'entries@fenside.example',
    })
    .optional(),
  units: word(['metric', 'imperial'])
    .meta({ title: 'Units', description: 'What a visitor sees first', example: 'metric' })
    .optional(),
  featured: slug()
    .meta({
      title: 'Featured',
      description: 'The challenge on the front page; else the open one that opened last',
      example: 'long-haul-2027',
    })
    .optional(),
  logo: fileName()
    .meta({ title: 'Logo', description: 'Picture file beside site.md', example: 'logo.png' })
    .optional(),
  accent: colour()
    .meta({ title: 'Accent', description: 'A colour of the club', example: '"#8a3b12"' })
    .optional(),
  links: z
    .array(
      fields({
        label: text().meta({ title: 'Label', description: 'What to show', example: 'Club' }),
        url: link().meta({
          title: 'Address',
          description: 'Where it leads',
          example: 'https://fenside.example',
        }),
      }),
    )
    .meta({
      title: 'Links',
      description: 'Links of the club',
      example: '[{ label: Club, url: https://fenside.example }]',
    })
    .optional(),
  licence: text()
    .meta({ title: 'Licence', description: 'Of what people contribute', example: 'CC BY 4.0' })
    .optional(),
});
