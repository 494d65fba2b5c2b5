import type { Plan } from '../../plan/schema/plan.ts';
import type { WiringBranch } from '../../plan/schema/wiring-branch.ts';
import type { Wiring } from '../../plan/schema/wiring.ts';
import type { BranchStudy, WiringStudy } from '../../wiring/wiring-study.ts';
import { wiringOfPlan } from '../../wiring/wiring-of-plan.ts';
import type { OptionContext } from '../context.ts';
import type { Finding } from '../finding.ts';
import { planRule, type Rule, type RuleVoice } from '../rule.ts';

/** An option on the wiring of the plan. */
export interface WiredOption extends OptionContext {
  readonly plan: Plan;
  readonly wiring: Wiring;
  readonly wired: WiringStudy;
}

type Frame = Parameters<typeof planRule>[0];

/** A rule about the wiring alone, whatever the option; asks for the wiring where the plan has none. */
export function wiringRule(
  frame: Frame,
  check: (wiring: Wiring, plan: Plan, voice: RuleVoice) => readonly Finding[],
): Rule {
  return planRule(frame, ({ plan }, voice) =>
    plan.wiring === null ? [askForWiring(voice)] : check(plan.wiring, plan, voice),
  );
}

/** A rule about the wiring under the currents of each option. */
export function wiredOptionRule(
  frame: Frame,
  check: (entry: WiredOption, voice: RuleVoice) => readonly Finding[],
): Rule {
  return planRule(frame, ({ plan, options, outing }, voice) => {
    const { wiring } = plan;
    if (wiring === null) return [askForWiring(voice)];
    return options.flatMap((entry) => {
      if (entry.study === null) return [];
      const wired = wiringOfPlan(plan, entry.option, entry.study.run, outing.ambientC);
      return wired === null ? [] : check({ ...entry, plan, wiring, wired }, voice);
    });
  });
}

/** The question of every rule that needs the wiring. */
export function askForWiring(voice: RuleVoice): Finding {
  return voice.notChecked({
    missing: {
      en: 'the wiring is missing; the place Wiring proposes one from the plan.',
      de: 'die Verkabelung fehlt; der Ort Verkabelung schlägt eine aus dem Plan vor.',
    },
    fields: ['wiring'],
  });
}

/** A worked-out branch beside the plan's own entry, and the path of its fields. */
export interface WiredBranch {
  readonly found: BranchStudy;
  readonly branch: WiringBranch;
  readonly path: string;
}

export function wiredBranches(entry: WiredOption): WiredBranch[] {
  return entry.wired.branches.map((found) => ({
    found,
    branch: entry.wiring.branches[found.planIndex]!,
    path: `wiring.branches.${found.planIndex}`,
  }));
}
