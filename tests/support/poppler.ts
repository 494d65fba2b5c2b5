import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const isThere = (tool: string): boolean => spawnSync(tool, ['-v']).error === undefined;

/** Why PDF files cannot be read back here, or null. With REQUIRE_REFERENCES=1 an absent tool is a failure. */
export function noPopplerReason(): string | null {
  if (isThere('pdftotext') && isThere('pdfinfo')) return null;
  if (process.env['REQUIRE_REFERENCES'] === '1')
    throw new Error('REQUIRE_REFERENCES=1, but pdftotext was not found');
  return 'pdftotext was not found';
}

export interface ReadPdf {
  /** Text of each page, laid out. */
  readonly pages: readonly string[];
  readonly info: string;
}

/** Reads a PDF with Poppler: text of every page and the properties with the size of every page. */
export function readPdf(bytes: Uint8Array): ReadPdf {
  const folder = mkdtempSync(join(tmpdir(), 'read-pdf-'));
  const file = join(folder, 'a.pdf');
  try {
    writeFileSync(file, bytes);
    const text = spawnSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' });
    const info = spawnSync('pdfinfo', ['-l', '999', file], { encoding: 'utf8' });
    if (text.status !== 0 || info.status !== 0)
      throw new Error(`the PDF cannot be read: ${text.stderr}${info.stderr}`);
    return { pages: text.stdout.split('\f').slice(0, -1), info: info.stdout };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
