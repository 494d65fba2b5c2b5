import { browserSandbox, findBrowser } from '#electron/print/find-browser.ts';

/** A Chromium to test with. Call this from a global setup: an unpacking one must not be started twice at once. */
export const findChromium = async (): Promise<string> => {
  const found = await findBrowser();
  if (found === null) throw new Error('No Chromium was found to test with');
  return found;
};

export const chromiumSandbox = browserSandbox;
