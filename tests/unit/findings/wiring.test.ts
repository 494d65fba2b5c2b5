import { describe, expect, test } from 'vitest';
import type { FindingId } from '#core/findings/finding.ts';
import { planFindings } from '#core/findings/plan-findings.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import type { Wiring, WiringThresholds } from '#core/plan/schema/wiring.ts';
import { newDevice, newFuse } from '#core/wiring/new-parts.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import { branchOf } from '../wiring/wired.ts';
import { planWith } from './plan-with.ts';

const cart = (change: (wiring: Wiring, plan: Plan) => void = () => {}) =>
  planWith('orchard-cart', 'agm-series', (_option, plan) => change(plan.wiring!, plan));

/** Standing findings and questions of one rule, as `severity` or `question`. */
function marks(id: FindingId, plan: Plan): string[] {
  return planFindings(plan, studyPlan(plan).options)
    .filter((finding) => finding.id === id)
    .map((finding) => (finding.status === 'finding' ? finding.severity : 'question'));
}

const ids: FindingId[] = [
  'FUS-1',
  'FUS-2',
  'FUS-3',
  'FUS-4',
  'WIR-1',
  'WIR-2',
  'WIR-3',
  'WIR-4',
  'PCK-4',
];

test('without wiring every wiring rule asks for it instead of passing', () => {
  const plan = cart((_wiring, all) => {
    all.wiring = null;
  });
  for (const id of ids) expect(marks(id, plan), id).toEqual(['question']);
});

test('the tidy wiring of the cart raises nothing on fuses, wires and joints', () => {
  for (const id of [
    'FUS-1',
    'FUS-2',
    'FUS-3',
    'FUS-4',
    'WIR-1',
    'WIR-2',
    'WIR-3',
    'WIR-4',
    'STP-2',
  ] as const) {
    expect(marks(id, cart()), id).toEqual([]);
  }
});

test('every wiring finding is written in German too', () => {
  const plan = cart((wiring) => {
    branchOf(wiring, 'main').fuse = newFuse('breaker-auto-reset', 100);
    branchOf(wiring, 'supply').conductor = { system: 'metric', areaMm2: 0.5 };
  });
  const studies = studyPlan(plan).options;
  const english = planFindings(plan, studies, 'en');
  const german = planFindings(plan, studies, 'de');
  expect(german).toHaveLength(english.length);
  german.forEach((finding, index) => {
    if (finding.id.startsWith('FUS') || finding.id.startsWith('WIR'))
      expect(finding.what).not.toBe(english[index]!.what);
  });
});

describe('FUS-1: a fuse in every battery branch, fitting wire, current, voltage and short circuit', () => {
  const stop = (change: (wiring: Wiring) => void) => marks('FUS-1', cart(change));

  test('a branch without a fuse on its way stops the plan', () => {
    expect(
      stop((wiring) => {
        branchOf(wiring, 'port-line').fuse = null;
      }),
    ).toEqual(['stop']);
  });

  test('a branch behind the main fuse needs none of its own while its wire stands that fuse', () => {
    // 40 A fuse: 6 mm² at 90 °C stands 55 A, 2.5 mm² stands 30 A.
    expect(
      stop((wiring) => {
        branchOf(wiring, 'supply').conductor = { system: 'metric', areaMm2: 4 };
      }),
    ).toEqual([]);
    expect(
      stop((wiring) => {
        branchOf(wiring, 'supply').conductor = { system: 'metric', areaMm2: 2.5 };
      }),
    ).toEqual(['stop']);
  });

  test('a fuse below 1.25 times the lasting current stops, one just above passes', () => {
    // About 13.6 A flow in the main line: 17 A are asked.
    expect(
      stop((wiring) => {
        branchOf(wiring, 'main').fuse!.ratedA = 16.5;
      }),
    ).toEqual(['stop']);
    expect(
      stop((wiring) => {
        branchOf(wiring, 'main').fuse!.ratedA = 17.5;
      }),
    ).toEqual([]);
  });

  test('a fuse rated below the charge voltage stops, one rated just at it passes', () => {
    expect(
      stop((wiring) => {
        branchOf(wiring, 'main').fuse!.ratedVoltageV = 29.3;
      }),
    ).toEqual(['stop']);
    expect(
      stop((wiring) => {
        branchOf(wiring, 'main').fuse!.ratedVoltageV = 29.4;
      }),
    ).toEqual([]);
  });

  test('a fuse that cannot break the short circuit stops', () => {
    expect(
      stop((wiring) => {
        branchOf(wiring, 'main').fuse!.breakingA = 800;
      }),
    ).toEqual(['stop']);
    expect(
      stop((wiring) => {
        branchOf(wiring, 'main').fuse!.breakingA = 900;
      }),
    ).toEqual([]);
  });

  test('unknown voltage and breaking capacity are a question', () => {
    expect(
      stop((wiring) => {
        branchOf(wiring, 'main').fuse!.breakingA = null;
      }),
    ).toEqual(['question']);
  });

  test('thin wires behind a strong converter without fuses warn', () => {
    const change = (peakCurrentA: number) =>
      marks(
        'FUS-1',
        cart((_wiring, plan) => {
          plan.machine.converter!.peakCurrentA = peakCurrentA;
        }),
      );
    // 0.75 mm² at 75 °C stands 9.3 A.
    expect(change(25).every((mark) => mark === 'warn')).toBe(true);
    expect(change(25).length).toBeGreaterThan(0);
    expect(change(9)).toEqual([]);
  });
});

describe('FUS-2: distance from the terminal', () => {
  const at = (fromSourceMm: number | null) =>
    marks(
      'FUS-2',
      cart((wiring) => {
        branchOf(wiring, 'main').fuse!.fromSourceMm = fromSourceMm;
      }),
    );
  test('18 cm pass, a millimetre more warns, unknown asks', () => {
    expect(at(180)).toEqual([]);
    expect(at(181)).toEqual(['warn']);
    expect(at(null)).toEqual(['question']);
  });
});

describe('FUS-3: a fuse expected to guard the motor', () => {
  const tug = (ratedA: number, limited: boolean, known = true) =>
    marks(
      'FUS-3',
      planWith('campsite-tug', 'lead-24', (option, plan) => {
        const controller = option.controller ?? plan.machine.controller;
        if (!limited) {
          controller.motorCurrentLimitA = null;
          controller.batteryCurrentLimitA = null;
        }
        if (!known) plan.machine.drive!.motor.ratedCurrentA = null;
        branchOf(plan.wiring!, 'main').fuse!.ratedA = ratedA;
      }),
    );
  test('without a current limit an 80 A fuse lies right of two motors of 16.5 A, a 36 A one does not', () => {
    expect(tug(80, false)).toEqual(['warn']);
    // 1.35 x 36 A = 48.6 A stays below 1.5 x 33 A = 49.5 A.
    expect(tug(36, false)).toEqual([]);
  });
  test('a current limit in the controller settles it', () => {
    expect(tug(80, true)).toEqual([]);
  });
  test('a motor of unknown rating is a question', () => {
    expect(tug(80, false, false)).toEqual(['question']);
  });
});

describe('FUS-4: breakers that close by themselves', () => {
  test('one warns, a hand-closed one does not', () => {
    const withClass = (name: 'breaker-auto-reset' | 'breaker-manual') =>
      marks(
        'FUS-4',
        cart((wiring) => {
          branchOf(wiring, 'main').fuse!.class = name;
        }),
      );
    expect(withClass('breaker-auto-reset')).toEqual(['warn']);
    expect(withClass('breaker-manual')).toEqual([]);
  });
});

describe('WIR-1: current against ampacity', () => {
  // About 13.6 A flow in the links; 18 AWG at 90 °C stands 20 A, in a bundle of three 14 A, of four 12 A, of seven 10 A.
  const bundled = (count: number) =>
    marks(
      'WIR-1',
      cart((wiring) =>
        Object.assign(branchOf(wiring, 'links'), {
          conductor: { system: 'awg', gauge: 18 },
          bundled: count,
        }),
      ),
    );
  test('the bundle decides: alone it passes, a little above warns, far above stops', () => {
    expect(bundled(2)).toEqual([]);
    expect(bundled(3)).toEqual([]);
    expect(bundled(5)).toEqual(['warn']);
    expect(bundled(7)).toEqual(['stop']);
  });
  test('an unknown conductor is a question', () => {
    expect(
      marks(
        'WIR-1',
        cart((wiring) => {
          branchOf(wiring, 'supply').conductor = null;
        }),
      ),
    ).toEqual(['question']);
  });
});

describe('WIR-2: drop out and back', () => {
  const rear = (lengthM: number, limits: Partial<WiringThresholds> = {}) =>
    marks(
      'WIR-2',
      cart((wiring, plan) => {
        branchOf(wiring, 'rear-line').lengthM = lengthM;
        Object.assign(plan.thresholds.wiring, limits);
      }),
    );
  // 0.75 mm², 1.53 A: about 0.083 V a metre one way; 3 % of 12 V are 0.36 V, 5 % are 0.6 V.
  test('short passes, longer is a note, long a warning', () => {
    expect(rear(4.1)).toEqual([]);
    expect(rear(4.7)).toEqual(['note']);
    expect(rear(7.6)).toEqual(['warn']);
  });
  test("the limits are the plan's own", () => {
    expect(rear(7.6, { dropNotePercent: 6, dropWarnPercent: 8 })).toEqual([]);
  });
});

describe('WIR-3: motor line sized for the battery current', () => {
  const line = (areaMm2: number, change: (plan: Plan) => void = () => {}) =>
    marks(
      'WIR-3',
      cart((wiring, plan) => {
        branchOf(wiring, 'motor-line').conductor = { system: 'metric', areaMm2 };
        change(plan);
      }),
    );
  test('a 60 A motor limit warns on 6 mm² (55 A) and passes on 10 mm² (70 A)', () => {
    expect(line(6)).toEqual(['warn']);
    expect(line(10)).toEqual([]);
  });
  test('an unknown motor limit is a question', () => {
    expect(
      line(10, (plan) => {
        plan.machine.controller.motorCurrentLimitA = null;
      }),
    ).toEqual(['question']);
  });
});

describe('WIR-4: connectors and joints', () => {
  test('a connector below the lasting current warns, just above passes, unknown asks', () => {
    const rated = (ratedA: number | null) =>
      marks(
        'WIR-4',
        cart((wiring) => {
          branchOf(wiring, 'main').connector!.ratedA = ratedA;
        }),
      );
    expect(rated(13)).toEqual(['warn']);
    expect(rated(14)).toEqual([]);
    expect(rated(null)).toEqual(['question']);
  });
  test('a joint of 1.5 mΩ passes, a little more warns', () => {
    const joint = (dropMv: number) =>
      marks(
        'WIR-4',
        cart((wiring) => {
          branchOf(wiring, 'main').joints = [{ name: 'Lug', dropMv, atCurrentA: 10 }];
        }),
      );
    expect(joint(15)).toEqual([]);
    expect(joint(15.1)).toEqual(['warn']);
  });
});

describe('WIR-5: inrush into the controller', () => {
  test('bare contacts on 2200 µF are a note, a precharge resistor settles it, unknown capacitors ask', () => {
    const inrush = (prechargeOhm: number | null, capacitanceUf: number | null) =>
      marks(
        'WIR-5',
        cart((wiring) => {
          branchOf(wiring, 'main').switchgear!.prechargeOhm = prechargeOhm;
          wiring.devices.find((device) => device.kind === 'controller')!.inputCapacitanceUf =
            capacitanceUf;
        }),
      );
    expect(inrush(null, 2200)).toEqual(['note']);
    expect(inrush(47, 2200)).toEqual([]);
    expect(inrush(null, null)).toEqual(['question']);
  });
});

describe('STP-2: direct-current rating of switches in the wiring', () => {
  const rated = (ratedVoltageV: number | null, breakingA: number | null) =>
    marks(
      'STP-2',
      cart((wiring) =>
        Object.assign(branchOf(wiring, 'main').switchgear!, { ratedVoltageV, breakingA }),
      ),
    );
  test('volts and stall current decide: 29.4 V and about 128 A pass, less stops, only an AC rating stops', () => {
    expect(rated(29.4, 135)).toEqual([]);
    expect(rated(29.3, 135)).toEqual(['stop']);
    expect(rated(29.4, 120)).toEqual(['stop']);
    expect(rated(0, 135)).toEqual(['stop']);
  });
  test('unknown ratings are a question', () => {
    expect(rated(null, null)).toEqual(['question']);
  });
});

describe('PCK-4: the meter before the last connector', () => {
  const read = (value: number | null) =>
    marks(
      'PCK-4',
      cart((wiring) => {
        wiring.readings =
          value === null ? [] : [{ step: 'pack-voltage', value, passed: null, note: '' }];
      }),
    );
  test('no reading asks, a right one passes', () => {
    expect(read(null)).toEqual(['question']);
    expect(read(25.4)).toEqual([]);
  });
  test('half, double and reversed voltage stop the plan and say why', () => {
    expect(read(12.7)).toEqual(['stop']);
    expect(read(50.8)).toEqual(['stop']);
    expect(read(-25.4)).toEqual(['stop']);
    const plan = cart((wiring) => {
      wiring.readings = [{ step: 'pack-voltage', value: 12.7, passed: null, note: '' }];
    });
    expect(planFindings(plan, []).find((finding) => finding.id === 'PCK-4')!.what).toContain(
      'in parallel instead of in series',
    );
  });
});

describe('WIR-6: one supply for every branch', () => {
  test('a second battery in the same wiring stops the plan; the tidy wiring passes', () => {
    expect(marks('WIR-6', cart())).toEqual([]);
    expect(
      marks(
        'WIR-6',
        cart((wiring) => wiring.devices.push(newDevice('spare', 'pack', 'Spare pack'))),
      ),
    ).toEqual(['stop']);
  });

  test('a load fed from converter and pack at once stops the plan', () => {
    expect(
      marks(
        'WIR-6',
        cart((wiring) => {
          const radio = branchOf(wiring, 'radio-line');
          wiring.branches.push({ ...radio, id: 'tie', name: 'Second feed', from: 'bus' });
        }),
      ),
    ).toEqual(['stop']);
  });

  test('a branch that hangs on nothing is a question, not a pass', () => {
    expect(
      marks(
        'WIR-6',
        cart((wiring) => {
          wiring.devices.push(newDevice('stray', 'junction', 'Stray node'));
          const radio = branchOf(wiring, 'radio-line');
          radio.from = 'stray';
        }),
      ),
    ).toEqual(['question']);
  });
});

test('a wire nobody has named gets no fuse limit from a guess, but fuse and wire together', () => {
  const plan = cart((wiring) => {
    for (const branch of wiring.branches) Object.assign(branch, { fuse: null, conductor: null });
  });
  const found = planFindings(plan, studyPlan(plan).options).filter(
    ({ id, what }) => id === 'FUS-1' && what.includes('Main line'),
  );
  expect(found).toHaveLength(1);
  expect(found[0]!.remedy).not.toMatch(/\d/);
  const [cure] = found[0]!.cures;
  expect(cure!.changes.map(({ path }) => path.replace(/.*\.\d+\./, ''))).toEqual([
    'fuse',
    'conductor',
  ]);
});
