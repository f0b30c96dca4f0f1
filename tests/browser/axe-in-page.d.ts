import type axe from 'axe-core';

declare global {
  interface Window {
    /** There once the source of axe was run in the page. */
    readonly axe: typeof axe;
  }
}
