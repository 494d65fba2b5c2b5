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
  const server = await servePage(join(dist, 'renderer'), 0);
  process.env['PAGE_URL'] = server.url;
  return () => server.close();
}
