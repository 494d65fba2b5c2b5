import { newDriveLoad } from '#core/plan/drive-defaults.ts';
import type { LegLoad } from '#core/plan/schema/leg-load.ts';
import type { Load } from '#core/plan/schema/load.ts';

export type LoadKind = LegLoad['kind'] | 'none';

/** The one number of the plain kinds of load. */
export function valueFieldOf(kind: LoadKind): string | null {
  switch (kind) {
    case 'power':
      return 'powerW';
    case 'current':
      return 'currentA';
    case 'resistance':
      return 'resistanceOhm';
    case 'surface-amps':
      return 'averageA';
    default:
      return null;
  }
}

const firstValues: Readonly<Record<'power' | 'current' | 'resistance', Load>> &
  Readonly<Record<'drive' | 'surface-amps', LegLoad>> = {
  drive: newDriveLoad(),
  'surface-amps': {
    kind: 'surface-amps',
    surface: 'worn-paving',
    averageA: 8,
    peakA: null,
    peakS: 2,
    starts: 0,
  },
  power: { kind: 'power', powerW: 100 },
  current: { kind: 'current', currentA: 5 },
  resistance: { kind: 'resistance', resistanceOhm: 10 },
};

/** A load of another kind; the old one stays where the kind does not change. */
export function freshLoad(kind: LoadKind, old: { readonly kind: string } | null): unknown {
  if (kind === 'none') return null;
  if (old?.kind === kind) return old;
  return kind === 'log' ? old : { ...firstValues[kind] };
}

/**
 * Average power of a round at a supply voltage [W], for the line under the legs. Null where a leg depends on the motor
 * model or a log.
 */
export function averagePowerW(
  legs: readonly { readonly durationMin: number; readonly load: LegLoad | null }[],
  supplyV: number,
): number | null {
  let energy = 0;
  let time = 0;
  for (const { durationMin, load } of legs) {
    const power = powerOf(load, supplyV);
    if (power === null) return null;
    energy += power * durationMin;
    time += durationMin;
  }
  return time > 0 ? energy / time : null;
}

function powerOf(load: LegLoad | null, supplyV: number): number | null {
  switch (load?.kind) {
    case undefined:
      return 0;
    case 'power':
      return load.powerW;
    case 'current':
      return load.currentA * supplyV;
    case 'resistance':
      return supplyV ** 2 / load.resistanceOhm;
    case 'surface-amps':
      return load.averageA * supplyV;
    default:
      return null;
  }
}
