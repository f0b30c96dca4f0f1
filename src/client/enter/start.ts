// Schemas, figures and drawings come only to a page that shows the form, and only once it runs.
const form = document.querySelector<HTMLElement>('.enter');
if (form !== null) {
  const { runEnter } = await import('./run-enter.ts');
  runEnter(form);
}

export {};
