import { driveTrain, gearById } from '../../drive/drive-train.ts';
import { airDensityKgM3, roadOf } from '../../drive/road.ts';
import { packSupply } from '../../drive/supply.ts';
import { packMassKg } from '../../pack/pack-mass.ts';
import type { Machine } from '../../plan/schema/machine.ts';
import type { Option } from '../../plan/schema/option.ts';
import type { RoadSample } from './road-sample.ts';

/** A figure with its limits at 95 % confidence. */
export interface Limited {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface RoadFit {
  /** Rolling resistance against the table [%]. */
  readonly resistancePercent: Limited;
  /** Drag area [m²]. */
  readonly dragAreaM2: Limited;
  /** False where the speeds lie too close together to tell air from rolling: the drag area is the assumed one. */
  readonly dragTold: boolean;
  readonly used: number;
  readonly outliers: number;
  /** Mean of the currents read, and of what the model drew for them before the fit [A]. */
  readonly readA: number;
  readonly modelA: number;
  readonly fastestKmh: number;
}

export type RoadOutcome =
  | { readonly ok: true; readonly fit: RoadFit }
  | {
      readonly ok: false;
      readonly reason: 'no-samples' | 'not-computable' | 'too-little-current' | 'out-of-range';
    };

/** How far the drag area of a small machine may be off what is assumed (1 sigma, share). Common practice, no source. */
const dragSigma = 1;
/** A drag area whose spread stays above this share of itself was not told by the readings. */
const toldBelow = 0.4;
const confidence = 1.96;
const rounds = 8;
const many = 10;

interface Row {
  /** Force of the table's rolling resistance, and of one square metre of drag area [N]. */
  readonly rollingN: number;
  readonly airNPerM2: number;
  /** Push less slope and inertia [N]. */
  readonly forceN: number;
  readonly sigmaN: number;
  readonly besidesN: number;
  readonly ampsOf: (pushN: number) => number;
}

/**
 * Rolling resistance and drag area that make the model draw the currents read. For each reading the push at the wheels
 * follows from the pack's power, `eta V I = Im (Im R + k v)`, `F = eta_g k (Im - I0)`; less slope and inertia it is
 * `s m g Crr cos a + 1/2 rho A v^2`, linear in the share `s` and the drag area `A`. Weighted least squares with the assumed
 * drag area as a further reading; readings that stand out by more than their kin count less (Tukey's biweight).
 *
 * Source: derived.
 */
export function fitRoad(
  machine: Machine,
  option: Option,
  samples: readonly RoadSample[],
): RoadOutcome {
  const { drive } = machine;
  if (samples.length === 0) return { ok: false, reason: 'no-samples' };
  if (drive === null) return { ok: false, reason: 'not-computable' };
  const built = driveTrain(
    { ...drive, resistancePercent: 100 },
    option.controller ?? machine.controller,
    packMassKg(option.pack) ?? 0,
  );
  if (!built.ok) return { ok: false, reason: 'not-computable' };
  const { train } = built;
  const gear = gearById(train, drive.gears.at(-1)?.id ?? null);
  const supply = packSupply(option, machine, 0.5);
  const rows = samples.flatMap((sample): Row[] => {
    const road = roadOf(train, sample.surface, sample.gradePercent, 0);
    const busV = sample.busV ?? supply.emfV - supply.resistanceOhm * sample.packA;
    const speedMps = sample.speedKmh / 3.6;
    const emfV = gear.forcePerA * speedMps;
    const powerW = train.controllerEfficiency * busV * sample.packA;
    const motorA =
      (Math.sqrt(emfV ** 2 + 4 * gear.resistanceOhm * powerW) - emfV) / (2 * gear.resistanceOhm);
    const pushN = gear.efficiency * gear.forcePerA * (motorA - gear.frictionA);
    const besidesN = road.climbN + road.inertiaKg * sample.accelerationMps2;
    if (pushN <= 0) return [];
    return [
      {
        rollingN: road.rollingN,
        airNPerM2: 0.5 * airDensityKgM3 * speedMps ** 2,
        forceN: pushN - besidesN,
        sigmaN: Math.max(0.01, sample.error) * Math.hypot(pushN, besidesN),
        besidesN,
        ampsOf: (needN) => {
          const current = Math.max(0, needN / (gear.efficiency * gear.forcePerA) + gear.frictionA);
          return (
            (current * (current * gear.resistanceOhm + emfV)) / (train.controllerEfficiency * busV)
          );
        },
      },
    ];
  });
  if (rows.length === 0) return { ok: false, reason: 'too-little-current' };
  const assumedM2 = train.dragAreaM2;
  const found = solveRobust(rows, assumedM2);
  const percent = 100 * found.share;
  if (!(percent >= 10 && percent <= 1000)) return { ok: false, reason: 'out-of-range' };
  const mean = (values: readonly number[]) =>
    values.reduce((sum, value) => sum + value, 0) / values.length;
  const now = (row: Row) =>
    row.besidesN + (row.rollingN * drive.resistancePercent) / 100 + row.airNPerM2 * assumedM2;
  return {
    ok: true,
    fit: {
      resistancePercent: limited(percent, 100 * found.shareSigma),
      dragAreaM2: limited(found.areaM2, found.areaSigmaM2),
      dragTold: found.areaSigmaM2 < toldBelow * Math.max(assumedM2, found.areaM2),
      used: rows.length,
      outliers: found.outliers,
      readA: mean(samples.map((sample) => sample.packA)),
      modelA: mean(rows.map((row) => row.ampsOf(now(row)))),
      fastestKmh: Math.max(...samples.map((sample) => sample.speedKmh)),
    },
  };
}

function limited(value: number, sigma: number): Limited {
  return {
    value,
    low: Math.max(0, value - confidence * sigma),
    high: value + confidence * sigma,
  };
}

/** Two unknowns by their normal equations, solved again while readings that stand out lose weight. */
function solveRobust(rows: readonly Row[], assumedM2: number) {
  let trust = rows.map(() => 1);
  let [share, areaM2, inflation] = [1, assumedM2, 1];
  let [m11, m12, m22] = [0, 0, 0];
  for (let round = 0; round < rounds; round += 1) {
    [m11, m12, m22] = [0, 0, 0];
    let [b1, b2] = [0, 0];
    rows.forEach((row, index) => {
      const weight = trust[index]! / (inflation * row.sigmaN) ** 2;
      m11 += weight * row.rollingN ** 2;
      m12 += weight * row.rollingN * row.airNPerM2;
      m22 += weight * row.airNPerM2 ** 2;
      b1 += weight * row.rollingN * row.forceN;
      b2 += weight * row.airNPerM2 * row.forceN;
    });
    const prior = 1 / Math.max(1e-6, dragSigma * assumedM2) ** 2;
    m22 += prior;
    b2 += prior * assumedM2;
    const determinant = m11 * m22 - m12 ** 2;
    areaM2 = Math.max(0, (m11 * b2 - m12 * b1) / determinant);
    share = (b1 - m12 * areaM2) / m11;
    const off = rows.map(
      (row) => (row.forceN - share * row.rollingN - areaM2 * row.airNPerM2) / row.sigmaN,
    );
    // Many readings show their scatter themselves; a few may agree by chance, and their stated error stands.
    const usual = Math.max(rows.length >= many ? 0.1 : 1, 1.5 * median(off.map(Math.abs)));
    inflation = usual;
    if (rows.length > 3)
      trust = off.map((value) => Math.max(0, 1 - (value / (5 * usual)) ** 2) ** 2);
  }
  const determinant = m11 * m22 - m12 ** 2;
  return {
    share,
    areaM2,
    shareSigma: Math.sqrt(m22 / determinant),
    areaSigmaM2: Math.sqrt(m11 / determinant),
    outliers: trust.filter((value) => value === 0).length,
  };
}

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)]!;
}
