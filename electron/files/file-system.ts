import * as nodeFileSystem from 'node:fs/promises';

/** The calls the file code makes, so that a test can let any one of them fail. */
export type FileSystem = Pick<
  typeof nodeFileSystem,
  'open' | 'rename' | 'rm' | 'stat' | 'realpath' | 'readdir' | 'mkdir' | 'copyFile'
>;

export const realFileSystem: FileSystem = nodeFileSystem;

/** Error code of a failed system call, such as `ENOENT`. */
export const errorCode = (error: unknown): string =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : '';
