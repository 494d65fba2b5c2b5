import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
// @ts-expect-error -- a plain script without types
import { buildBundles } from '../../build/build.mjs';

const dist = fileURLToPath(new URL('../../dist', import.meta.url));

type Serve = typeof import('../../electron/serve/serve.ts');

/** Builds the page if need be and serves it; the address reaches the workers by the environment. */
export default async function setUp(): Promise<() => Promise<void>> {
  await (buildBundles as (names: string[]) => Promise<string[]>)(['renderer', 'serve']);
  const file = pathToFileURL(join(dist, 'serve', 'serve.mjs')).href;
  const { servePage } = (await import(file)) as Serve;
  // A copy: a build begun meanwhile must not change the page under the tests.
  const page = mkdtempSync(join(tmpdir(), 'e2e-page-'));
  cpSync(join(dist, 'renderer'), page, { recursive: true });
  const server = await servePage(page, 0);
  process.env['PAGE_URL'] = server.url;
  return async () => {
    await server.close();
    rmSync(page, { recursive: true, force: true });
  };
}
