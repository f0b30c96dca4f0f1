/** Copies a text; where the browser does not let the page, selects it in its field. Resolves with whether it was copied. */
export async function copyText(text: string, field: HTMLTextAreaElement): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    field.focus();
    field.select();
    return false;
  }
}
