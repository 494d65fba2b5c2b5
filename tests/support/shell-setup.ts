import { cpSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import type { TestProject } from 'vitest/node';
// @ts-expect-error -- a plain script without types
import { electronRuntime } from '../../build/electron-runtime.mjs';
// @ts-expect-error -- a plain script without types
import { buildBundles } from '../../build/build.mjs';
import { chromiumSandbox, findChromium } from './chromium.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Address of the one Chromium all shell tests share. */
    browserAddress: string;
    /** Folder with the compiled shell and the test page. */
    shellFolder: string;
    /** The same with the real page. */
    realShellFolder: string;
    /** Electron's executable, or empty where there is none. */
    electronFile: string;
    /** Why Electron cannot run here, or empty where it can. */
    noElectronReason: string;
  }
}

const project = fileURLToPath(new URL('../..', import.meta.url));
const dist = join(project, 'dist');

/** A folder as the packed program has it: bundles beside each other. */
const layOut = (folder: string, page: string): string => {
  cpSync(join(dist, 'main'), join(folder, 'dist', 'main'), { recursive: true });
  cpSync(join(dist, 'preload'), join(folder, 'dist', 'preload'), { recursive: true });
  cpSync(page, join(folder, 'dist', 'renderer'), { recursive: true });
  cpSync(join(project, 'package.json'), join(folder, 'package.json'));
  return folder;
};

export default async function setUp(testProject: TestProject): Promise<() => Promise<void>> {
  await (buildBundles as (names: string[]) => Promise<string[]>)(['main', 'preload', 'renderer']);
  const folder = mkdtempSync(join(tmpdir(), 'shell-'));
  mkdirSync(join(folder, 'test-page'));
  const shell = layOut(join(folder, 'test-page'), join(project, 'tests', 'support', 'shell-page'));
  const realShell = layOut(join(folder, 'real-page'), join(dist, 'renderer'));
  const server = await chromium.launchServer({
    executablePath: await findChromium(),
    chromiumSandbox,
  });
  testProject.provide('browserAddress', server.wsEndpoint());
  testProject.provide('shellFolder', shell);
  testProject.provide('realShellFolder', realShell);
  const { file = '', reason = '' } = (
    electronRuntime as (options: { fetch: boolean }) => { file?: string; reason?: string }
  )({ fetch: false });
  testProject.provide('electronFile', file);
  testProject.provide('noElectronReason', reason);
  const real = file === '' ? `not on Electron: ${reason}` : 'and on Electron itself';
  console.log(
    `Shell tests ran on the stand-in (compiled main and preload in Node, pages in Chromium), ${real}`,
  );
  return async () => {
    await server.close();
    rmSync(folder, { recursive: true, force: true });
  };
}
