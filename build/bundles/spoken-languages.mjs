const controlTexts =
  /[\\/]node_modules[\\/](?:react-aria|react-aria-components|react-stately)[\\/].*[\\/]intl[\\/].*?([a-z]{2})-[A-Z]{2}\.mjs$/;

/**
 * Leaves out the control library's texts in languages the program does not speak. The page always names one of its
 * own languages to the library, so that the others are never looked up;
 * should one be asked for all the same, the library drops empty texts and falls back on English.
 */
export const spokenLanguages = (languages) => ({
  name: 'texts-of-spoken-languages',
  enforce: 'pre',
  load(id) {
    const language = controlTexts.exec(id.split('?')[0])?.[1];
    return language === undefined || languages.includes(language)
      ? null
      : 'export default undefined;\n';
  },
});
