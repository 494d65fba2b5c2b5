/** Anything in a text that looks like a folder of a person: drive letters, slashes, home signs. */
const pathPattern = /(?:file:\/\/\/?|[A-Za-z]:[\\/]|\\\\|~\/|\/)(?:[^\s"'<>|:()]+[\\/])+/g;

/** The text with every folder taken out; file names stay, for they help and say little. */
export const withoutPaths = (text: string, home: string): string => {
  const withoutHome = home.length > 1 ? text.replaceAll(home, '…') : text;
  return withoutHome.replaceAll(pathPattern, '…/');
};
