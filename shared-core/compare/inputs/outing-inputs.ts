import { surfaceById } from '../../drive/surfaces.ts';
import type { LegLoad } from '../../plan/schema/leg-load.ts';
import type { Outing } from '../../plan/schema/outing.ts';
import type { Scenario } from '../scenario.ts';
import type { UncertainInput } from './input.ts';

const practice = 'common practice, no source';

function withLegs(scenario: Scenario, change: (load: LegLoad) => LegLoad): Scenario {
  const legs = scenario.outing.legs.map((leg) =>
    leg.load === null ? leg : { ...leg, load: change(leg.load) },
  );
  return { ...scenario, outing: { ...scenario.outing, legs } };
}

/** An electric load drawn `factor` times as hard; driven legs are left to the drive's own inputs. */
function scaleLoad(load: LegLoad, factor: number): LegLoad {
  switch (load.kind) {
    case 'current':
      return { ...load, currentA: load.currentA * factor };
    case 'power':
      return { ...load, powerW: load.powerW * factor };
    case 'resistance':
      return { ...load, resistanceOhm: load.resistanceOhm / factor };
    case 'surface-amps':
      return {
        ...load,
        averageA: load.averageA * factor,
        peakA: load.peakA === null ? null : load.peakA * factor,
      };
    case 'log':
      return { ...load, currentA: load.currentA.map((currentA) => currentA * factor) };
    case 'drive':
      return load;
  }
}

function scaleThrottle(load: LegLoad, factor: number): LegLoad {
  if (load.kind !== 'drive') return load;
  const { command } = load;
  return {
    ...load,
    command:
      command.kind === 'speed'
        ? { ...command, targetSpeedKmh: command.targetSpeedKmh * factor }
        : { ...command, throttlePercent: Math.min(100, command.throttlePercent * factor) },
  };
}

/** Range of the rolling resistance over the surfaces of the outing, in percent of the table, weighted by duration. */
function rollingRange(outing: Outing): { readonly low: number; readonly high: number } {
  let low = 0;
  let likely = 0;
  let high = 0;
  for (const { load, durationMin } of outing.legs) {
    if (load?.kind !== 'drive') continue;
    const surface = surfaceById(load.surface);
    low += durationMin * surface.rollingLow;
    likely += durationMin * surface.rolling;
    high += durationMin * surface.rollingHigh;
  }
  return likely === 0
    ? { low: 80, high: 150 }
    : { low: (100 * low) / likely, high: (100 * high) / likely };
}

/** In percent of what the plan says; 100 is the plan. */
function percentInput(
  input: Pick<
    UncertainInput,
    'id' | 'label' | 'low' | 'high' | 'rangeClass' | 'source' | 'measure' | 'apply'
  >,
): UncertainInput {
  return { ...input, key: input.id, unit: '%', shape: 'ratio', likely: 100, least: 20, most: 400 };
}

/** What is uncertain about the day and the way the machine is used; the same for every option. */
export function outingInputs({ outing, machine }: Scenario): UncertainInput[] {
  const { legs } = outing;
  const inputs: UncertainInput[] = [
    {
      id: 'temperature',
      key: 'temperature',
      label: { en: 'Temperature', de: 'Temperatur' },
      unit: '°C',
      shape: 'difference',
      low: outing.ambientC - 5,
      likely: outing.ambientC,
      high: outing.ambientC + 5,
      least: Math.min(-30, outing.ambientC),
      most: Math.max(60, outing.ambientC),
      rangeClass: 'entered',
      source: `One day against another of the season; ${practice}`,
      measure: null,
      apply: (scenario, value) => ({
        ...scenario,
        outing: { ...scenario.outing, ambientC: value },
      }),
    },
  ];
  const kinds = new Set(legs.map(({ load }) => load?.kind ?? 'stand'));
  const measured = kinds.has('log') || kinds.has('surface-amps');
  if (measured || kinds.has('current') || kinds.has('power') || kinds.has('resistance')) {
    inputs.push(
      percentInput({
        id: 'motor-load',
        label: { en: 'Motor load against the plan', de: 'Motorlast gegen Plan' },
        low: measured ? 93 : 85,
        high: measured ? 108 : 120,
        rangeClass: measured ? 'measured' : 'entered',
        source: `${measured ? 'Loads that were measured on another day' : 'Loads entered as estimates'}; ${practice}`,
        measure: {
          en: 'Clamp the pack lead and log the current over one round of the outing.',
          de: 'Mit der Stromzange an der Batterieleitung eine Runde der Ausfahrt aufzeichnen.',
        },
        apply: (scenario, value) => withLegs(scenario, (load) => scaleLoad(load, value / 100)),
      }),
    );
  }
  if (kinds.has('stand') && kinds.size > 1) {
    inputs.push(
      percentInput({
        id: 'standing-time',
        label: { en: 'Standing time against the plan', de: 'Standzeit gegen Plan' },
        low: 70,
        high: 140,
        rangeClass: 'entered',
        source: `How long people stop; ${practice}`,
        measure: {
          en: 'Take the stopwatch along and note the halts of one outing.',
          de: 'Die Stoppuhr mitnehmen und die Halte einer Ausfahrt aufschreiben.',
        },
        apply: (scenario, value) => ({
          ...scenario,
          outing: {
            ...scenario.outing,
            legs: scenario.outing.legs.map((leg) =>
              leg.load === null ? { ...leg, durationMin: (leg.durationMin * value) / 100 } : leg,
            ),
          },
        }),
      }),
    );
  }
  if (!kinds.has('drive') || machine.drive === null) return inputs;
  const { resistancePercent, masses } = machine.drive;
  const range = rollingRange(outing);
  const read = resistancePercent !== 100;
  inputs.push(
    percentInput({
      id: 'rolling-resistance',
      label: { en: 'Rolling resistance against the plan', de: 'Rollwiderstand gegen Plan' },
      low: read ? 90 : range.low,
      high: read ? 112 : range.high,
      rangeClass: read ? 'measured' : 'usual-for-kind',
      source: read
        ? `Scaled by a reading; ${practice}`
        : 'Range of the surfaces of the outing in the table of surfaces',
      measure: {
        en: 'Drive on level ground at steady speed and read the current.',
        de: 'Auf ebenem Boden gleichmäßig fahren und den Strom ablesen.',
      },
      apply: (scenario, value) => withDrive(scenario, 'resistancePercent', value),
    }),
    percentInput({
      id: 'payload',
      label: { en: 'Rider and load against the plan', de: 'Fahrer und Ladung gegen Plan' },
      low: 88,
      high: 115,
      rangeClass: 'entered',
      source: `${masses.riderKg + masses.payloadKg} kg as entered; ${practice}`,
      measure: { en: 'Weigh rider and load.', de: 'Fahrer und Ladung wiegen.' },
      apply: (scenario, value) => withDrive(scenario, 'payload', value),
    }),
    percentInput({
      id: 'throttle-use',
      label: { en: 'Speed or throttle against the plan', de: 'Tempo oder Gas gegen Plan' },
      low: 88,
      high: 112,
      rangeClass: 'entered',
      source: `How one rider differs from another; ${practice}`,
      measure: {
        en: 'Time a known distance with the rider the machine is for.',
        de: 'Eine bekannte Strecke mit dem Fahrer der Maschine stoppen.',
      },
      apply: (scenario, value) => withLegs(scenario, (load) => scaleThrottle(load, value / 100)),
    }),
  );
  return inputs;
}

function withDrive(
  scenario: Scenario,
  what: 'resistancePercent' | 'payload',
  percent: number,
): Scenario {
  const { drive } = scenario.machine;
  if (drive === null) return scenario;
  const factor = percent / 100;
  const changed =
    what === 'payload'
      ? {
          ...drive,
          masses: {
            ...drive.masses,
            riderKg: drive.masses.riderKg * factor,
            payloadKg: drive.masses.payloadKg * factor,
          },
        }
      : { ...drive, resistancePercent: drive.resistancePercent * factor };
  return { ...scenario, machine: { ...scenario.machine, drive: changed } };
}
