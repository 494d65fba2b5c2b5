import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { browserSandbox, findBrowser } from './find-browser.ts';

const run = promisify(execFile);

/**
 * Prints an HTML file into a PDF with a Chromium that shows no window; the file's own page rules
 * give paper and margins. Null where no browser is found.
 */
export const printPdf = async (html: string): Promise<Uint8Array | null> => {
  const browser = await findBrowser();
  if (browser === null) return null;
  const folder = await mkdtemp(join(tmpdir(), 'cellwain-print-'));
  const page = join(folder, 'sheet.html');
  const out = join(folder, 'sheet.pdf');
  try {
    await writeFile(page, html, { mode: 0o600 });
    await run(
      browser,
      [
        '--headless',
        ...(browserSandbox ? [] : ['--no-sandbox']),
        '--disable-gpu',
        '--disable-extensions',
        '--disable-background-networking',
        '--no-first-run',
        `--user-data-dir=${join(folder, 'profile')}`,
        '--no-pdf-header-footer',
        `--print-to-pdf=${out}`,
        pathToFileURL(page).href,
      ],
      { timeout: 60_000 },
    );
    return await readFile(out);
  } finally {
    await rm(folder, { recursive: true, force: true, maxRetries: 5 });
  }
};
