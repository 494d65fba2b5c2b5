import type { Words } from './language.ts';
import type { PlanProblemCode } from './problem.ts';
import type { Plan } from './schema/plan.ts';

/** Branches lead between devices that exist, and beeping wires name wires of the register. */
export function checkWiring(
  plan: Plan,
  report: (code: PlanProblemCode, path: string, problem: Words, remedy: Words) => void,
): void {
  if (plan.wiring === null) return;
  const devices = new Set(plan.wiring.devices.map((device) => device.id));
  const list = [...devices].join(', ');
  plan.wiring.branches.forEach((branch, index) => {
    for (const end of ['from', 'to'] as const) {
      if (devices.has(branch[end])) continue;
      report(
        'unknown-reference',
        `wiring.branches.${index}.${end}`,
        {
          en: `The branch ${branch.name} leads to ${branch[end]}, which is not a device of the wiring.`,
          de: `Der Zweig ${branch.name} führt zu ${branch[end]}; das ist kein Gerät der Verkabelung.`,
        },
        { en: `Use one of: ${list}.`, de: `Möglich: ${list}.` },
      );
    }
    if (branch.from === branch.to) {
      report(
        'contradiction',
        `wiring.branches.${index}.to`,
        {
          en: `The branch ${branch.name} begins and ends at ${branch.from}.`,
          de: `Der Zweig ${branch.name} beginnt und endet bei ${branch.from}.`,
        },
        { en: 'Let it end at another device.', de: 'Ihn bei einem anderen Gerät enden lassen.' },
      );
    }
  });
}
