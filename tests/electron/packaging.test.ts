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
import { dirname, join, relative } from 'node:path';
import { createPackage, listPackage } from '@electron/asar';
import { FuseV1Options, getCurrentFuseWire } from '@electron/fuses';
import { Ajv } from 'ajv';
import { build, Platform, type Configuration } from 'electron-builder';
import { build as buildBundle, type InlineConfig } from 'vite';
import { afterAll, beforeAll, describe, expect, inject, onTestFinished, test, vi } from 'vitest';
// @ts-expect-error -- a plain script without types
import { packagingConfig } from '../../build/packaging/config.mjs';

const config = packagingConfig as Configuration;
const project = new URL('../..', import.meta.url).pathname;
const require = createRequire(import.meta.url);

/** Mark before the fuses in every Electron executable; from the fuses package's own source. */
const sentinel = 'dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX';

let folder = '';
let unpacked = '';
let again = '';

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

/** Packs the program in a folder of its own and gives the folder of the result. */
const pack = async (name: string, electronDist: string): Promise<string> => {
  const app = join(folder, name);
  cpSync(join(inject('realShellFolder'), 'dist'), join(app, 'dist'), { recursive: true });
  for (const file of ['package.json', 'LICENSE']) cpSync(join(project, file), join(app, file));
  cpSync(join(project, 'build', 'icons'), join(app, 'build', 'icons'), { recursive: true });
  // Things that must stay out.
  mkdirSync(join(app, 'tests'));
  writeFileSync(join(app, 'tests', 'secret.ts'), '');
  mkdirSync(join(app, 'dist', 'headless'));
  writeFileSync(join(app, 'dist', 'headless', 'headless.mjs'), '');
  writeFileSync(join(app, '.env'), 'SECRET=1');
  const { version } = require('electron/package.json') as { version: string };
  // A copy of its own: the packager writes into what it is given.
  const own = `../../build/packaging/config.mjs?${name}`;
  const { packagingConfig: packed } = (await import(/* @vite-ignore */ own)) as {
    packagingConfig: Configuration;
  };
  await build({
    projectDir: app,
    targets: Platform.LINUX.createTarget('dir'),
    publish: 'never',
    config: { ...packed, electronDist, electronVersion: version },
  });
  const packages = join(app, 'dist', 'packages');
  const out = readdirSync(packages).find((entry) => entry.endsWith('unpacked'));
  return join(packages, out ?? '');
};

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'packing-'));
  const electronDist = await fakeElectron();
  unpacked = await pack('app', electronDist);
  again = await pack('again', electronDist);
}, 120_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('the packed program', () => {
  test('holds exactly the bundles and its package file', () => {
    const files = listPackage(join(unpacked, 'resources', 'app.asar'), { isPack: false })
      .map((path) => path.replaceAll('\\', '/'))
      .toSorted();
    // What the bundler names by content, such as index-1a2b3c4d.js, goes by its folder and ending.
    const built = /^\/dist\/renderer\/assets\/[\w.-]+\.(js|css|svg)$/;
    expect(files.filter((path) => built.test(path)).length).toBeGreaterThan(5);
    expect(files.filter((path) => !built.test(path))).toEqual([
      '/dist',
      '/dist/main',
      '/dist/main/icon.png',
      '/dist/main/licences.json',
      '/dist/main/main.js',
      '/dist/preload',
      '/dist/preload/preload.cjs',
      '/dist/renderer',
      '/dist/renderer/assets',
      '/dist/renderer/index.html',
      '/dist/renderer/licences.js',
      '/dist/renderer/licences.json',
      '/package.json',
    ]);
  });

  test('is the same byte for byte when it is packed again', () => {
    const content = (place: string) => readFileSync(join(place, 'resources', 'app.asar'));
    expect(content(again).equals(content(unpacked))).toBe(true);
  });

  test('comes from bundles that are the same byte for byte when they are built again', async () => {
    const names = ['main', 'preload', 'renderer'] as const;
    vi.stubEnv('NODE_ENV', 'production');
    onTestFinished(() => void vi.unstubAllEnvs());
    for (const name of names) {
      const { config: bundle } = (await import(`../../build/bundles/${name}.mjs`)) as {
        config: (outDir: string) => InlineConfig;
      };
      const built = join(folder, 'built', name);
      await buildBundle(bundle(built));
      const present = join(inject('realShellFolder'), 'dist', name);
      const files = readdirSync(built, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map((entry) => relative(built, join(entry.parentPath, entry.name)));
      for (const file of files.filter((path) => !path.startsWith('.vite'))) {
        const isSame = readFileSync(join(built, file)).equals(readFileSync(join(present, file)));
        expect(isSame, `${name}/${file}`).toBe(true);
      }
    }
  }, 120_000);

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
  const scheme = JSON.parse(
    readFileSync(join(dirname(require.resolve('app-builder-lib')), '..', 'scheme.json'), 'utf8'),
  ) as object;
  const ajv = new Ajv({ strict: false, allErrors: true });
  // The packager's own word in its schema, for settings that are functions.
  ajv.addKeyword({
    keyword: 'typeof',
    validate: (kind: string, value: unknown) => typeof value === kind,
  });
  const validate = ajv.compile(scheme);

  test('is valid in every part against the schema of the packager', () => {
    validate(config);
    expect(validate.errors ?? []).toEqual([]);
  });

  test('is held by a schema that does refuse a wrong word, at the top and further down', () => {
    expect(validate({ ...config, autoUpdates: true })).toBe(false);
    expect(validate({ ...config, win: { target: [{ target: 5 }] } })).toBe(false);
    expect(validate({ ...config, electronFuses: { runAsNode: 'off' } })).toBe(false);
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
