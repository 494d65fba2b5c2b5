import { createElement, type ReactNode } from 'react';
import type { MarkupNode } from '#core/sheet/index.ts';

/** Attribute names as the page's library spells them. */
const nameOf = (name: string): string =>
  name === 'class'
    ? 'className'
    : name.startsWith('aria-') || name.startsWith('data-')
      ? name
      : name.replaceAll(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());

/** The markup of the sheet as elements: no text is ever read as markup. */
export function sheetElements(node: MarkupNode | string, key = ''): ReactNode {
  if (typeof node === 'string') return node;
  const attributes = Object.fromEntries(
    Object.entries(node.attributes).map(([name, value]) => [nameOf(name), value]),
  );
  return createElement(
    node.tag,
    { key, ...attributes },
    ...node.children.map((child, index) => sheetElements(child, String(index))),
  );
}
