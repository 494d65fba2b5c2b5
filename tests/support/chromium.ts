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
 * A Chromium to test with: the system's, else the one that ships inside an npm package. The latter
 * unpacks on its first use, and two at once would race: call this from a global setup.
 */
export const findChromium = async (): Promise<string> => {
  const found = systemBrowser();
  if (found !== undefined) return found;
  const { default: packed } = await import('@sparticuz/chromium');
  return packed.executablePath();
};

/** Chromium's sandbox works for every user but root, who would not get a browser at all. */
export const chromiumSandbox = process.getuid?.() !== 0;
