import {
  type Attachments,
  folderOf,
  isPlainName,
  missingFile,
  namesBeside,
  type With,
} from '../folder/attachments.ts';
import type { ReadPhoto } from '../folder/content.ts';
import type { Reference } from '../folder/references.ts';
import { problemOver } from '../problems/make-problem.ts';
import { limits } from '../source/limits.ts';
import type { SourceDocument } from '../source/source.ts';
import type { PhotoFault } from './photo-reading.ts';
import { formatByName } from './picture-format.ts';

/** Reads a picture that a text names. Whatever is wrong with it is a problem where it is named. */
export async function readNamedPhoto(
  source: SourceDocument,
  reference: Reference,
  from: Attachments,
  missing: 'photo-missing' | 'logo-missing',
): Promise<With<Omit<ReadPhoto, 'alt'> | null>> {
  const { name, node } = reference;
  const path = folderOf(source.file) + name;
  const report = ({ code, fields }: PhotoFault) =>
    problemOver(source, node.start, node.end, code, { found: name, ...fields });
  if (!isPlainName(name) || formatByName(name) === null) {
    const message = `"${name}" is not the plain name of a picture: name a file beside this one that ends in jpg, png, webp or avif.`;
    return {
      value: null,
      problems: [report({ code: 'photo-name', fields: { message, accepted: 'such as bench.jpg' } })],
    };
  }
  if (!namesBeside(source, from).includes(name))
    return { value: null, problems: [missingFile(source, reference, from, missing)] };
  const read = await from.disk.readBytes(path, limits.photoBytes);
  if (read.is === 'too-large') {
    const fault = from.tooManyBytes(name, read.size);
    return { value: null, problems: fault === null ? [] : [report(fault)] };
  }
  if (read.is === 'unreadable') {
    const message = `"${name}" could not be read from the disk (${read.why}).`;
    return { value: null, problems: [report({ code: 'photo-unreadable', fields: { message } })] };
  }
  const { picture, faults } = await from.readPhoto(name, read.bytes);
  return {
    value: picture === null ? null : { file: name, source: path, ...picture },
    problems: faults.map(report),
  };
}
