import type { FittedValue } from '../../plan/schema/bench.ts';
import type { Block } from '../../plan/schema/block.ts';
import type { Fitted } from '../../plan/schema/fitted.ts';
import type { LoggedRun } from '../log/logged-run.ts';
import type { LogProblem } from '../log/mapping.ts';
import { ratingEndVoltagePerCell } from '../../battery/end-voltage.ts';
import { decode, type Decoded } from './decode.ts';
import { deliveredAh } from './delivered.ts';
import { fitHeat, type FittedHeat } from './fit-heat.ts';
import type { FitRemark } from './fit-remark.ts';
import { fitRun, type FitRun, type UnitLayout } from './fit-run.ts';
import { fittedValues, identifiability } from './fit-values.ts';
import { fitParameters } from './parameters.ts';
import { predict, type Prediction } from './predict.ts';
import { cellPrior } from './prior.ts';
import { capacityGuess, runStart } from './run-start.ts';
import { runRemarks } from './run-remarks.ts';
import { observe, type FitProblem } from './residuals.ts';
import { solve } from './solve.ts';
import { fittedSection } from './fitted-section.ts';

export interface FitRequest {
  readonly block: Block;
  readonly layout: UnitLayout;
  readonly runs: readonly LoggedRun[];
  /** Block temperature where the log holds none [°C]. */
  readonly temperatureC: number;
  /** Charge at which every run began [%]; null: by its first volts. */
  readonly startPercent?: number | null;
  readonly ageYears: number;
  readonly cyclesDone: number;
  readonly source: string;
}

/** How one logged unit differs from the mean of all. */
export interface FittedUnit {
  readonly capacityPercent: number;
  readonly resistancePercent: number;
  readonly startPercent: number;
}

export interface BlockFit {
  readonly fitted: Fitted;
  readonly values: readonly FittedValue[];
  /** One entry per logged unit; empty where only the pack was logged. */
  readonly units: readonly FittedUnit[];
  readonly remarks: readonly FitRemark[];
  /** The runs the fit was made from, replayed with it. */
  readonly replays: readonly Prediction[];
  /** What the label promised is left: capacity at the rated time and end voltage, resistance against a new block [%]. */
  readonly health: { readonly capacityPercent: number; readonly resistancePercent: number };
  /** Volts between model and log over all runs, of all units together, rms [mV]. */
  readonly rmsMv: number;
}

export type FitOutcome =
  | { readonly ok: true; readonly fit: BlockFit }
  | ({ readonly ok: false } & LogProblem);

/** Least share of the rated charge a run must take out to say anything about capacity. */
const leastShare = 0.1;

/** Everything found by one solution, ready to replay other runs with. */
export interface SolvedModel {
  readonly decoded: Decoded;
  readonly heat: FittedHeat | null;
}

/**
 * Fits a block's model to one or more logged discharges together. Resistance is found from the steps, capacity from the
 * ends, rate loss from the differences between rates, the open-circuit curve from what is left; a value the data do not
 * tell keeps its usual figure, and the result says so.
 */
export function fitBlock(request: FitRequest): FitOutcome {
  const prepared = prepare(request);
  if (!prepared.ok) return prepared;
  const { problem, model, solution, runs, starts } = solveRuns(request, prepared.runs);
  const { decoded, heat } = model;
  const { layout, block } = request;
  const replays = runs.map((run) => predict(decoded.cell, decoded.units, run, layout.cells));
  const outliers = [...solution.trust].filter((share) => share === 0).length;
  return {
    ok: true,
    fit: {
      fitted: fittedSection(block, decoded, heat, request, problem.referenceC),
      values: fittedValues(
        problem.parameters,
        solution.coordinates,
        solution.covariance,
        block.cellGroups,
      ),
      units: decoded.units.length < 2 ? [] : relativeUnits(decoded),
      remarks: [
        ...identifiability(problem.parameters, solution.covariance),
        ...runRemarks(runs, decoded, replays, starts, request, outliers),
      ],
      replays,
      health: {
        capacityPercent:
          (100 *
            deliveredAh(
              decoded.cell,
              block.capacityAh / block.ratedHours,
              ratingEndVoltagePerCell(block.chemistry, block.ratedHours),
            )) /
          block.capacityAh,
        resistancePercent: (100 * decoded.cell.resistanceOhm) / problem.prior.resistanceOhm,
      },
      rmsMv: Math.hypot(...replays.map((replay) => replay.rmsMv)) / Math.sqrt(replays.length),
    },
  };
}

/** Cuts the discharges out of the runs and refuses those that cannot be fitted. */
export function prepare(
  request: FitRequest,
): { ok: true; runs: FitRun[] } | Extract<FitOutcome, { ok: false }> {
  const { block, layout } = request;
  const leadAcid = ['agm', 'gel', 'flooded'].includes(block.chemistry);
  const runs: FitRun[] = [];
  for (const run of request.runs) {
    const cut = fitRun(run, layout, leadAcid);
    if (cut === null)
      return {
        ok: false,
        field: `run ${run.name}`,
        problem: 'holds no discharge',
        remedy: 'choose another run, or check the sign of the current',
        de: {
          problem: 'enthält keine Entladung',
          remedy: 'einen anderen Lauf wählen oder das Vorzeichen des Stroms prüfen',
        },
      };
    if (cut.deliveredAh < leastShare * block.capacityAh)
      return {
        ok: false,
        field: `run ${run.name}`,
        problem: `takes out only ${cut.deliveredAh.toPrecision(3)} A·h of a ${block.capacityAh} A·h block`,
        remedy: 'log a longer discharge, or choose the block that was measured',
        de: {
          problem: `entnimmt nur ${cut.deliveredAh.toPrecision(3)} A·h einem Block von ${block.capacityAh} A·h`,
          remedy: 'eine längere Entladung aufzeichnen oder den gemessenen Block wählen',
        },
      };
    if (cut.deliveredAh > 3 * block.capacityAh)
      return {
        ok: false,
        field: `run ${run.name}`,
        problem: `takes out ${cut.deliveredAh.toPrecision(3)} A·h of a ${block.capacityAh} A·h block`,
        remedy: 'check the unit of the current, the strings in parallel, and the block of the plan',
        de: {
          problem: `entnimmt ${cut.deliveredAh.toPrecision(3)} A·h einem Block von ${block.capacityAh} A·h`,
          remedy: 'Einheit des Stroms, parallele Stränge und den Block des Plans prüfen',
        },
      };
    const trouble = voltageTrouble(cut, block, layout);
    if (trouble !== null) return trouble;
    runs.push(cut);
  }
  if (runs.length === 0)
    return {
      ok: false,
      field: 'log',
      problem: 'no run was chosen',
      remedy: 'name at least one run of the log',
      de: { problem: 'kein Lauf ist gewählt', remedy: 'mindestens einen Lauf wählen' },
    };
  return { ok: true, runs };
}

/** Volts that cannot belong to this chemistry mean a wrong column, a wrong block or a wrong number of cells. */
function voltageTrouble(
  run: FitRun,
  block: Block,
  layout: UnitLayout,
): Extract<FitOutcome, { ok: false }> | null {
  const prior = cellPrior(block, 25);
  const full = prior.usualOpenCircuit[prior.usualOpenCircuit.length - 1]!;
  const middle = run.cellV[0]![Math.floor((run.start + run.end) / 2)]!;
  if (middle > 0.6 * full && middle < 1.15 * full) return null;
  return {
    ok: false,
    field: `run ${run.name}`,
    problem: `half-way through reads ${(middle * layout.cells).toPrecision(3)} V, which does not fit ${layout.cells} ${block.chemistry} cell groups in series`,
    remedy: 'check the column of volts, its unit, and the chemistry and cell groups of the block',
    de: {
      problem: `zeigt auf halbem Weg ${(middle * layout.cells).toPrecision(3)} V; das passt nicht zu ${layout.cells} Zellgruppen (${block.chemistry}) in Reihe`,
      remedy: 'Spalte und Einheit der Spannung sowie Chemie und Zellgruppen des Blocks prüfen',
    },
  };
}

/** The search itself, for the runs given. */
export function solveRuns(request: FitRequest, given: readonly FitRun[]) {
  const first = given[0]!;
  const referenceC =
    first.temperatureC === null ? request.temperatureC : first.temperatureC[first.start]!;
  const prior = cellPrior(request.block, Math.min(60, Math.max(-30, referenceC)));
  const starts = given.map((run) =>
    runStart(run, prior, prior.usualOpenCircuit, request.startPercent ?? null),
  );
  const runs = given.map((run, index): FitRun => ({ ...run, spent: starts[index]!.spent }));
  const units = first.cellV.length;
  const warmest = runs.map((run) =>
    run.temperatureC === null ? 0 : Math.max(...run.temperatureC),
  );
  const coldest = runs.map((run) =>
    run.temperatureC === null ? 0 : Math.min(...run.temperatureC),
  );
  const problem: FitProblem = {
    runs,
    prior,
    referenceC,
    parameters: fitParameters(prior, {
      units,
      capacityGuessAh: Math.max(...runs.map((run) => capacityGuess(run, prior, run.spent))),
      starts: starts.flatMap(({ spent, sigma }, run) => (sigma > 0 ? [{ run, spent, sigma }] : [])),
      temperatureTells:
        runs.every((run) => run.temperatureC !== null) &&
        Math.max(...warmest) - Math.min(...coldest) > 4,
    }),
  };
  const observations = observe(runs);
  const solution = solve(problem, observations);
  const decoded = decode(problem.parameters, solution.coordinates, prior, referenceC);
  const begun = runs.map((run, index): FitRun => ({
    ...run,
    spent: decoded.spent.get(index) ?? run.spent,
  }));
  return {
    problem,
    observations,
    solution,
    starts,
    runs: begun,
    model: { decoded, heat: fitHeat(decoded.cell, decoded.units, begun) },
  };
}

/** Units against their mean: the fit may have put a common share into all of them. */
function relativeUnits(decoded: Decoded): FittedUnit[] {
  return decoded.units.map((unit) => ({
    capacityPercent: unit.capacityShare * 100,
    resistancePercent: unit.resistanceShare * 100,
    startPercent: unit.startCharge * 100,
  }));
}
