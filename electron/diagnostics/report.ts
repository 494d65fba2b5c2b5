import type { AboutData } from '#core/shell/documents.ts';
import { withoutPaths } from '#core/shell/without-paths.ts';

/** Text for a problem report: versions, system, last problems; no folder, no content of a plan. */
export const reportText = (
  about: AboutData,
  system: string,
  problems: readonly string[],
  home: string,
): string => {
  const runtimes = Object.entries(about.runtimes).map(([name, version]) => `${name} ${version}`);
  const lines = [
    `${about.name} ${about.version}`,
    runtimes.join(', '),
    system,
    problems.length === 0 ? 'No problems noted.' : 'Last problems:',
    ...problems,
  ];
  return withoutPaths(lines.join('\n'), home);
};
