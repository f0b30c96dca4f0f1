/** The text of a file with every letter of it, a byte order mark too; null where it is no text in UTF-8. */
export async function readTextFile(file: Blob): Promise<string | null> {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(await file.arrayBuffer());
  } catch {
    return null;
  }
}
