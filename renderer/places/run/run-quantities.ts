import type { OptionStudy, PlanStudy } from '#core/study/study.ts';
import type { QuantityId } from '../../text/run.ts';

export interface RunQuantity {
  readonly id: QuantityId;
  readonly unit: string;
  /** Time [s] and values of the quantity; null where the run has none. */
  readonly read: (
    study: OptionStudy,
  ) => { readonly timeS: Float64Array; readonly values: Float64Array } | null;
}

const product = (one: Float64Array, other: Float64Array): Float64Array =>
  one.map((value, index) => value * (other[index] ?? 0));

/** What can be drawn over the time of a run. */
const runQuantities: readonly RunQuantity[] = [
  {
    id: 'bus',
    unit: 'V',
    read: ({ run: { series } }) => ({ timeS: series.timeS, values: series.busVoltageV }),
  },
  {
    id: 'current',
    unit: 'A',
    read: ({ run: { series } }) => ({ timeS: series.timeS, values: series.packCurrentA }),
  },
  {
    id: 'power',
    unit: 'W',
    read: ({ run: { series } }) => ({
      timeS: series.timeS,
      values: product(series.packVoltageV, series.packCurrentA),
    }),
  },
  {
    id: 'charge',
    unit: '%',
    read: ({ run: { series } }) => ({ timeS: series.timeS, values: series.chargePercent }),
  },
  {
    id: 'speed',
    unit: 'km/h',
    read: ({ run: { drive } }) =>
      drive === null ? null : { timeS: drive.series.timeS, values: drive.series.speedKmh },
  },
  {
    id: 'motorCurrent',
    unit: 'A',
    read: ({ run: { drive } }) =>
      drive === null ? null : { timeS: drive.series.timeS, values: drive.series.motorCurrentA },
  },
  {
    id: 'motorTemperature',
    unit: '°C',
    read: ({ run: { drive } }) =>
      // Without the motor's thermal data nothing is said about its temperature.
      drive === null || drive.motorPeakTemperatureC === null
        ? null
        : { timeS: drive.series.timeS, values: drive.series.motorTemperatureC },
  },
];

/** The quantities at least one option has; the bus voltage is always there. */
export const offeredQuantities = (study: PlanStudy): readonly RunQuantity[] =>
  runQuantities.filter((quantity) =>
    study.options.some((option) => quantity.read(option) !== null),
  );
