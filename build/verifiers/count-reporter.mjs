import { writeFileSync } from 'node:fs';

const fullName = (test) => `${test.module.relativeModuleId} > ${test.fullName}`;

/**
 * Vitest reporter that writes the counts of each project, and every skipped test with its reason,
 * to the file named in COUNTS_FILE. The reason is the note given to `context.skip(note)`.
 */
export default class CountReporter {
  onTestRunEnd(modules, unhandledErrors) {
    const file = process.env.COUNTS_FILE;
    if (file === undefined) return;
    const projects = {};
    for (const module of modules) {
      const counts = (projects[module.project.name] ??= { passed: 0, failed: 0, skipped: [] });
      // A file that does not even load has no tests; it counts as one failure.
      if (module.errors().length > 0) counts.failed += 1;
      for (const test of module.children.allTests()) {
        const { state, note } = test.result();
        if (state === 'passed') counts.passed += 1;
        else if (state === 'skipped') {
          const title = fullName(test);
          counts.skipped.push({ title, reason: note ?? test.meta().skipReason ?? null });
        } else counts.failed += 1;
      }
    }
    writeFileSync(file, JSON.stringify({ projects, unhandledErrors: unhandledErrors.length }));
  }
}
