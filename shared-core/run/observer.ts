import { unitVoltageV } from '../pack/circuit-step.ts';
import type { Engine } from './engine.ts';
import { placeOf } from './recorder.ts';
import type { BlockOutcome, RunEvent } from './result.ts';

/** Extremes and events gathered while a run goes on. */
export interface Observer {
  readonly events: RunEvent[];
  brownOutS: number | null;
  converterState: 'regulating' | 'dropout' | 'off';
  readonly lowestUnitV: Float64Array;
  readonly reversedAtS: (number | null)[];
  readonly emptySeen: boolean[];
  limitSeen: boolean;
  readonly startCharge: Float64Array;
}

export function createObserver(engine: Engine): Observer {
  const { units, charge } = engine.circuit;
  return {
    events: [],
    brownOutS: null,
    converterState: 'regulating',
    lowestUnitV: new Float64Array(units.length).fill(Number.POSITIVE_INFINITY),
    reversedAtS: units.map(() => null),
    emptySeen: units.map(() => false),
    limitSeen: false,
    startCharge: charge.slice(),
  };
}

/** Looks at every unit after a step or a switching. */
export function observeUnits(observer: Observer, engine: Engine): void {
  const { circuit, timeS } = engine;
  for (let string = 0; string < circuit.multiplicity.length; string += 1) {
    const end = circuit.stringStart[string + 1]!;
    for (let unit = circuit.stringStart[string]!; unit < end; unit += 1) {
      const voltageV = unitVoltageV(circuit, string, unit);
      if (voltageV < observer.lowestUnitV[unit]!) observer.lowestUnitV[unit] = voltageV;
      if (!observer.emptySeen[unit] && circuit.charge[unit]! - circuit.lag[unit]! <= 0) {
        observer.emptySeen[unit] = true;
        observer.events.push(
          unitEvent(engine, 'block-empty', string, unit, 100 * circuit.charge[unit]!),
        );
      }
      if (voltageV < 0 && observer.reversedAtS[unit] === null) {
        observer.reversedAtS[unit] = timeS;
        observer.events.push(unitEvent(engine, 'block-reversed', string, unit, voltageV));
      }
    }
  }
}

function unitEvent(
  engine: Engine,
  kind: RunEvent['kind'],
  string: number,
  unit: number,
  value: number,
): RunEvent {
  const { circuit, timeS, busV } = engine;
  const { positions, group } = circuit.units[unit]!;
  return {
    kind,
    timeMin: timeS / 60,
    string: circuit.pack.strings[string]!.strings[0]!,
    position: positions[0]!,
    ...(group === null ? {} : { group }),
    busVoltageV: busV,
    value,
  };
}

/** Notes when the converter loses or regains its output. */
export function observeConverter(observer: Observer, { load, timeS, busV, setup }: Engine): void {
  const { state } = load.converter;
  if (state === observer.converterState || setup.converter === null) return;
  if (state === 'off' && load.converter.inputPowerW === 0 && !load.converterOff) return;
  const kind = (
    {
      regulating: 'converter-recovered',
      dropout: 'converter-brown-out',
      off: 'converter-off',
    } as const
  )[state];
  observer.converterState = state;
  if (state !== 'regulating') observer.brownOutS ??= timeS;
  observer.events.push({
    kind,
    timeMin: timeS / 60,
    busVoltageV: busV,
    value: load.converter.outputVoltageV,
  });
}

/** Notes when the controller first holds the load back. */
export function observeLimit(observer: Observer, { timeS, busV, setup }: Engine): void {
  if (observer.limitSeen) return;
  const limitA = setup.source.limitedA?.() ?? null;
  if (limitA === null) return;
  observer.limitSeen = true;
  observer.events.push({
    kind: 'controller-limit',
    timeMin: timeS / 60,
    busVoltageV: busV,
    value: limitA,
  });
}

/** State of every unit at the end of the run. */
export function blockOutcomes(observer: Observer, { circuit }: Engine): BlockOutcome[] {
  return circuit.pack.strings.flatMap(({ strings, units }, string) =>
    units.map((unit, offset) => {
      const at = circuit.stringStart[string]! + offset;
      const endV = unitVoltageV(circuit, string, at);
      const reversedS = observer.reversedAtS[at]!;
      return {
        ...placeOf(strings, unit),
        remainingPercent: 100 * circuit.charge[at]!,
        endVoltageV: endV,
        minimumVoltageV: Math.min(endV, observer.lowestUnitV[at]!),
        reversedAtMin: reversedS === null ? null : reversedS / 60,
        deliveredAh: (observer.startCharge[at]! - circuit.charge[at]!) * unit.model.capacityAh,
        temperatureC: circuit.temperatureC[at]!,
      };
    }),
  );
}
