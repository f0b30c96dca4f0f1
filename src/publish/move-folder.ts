import { rm, stat } from 'node:fs/promises';

/** True where there is anything at a path. */
export async function exists(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false,
  );
}

/** Removes a file or a folder with all in it; nothing happens where there is none. */
export async function remove(path: string): Promise<void> {
  await rm(path, { recursive: true, force: true, maxRetries: 3 });
}

/** The system's code of an error, such as `EXDEV`; null where it has none. */
export function codeOf(error: unknown): string | null {
  return error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : null;
}

/** What an error says. */
export function reason(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
