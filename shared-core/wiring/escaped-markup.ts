/** Text as it may stand in SVG markup. */
export const escapedMarkup = (text: string): string =>
  text.replace(/[&<>"']/g, (mark) => `&#${mark.charCodeAt(0)};`);
