/** Where a function crosses zero, or why no crossing was found. */
export type RootResult =
  | { readonly ok: true; readonly x: number; readonly evaluations: number }
  | { readonly ok: false; readonly reason: 'not-bracketed' | 'not-finite' };

/**
 * Zero of a continuous function between two places where its sign differs.
 *
 * Brent's method (Algorithms for Minimization without Derivatives, 1973, chapter 4): inverse quadratic steps that fall
 * back to halving, so it never needs more than about the square of the halvings and usually a handful of evaluations.
 *
 * @param f continuous function
 * @param low @param high ends of the bracket, in any order; f must have opposite signs there or be zero at one
 * @param tolerance width of the final bracket; relative precision of the machine is added to it
 */
export function findRoot(
  f: (x: number) => number,
  low: number,
  high: number,
  tolerance = 1e-12,
): RootResult {
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  let evaluations = 2;
  if (!Number.isFinite(fa) || !Number.isFinite(fb)) return { ok: false, reason: 'not-finite' };
  if (fa === 0) return { ok: true, x: a, evaluations };
  if (fb === 0) return { ok: true, x: b, evaluations };
  if (fa > 0 === fb > 0) return { ok: false, reason: 'not-bracketed' };
  let c = a;
  let fc = fa;
  let step = b - a;
  let before = step;
  for (let round = 0; round < 200; round += 1) {
    // b is the best estimate, c the other side of the bracket, a the previous estimate.
    if (fb > 0 === fc > 0) {
      c = a;
      fc = fa;
      step = b - a;
      before = step;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b;
      b = c;
      c = a;
      fa = fb;
      fb = fc;
      fc = fa;
    }
    const least = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= least || fb === 0) return { ok: true, x: b, evaluations };
    if (Math.abs(before) >= least && Math.abs(fa) > Math.abs(fb)) {
      const { p, q } = interpolatedStep(a, b, c, fa, fb, fc, half);
      const accepted = 2 * p < Math.min(3 * half * q - Math.abs(least * q), Math.abs(before * q));
      before = accepted ? step : half;
      step = accepted ? p / q : half;
    } else {
      before = half;
      step = half;
    }
    a = b;
    fa = fb;
    b += Math.abs(step) > least ? step : half > 0 ? least : -least;
    fb = f(b);
    evaluations += 1;
    if (!Number.isFinite(fb)) return { ok: false, reason: 'not-finite' };
  }
  return { ok: true, x: b, evaluations };
}

/** Secant step with two places, inverse quadratic step with three; numerator made positive for the acceptance test. */
function interpolatedStep(
  a: number,
  b: number,
  c: number,
  fa: number,
  fb: number,
  fc: number,
  half: number,
): { p: number; q: number } {
  const s = fb / fa;
  let p: number;
  let q: number;
  if (a === c) {
    p = 2 * half * s;
    q = 1 - s;
  } else {
    const u = fa / fc;
    const r = fb / fc;
    p = s * (2 * half * u * (u - r) - (b - a) * (r - 1));
    q = (u - 1) * (r - 1) * (s - 1);
  }
  return p > 0 ? { p, q: -q } : { p: -p, q };
}
