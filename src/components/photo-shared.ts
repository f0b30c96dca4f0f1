import type { SharedPicture } from '../cards/card-picture.ts';
import type { ReadPhoto } from '../entries/folder/content.ts';
import { photoVariants } from '../publish/photo-variants.ts';

/** A photo as the picture that stands for a page: the copy that every reader of shared addresses can show. */
export function photoShared(photo: ReadPhoto): SharedPicture {
  const { path, width, height } = photoVariants(photo).find(({ format }) => format === 'jpeg')!;
  return { path, type: 'image/jpeg', width, height, alt: photo.alt };
}
