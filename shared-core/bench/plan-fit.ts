import type { Option } from '../plan/schema/option.ts';
import type { Plan } from '../plan/schema/plan.ts';
import { prepare, type FitRequest } from './fit/fit-block.ts';
import { layoutFor } from './fit/layout.ts';
import type { LoggedRun } from './log/logged-run.ts';
import type { LogProblem, LogResult } from './log/mapping.ts';

export interface PlanFitRequest {
  readonly option: Option;
  readonly request: FitRequest;
}

export interface PlanFitChoice {
  /** Option the log belongs to; null lets the volts decide. */
  readonly optionId: string | null;
  /** Block temperature where the log holds none [°C]; null: of the headline outing. */
  readonly temperatureC: number | null;
  /** Charge at which the runs began [%]; null: by their first volts. */
  readonly startPercent?: number | null;
  readonly source: string;
}

/**
 * Makes a fit request of a plan and logged runs. Without a named option the first whose blocks can have produced the log
 * is taken: volts, charge and number of voltage columns must suit it.
 */
export function planFitRequest(
  plan: Plan,
  runs: readonly LoggedRun[],
  choice: PlanFitChoice,
): LogResult<PlanFitRequest> {
  const options =
    choice.optionId === null
      ? plan.options
      : plan.options.filter((option) => option.id === choice.optionId);
  const first = runs[0];
  if (first === undefined)
    return refuse({
      field: 'log',
      problem: 'no run was chosen',
      remedy: 'name at least one run of the log',
    });
  let trouble: LogProblem = {
    field: 'option',
    problem: `there is no option "${choice.optionId}"`,
    remedy: `use one of ${plan.options.map((option) => option.id).join(', ')}`,
  };
  const candidates: { wrong: number; value: PlanFitRequest }[] = [];
  const outing = plan.outings.find((entry) => entry.id === plan.headlineOuting) ?? plan.outings[0]!;
  for (const option of options) {
    const layout = layoutFor(option, first);
    if (!layout.ok) {
      trouble = layout.problem;
      continue;
    }
    const request: FitRequest = {
      block: option.pack.block,
      layout: layout.value,
      runs,
      temperatureC: choice.temperatureC ?? outing.ambientC,
      startPercent: choice.startPercent ?? null,
      ageYears: option.pack.ageYears,
      cyclesDone: option.pack.cyclesDone,
      source: choice.source,
    };
    const prepared = prepare(request);
    if (!prepared.ok) {
      const { ok: _refused, ...problem } = prepared;
      trouble = problem;
      continue;
    }
    const deepest = Math.max(...prepared.runs.map((run) => run.deliveredAh));
    candidates.push({
      wrong: Math.abs(Math.log(deepest / option.pack.block.capacityAh)),
      value: { option, request },
    });
  }
  const best = candidates.toSorted((a, b) => a.wrong - b.wrong)[0];
  return best === undefined ? refuse(trouble) : { ok: true, value: best.value };
}

/** Runs whose name, or a part of it, is one of the wanted ones; all runs when none is named. */
export function chooseRuns(
  runs: readonly LoggedRun[],
  wanted: readonly string[],
): LogResult<readonly LoggedRun[]> {
  if (wanted.length === 0) return { ok: true, value: runs };
  const chosen: LoggedRun[] = [];
  for (const name of wanted) {
    const plain = name.trim().toLowerCase();
    const found = runs.filter(
      (run) =>
        run.name.toLowerCase() === plain || run.name.toLowerCase().split(' / ').includes(plain),
    );
    if (found.length === 0)
      return refuse({
        field: 'run',
        problem: `there is no run "${name}"`,
        remedy: `the log holds ${runs.map((run) => `"${run.name}"`).join(', ')}`,
      });
    for (const run of found) if (!chosen.includes(run)) chosen.push(run);
  }
  return { ok: true, value: chosen };
}

function refuse(problem: LogProblem): { readonly ok: false; readonly problem: LogProblem } {
  return { ok: false, problem };
}
