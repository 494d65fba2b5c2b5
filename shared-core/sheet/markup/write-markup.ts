import type { MarkupNode } from './node.ts';

const marks: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Characters no document may hold: most control characters and halves of a pair. */
// oxlint-disable-next-line no-control-regex -- control characters are just what has to go
const forbidden = /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]|\p{Surrogate}/gu;

/** Text that stands for itself wherever it is put in a document. */
export function escapeMarkup(text: string): string {
  return text.replaceAll(forbidden, '\uFFFD').replaceAll(/[&<>"']/g, (mark) => marks[mark]!);
}

/** Markup as text. Names and words of the user are escaped, whatever they hold. */
export function writeMarkup(node: MarkupNode | string): string {
  if (typeof node === 'string') return escapeMarkup(node);
  const attributes = Object.entries(node.attributes)
    .map(([name, value]) => ` ${name}="${escapeMarkup(value)}"`)
    .join('');
  // An element of SVG may close itself; one of HTML may not.
  if (node.children.length === 0 && node.tag === 'path') return `<path${attributes}/>`;
  return `<${node.tag}${attributes}>${node.children.map(writeMarkup).join('')}</${node.tag}>`;
}
