import sharp from 'sharp';
import type { Design } from '../../src/model/design.ts';
import {
  logoPicture,
  releasePicture,
  skeinPicture,
  thrustRigPicture,
  torqueMeterPicture,
} from './bench-pictures.ts';
import { planPicture } from './plan-picture.ts';

/** Pictures that show no particular measurements, by their place in the content folder, as SVG. */
export const benchPictures: Readonly<Record<string, () => string>> = {
  'logo.png': logoPicture,
  'entries/slow-thread-2026/dluga-nic/release.jpg': releasePicture,
  'entries/slow-thread-2026/lease-rod/motor.png': skeinPicture,
  'entries/slow-thread-2026/organza/bench.webp': torqueMeterPicture,
  'entries/slow-thread-2026/shuttle/bench.jpg': thrustRigPicture,
};

/** Entries with a plan drawing: `<challenge>/<entry>`, the drawing's name, and the colour of the covering. */
const plans: readonly (readonly [entry: string, file: string, wash: string])[] = [
  ['slow-thread-2025/selvedge', 'plan.png', '#ead9c8'],
  ['slow-thread-2025/tante-odile', 'plan.png', '#e3dcec'],
  ['slow-thread-2025/treadle', 'plan.png', '#dfe6d6'],
  ['slow-thread-2025/twill', 'plan.png', '#e9dfc0'],
  ['slow-thread-2026/dluga-nic', 'plan.webp', '#d8e2e6'],
  ['slow-thread-2026/overdue', 'plan.jpg', '#e6dfe3'],
  ['slow-thread-2026/shuttle', 'plan.png', '#ecd9b8'],
  ['slow-thread-2026/ten-of-everything', 'plan.png', '#dfe6e0'],
  ['slow-thread-2026/warp-weighted', 'plan.png', '#dde0ea'],
];

/** The plan drawings, by their place in the content folder, as SVG; `designOf` gives an entry as first written. */
export function planPictures(
  designOf: (entry: string) => { readonly name: string; readonly design: Design },
): Record<string, () => string> {
  return Object.fromEntries(
    plans.map(([entry, file, wash]) => [
      `entries/${entry}/${file}`,
      () => {
        const { name, design } = designOf(entry);
        return planPicture(name, design, wash);
      },
    ]),
  );
}

/** A drawing in the format that its name says. */
export function encoded(svg: string, file: string): Promise<Buffer> {
  const drawing = sharp(Buffer.from(svg));
  if (file.endsWith('.png')) return drawing.png({ palette: true, compressionLevel: 9 }).toBuffer();
  if (file.endsWith('.webp')) return drawing.webp({ quality: 88 }).toBuffer();
  return drawing.flatten({ background: '#ffffff' }).jpeg({ quality: 88 }).toBuffer();
}
