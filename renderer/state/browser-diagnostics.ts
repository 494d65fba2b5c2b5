import type { AboutData, BundledPackage } from '#core/shell/documents.ts';
import { withoutPaths } from '#core/shell/without-paths.ts';

const keptProblems = 200;
const longestLine = 500;

/** The list the build wrote beside the page; as a script, for the page may fetch nothing. */
const bundledPackages = async (): Promise<readonly BundledPackage[]> => {
  try {
    const address = new URL('/licences.js', location.href).href;
    const list = (await import(/* @vite-ignore */ address)) as {
      readonly packages: readonly BundledPackage[];
    };
    return list.packages;
  } catch {
    // Without the list the box still tells the version and the rest.
    return [];
  }
};

/** Versions and the last problems of this tab, in memory only. */
export const createBrowserDiagnostics = (version: string) => {
  const problems: string[] = [];
  return {
    note: (message: string): void => {
      // One line each: a message with line breaks must not pass for several entries.
      const flat = message.replaceAll(/\s+/g, ' ').slice(0, longestLine);
      problems.push(`${new Date().toISOString()} page: ${flat}`);
      if (problems.length > keptProblems) problems.shift();
    },
    report: (): string => {
      const last = problems.length === 0 ? ['No problems noted.'] : ['Last problems:', ...problems];
      const browser = `Browser ${navigator.userAgent}`;
      return [`Cellwain ${version}`, browser, withoutPaths(last.join('\n'), '')].join('\n');
    },
    about: async (): Promise<AboutData> => ({
      name: 'Cellwain',
      version,
      runtimes: { Browser: navigator.userAgent },
      packages: await bundledPackages(),
    }),
  };
};
