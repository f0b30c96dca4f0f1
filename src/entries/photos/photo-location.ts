/** Tag of the pointer to the GPS directory (Exif 2.32, 4.6.3). */
const gpsDirectory = 0x8825;
/** Latitude and longitude in the GPS directory (Exif 2.32, 4.6.6). */
const coordinates: readonly number[] = [2, 4];

/** Whether Exif data (with or without its `Exif` heading) tell where the picture was taken. False for damaged data. */
export function exifHasLocation(exif: Uint8Array): boolean {
  const start = exif[0] === 0x45 && exif[1] === 0x78 ? 6 : 0;
  const view = new DataView(exif.buffer, exif.byteOffset + start, Math.max(0, exif.byteLength - start));
  if (view.byteLength < 8) return false;
  const little = view.getUint16(0) === 0x4949;
  const pointer = entriesOf(view, view.getUint32(4, little), little).find(({ tag }) => tag === gpsDirectory);
  if (pointer === undefined) return false;
  return entriesOf(view, pointer.value, little).some(({ tag }) => coordinates.includes(tag));
}

/** Whether XMP data tell where the picture was taken. */
export function xmpHasLocation(xmp: string): boolean {
  return /GPSLatitude|GPSLongitude|photoshop:City|Iptc4xmpCore:Location|Iptc4xmpExt:Location/.test(xmp);
}

/** Records 2:26 (content location code), 2:27 (its name), 2:90 (city) and 2:92 (sublocation) of IPTC-IIM 4.2. */
const places: readonly number[] = [26, 27, 90, 92];

/** Whether IPTC data tell where the picture was taken: a data set begins with 1C, the record and its number. */
export function iptcHasLocation(iptc: Uint8Array): boolean {
  return iptc.some((byte, at) => byte === 0x1c && iptc[at + 1] === 2 && places.includes(iptc[at + 2] ?? 0));
}

function entriesOf(
  view: DataView,
  at: number,
  little: boolean,
): { readonly tag: number; readonly value: number }[] {
  if (at + 2 > view.byteLength) return [];
  const count = Math.min(view.getUint16(at, little), Math.floor((view.byteLength - at - 2) / 12));
  return Array.from({ length: count }, (_, index) => {
    const entry = at + 2 + index * 12;
    return { tag: view.getUint16(entry, little), value: view.getUint32(entry + 8, little) };
  });
}
