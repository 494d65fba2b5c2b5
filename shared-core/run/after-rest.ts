import { advance, forgetSlope, refresh } from '../pack/circuit-step.ts';
import { stepUntil } from './engine.ts';
import type { Engine, Listener, Stop } from './engine.ts';
import { createWatch, copyWatch } from './watch.ts';

const silent: Listener = { step: () => {}, marched: () => {}, stringOpened: () => {} };

/**
 * Minutes the machine runs on when it has rested after a cutoff with everything switched off: the wells level out and the
 * polarisation fades. 0 when the pack does not recover to the controller's restart voltage or the BMS does not close
 * again; null when the run did not end by a voltage cutoff or no rest was asked for.
 */
export function minutesAfterRest(engine: Engine, stop: Stop): number | null {
  const { setup, circuit, load } = engine;
  if (stop.kind !== 'trip' || setup.restAfterS === 0) return null;
  const { cause } = stop.trip;
  if (cause !== 'controller-cutoff' && cause !== 'bms-group-low') return null;

  load.on = false;
  setup.source.stop(true);
  rest(engine);
  reconnect(engine);
  const recovered =
    circuit.closed.includes(1) &&
    (setup.cutoffV === null || restVoltageV(engine) >= setup.restartV);
  if (!recovered) return 0;
  load.on = true;
  setup.source.stop(false);
  copyWatch(createWatch(circuit), engine.watch);
  forgetSlope(circuit);
  engine.busV = Number.NaN;
  engine.stepS = 1 / 16;
  const startS = engine.timeS;
  stepUntil(engine, startS + setup.longestS, silent);
  return (engine.timeS - startS) / 60;
}

function rest(engine: Engine): void {
  const { circuit, setup } = engine;
  const endS = engine.timeS + setup.restAfterS;
  forgetSlope(circuit);
  if (circuit.closed.includes(1)) {
    engine.busV = Number.NaN;
    stepUntil(engine, endS, silent);
    engine.timeS = endS;
    return;
  }
  // Every string open: no current anywhere, and without current one step is exact.
  circuit.stringCurrentA.fill(0);
  advance(circuit, setup.restAfterS);
  setup.source.advance(engine.timeS, setup.restAfterS, 0, 0);
  engine.timeS = endS;
}

/** Closes the strings whose BMS lets discharge go on: every cell group at rest above its reconnect voltage. */
function reconnect({ circuit, watch }: Engine): void {
  refresh(circuit);
  for (let string = 0; string < circuit.closed.length; string += 1) {
    // A blown fuse stays open.
    if (circuit.closed[string] === 1 || watch.stringFuseWear[string]! >= 1) continue;
    let ready = true;
    for (
      let unit = circuit.stringStart[string]!;
      unit < circuit.stringStart[string + 1]!;
      unit += 1
    ) {
      const { bms, model } = circuit.units[unit]!;
      if (bms === null) continue;
      const wantedV = bms.reconnectV ?? bms.groupLowV + usualReconnectRiseV;
      if (circuit.emfV[unit]! / model.cellGroups < wantedV) ready = false;
    }
    if (ready) circuit.closed[string] = 1;
  }
}

/** A BMS without a stated reconnect voltage closes this far above its opening voltage [V]. Common practice, no source. */
const usualReconnectRiseV = 0.3;

function restVoltageV({ circuit }: Engine): number {
  let conductance = 0;
  let current = 0;
  for (let string = 0; string < circuit.closed.length; string += 1) {
    if (circuit.closed[string] === 0) continue;
    const g = circuit.multiplicity[string]! / circuit.stringOhm[string]!;
    conductance += g;
    current += g * circuit.stringEmfV[string]!;
  }
  return current / conductance;
}
