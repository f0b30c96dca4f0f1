import { describe, expect, it } from 'vitest';
import type { Asked, Asker } from '../../../scripts/new/asking.ts';
import { askClub, askGenerator } from '../../../scripts/new/site/ask-club.ts';
import type { SiteValues } from '../../../scripts/new/site/club-from.ts';

const known = {
  folder: 'hollow-ridge',
  today: '2026-11-25',
  generator: { address: null, version: 'v1.0.0' },
};
const nothing: SiteValues = {
  title: undefined,
  club: undefined,
  address: undefined,
  repository: undefined,
  kind: undefined,
  'send-to': undefined,
  licence: undefined,
  challenge: undefined,
  opens: undefined,
  closes: undefined,
};

/** Somebody who types these, takes what is proposed where nothing is listed, and whose questions are kept. */
function typing(answers: Readonly<Record<string, string>>): { asker: Asker; questions: Asked[] } {
  const questions: Asked[] = [];
  const asker: Asker = {
    ask: async (question) => {
      questions.push(question);
      return answers[question.title] ?? question.proposed ?? null;
    },
    agree: async () => false,
  };
  return { asker, questions };
}

describe('asking for a club', () => {
  it('asks for what is not said, and proposes title and address', async () => {
    const { asker, questions } = typing({ Repository: 'https://github.com/hollow-ridge/duration' });
    const values = await askClub({ ...nothing, club: 'Hollow Ridge Aeromodellers' }, known, asker);
    expect(questions.map(({ title }) => title)).toEqual([
      'Title',
      'Repository',
      'Address',
      'Send to',
      'Licence',
    ]);
    expect(values).toMatchObject({
      title: 'Hollow Ridge',
      club: 'Hollow Ridge Aeromodellers',
      address: 'https://hollow-ridge.github.io/duration/',
      'send-to': undefined,
    });
  });

  it('asks for the software of a host whose address does not tell', async () => {
    const { asker, questions } = typing({ Repository: 'https://git.example/air/duration', Kind: 'forgejo' });
    const values = await askClub(nothing, known, asker);
    expect(questions.find(({ title }) => title === 'Kind')?.words).toEqual(['github', 'gitlab', 'forgejo']);
    expect(values.kind).toBe('forgejo');
  });

  it('shows an example of each', async () => {
    const { asker, questions } = typing({});
    await askClub(nothing, known, asker);
    const example = (title: string) =>
      questions.find((question) => question.title === title)?.help.split('. Such as ')[1];
    expect(example('Repository')).toBe('https://forge.example/our-club/duration');
    expect(example('Address')).toMatch(/^https:\/\/\S+\.example\/\S+\/$/);
    expect(example('Send to')).toMatch(/^\S+@\S+\.example$/);
    expect(example('Licence')).toBe('CC BY 4.0');
  });

  it('asks where the generator is, and takes no words for it', async () => {
    const { asker, questions } = typing({ Generator: 'https://code.example/tools/last-turn' });
    expect(await askGenerator(asker)).toBe('https://code.example/tools/last-turn');
    expect(questions[0]?.check('last-turn')).toBe('That is no web address of a repository.');
    expect(questions[0]?.check('https://code.example/tools/last-turn')).toBeNull();
  });

  it('says at once what is wrong with an answer', async () => {
    const { asker, questions } = typing({});
    await askClub(nothing, known, asker);
    const check = (title: string, answer: string) =>
      questions.find((question) => question.title === title)?.check(answer);
    expect(check('Address', 'hollow-ridge')).toContain('"hollow-ridge"');
    expect(check('Repository', 'duration')).toContain('takes the web address of a repository');
    expect(check('Repository', 'https://git.example/air/duration')).toBeNull();
    expect(check('Title', 'Hollow Ridge')).toBeNull();
  });
});
