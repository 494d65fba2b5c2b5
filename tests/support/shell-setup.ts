import { cpSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import type { TestProject } from 'vitest/node';
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
    /** Which of the two the specs run on. */
    shellRuntime: 'electron' | 'stand-in';
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
  const real = layOut(join(folder, 'real-page'), join(dist, 'renderer'));
  const server = await chromium.launchServer({
    executablePath: await findChromium(),
    chromiumSandbox,
  });
  testProject.provide('browserAddress', server.wsEndpoint());
  testProject.provide('shellFolder', shell);
  testProject.provide('realShellFolder', real);
  testProject.provide('shellRuntime', 'stand-in');
  console.log(
    'Shell tests ran on the stand-in: compiled main and preload in Node, pages in Chromium',
  );
  return async () => {
    await server.close();
    rmSync(folder, { recursive: true, force: true });
  };
}
