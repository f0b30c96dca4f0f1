/** How long one is let type before what is typed is looked at, ms. */
const pause = 300;

/** What is typed and not taken yet. */
export interface Typing {
  /** Takes at once whatever stands in a field and was not taken yet. */
  readonly settle: () => void;
}

/**
 * Takes what is typed: after a pause, when the field is left, and before anything else happens that rests on it. A tap
 * leaves a field and presses a button in one go, and a page may be left in the middle of a word that is being composed.
 *
 * @param take reads a field, `done` where its builder has left it, and gives what is to be done with it: the fields may be
 * drawn anew before that
 */
export function typing(form: HTMLElement, take: (field: Element, done: boolean) => () => void): Typing {
  const waiting = new Map<Element, boolean>();
  let timer: ReturnType<typeof setTimeout> | undefined;
  let pressed = false;

  function settle(): void {
    clearTimeout(timer);
    const taken = [...waiting].map(([field, done]) => take(field, done));
    // Of a field that was not left, more may be taken once it is.
    for (const [field, done] of waiting) if (done) waiting.delete(field);
    for (const put of taken) put();
    // What was drawn anew stands in another field now.
    for (const field of waiting.keys()) if (!field.isConnected) waiting.delete(field);
  }

  function wait(field: Element, done: boolean, time: number): void {
    waiting.set(field, done || waiting.get(field) === true);
    clearTimeout(timer);
    // What is drawn anew between pressing and letting go would take the button away from under the finger.
    if (!pressed) timer = setTimeout(settle, time);
  }

  function leave(): void {
    for (const field of waiting.keys()) waiting.set(field, true);
    settle();
  }

  form.addEventListener('input', ({ target }) => {
    if (target instanceof Element) wait(target, false, pause);
  });
  form.addEventListener('change', ({ target }) => {
    // The cursor is still on its way to the next field: what is drawn anew must not take that away.
    if (target instanceof Element) wait(target, true, 0);
  });
  // What was typed and emptied again is no change to the browser, and yet it was taken in between.
  form.addEventListener('focusout', ({ target }) => {
    if (target instanceof Element && waiting.has(target)) wait(target, true, 0);
  });
  form.addEventListener('compositionend', ({ target }) => {
    if (target instanceof Element) wait(target, false, pause);
  });
  form.addEventListener('keydown', (event) => {
    if (event.key !== 'Enter' || event.isComposing || !(event.target instanceof HTMLInputElement)) return;
    event.preventDefault();
    waiting.set(event.target, true);
    settle();
  });
  // Whatever a button or a link does, it does with what stands in the fields.
  form.addEventListener(
    'click',
    ({ target }) => {
      if (target instanceof Element && target.closest('button, a') !== null) leave();
    },
    true,
  );
  form.addEventListener('pointerdown', () => {
    pressed = true;
  });
  for (const letGo of ['pointerup', 'pointercancel'])
    window.addEventListener(letGo, () => {
      pressed = false;
      if (![...waiting.values()].includes(true)) return;
      clearTimeout(timer);
      timer = setTimeout(settle, 0);
    });
  window.addEventListener('pagehide', leave);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') leave();
  });
  return { settle };
}
