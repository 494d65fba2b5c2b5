import { defineConfig } from '@playwright/test';
import { chromiumSandbox, findChromium } from '../support/chromium.ts';

/** The built page in a browser, served as `npm start` serves it. */
export default defineConfig({
  testDir: '.',
  outputDir: '../../dist/e2e-results',
  globalSetup: './global-setup.ts',
  retries: 2,
  timeout: 30_000,
  fullyParallel: true,
  workers: 2,
  forbidOnly: process.env['CI'] !== undefined,
  reporter: [['list'], ['json']],
  use: {
    browserName: 'chromium',
    baseURL: process.env['PAGE_URL'] ?? 'http://127.0.0.1:9/',
    viewport: { width: 1280, height: 800 },
    acceptDownloads: true,
    launchOptions: { executablePath: await findChromium(), chromiumSandbox },
    trace: 'off',
    screenshot: 'only-on-failure',
  },
});
