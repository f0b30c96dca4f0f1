/** Slanting lines to fill what is assumed or uncertain with; the id must be unique on its page. */
export function hatching(id: string): string {
  return `<defs><pattern id="${id}" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="chart-hatch" d="M0 0V6"/></pattern></defs>`;
}
