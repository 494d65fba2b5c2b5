import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

const isExecutable = (file: string): boolean => {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
};

const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];
const fixedPlaces = ['/Applications/Google Chrome.app/Contents/MacOS/Google Chrome'];

const systemBrowser = (): string | undefined => {
  const named = process.env['CHROMIUM'];
  if (named !== undefined) return named;
  const folders = (process.env['PATH'] ?? '').split(delimiter);
  const onPath = folders.flatMap((folder) => names.map((name) => join(folder, name)));
  return [...onPath, ...fixedPlaces].find(isExecutable);
};

/**
 * A Chromium to print and test with: the one named in the environment, the system's, else the one
 * that ships inside an npm package. The latter unpacks on its first use, and two at once would
 * race. Null where there is none.
 */
export const findBrowser = async (): Promise<string | null> => {
  const found = systemBrowser();
  if (found !== undefined) return isExecutable(found) ? found : null;
  try {
    const { default: packed } = await import('@sparticuz/chromium');
    return await packed.executablePath();
  } catch {
    return null;
  }
};

/** Chromium's sandbox works for every user but root, who would not get a browser at all. */
export const browserSandbox = process.getuid?.() !== 0;
