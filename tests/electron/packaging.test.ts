import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { createPackage, listPackage } from '@electron/asar';
import { FuseV1Options, getCurrentFuseWire } from '@electron/fuses';
import { build, Platform, type Configuration } from 'electron-builder';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
// @ts-expect-error -- a plain script without types
import { packagingConfig } from '../../build/packaging/config.mjs';

const config = packagingConfig as Configuration;
const project = new URL('../..', import.meta.url).pathname;
const require = createRequire(import.meta.url);

/** Mark before the fuses in every Electron executable; from the fuses package's own source. */
const sentinel = 'dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX';

let folder = '';
let unpacked = '';

/** A folder electron-builder takes for an Electron of this system: an executable with fuses and a few files. */
const fakeElectron = async (): Promise<string> => {
  const place = join(folder, 'electron');
  mkdirSync(join(place, 'resources'), { recursive: true });
  const { version } = require('electron/package.json') as { version: string };
  writeFileSync(join(place, 'version'), version);
  const fuses = Buffer.concat([
    Buffer.from(sentinel),
    Buffer.from([1, 9]),
    Buffer.from('010010111'),
  ]);
  writeFileSync(
    join(place, 'electron'),
    Buffer.concat([Buffer.alloc(64), fuses, Buffer.alloc(64)]),
  );
  chmodSync(join(place, 'electron'), 0o755);
  writeFileSync(join(place, 'LICENSE'), 'licence');
  writeFileSync(join(place, 'LICENSES.chromium.html'), 'licences');
  mkdirSync(join(folder, 'default-app'));
  writeFileSync(join(folder, 'default-app', 'main.js'), '');
  await createPackage(join(folder, 'default-app'), join(place, 'resources', 'default_app.asar'));
  return place;
};

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'packing-'));
  const app = join(folder, 'app');
  cpSync(join(inject('shellFolder'), 'dist'), join(app, 'dist'), { recursive: true });
  for (const name of ['package.json', 'LICENSE']) cpSync(join(project, name), join(app, name));
  cpSync(join(project, 'build', 'icons'), join(app, 'build', 'icons'), { recursive: true });
  // Things that must stay out.
  mkdirSync(join(app, 'tests'));
  writeFileSync(join(app, 'tests', 'secret.ts'), '');
  mkdirSync(join(app, 'dist', 'headless'));
  writeFileSync(join(app, 'dist', 'headless', 'headless.mjs'), '');
  writeFileSync(join(app, '.env'), 'SECRET=1');
  const { version } = require('electron/package.json') as { version: string };
  await build({
    projectDir: app,
    targets: Platform.LINUX.createTarget('dir'),
    publish: 'never',
    config: { ...config, electronDist: await fakeElectron(), electronVersion: version },
  });
  const [out = ''] = readdirSync(join(app, 'dist', 'packages')).filter((name) =>
    name.endsWith('unpacked'),
  );
  unpacked = join(app, 'dist', 'packages', out);
}, 120_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('the packed program', () => {
  test('holds exactly the bundles and its package file', () => {
    const files = listPackage(join(unpacked, 'resources', 'app.asar'), { isPack: false })
      .map((path) => path.replaceAll('\\', '/'))
      .toSorted();
    expect(files).toEqual([
      '/dist',
      '/dist/main',
      '/dist/main/icon.png',
      '/dist/main/licences.json',
      '/dist/main/main.js',
      '/dist/preload',
      '/dist/preload/preload.cjs',
      '/dist/renderer',
      '/dist/renderer/index.html',
      '/dist/renderer/page.js',
      '/package.json',
    ]);
  });

  test('has its fuses set so that only its own unchanged code runs', async () => {
    const executable = readdirSync(unpacked).find((name) => name === 'cellwain') ?? '';
    const wire = await getCurrentFuseWire(join(unpacked, executable));
    // The fuse wire holds the digits themselves.
    const on = '1'.charCodeAt(0);
    const off = '0'.charCodeAt(0);
    expect({
      runAsNode: wire[FuseV1Options.RunAsNode],
      nodeOptions: wire[FuseV1Options.EnableNodeOptionsEnvironmentVariable],
      inspect: wire[FuseV1Options.EnableNodeCliInspectArguments],
      integrity: wire[FuseV1Options.EnableEmbeddedAsarIntegrityValidation],
      onlyAsar: wire[FuseV1Options.OnlyLoadAppFromAsar],
      files: wire[FuseV1Options.GrantFileProtocolExtraPrivileges],
    }).toEqual({
      runAsNode: off,
      nodeOptions: off,
      inspect: off,
      integrity: on,
      onlyAsar: on,
      files: off,
    });
  });
});

describe('the packaging configuration', () => {
  test('names only settings the packager knows', () => {
    const scheme = JSON.parse(
      readFileSync(join(dirname(require.resolve('app-builder-lib')), '..', 'scheme.json'), 'utf8'),
    ) as { properties?: object; definitions: Record<string, { properties?: object }> };
    const top = scheme.properties ?? scheme.definitions['Configuration']?.properties ?? {};
    expect(Object.keys(config).filter((key) => !(key in top))).toEqual([]);
  });

  test('covers three systems, the file ending, and publishes nothing', () => {
    expect(config).toMatchObject({ win: {}, mac: {}, linux: {}, publish: null, asar: true });
    expect(config.fileAssociations).toMatchObject([{ ext: 'wain' }]);
  });

  test('points to icons that are there', () => {
    for (const icon of ['icon.ico', 'icon.icns', 'icon.svg', 'linux/512x512.png']) {
      expect(existsSync(join(project, 'build', 'icons', icon)), icon).toBe(true);
    }
  });
});
