// Runs in the head, before anything is drawn, so that a remembered system never flashes into place.
(() => {
  const root = document.documentElement;
  const key = 'last-turn-units';
  const choose = (system) => {
    if (system === 'metric' || system === 'imperial') root.dataset.units = system;
    for (const choice of document.querySelectorAll('input[name="units"]'))
      choice.checked = choice.value === root.dataset.units;
  };
  // A browser may refuse to remember; the choice then holds for this page.
  try {
    choose(localStorage.getItem(key));
  } catch {}
  document.addEventListener('DOMContentLoaded', () => choose());
  document.addEventListener('change', ({ target }) => {
    if (target.name !== 'units') return;
    choose(target.value);
    try {
      localStorage.setItem(key, target.value);
    } catch {}
  });
  addEventListener('storage', (event) => event.key === key && choose(event.newValue));
})();
