import { useMemo } from 'react';
import { wiringOfPlan, type WiringStudy } from '#core/wiring/index.ts';
import type { Option } from '#core/plan/schema/option.ts';
import type { RunResult } from '#core/run/result.ts';
import { usePlan } from '../../state/plan-store.ts';
import { useStudy } from '../../state/shown-study.ts';

export interface WiringAtHand {
  readonly option: Option;
  readonly index: number;
  /** Null until the option's run is there. */
  readonly run: RunResult | null;
  /** Null without a run or without wiring. */
  readonly wired: WiringStudy | null;
  readonly ambientC: number;
}

/** The wiring worked out for one option, with the currents of its last known run. A few milliseconds. */
export function useWiringStudy(optionId: string | null): WiringAtHand | null {
  const plan = usePlan((whole) => whole);
  const { study } = useStudy();
  const index = Math.max(
    0,
    plan.options.findIndex(({ id }) => id === optionId),
  );
  const option = plan.options[index];
  const run = study?.options.find(({ id }) => id === option?.id)?.run ?? null;
  const ambientC =
    (plan.outings.find(({ id }) => id === study?.outingId) ?? plan.outings[0])?.ambientC ?? 20;
  const wired = useMemo(
    () => (option === undefined || run === null ? null : wiringOfPlan(plan, option, run, ambientC)),
    [plan, option, run, ambientC],
  );
  return option === undefined ? null : { option, index, run, wired, ambientC };
}
