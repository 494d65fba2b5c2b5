import { createEngine, stepUntil } from './engine.ts';
import type { Listener } from './engine.ts';
import { minutesAfterRest } from './after-rest.ts';
import { motorCurrentA } from './bus-load.ts';
import { joiningSurgeA } from './joining-surge.ts';
import type { DriveResult } from '../drive/drive-result.ts';
import {
  book,
  closeLedger,
  converterEfficiencyPercent,
  createLedger,
  emptyLedger,
  measure,
  open,
} from './ledger.ts';
import {
  blockOutcomes,
  createObserver,
  observeConverter,
  observeLimit,
  observeUnits,
} from './observer.ts';
import { packChargePercent } from '../pack/pack-charge.ts';
import { createRecorder, emptySeries } from './recorder.ts';
import type { RunResult } from './result.ts';
import type { RunSetup } from './setup.ts';
import { count, countMarch, createTotals } from './totals.ts';
import { tripEvent } from './watch.ts';

/**
 * Runs a pack against its loads until a cutoff trips or the time is up.
 *
 * @param driveResult what the load source has to say of the drive, asked once the run is over
 */
export function simulate(
  setup: RunSetup,
  driveResult: () => DriveResult | null = () => null,
): RunResult {
  const surgeA = joiningSurgeA(setup.pack, setup.ambientC);
  const engine = createEngine(setup);
  const { circuit, load } = engine;
  const totals = createTotals();
  const observer = createObserver(engine);
  const ledger = createLedger();
  const recorder = setup.full ? createRecorder(circuit) : null;

  const listener: Listener = {
    step(stepS, switched) {
      count(totals, engine, stepS, switched);
      observeConverter(observer, engine);
      observeLimit(observer, engine);
      if (recorder === null) return;
      measure(ledger, circuit, load, setup, engine.busV, engine.busA);
      if (switched) open(ledger);
      else book(ledger, stepS);
      observeUnits(observer, engine);
      recorder.record(
        engine.timeS,
        engine.busV,
        engine.busV + engine.busA * setup.harnessOhm,
        engine.busA,
        motorCurrentA(load, engine.busV),
        load.converter.inputPowerW / engine.busV,
        packChargePercent(circuit),
      );
    },
    marched(sums) {
      countMarch(totals, engine, sums);
    },
    stringOpened(trip) {
      observer.events.push(tripEvent(trip, circuit, engine.timeS, engine.busV));
    },
  };
  const stop = stepUntil(engine, setup.longestS, listener);
  const endV = Number.isFinite(engine.busV) ? engine.busV : 0;
  observer.events.push(
    stop.kind === 'trip'
      ? tripEvent(stop.trip, circuit, engine.timeS, endV)
      : {
          kind: 'time-limit',
          timeMin: engine.timeS / 60,
          busVoltageV: endV,
          value: setup.longestS / 60,
        },
  );
  const hours = engine.timeS / 3600;
  const ah = totals.chargeAs / 3600;
  const result: RunResult = {
    runTimeMin: engine.timeS / 60,
    endedBy: stop.kind === 'trip' ? stop.trip.cause : 'time-limit',
    deliveredAh: ah,
    deliveredWh: totals.energyWs / 3600,
    averageCurrentA: hours === 0 ? totals.peakA : ah / hours,
    peakCurrentA: totals.peakA,
    minimumBusVoltageV: Number.isFinite(totals.lowestBusV) ? totals.lowestBusV : endV,
    remainingPercent: packChargePercent(circuit),
    events: observer.events,
    blocks: blockOutcomes(observer, engine),
    ledger: setup.full ? closeLedger(ledger, circuit) : emptyLedger,
    converterEfficiencyPercent: converterEfficiencyPercent(ledger),
    brownOutAtMin: observer.brownOutS === null ? null : observer.brownOutS / 60,
    afterRestMin: null,
    joiningSurgeA: surgeA,
    series: recorder?.finish() ?? emptySeries,
    drive: driveResult(),
    problem: null,
  };
  // The trial after the rest goes on with the same engine, so it comes last.
  return { ...result, afterRestMin: minutesAfterRest(engine, stop) };
}
