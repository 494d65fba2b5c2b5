import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { limitRow, skippedRow, type BenchRow } from './row.ts';

const filesUnder = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() ? filesUnder(join(folder, entry.name)) : [join(folder, entry.name)],
  );

/** Size of each built bundle, as it lies on disk and packed. */
export function benchBundles(dist: string): BenchRow[] {
  return ['renderer', 'main', 'preload', 'headless', 'serve'].map((name) => {
    const folder = join(dist, name);
    try {
      const files = filesUnder(folder).filter((file) => /\.(?:m?js|cjs|css|html)$/.test(file));
      const packed = files.reduce((sum, file) => sum + gzipSync(readFileSync(file)).byteLength, 0);
      const plain = files.reduce((sum, file) => sum + statSync(file).size, 0);
      const note = `${(plain / 1000).toFixed(0)} kB unpacked, ${files.length} files`;
      return limitRow(`bundle ${name}, gzip`, packed / 1000, 'kB', undefined, note);
    } catch {
      return skippedRow(`bundle ${name}, gzip`, 'not built');
    }
  });
}
