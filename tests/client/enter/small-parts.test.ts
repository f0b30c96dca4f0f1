import { describe, expect, it } from 'vitest';
import { withBladeAngle } from '../../../src/client/enter/blade-angle.ts';
import { withBody } from '../../../src/client/enter/body-of.ts';
import { checked } from '../../../src/client/enter/checked.ts';
import { draftStore } from '../../../src/client/enter/draft.ts';
import { entered } from '../../../src/client/enter/entered.ts';
import { nextNumber } from '../../../src/client/enter/next-number.ts';

const nowhere = { challenge: 'c', id: 'e' };

function bodyPut(text: string, body: string): string {
  const { source } = checked(text, nowhere);
  if (source === null) throw new Error('cannot be read');
  return withBody(text, source, body);
}

describe('words below the fields', () => {
  it('change, and what stands above them stays', () => {
    expect(bodyPut('\uFEFF---\r\nname: A\r\n---\r\nOld.\r\n', 'New.\nMore.')).toBe(
      '\uFEFF---\r\nname: A\r\n---\r\nNew.\r\nMore.\r\n',
    );
    expect(bodyPut('---\nname: A\n---', 'New.')).toBe('---\nname: A\n---\nNew.\n');
    expect(bodyPut('---\nname: A\n---\nOld.\n', '')).toBe('---\nname: A\n---\n');
  });
});

describe('a blade angle with its radius', () => {
  it('is told from a pitch', () => {
    const map = { angle: '28°', at: '110 mm' };
    for (const typed of ['28° at 110 mm', '28° @ 110 mm', '{ angle: 28°, at: 110 mm }'])
      expect(withBladeAngle(typed)).toEqual(map);
    for (const typed of ['400 mm', '28°', '15 3/4 in']) expect(withBladeAngle(typed)).toBe(typed);
  });
});

describe('the number of the next flight', () => {
  it('is none that was used before', () => {
    expect(nextNumber(undefined)).toBe('1');
    expect(nextNumber([{ number: '1' }, { number: '7' }, { number: '3' }])).toBe('8');
    expect(nextNumber([{ number: 'x' }, {}])).toBe('1');
  });
});

describe('the folder of an entry', () => {
  const folderOf = (text: string, folder = '') => entered({ text, challenge: 'c', folder }).folder;

  it('follows from the name until another is chosen', () => {
    expect(folderOf('---\nname: Długa Nić 2\n---\n')).toBe('dluga-nic-2');
    expect(folderOf('---\nname: Długa Nić 2\n---\n', 'mine')).toBe('mine');
    expect(folderOf('---\n---\n')).toBe('');
  });

  it('stays while the text cannot be read', () => {
    const { readable } = entered({ text: '---\nname: A\n---\n', challenge: 'c', folder: '' });
    const broken = entered({ text: '---\nname: [A\n---\n', challenge: 'c', folder: '' }, readable);
    expect(broken.now.plain).toBe(null);
    expect(broken.folder).toBe('a');
  });
});

describe('a draft', () => {
  const draft = { text: 'a', challenge: 'b', folder: 'c' };

  function memory(kept = new Map<string, string>()) {
    return {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, value: string) => void kept.set(key, value),
      removeItem: (key: string) => void kept.delete(key),
    } as unknown as Storage;
  }

  it('is kept for one page, until it is forgotten', () => {
    const storage = memory();
    const store = draftStore(() => storage, '/a/enter/');
    expect(store.keep(draft)).toBe(true);
    expect(store.read()).toEqual(draft);
    expect(draftStore(() => storage, '/b/enter/').read()).toBe(null);
    store.forget();
    expect(store.read()).toBe(null);
  });

  it('is none where the browser refuses, or keeps something else', () => {
    const refusing = draftStore(() => {
      throw new Error('refused');
    }, '/');
    expect(refusing.keep(draft)).toBe(false);
    expect(refusing.read()).toBe(null);
    for (const kept of ['{', 'null', '{"text":1}', '[]'])
      expect(draftStore(() => memory(new Map([['last-turn-entry /', kept]])), '/').read()).toBe(null);
  });
});
