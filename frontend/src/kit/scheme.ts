// Tells every living chart when the page may have changed between light and dark.

const listeners = new Set<() => void>();
let watching = false;

function tellAll(): void {
  listeners.forEach((listener) => listener());
}

function watch(): void {
  watching = true;
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', tellAll);
  const observer = new MutationObserver(tellAll);
  const attributes = { attributes: true, attributeFilter: ['style', 'class', 'theme'] };
  observer.observe(document.documentElement, attributes);
  observer.observe(document.body, attributes);
}

/** Calls the listener on each possible change; the returned function ends it. */
export function onSchemeChange(listener: () => void): () => void {
  if (!watching) {
    watch();
  }
  listeners.add(listener);
  return () => listeners.delete(listener);
}
