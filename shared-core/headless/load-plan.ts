import { problemLine } from '../plan/problem.ts';
import { readPlan } from '../plan/read-plan.ts';
import type { Plan } from '../plan/schema/plan.ts';
import type { HeadlessHost } from './host.ts';

export type LoadedPlan =
  | { readonly ok: true; readonly plan: Plan }
  | { readonly ok: false; readonly line: string };

/** Reads a plan file; says on standard error what was lifted from an older version or left out. */
export async function loadPlan(host: HeadlessHost, path: string): Promise<LoadedPlan> {
  const text = await readTextFile(host, path);
  if (!text.ok) return text;
  const result = readPlan(text.text);
  if (!result.ok) return { ok: false, line: `${path}: ${problemLine(result.problem)}` };
  if (result.migratedFrom !== undefined) {
    host.err(
      `${path}: format version ${result.migratedFrom} was read; saving writes the newer one.\n`,
    );
  }
  if (result.leftOut.length > 0) {
    host.err(
      `${path}: fields this program does not know were left out: ${result.leftOut.join(', ')}\n`,
    );
  }
  return { ok: true, plan: result.plan };
}

/** Text of any file, or the one line that says why not. */
export async function readTextFile(
  host: HeadlessHost,
  path: string,
): Promise<
  { readonly ok: true; readonly text: string } | { readonly ok: false; readonly line: string }
> {
  try {
    return { ok: true, text: await host.readText(path) };
  } catch (error) {
    return { ok: false, line: `${path}: ${fileTrouble(error)}` };
  }
}

/**
 * Hands a file over piece by piece, so that a log of any length can be read; the one line that says why not, or null.
 * Each piece is done with before the next is fetched.
 */
export async function readTextPieces(
  host: HeadlessHost,
  path: string,
  take: (piece: string) => void,
): Promise<string | null> {
  const pieces = host.readPieces?.(path);
  try {
    if (pieces === undefined) take(await host.readText(path));
    else for await (const piece of pieces) take(piece);
    return null;
  } catch (error) {
    return `${path}: ${fileTrouble(error)}`;
  }
}

/** Writes a file, or gives the one line that says why not. */
export async function writeTextFile(
  host: HeadlessHost,
  path: string,
  text: string,
  overwrite: boolean,
): Promise<string | null> {
  try {
    await host.writeText(path, text, { overwrite });
    return null;
  } catch (error) {
    return `${path}: ${fileTrouble(error)}`;
  }
}

/** The same for bytes. */
export async function writeBytesFile(
  host: HeadlessHost,
  path: string,
  bytes: Uint8Array,
  overwrite: boolean,
): Promise<string | null> {
  if (host.writeBytes === undefined) return `${path}: Only text can be written here.`;
  try {
    await host.writeBytes(path, bytes, { overwrite });
    return null;
  } catch (error) {
    return `${path}: ${fileTrouble(error)}`;
  }
}

const troubles: Readonly<Record<string, string>> = {
  ENOENT: 'There is no such file or folder. Check the path.',
  EISDIR: 'This is a folder. Name a file in it.',
  ENOTDIR: 'Part of the path is no folder. Check the path.',
  EACCES: 'Access is refused. Check the permissions.',
  EPERM: 'Access is refused. Check the permissions.',
  EEXIST: 'The file exists. Add --force to replace it, or choose another name.',
  ENOSPC: 'The disk is full. Make room and try again.',
};

function fileTrouble(error: unknown): string {
  const code =
    typeof error === 'object' && error !== null && 'code' in error ? String(error.code) : '';
  return (
    troubles[code] ?? `The file cannot be used${code === '' ? '' : ` (${code})`}. Check the path.`
  );
}
