/** A number with its separators, and its sign where it stands apart. */
const figure = /(?:(?<=^|[\s(])[-−±+])?\d+(?:[.,]\d+)*/g;

/** Every figure in a text, as written, in the order of reading. */
export const figuresIn = (text: string): readonly string[] => text.match(figure) ?? [];

const turned = (written: string): string =>
  written.replaceAll(/[.,]/g, (mark) => (mark === '.' ? ',' : '.'));

/**
 * What stands in one text and not in the other, where one is English and the other German: a figure is the same with
 * its marks turned (12.5 and 12,5), or letter for letter where it is a name (33 CFR 183.425). The order may differ, as
 * sentences are built otherwise.
 */
export function figuresApart(english: string, german: string): readonly string[] {
  const open = [...figuresIn(german)];
  const missing = figuresIn(english).filter((written) => {
    const at = open.findIndex((other) => other === turned(written) || other === written);
    if (at >= 0) open.splice(at, 1);
    return at < 0;
  });
  return [...missing.map((written) => `en ${written}`), ...open.map((written) => `de ${written}`)];
}
