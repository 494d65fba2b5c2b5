/** Lets the compiled shell find the stand-in under Electron's name. */
export const resolve = (specifier, context, next) =>
  specifier === 'electron'
    ? { url: new URL('./electron.mjs', import.meta.url).href, shortCircuit: true }
    : next(specifier, context);
