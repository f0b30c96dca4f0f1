import type { APIRoute } from 'astro';
import sharp from 'sharp';
import { markPicture } from '../../components/mark-picture.ts';
import { tabSize, touchSize } from '../../components/site-icons.ts';

export function getStaticPaths() {
  return [
    { params: { size: String(tabSize) }, props: { corner: 3 } },
    { params: { size: String(touchSize) }, props: { corner: 0 } },
  ];
}

/** The mark for what takes no SVG: the tab of an older browser, and the first screen of a telephone. */
export const GET: APIRoute = async ({ params, props }) => {
  const side = Number(params.size);
  const drawn = sharp(Buffer.from(markPicture(props.corner)), { density: (72 * side) / 32 });
  const png = await drawn.resize(side, side).png({ compressionLevel: 9 }).toBuffer();
  return new Response(new Uint8Array(png), { headers: { 'content-type': 'image/png' } });
};
