import { describe, expect, it } from 'vitest';
import { evaluate, valueOf } from '../support/evaluate.ts';
import { runScipy, skipWithoutScipy } from '../support/scipy.ts';

// Independent method: SciPy. The ODE of the two wells is integrated from its differential form, never the closed form.
const wellOde = `
import numpy as np
from scipy.integrate import solve_ivp
Q, c, k = given["Q"], given["c"], given["k"]
amps, on, off = given["amps"], given["on"], given["off"]
kk = k * c * (1 - c)
def rate(load):
    def f(t, q):
        flow = kk * (q[1] / (1 - c) - q[0] / c)
        return [-load + flow, -flow]
    return f
def empty(t, q): return q[0]
empty.terminal = True
q, t, end = [Q * c, Q * (1 - c)], 0.0, None
while end is None and t < 1e4:
    leg = solve_ivp(rate(amps), (t, t + on), q, method="DOP853", rtol=1e-12, atol=1e-14, events=empty)
    if leg.t_events[0].size: end = leg.t_events[0][0]; break
    q, t = leg.y[:, -1], t + on
    if off > 0:
        leg = solve_ivp(rate(0.0), (t, t + off), q, method="DOP853", rtol=1e-12, atol=1e-14)
        q, t = leg.y[:, -1], t + off
print(json.dumps(end))
`;

const logFit = `
import numpy as np
from scipy.optimize import curve_fit
t, c = np.array(given["hours"]), np.array(given["capacityAh"])
f = lambda i, a, k: a - k * np.log(i)
p, cov = curve_fit(f, c / t, np.log(t), p0=[3, 1.1])
print(json.dumps([p[1], float(np.sqrt(cov[1, 1]))]))
`;

const wellFit = `
import numpy as np
from scipy.optimize import least_squares, brentq
T, C = np.array(given["hours"]), np.array(given["capacityAh"])
def largest(Q, c, k, t):
    s = -np.expm1(-k * t)
    return Q * k * c / (s + c * (k * t - s))
def life(p, i): return brentq(lambda t: largest(*p, t) - i, 1e-9, 1e5, xtol=1e-13)
r = least_squares(lambda p: [np.log(life(p, c / t) / t) for c, t in zip(C, T)], [max(C) * 1.1, 0.5, 0.4],
    bounds=([0.5 * max(C), 0.02, 1e-3], [5 * max(C), 1, 100]), xtol=1e-15, ftol=1e-15, gtol=1e-15)
print(json.dumps(list(r.x)))
`;

const skip = skipWithoutScipy();

describe.skipIf(skip)('against SciPy', () => {
  const loads = [
    { Q: 5.5, c: 0.166, k: 0.122, amps: 0.25, on: 1, off: 1 },
    { Q: 5.5, c: 0.166, k: 0.122, amps: 0.25, on: 1, off: 2 },
    { Q: 12, c: 0.4, k: 0.03, amps: 0.4, on: 3, off: 0.7 },
    { Q: 20, c: 0.7, k: 0.01, amps: 0.1, on: 7, off: 3 },
  ];
  for (const load of loads) {
    it(`two wells of ${load.Q} under ${load.amps}, ${load.on} on and ${load.off} off, run dry when the ODE does`, () => {
      const end = runScipy(wellOde, load) as number;
      // The script counts in one unit of time; here it is the minute.
      const timeH = valueOf('two-well-pulsed-lifetime', 'timeH', {
        capacityAh: `${load.Q} A·min`,
        availableShare: load.c,
        levellingPerH: `${load.k}/min`,
        currentA: load.amps,
        onMin: load.on,
        offMin: load.off,
      });
      expect(Math.abs((timeH * 60) / end - 1)).toBeLessThan(1e-8);
    });
  }
  it('the Peukert exponent of many ratings and its error are those of a curve fit', () => {
    const ratings = { hours: [20, 10, 5, 3, 1, 0.5], capacityAh: [12, 11.4, 10.3, 9.5, 7.2, 6.1] };
    const [exponent, error] = runScipy(logFit, ratings) as [number, number];
    const fit = evaluate('peukert-fit', ratings);
    expect(fit['exponent']).toBeCloseTo(exponent, 7);
    expect(fit['exponentError']).toBeCloseTo(error, 6);
  });
  it('two wells fitted to ratings are those of a bounded least-squares fit', () => {
    for (const ratings of [
      { hours: [20, 10, 5, 1], capacityAh: [1.3, 1.2, 1.05, 0.85] },
      { hours: [20, 10, 5, 3, 1], capacityAh: [18, 17.1, 15.6, 14.5, 10.8] },
    ]) {
      const [capacityAh, share, rate] = runScipy(wellFit, ratings) as [number, number, number];
      const fit = evaluate('two-well-fit', ratings);
      expect(Number(fit['capacityAh']) / capacityAh).toBeCloseTo(1, 4);
      expect(Number(fit['availableShare']) / share).toBeCloseTo(1, 3);
      expect(Number(fit['levellingPerH']) / rate).toBeCloseTo(1, 3);
    }
  });
});
