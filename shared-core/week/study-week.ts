import type { Option } from '../plan/schema/option.ts';
import type { Plan } from '../plan/schema/plan.ts';
import type { Routine, Week } from '../plan/schema/week.ts';
import { newWeek } from './default-week.ts';
import { proposeRoutine, type Proposal } from './propose-routine.ts';
import { routineSteps, type RoutineStep } from './routine-steps.ts';
import type { SeasonResult, WeekStretch } from './season-result.ts';
import { simulateSeason, typicalWeek } from './simulate-season.ts';
import { storagePlan, type StoragePlan } from './storage-plan.ts';
import { weekModel, type WeekModel } from './week-model.ts';

/** Why a week cannot be simulated. */
export type WeekObstacle = 'no-charger' | 'no-use' | 'no-window' | 'charger-cannot-charge';

export interface WeekStudy {
  readonly optionId: string;
  /** True when the plan has no week of its own and the usual one was taken. */
  readonly assumedWeek: boolean;
  readonly week: Week;
  readonly obstacle: WeekObstacle | null;
  /** Every routine over the season; empty with an obstacle. */
  readonly seasons: readonly SeasonResult[];
  /** The routine set in the plan. */
  readonly own: SeasonResult | null;
  readonly proposal: Proposal | null;
  /** A typical week under the plan's routine and under the proposed one. */
  readonly ownWeek: readonly WeekStretch[];
  readonly proposedWeek: readonly WeekStretch[];
  readonly steps: readonly RoutineStep[];
  readonly storage: StoragePlan | null;
}

const triggers = ['after-use', 'nightly', 'weekend'] as const;

/** Simulates the week of a plan with an option, under every routine. */
export function studyWeek(plan: Plan, option: Option): WeekStudy {
  const week = plan.week ?? newWeek(plan);
  const empty: WeekStudy = {
    optionId: option.id,
    assumedWeek: plan.week === null,
    week,
    obstacle: null,
    seasons: [],
    own: null,
    proposal: null,
    ownWeek: [],
    proposedWeek: [],
    steps: [],
    storage: null,
  };
  if (option.charger === null) return { ...empty, obstacle: 'no-charger' };
  if (week.usage.length === 0) return { ...empty, obstacle: 'no-use' };
  const model = weekModel(plan, option, option.charger, week);
  const storage = storagePlan(model, plan.thresholds.care);
  if (week.windows.length === 0) return { ...empty, storage, obstacle: 'no-window' };
  if (model.charge(week.place.chargeTemperatureC ?? 20).endedBy === 'no-current')
    return { ...empty, storage, obstacle: 'charger-cannot-charge' };
  const routines = routinesToCompare(week.routine);
  const seasons = routines.map((routine) => simulateSeason(model, routine));
  const proposal = proposeRoutine(seasons, model.lithium);
  const proposed = routines.find((routine) => routine.trigger === proposal.trigger) ?? week.routine;
  const proposedWeek = typicalWeek(model, proposed);
  return {
    ...empty,
    seasons,
    own: seasons.find((season) => season.trigger === week.routine.trigger) ?? null,
    proposal,
    ownWeek: weekOf(model, week.routine, proposed, proposedWeek),
    proposedWeek,
    steps: routineSteps(proposedWeek),
    storage,
  };
}

function weekOf(
  model: WeekModel,
  own: Routine,
  proposed: Routine,
  proposedWeek: WeekStretch[],
): WeekStretch[] {
  return own.trigger === proposed.trigger ? proposedWeek : typicalWeek(model, own);
}

/** The three usual routines with the plan's own limit, and the plan's own days where it has some. */
function routinesToCompare(own: Routine): Routine[] {
  const usual = triggers.map((trigger) => ({ ...own, trigger }));
  return own.ownDays.length > 0 || own.trigger === 'own'
    ? [...usual, { ...own, trigger: 'own' }]
    : usual;
}
