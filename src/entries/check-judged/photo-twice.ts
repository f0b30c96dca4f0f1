import { problemAt } from '../problems/make-problem.ts';
import { locate } from '../source/locate.ts';
import type { CrossCheck } from './cross-check.ts';

/** An entry shows each picture once, under whatever name. */
export const checkPhotoTwice: CrossCheck = ({ record, source }) => {
  const hashes = new Map(record.photos.map(({ file, hash }) => [file, hash]));
  const firsts = new Map<string, number>();
  return record.entry.photos.flatMap(({ file }, index) => {
    const hash = hashes.get(file);
    if (hash === undefined) return [];
    const first = firsts.get(hash);
    if (first === undefined) {
      firsts.set(hash, index);
      return [];
    }
    return [
      problemAt(source, ['photos', index, 'file'], 'value', 'photo-twice', {
        message: `"${file}" is the same picture as photo ${first + 1}. Take one of them out.`,
        found: file,
        related: {
          ...locate(source, ['photos', first, 'file'], 'value'),
          message: 'the picture stands here first',
        },
      }),
    ];
  });
};
