/**
 * The control of a plan field on screen: the one of that very path, else one inside it, else one of the things that
 * hold it.
 */
export function findField(root: HTMLElement | null, path: string): HTMLElement | null {
  if (root === null) return null;
  const keys = path.split('.');
  for (let length = keys.length; length > 0; length -= 1) {
    const part = CSS.escape(keys.slice(0, length).join('.'));
    const found =
      root.querySelector<HTMLElement>(`[data-field="${part}"]`) ??
      root.querySelector<HTMLElement>(`[data-field^="${part}."]`);
    if (found !== null) return focusable(found);
  }
  return null;
}

/** A switch keeps its input inside a label. */
const focusable = (element: HTMLElement): HTMLElement =>
  element.matches('input, button, textarea, [tabindex]')
    ? element
    : (element.querySelector<HTMLElement>('input, button, textarea, [tabindex]') ?? element);
