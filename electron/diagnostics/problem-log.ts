const keptProblems = 200;
const longestLine = 500;

/** The last problems of this run, in memory only. Nothing of it leaves the machine by itself. */
export const createProblemLog = (now: () => Date) => {
  const lines: string[] = [];
  return {
    note: (source: string, message: string): void => {
      // One line each: a message with line breaks must not pass for several entries.
      const flat = message.replaceAll(/\s+/g, ' ').slice(0, longestLine);
      lines.push(`${now().toISOString()} ${source}: ${flat}`);
      if (lines.length > keptProblems) lines.shift();
    },
    lines: (): readonly string[] => lines,
  };
};
export type ProblemLog = ReturnType<typeof createProblemLog>;
