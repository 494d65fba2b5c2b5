/** The elements a sheet is made of. Nothing that can run, load or link is among them. */
export type SheetTag =
  | 'article'
  | 'section'
  | 'header'
  | 'div'
  | 'p'
  | 'span'
  | 'strong'
  | 'h1'
  | 'h2'
  | 'ul'
  | 'ol'
  | 'li'
  | 'dl'
  | 'dt'
  | 'dd'
  | 'table'
  | 'caption'
  | 'thead'
  | 'tbody'
  | 'tfoot'
  | 'tr'
  | 'th'
  | 'td'
  | 'figure'
  | 'pre'
  | 'svg'
  | 'title'
  | 'desc'
  | 'path'
  | 'text';

/** Markup as data: written out as text for a file, built as elements for the page, the same for both. */
export interface MarkupNode {
  readonly tag: SheetTag;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (MarkupNode | string)[];
}

export type Child = MarkupNode | string | null;

/** An element with a class (none where empty) and what is in it; null children are left out. */
export function element(
  tag: SheetTag,
  className: string,
  children: readonly Child[],
  attributes: Readonly<Record<string, string>> = {},
): MarkupNode {
  return {
    tag,
    attributes: className === '' ? attributes : { class: className, ...attributes },
    children: children.filter((child) => child !== null),
  };
}
