/** Two wells that reproduce a set of rated points. */
export interface FittedWells {
  /** Q: charge of both wells when full [A·h]. */
  readonly capacityAh: number;
  /** c: share of the available well, (0, 1]. */
  readonly availableShare: number;
  /** k': levelling rate [1/h]. */
  readonly levellingPerH: number;
  /** Relative misfit of each point: fitted over rated capacity, minus 1. */
  readonly residuals: readonly number[];
  /** What the points could not tell; empty when they determine all three parameters. */
  readonly undetermined: readonly ('availableShare' | 'levellingPerH')[];
}

export interface WellPoint {
  readonly hours: number;
  readonly capacityAh: number;
  /** Head of the available well at which the point ends: where the loaded voltage meets the end voltage. */
  readonly endHead: number;
  readonly weight: number;
}

/**
 * Least-squares fit of the two-well model to rated points.
 *
 * From full at constant current `I` over `t` hours the head ends at
 * `s = 1 - I t/Q - a I (1 - e^{-k't})/(k' Q)` with `a = (1 - c)/c` (Manwell & McGowan, Solar Energy 50 (1993) 399).
 * Multiplied by Q this is linear in Q and a for a given k', so the fit is a two-column least squares inside a
 * one-dimensional search over k' (variable projection). Residuals are relative to the rated capacity.
 *
 * @param points at least one; a single point, or points without any rate loss, give c = 1.
 */
export function fitWells(points: readonly WellPoint[]): FittedWells {
  let best = solveAt(points, searchLow);
  if (points.length > 1) {
    const step = Math.log(searchHigh / searchLow) / searchCount;
    let bestRate = searchLow;
    for (let index = 1; index <= searchCount; index += 1) {
      const rate = searchLow * Math.exp(step * index);
      const trial = solveAt(points, rate);
      if (trial.cost < best.cost) {
        best = trial;
        bestRate = rate;
      }
    }
    best = refine(points, bestRate, step);
  }
  const { capacityAh, ratio, rate } = best;
  const undetermined: ('availableShare' | 'levellingPerH')[] = [];
  if (ratio === 0) undetermined.push('levellingPerH');
  else if (points.length < 3) undetermined.push('availableShare', 'levellingPerH');
  return {
    capacityAh,
    availableShare: 1 / (1 + ratio),
    levellingPerH: rate,
    residuals: points.map((point) => deliveredRatio(point, capacityAh, ratio, rate) - 1),
    undetermined,
  };
}

// Levelling times from two minutes to three days cover every block made.
const searchLow = 1 / 72;
const searchHigh = 30;
const searchCount = 24;

interface Trial {
  readonly capacityAh: number;
  readonly ratio: number;
  readonly rate: number;
  readonly cost: number;
}

/** Charge bound in the lag per ampere [h]: `(1 - e^{-k't})/k'`. */
function lagHours(rate: number, hours: number): number {
  return -Math.expm1(-rate * hours) / rate;
}

function solveAt(points: readonly WellPoint[], rate: number): Trial {
  // Rows: Q (1 - s) / Ah - a * I * lag / Ah = 1, weighted.
  let m11 = 0;
  let m12 = 0;
  let m22 = 0;
  let b1 = 0;
  let b2 = 0;
  for (const { hours, capacityAh, endHead, weight } of points) {
    const x = (1 - endHead) / capacityAh;
    const y = -lagHours(rate, hours) / hours;
    m11 += weight * x * x;
    m12 += weight * x * y;
    m22 += weight * y * y;
    b1 += weight * x;
    b2 += weight * y;
  }
  const determinant = m11 * m22 - m12 * m12;
  let ratio = determinant > 1e-12 * m11 * m22 ? (m11 * b2 - m12 * b1) / determinant : 0;
  // A negative ratio would mean more charge at higher rates: such points have no rate loss to fit.
  ratio = Math.min(maximumRatio, Math.max(0, ratio));
  const capacityAh = (b1 - m12 * ratio) / m11;
  let cost = 0;
  for (const { hours, capacityAh: rated, endHead, weight } of points) {
    const misfit =
      (capacityAh * (1 - endHead)) / rated - (ratio * lagHours(rate, hours)) / hours - 1;
    cost += weight * misfit * misfit;
  }
  return { capacityAh, ratio, rate, cost };
}

/** c of at least 0.02: below that the model only moves charge out of sight. */
const maximumRatio = 49;

/** Golden-section search on the logarithm of the rate around the best grid point. */
function refine(points: readonly WellPoint[], centre: number, logStep: number): Trial {
  const golden = (Math.sqrt(5) - 1) / 2;
  let low = Math.log(centre) - logStep;
  let high = Math.log(centre) + logStep;
  let left = solveAt(points, Math.exp(high - golden * (high - low)));
  let right = solveAt(points, Math.exp(low + golden * (high - low)));
  for (let round = 0; round < 30; round += 1) {
    if (left.cost < right.cost) {
      high = Math.log(right.rate);
      right = left;
      left = solveAt(points, Math.exp(high - golden * (high - low)));
    } else {
      low = Math.log(left.rate);
      left = right;
      right = solveAt(points, Math.exp(low + golden * (high - low)));
    }
  }
  return left.cost < right.cost ? left : right;
}

/** Delivered over rated charge when a full block runs at the point's current until the head reaches `endHead`. */
function deliveredRatio(point: WellPoint, capacityAh: number, ratio: number, rate: number): number {
  const current = point.capacityAh / point.hours;
  const head = (hours: number) =>
    1 - (current * hours + ratio * current * lagHours(rate, hours)) / capacityAh;
  let low = 0;
  let high = (capacityAh * 1.01) / current;
  for (let round = 0; round < 60; round += 1) {
    const middle = (low + high) / 2;
    if (head(middle) > point.endHead) low = middle;
    else high = middle;
  }
  return low / point.hours;
}
