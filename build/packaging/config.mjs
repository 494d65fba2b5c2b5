const updateFeed = process.env.CELLWAIN_UPDATE_FEED ?? '';

/**
 * Packaging for the three systems. Builds are unsigned: there is no certificate in the repository,
 * and Windows and macOS say so at the first start; DEVELOPERS.md
 * (section Packages) tells how to sign.
 */
export const packagingConfig = {
  appId: 'org.cellwain.desktop',
  productName: 'Cellwain',
  copyright: 'The Cellwain developers, MIT licence',
  directories: { output: 'dist/packages', buildResources: 'build/icons' },
  // Everything the program needs is bundled, so no package is shipped beside it.
  files: [
    '!**/*',
    'package.json',
    'dist/main/**/*',
    'dist/preload/**/*',
    'dist/renderer/**/*',
    '!**/node_modules/**',
    '!dist/renderer/.vite/**',
  ],
  asar: true,
  // Keeps the packager from gathering node_modules; the file list alone would only drop them later.
  beforeBuild: () => Promise.resolve(false),
  // No update is looked for unless the build names a feed; then the list of versions is made for it.
  publish: updateFeed === '' ? null : { provider: 'generic', url: updateFeed },
  fileAssociations: [
    {
      ext: 'wain',
      name: 'Cellwain plan',
      description: 'Battery plan of a small electric machine',
      mimeType: 'application/vnd.cellwain.plan+json',
      role: 'Editor',
    },
  ],
  electronFuses: {
    // The installed program is no general Node.js that another could start with its rights.
    runAsNode: false,
    enableNodeOptionsEnvironmentVariable: false,
    enableNodeCliInspectArguments: false,
    // Only the packed code, unchanged, is ever loaded.
    enableEmbeddedAsarIntegrityValidation: true,
    onlyLoadAppFromAsar: true,
    // The page comes through its own scheme, so file addresses need no rights.
    grantFileProtocolExtraPrivileges: false,
    enableCookieEncryption: true,
  },
  win: { target: [{ target: 'nsis', arch: ['x64', 'arm64'] }], icon: 'build/icons/icon.ico' },
  nsis: { oneClick: false, perMachine: false, allowToChangeInstallationDirectory: true },
  mac: {
    target: [{ target: 'dmg', arch: ['universal'] }],
    icon: 'build/icons/icon.icns',
    category: 'public.app-category.utilities',
    // Signed without a certificate: Apple's own processors start nothing that has no signature at all, and setting
    // the fuses voids the one that Electron comes with. The hardened runtime would refuse such a program its libraries.
    hardenedRuntime: false,
    identity: '-',
  },
  linux: {
    target: ['AppImage', 'deb'],
    icon: 'build/icons/linux',
    category: 'Utility',
    maintainer: 'The Cellwain developers',
    synopsis: 'Battery planning for small electric machines',
  },
};
