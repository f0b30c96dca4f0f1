import { acceptedForms } from '../../quantities/accepted.ts';
import type { FixedForm, TextForm } from '../schema/text-form.ts';
import { inWords } from '../schema/word-field.ts';

/** What may be written as a text of the form, in words that follow "Write": `a length in mm, cm, …, such as "3.20 m"`. */
export function acceptedText(form: TextForm): string {
  switch (form.kind) {
    case 'quantity':
      return acceptedForms(form.of);
    case 'balance':
      return 'a length, such as "104 mm", or a share of the mean aerodynamic chord, such as "38 %"';
    case 'count':
      return `a whole number of at least ${form.least}`;
    case 'number':
      return 'a number';
    case 'text':
      return `words, at most ${form.longest} characters`;
    case 'word':
      return inWords(form.words);
    case 'yes-no':
      return 'true or false';
    case 'date':
      return dates[form.precision];
    default:
      return fixedForms[form.kind];
  }
}

const dates = {
  day: 'a date, such as 2027-05-09',
  moment: 'a date, such as 2027-05-09, or with time and offset, such as 2027-05-09 18:40+01:00',
  month: 'a month or a date, such as 2026-02 or 2026-02-14',
};

const fixedForms: Readonly<Record<FixedForm, string>> = {
  allowance: 'the most that are allowed, such as at most 9',
  colour: 'a hash and six hexadecimal digits, in quotes because of the hash, such as "#8a3b12"',
  'entry-address':
    'the name of a challenge, a stroke and the name of an entry, such as fenside-2026/reedling',
  figure: 'the id of a figure of the model, such as span or flying-mass',
  'file-name': 'the name of a file in the same folder',
  'format-number': '1',
  limit: 'a limit in words: at least, at most, more than or less than a value, or one value to another',
  link: 'a web address, such as https://video.example/abc',
  'mail-address': 'a mail address, such as entries@fenside.example',
  seal: '1- and 16 hexadecimal digits, as the command writes it',
  'site-address': 'the web address of the site, such as https://fenside.example/long-haul/',
  slug: 'a name of a to z, digits and hyphens, at most 64 characters',
  'tie-break':
    'next-best-flight, earlier flight, or larger or smaller and a figure of the model, such as larger span',
  'time-zone': 'an area and a place, such as Europe/London, or UTC',
  timekeepers: 'how many timekeepers a flight needs, such as 2, or 2 or video',
};
