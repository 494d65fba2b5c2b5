import { describe, test } from 'vitest';
import { simulate } from '#core/run/simulate.ts';
import { checkAgainst } from '../support/check-against.ts';
import {
  steadyLoad,
  testCurve,
  testModel,
  testPack,
  testSetup,
  testString,
  testUnit,
} from '../support/engine.ts';
import { runScipy, skipWithoutScipy } from '../support/scipy.ts';

// Independent method: the model's differential equations, written anew from its description, integrated by SciPy's
// eighth-order method at a tolerance of 1e-10 with the voltage balance solved inside.
const packOde = `
import numpy as np
from scipy.integrate import solve_ivp
curve = np.array(given["curve"])
units, power, harness, until = given["units"], given["powerW"], given["harnessOhm"], given["untilS"]
n = len(units)
def emf_ohm(y):
    emf, ohm = 0.0, given["linkOhm"]
    for i, u in enumerate(units):
        s = y[3*i] - y[3*i+1]
        emf += np.interp(s, curve[:, 0], curve[:, 1]) - y[3*i+2]
        ohm += u["resistanceOhm"] + u["kneeOhm"] * (1 / min(1, max(0.02, s)) - 1)
    return emf, ohm + harness
def current(y):
    e, r = emf_ohm(y)
    return (e - np.sqrt(e*e - 4*r*power)) / (2*r)
def f(t, y):
    i, d = current(y), np.empty_like(y)
    for k, u in enumerate(units):
        q = u["capacityAh"] * 3600
        c = u["availableShare"]
        d[3*k] = -i / q
        d[3*k+1] = -u["levellingPerS"] * y[3*k+1] + i * (1 - c) / (c * q)
        d[3*k+2] = (i * u["polarisationOhm"] - y[3*k+2]) / u["polarisationS"]
    return d
y0 = np.array([v for _ in units for v in (1.0, 0.0, 0.0)])
r = solve_ivp(f, (0, until), y0, method="DOP853", rtol=1e-10, atol=1e-12, max_step=20, t_eval=given["atS"])
out = []
for y in r.y.T:
    e, res = emf_ohm(y)
    out.append(e - res * current(y))
print(json.dumps({"busV": out, "charge": float(r.y[0][-1])}))
`;

const skip = skipWithoutScipy();

describe.skipIf(skip)('the engine against SciPy over hours of constant power', () => {
  const strong = testModel();
  const weak = testModel({ capacityAh: 10.5, resistanceOhm: 0.026, availableShare: 0.45 });
  const untilS = 5400;
  const atS = [60, 600, 1800, 3600, 4800, untilS];
  const given = {
    units: [strong, weak].map(({ openCircuit: _curve, ...figures }) => figures),
    curve: testCurve,
    powerW: 90,
    harnessOhm: 0.01,
    linkOhm: 0.002,
    untilS,
    atS,
  };
  const source = 'SciPy DOP853 at 1e-10, equations written anew';

  test('two unequal blocks in series stand within 0.1 mV of the ODE at every look, and their charge within 1e-6', () => {
    const reference = runScipy(packOde, given) as { busV: number[]; charge: number };
    const run = simulate(
      testSetup(
        testPack(testString([testUnit(strong), testUnit(weak, { positions: [2] })])),
        steadyLoad({ kind: 'power', powerW: given.powerW }),
        {
          harnessOhm: given.harnessOhm,
          longestS: untilS,
          stepping: { kind: 'fixed', stepS: 0.25 },
        },
      ),
    );
    const { timeS, busVoltageV } = run.series;
    atS.forEach((look, index) => {
      const row = timeS.findIndex((time) => Math.abs(time - look) < 1e-6);
      checkAgainst({
        chapter: 'Circuit',
        quantity: `Bus voltage of two unequal blocks at 90 W after ${look} s, steps of 0.25 s`,
        unit: 'V',
        source,
        class: 'tool',
        reference: reference.busV[index]!,
        ours: busVoltageV[row]!,
        within: { absolute: 1e-4 },
      });
    });
    checkAgainst({
      chapter: 'Circuit',
      quantity: 'Charge left in the first of two unequal blocks at 90 W after 5400 s',
      unit: '1',
      source,
      class: 'tool',
      reference: reference.charge,
      ours: run.blocks[0]!.remainingPercent / 100,
      within: { absolute: 1e-6 },
    });
  });
});
