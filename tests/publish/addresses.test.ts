import { describe, expect, it } from 'vitest';
import { addressesOf, addressesText, readAddresses } from '../../src/publish/addresses.ts';

describe('the list of addresses', () => {
  it('holds pages and data, but nothing whose name comes from its content', () => {
    const files = [
      'index.html',
      'entries/a/b/index.html',
      'data/a.json',
      '404.html',
      'assets/page.hash.css',
      'photos/0123-480.webp',
      'addresses.json',
      '.nojekyll',
    ];
    expect(addressesOf(files)).toEqual(['/', '/data/a.json', '/entries/a/b/']);
  });

  it('is read back as it was written', () => {
    expect(readAddresses(addressesText(['/', '/a/']))).toEqual(['/', '/a/']);
  });

  it.each(['', 'nonsense', '[]', '{}', '{"addresses":[1]}', 'null'])('is not %j', (text) => {
    expect(readAddresses(text)).toBeNull();
  });
});
