/** The change in force: `{ file, start, end, text }` or null. Kept on globalThis, as the configuration is bundled apart. */
export const setMutant = (mutant) => {
  globalThis.cellwainMutant = mutant;
};

/** Swaps one number while a file is read, so that nothing on disk is touched. */
export const mutantPlugin = {
  name: 'mutant',
  enforce: 'pre',
  transform(code, id) {
    const mutant = globalThis.cellwainMutant ?? null;
    if (mutant === null || id.split('?')[0] !== mutant.file) return null;
    return { code: code.slice(0, mutant.start) + mutant.text + code.slice(mutant.end), map: null };
  },
};
