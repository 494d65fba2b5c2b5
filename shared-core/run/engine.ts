import { demandCurrentA } from '../accessories/converter-input.ts';
import { isIdle } from '../accessories/demands.ts';
import { createCheckpoint, keep, restore } from '../pack/checkpoint.ts';
import type { Checkpoint } from '../pack/checkpoint.ts';
import { advance, correct, forgetSlope, refresh, solveBus, warm } from '../pack/circuit-step.ts';
import { createCircuit } from '../pack/circuit.ts';
import type { Circuit } from '../pack/circuit.ts';
import { march } from '../pack/march.ts';
import type { March } from '../pack/march.ts';
import { mayMarch, newMarch } from './march-watch.ts';
import { busLoadUpdater, createBusLoad, motorCurrentA } from './bus-load.ts';
import type { BusLoad } from './bus-load.ts';
import type { RunSetup } from './setup.ts';
import { copyWatch, createWatch, tripChecker } from './watch.ts';
import type { Trip, Watch } from './watch.ts';

/** Shortest and longest adaptive step [s]; powers of two, so that decay factors are computed once for each. */
const shortestS = 1 / 1024;
const longestStepS = 64;
/** Step after the loads have switched [s], and the resolution of trips [s]. */
const firstStepS = 1 / 16;
const tripS = 1 / 64;
/** Fewer equal steps than this are not worth a march. */
const fewestMarched = 8;
/** Share of an empty unit's charge one step may take. */
const chargePerStep = 0.01;

/** The moving parts of a run; shared with the trial after a rest. */
export interface Engine {
  readonly setup: RunSetup;
  readonly circuit: Circuit;
  readonly load: BusLoad;
  readonly watch: Watch;
  timeS: number;
  busV: number;
  busA: number;
  stepS: number;
}

export interface Listener {
  /** Called after many equal steps at once, with their sums. */
  marched(sums: March): void;
  /** Called after each accepted step [s], and with `switched` when the loads have changed since the last call. */
  step(stepS: number, switched: boolean): void;
  /** Called when one of several strings opens while the run goes on. */
  stringOpened(trip: Trip): void;
}

/** What ended a stretch of stepping. */
export type Stop = { readonly kind: 'trip'; readonly trip: Trip } | { readonly kind: 'time' };

export function createEngine(setup: RunSetup): Engine {
  const circuit = createCircuit(setup.pack, setup.ambientC);
  return {
    setup,
    circuit,
    load: createBusLoad(),
    watch: createWatch(circuit),
    timeS: 0,
    busV: Number.NaN,
    busA: 0,
    stepS: firstStepS,
  };
}

/** Solves the bus at the present state for the present loads. False when there is no balance. */
function settle(engine: Engine): boolean {
  const { circuit, load, setup } = engine;
  refresh(circuit);
  if (!solveBus(circuit, load.total, setup.harnessOhm)) return false;
  engine.busV = circuit.bus[0]!;
  engine.busA = circuit.bus[1]!;
  return true;
}

/** Current drawn from the middle of each string, from the voltage of the lower half at the last solution. */
function updateTap(engine: Engine): void {
  const { setup, circuit, load, busV } = engine;
  if (isIdle(setup.midPointDemand) || !load.on) {
    circuit.tapA = 0;
    return;
  }
  const strings = circuit.multiplicity.reduce((sum, count) => sum + count, 0);
  circuit.tapA = demandCurrentA(setup.midPointDemand, busV / 2) / strings;
}

/** Loads at the present time, solved twice so that those that depend on the voltage see the voltage they cause. */
export function switchLoads(engine: Engine, update: ReturnType<typeof busLoadUpdater>): boolean {
  const { circuit, load } = engine;
  if (Number.isNaN(engine.busV)) {
    load.total.currentA = load.total.powerW = load.total.conductanceS = 0;
    refresh(circuit);
    if (!solveBus(circuit, load.total, engine.setup.harnessOhm)) return false;
    engine.busV = circuit.bus[0]!;
  }
  for (let round = 0; round < 2; round += 1) {
    update(load, engine.timeS, engine.busV);
    updateTap(engine);
    if (!settle(engine)) return false;
  }
  return true;
}

/**
 * Steps the circuit until something trips or the time is up.
 *
 * Each step: take the loads' terms, advance the state, solve the bus at the end with the same terms, check what trips.
 * A step that moves the bus too far, or that trips something, is taken back and tried at half the length until the
 * moment is known to 1/64 s. String openings are events; the run goes on with the other strings.
 */
export function stepUntil(engine: Engine, untilS: number, listener: Listener): Stop {
  const { setup, circuit, load, watch } = engine;
  const update = busLoadUpdater(setup);
  const check = tripChecker(setup, circuit, load);
  const checkpoint = createCheckpoint(circuit);
  const watchBefore = createWatch(circuit);
  const fixedS = setup.stepping.kind === 'fixed' ? setup.stepping.stepS : 0;
  const toleranceV =
    setup.stepping.kind === 'adaptive' ? setup.stepping.toleranceV : Number.POSITIVE_INFINITY;
  const loadsSetSteps = setup.stepping.kind === 'adaptive' && setup.stepping.loadsSetSteps === true;
  // Before the first solution there is no voltage to name.
  const collapseTrip = (): Trip => ({
    cause: 'supply-collapse',
    value: Number.isNaN(engine.busV) ? 0 : engine.busV,
    string: null,
    unit: null,
  });
  const collapse = (): Stop => ({ kind: 'trip', trip: collapseTrip() });
  const tapped = !isIdle(setup.midPointDemand);
  let warmS = 0;

  if (!switchLoads(engine, update)) return collapse();
  listener.step(0, true);
  const mayMarchOn = mayMarch(setup) && !tapped;
  let marching = mayMarchOn;
  while (engine.timeS < untilS - 1e-9) {
    if (marching && circuit.previousStepS === fixedS) {
      // A march that broke off soon has met something: go on with care until the loads switch.
      marching = marchOn(engine, fixedS, untilS, listener) >= fewestMarched;
      if (marching) continue;
    }
    let stepS = fixedS > 0 ? fixedS : engine.stepS;
    stepS = Math.min(stepS, load.steadyUntilS - engine.timeS, untilS - engine.timeS);
    if (fixedS === 0) stepS = Math.min(stepS, longestByCharge(circuit));
    const startV = engine.busV;
    const startA = engine.busA;
    if (fixedS === 0) {
      keep(circuit, checkpoint);
      copyWatch(watch, watchBefore);
    }
    const wishedS = engine.stepS;
    let shortened = false;
    let trip: Trip | null = null;
    for (;;) {
      advance(circuit, stepS);
      const solved = settle(engine);
      trip = solved
        ? check(watch, engine.timeS + stepS, stepS, engine.busV, engine.busA)
        : collapseTrip();
      if (fixedS > 0) break;
      const moved = solved
        ? movement(circuit, checkpoint, engine.busV - startV)
        : Number.POSITIVE_INFINITY;
      const tooFar = moved > toleranceV && stepS > shortestS;
      if (!tooFar && (trip === null || stepS <= tripS)) {
        const nextS =
          moved < toleranceV / 4 ? Math.min(longestStepS, 2 * ladder(stepS)) : ladder(stepS);
        engine.stepS = shortened || !loadsSetSteps ? nextS : Math.max(nextS, wishedS);
        break;
      }
      restore(circuit, checkpoint);
      copyWatch(watchBefore, watch);
      engine.busV = startV;
      engine.busA = startA;
      refresh(circuit);
      stepS = ladder(stepS) === stepS ? stepS / 2 : ladder(stepS);
      shortened = true;
    }
    correct(circuit, stepS);
    engine.timeS += stepS;
    warmS += stepS;
    if (warmS >= 1 || fixedS === 0) {
      warm(circuit, warmS);
      warmS = 0;
    }
    if (trip !== null && trip.cause === 'supply-collapse') return { kind: 'trip', trip };
    setup.source.advance(
      engine.timeS - stepS,
      stepS,
      0.5 * (startV + engine.busV),
      motorCurrentA(load, 0.5 * (startV + engine.busV)),
    );
    listener.step(stepS, false);
    if (trip !== null) {
      if (trip.string === null) return { kind: 'trip', trip };
      circuit.closed[trip.string] = 0;
      circuit.stringCurrentA[trip.string] = 0;
      if (!circuit.closed.includes(1)) return { kind: 'trip', trip };
      listener.stringOpened(trip);
    }
    const asked =
      engine.timeS >= load.steadyUntilS - 1e-9 || engine.busV < load.steadyAboveV || tapped;
    if (!asked && trip === null) continue;
    // The losses so far belong to the currents before the switching.
    warm(circuit, warmS);
    warmS = 0;
    const before = engine.busA;
    update(load, engine.timeS, engine.busV);
    if (tapped) updateTap(engine);
    if (trip === null && !demandChanged(load, before, engine.busV, circuit)) continue;
    if (!settle(engine)) return collapse();
    if (trip !== null || Math.abs(engine.busA - before) > 0.005 * Math.abs(before) + 0.02) {
      forgetSlope(circuit);
      engine.stepS = Math.min(engine.stepS, firstStepS);
      listener.step(0, true);
      marching = mayMarchOn;
    }
  }
  return { kind: 'time' };
}

/** Takes as many equal steps at once as nothing can happen in, and says how many. */
function marchOn(engine: Engine, stepS: number, untilS: number, listener: Listener): number {
  const { circuit, load, setup } = engine;
  const steps = Math.floor((Math.min(load.steadyUntilS, untilS) - engine.timeS) / stepS - 1e-9);
  if (steps < fewestMarched) return 0;
  const sums = newMarch(setup, circuit, load);
  const taken = march(circuit, load.total, setup.harnessOhm, stepS, steps, sums);
  if (taken === 0) return 0;
  setup.source.advance(engine.timeS, taken * stepS, engine.busV, motorCurrentA(load, engine.busV));
  engine.timeS += taken * stepS;
  engine.busV = circuit.bus[0]!;
  engine.busA = circuit.bus[1]!;
  listener.marched(sums);
  return taken;
}

/** True when the terms now ask for another current than the solution at the end of the step carried. */
function demandChanged(load: BusLoad, currentA: number, busV: number, circuit: Circuit): boolean {
  return (
    circuit.tapA !== 0 ||
    Math.abs(demandCurrentA(load.total, busV) - currentA) > 1e-9 * (1 + Math.abs(currentA))
  );
}

/** How far a step has moved the bus [V], or a string's current against the others, times its resistance. */
function movement(circuit: Circuit, { saved }: Checkpoint, busV: number): number {
  let most = Math.abs(busV);
  if (circuit.stringOhm.length === 1) return most;
  for (let string = 0; string < circuit.stringOhm.length; string += 1) {
    const change = circuit.stringCurrentA[string]! - saved.stringCurrentA[string]!;
    most = Math.max(most, Math.abs(change) * circuit.stringOhm[string]!);
  }
  return most;
}

/** Largest power of two not above a step. Halving is quicker than a logarithm: most steps are a few halvings away. */
function ladder(stepS: number): number {
  let rung = longestStepS;
  while (rung > stepS * (1 + 1e-9)) rung /= 2;
  return rung;
}

/** Longest step that takes no more than a hundredth of any unit's charge [s]. */
function longestByCharge(circuit: Circuit): number {
  let fastest = 0;
  for (let string = 0; string < circuit.stringCurrentA.length; string += 1) {
    const current = Math.abs(circuit.stringCurrentA[string]!) + circuit.tapA;
    for (
      let unit = circuit.stringStart[string]!;
      unit < circuit.stringStart[string + 1]!;
      unit += 1
    ) {
      fastest = Math.max(fastest, current * circuit.inverseChargePerAs[unit]!);
    }
  }
  return fastest === 0 ? longestStepS : Math.max(shortestS, chargePerStep / fastest);
}
