import { expect, it } from 'vitest';
import { addParagraph } from '../../../src/entries/write/add-paragraph.ts';

it('stands behind the last paragraph, apart by an empty line', () => {
  expect(addParagraph('---\na: b\n---\nKept.\n\n', 'New.')).toBe('---\na: b\n---\nKept.\n\nNew.\n');
});

it('keeps the line ends of the file, and holds no fields of its own', () => {
  expect(addParagraph('---\r\na: b\r\n---\r\n', 'One\n---\ntwo')).toBe(
    '---\r\na: b\r\n---\r\n\r\nOne --- two\r\n',
  );
});
