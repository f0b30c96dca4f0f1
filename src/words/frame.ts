import type { CalendarDate } from '../model/calendar.ts';
import { dateInWords } from './texts.ts';

export const frame = {
  skip: 'Skip to the content',
  navigation: 'Site',
  ofChallenge: (title: string) => `Pages of ${title}`,
  footer: 'About this site',
  menu: 'Menu',
  close: 'Close',
  units: 'Units',
  metric: 'metric',
  imperial: 'imperial',
  logo: (name: string) => `Logo of ${name}`,
  home: (title: string) => `${title}, front page`,
  titled: (page: string, site: string) => (page === site ? site : `${page} · ${site}`),
  licence: (licence: string) => `What people contribute here is under ${licence}.`,
  madeWith: (generator: string) => `Made with ${generator} from files anyone may read.`,
  asOf: (date: CalendarDate) => `As of ${dateInWords(date)}.`,
  source: 'Source of this site',
  scrollable: (name: string) => `${name}, table`,
} as const;
