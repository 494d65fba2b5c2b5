import { pythonWithScipy, runScipy } from '../support/scipy.ts';
import { testCurve, type testModel } from '../support/engine.ts';

/** Two equal blocks in series on constant power, integrated by SciPy's Runge-Kutta method at the engine's step. */
const script = `
import numpy as np, time
from scipy.integrate import solve_ivp
u, curve = given["unit"], np.array(given["curve"])
power, ohm, until = given["powerW"], given["ohm"], given["untilS"]
q, c = u["capacityAh"] * 3600, u["availableShare"]
def f(t, y):
    s = y[0] - y[1]
    e = 2 * (np.interp(s, curve[:, 0], curve[:, 1]) - y[2])
    r = 2 * (u["resistanceOhm"] + u["kneeOhm"] * (1 / min(1, max(0.02, s)) - 1)) + ohm
    i = (e - np.sqrt(e*e - 4*r*power)) / (2*r)
    return [-i / q, -u["levellingPerS"] * y[1] + i * (1 - c) / (c * q), (i * u["polarisationOhm"] - y[2]) / u["polarisationS"]]
at = time.perf_counter()
solve_ivp(f, (0, until), [1.0, 0.0, 0.0], method="RK45", max_step=1, first_step=1, rtol=1e-3, atol=1e-3)
print(json.dumps({"ms": 1000 * (time.perf_counter() - at)}))
`;

/** Time SciPy takes [ms]; null without it. */
export function scipyMs(
  model: ReturnType<typeof testModel>,
  powerW: number,
  untilS: number,
): number | null {
  if (pythonWithScipy() === null) return null;
  const { openCircuit: _curve, ...unit } = model;
  const answer = runScipy(script, { unit, curve: testCurve, powerW, ohm: 0.012, untilS });
  return (answer as { ms: number }).ms;
}
