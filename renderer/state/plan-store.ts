import { applyPatches, enablePatches, produceWithPatches, type Draft, type Patch } from 'immer';
import { createStore, useStore } from 'zustand';
import type { Plan } from '#core/plan/schema/plan.ts';
import { newPlan } from '#core/plan/defaults.ts';

enablePatches();

/** One undoable step. Steps of one key that follow each other quickly are one step. */
export interface Step {
  /** Identifies the state after this step, so that undoing back to the saved state is noticed. */
  readonly id: number;
  /** As shown in the undo command, e.g. `Rated capacity`. */
  readonly name: string;
  readonly key: string | null;
  readonly at: number;
  readonly forward: readonly Patch[];
  readonly backward: readonly Patch[];
}

export interface PlanState {
  readonly plan: Plan;
  readonly past: readonly Step[];
  readonly future: readonly Step[];
  /** State that is on disk. */
  readonly savedId: number;
  /** State before the first step that is kept. */
  readonly baseId: number;
}

/** Steps of one field that come within this time [ms] are one: a held spin key. */
const coalesceMs = 1500;

/** Steps under such a key are one step however long they take: one trial of a figure by its slider. */
const trialPrefix = 'trial ';
let lastTrial = 0;

/** A key of its own for a trial of a field. */
export const trialKey = (path: string): string => {
  lastTrial += 1;
  return `${trialPrefix}${lastTrial} ${path}`;
};

let lastId = 0;
const freshStateId = (): number => {
  lastId += 1;
  return lastId;
};

const startId = freshStateId();
export const planStore = createStore<PlanState>(() => ({
  plan: newPlan(),
  past: [],
  future: [],
  savedId: startId,
  baseId: startId,
}));

/** Number of the state the plan is in now; the host sends it back after a save. */
export const stateId = (state: PlanState): number => state.past.at(-1)?.id ?? state.baseId;
export const isUnsaved = (state: PlanState): boolean => stateId(state) !== state.savedId;

/**
 * Changes the plan in one undoable step.
 *
 * @param name what is done, for the undo command, in the user's language
 * @param recipe changes the draft; a recipe that changes nothing leaves no step
 * @param key edits of the same key shortly after one another are one step, e.g. the path of a field
 */
export function edit(
  name: string,
  recipe: (draft: Draft<Plan>) => void,
  key: string | null = null,
): void {
  planStore.setState((state) => {
    const [plan, forward, backward] = produceWithPatches(state.plan, (draft) => {
      recipe(draft);
    });
    if (forward.length === 0) return state;
    const at = performance.now();
    const last = state.past.at(-1);
    const joins =
      key !== null &&
      last?.key === key &&
      (at - last.at < coalesceMs || key.startsWith(trialPrefix)) &&
      state.future.length === 0 &&
      // The saved state must stay reachable by undo.
      last.id !== state.savedId;
    const step: Step = {
      id: freshStateId(),
      name,
      key,
      at,
      forward: joins ? [...last.forward, ...forward] : forward,
      backward: joins ? [...backward, ...last.backward] : backward,
    };
    return { plan, past: [...(joins ? state.past.slice(0, -1) : state.past), step], future: [] };
  });
}

export function undo(): void {
  planStore.setState((state) => {
    const step = state.past.at(-1);
    if (step === undefined) return state;
    return {
      plan: applyPatches(state.plan, step.backward),
      past: state.past.slice(0, -1),
      future: [step, ...state.future],
    };
  });
}

/** Takes the last step back without a way to do it again, if it is the one of that key. */
export function dropStep(key: string): void {
  planStore.setState((state) => {
    const step = state.past.at(-1);
    if (step?.key !== key) return state;
    return { plan: applyPatches(state.plan, step.backward), past: state.past.slice(0, -1) };
  });
}

export function redo(): void {
  planStore.setState((state) => {
    const [step, ...future] = state.future;
    if (step === undefined) return state;
    return { plan: applyPatches(state.plan, step.forward), past: [...state.past, step], future };
  });
}

/** Puts another plan in place, with a history of its own. `unsaved` for a plan that no file holds as it is. */
export function replacePlan(plan: Plan, unsaved = false): void {
  const id = freshStateId();
  planStore.setState({
    plan,
    past: [],
    future: [],
    baseId: id,
    savedId: unsaved ? 0 : id,
  });
}

/** The state of that number is on disk now. */
export function markSaved(id: number): void {
  planStore.setState({ savedId: id });
}

/** A part of the plan; the component renders again only when that part changes. */
export const usePlan = <T>(select: (plan: Plan) => T): T =>
  useStore(planStore, (state) => select(state.plan));

export const usePlanState = <T>(select: (state: PlanState) => T): T => useStore(planStore, select);
