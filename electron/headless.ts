import { createReadStream } from 'node:fs';
import { readFile, writeFile } from 'node:fs/promises';
import { runHeadless } from '#core/headless/main.ts';
import packageFile from '../package.json' with { type: 'json' };
import { printPdf } from './print/print-pdf.ts';

/** A reader that ends early (`| head`) closes the pipe; that is no failure of ours. */
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});

const pieceBytes = 1 << 20;

const readStandardInput = async (): Promise<string> => {
  const parts: Buffer[] = [];
  for await (const part of process.stdin) parts.push(Buffer.from(part as Uint8Array));
  return Buffer.concat(parts).toString('utf8');
};

process.exitCode = await runHeadless(process.argv.slice(2), {
  readText: (path) => (path === '-' ? readStandardInput() : readFile(path, 'utf8')),
  readPieces: (path) =>
    path === '-'
      ? process.stdin.setEncoding('utf8')
      : createReadStream(path, { encoding: 'utf8', highWaterMark: pieceBytes }),
  // `wx` fails with EEXIST in the same step that creates, so nothing can slip in between.
  writeText: (path, text, { overwrite }) => writeFile(path, text, { flag: overwrite ? 'w' : 'wx' }),
  writeBytes: (path, bytes, { overwrite }) =>
    writeFile(path, bytes, { flag: overwrite ? 'w' : 'wx' }),
  printPdf,
  version: () => packageFile.version,
  today: () => new Date().toISOString().slice(0, 10),
  out: (text) => {
    process.stdout.write(text);
  },
  err: (text) => {
    process.stderr.write(text);
  },
});
