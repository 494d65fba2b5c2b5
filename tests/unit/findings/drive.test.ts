import { describe, expect, test } from 'vitest';
import { planFindings } from '#core/findings/plan-findings.ts';
import { newBrakeResistor } from '#core/plan/drive-defaults.ts';
import type { Drive } from '#core/plan/schema/drive.ts';
import type { Controller } from '#core/plan/schema/controller.ts';
import type { Option } from '#core/plan/schema/option.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import { studyPlan } from '#core/study/study-plan.ts';
import { bareMotor } from '../../support/drive-plan.ts';
import { findingsOf, planWith, severitiesOf, studiesWith } from './plan-with.ts';

/** The tug on one option, its drive and controller changed. */
function tug(
  change: (drive: Drive, controller: Controller, plan: Plan, option: Option) => void,
  optionId = 'lead-24',
): Plan {
  return planWith('campsite-tug', optionId, (option, plan) => {
    change(plan.machine.drive!, option.controller ?? plan.machine.controller, plan, option);
  });
}

const statusesOf = (
  id: Parameters<typeof findingsOf>[0],
  plan: Plan,
  studies = studyPlan(plan).options,
) => findingsOf(id, plan, studies).map((finding) => finding.status);

describe('DRV-1: motor above its rated voltage', () => {
  // 36 V nominal class of the lithium option: 10 groups; motors rated so that the ratio is known.
  const ratedAt = (ratedVoltageV: number, limit: number | null) =>
    tug((drive, controller) => {
      drive.motor.ratedVoltageV = ratedVoltageV;
      drive.motor.testVoltageV = 24;
      controller.motorCurrentLimitA = limit;
      controller.batteryCurrentLimitA = null;
    });

  test('24 V on a 19.1 V motor warns, on a 19.3 V motor it passes', () => {
    // 24/19.1 = 1.257, 24/19.3 = 1.244.
    expect(severitiesOf('DRV-1', ratedAt(19.1, null))).toEqual(['warn']);
    expect(severitiesOf('DRV-1', ratedAt(19.3, null))).toEqual([]);
  });

  test('twice the rated voltage is a stop, with a current limit it passes', () => {
    expect(severitiesOf('DRV-1', ratedAt(12, null))).toEqual(['stop']);
    expect(severitiesOf('DRV-1', ratedAt(12, 60))).toEqual([]);
  });

  test('a machine without a drive section gives one question, not silence', () => {
    const plan = planWith('campsite-tug', 'lead-24', (_option, { machine, outings }) => {
      machine.drive = null;
      outings[0]!.legs = [
        {
          id: 'leg',
          name: 'Leg',
          durationMin: 5,
          otherLoads: [],
          load: { kind: 'current', currentA: 10 },
        },
      ];
    });
    expect(statusesOf('DRV-1', plan)).toEqual(['not-checked']);
    expect(findingsOf('DRV-1', plan)[0]!.fields).toEqual(['machine.drive']);
  });
});

describe('DRV-2: step start', () => {
  const start = (rampUpS: number | null, motorLimit: number | null) =>
    tug((drive, controller) => {
      controller.control!.rampUpS = rampUpS;
      controller.motorCurrentLimitA = motorLimit;
      // Wheels that hold: all the weight on them.
      drive.wheel.drivenSharePercent = 100;
      drive.steepestSurface = 'asphalt';
    });

  test('a ramp of 0.4 s on gripping wheels warns, 0.5 s passes, a motor current limit passes', () => {
    expect(severitiesOf('DRV-2', start(0.4, null))).toEqual(['warn']);
    expect(severitiesOf('DRV-2', start(0.5, null))).toEqual([]);
    expect(severitiesOf('DRV-2', start(0.1, 90))).toEqual([]);
  });

  test('an unknown ramp is a question', () => {
    expect(statusesOf('DRV-2', start(null, null))).toEqual(['not-checked']);
  });
});

describe('DRV-3: motor load', () => {
  test('a rated current below the root mean square of the outing warns, just above it passes', () => {
    const plan = tug(() => {});
    const rms = studyPlan(plan).options[0]!.run.drive!.eachMotorRmsA;
    const rated = (amps: number) => {
      const changed = tug((drive) => {
        drive.motor.ratedCurrentA = amps;
        drive.motor.heatResistanceKPerW = 0.05;
      });
      return severitiesOf('DRV-3', changed, studyPlan(changed).options);
    };
    expect(rated(rms * 0.9)).toEqual(['warn']);
    expect(rated(rms * 1.1)).toEqual([]);
  });

  test('a winding above its limit warns', () => {
    const hot = tug((drive) => {
      drive.motor.ratedCurrentA = 60;
      drive.motor.heatResistanceKPerW = 8;
      drive.motor.heatTimeS = 60;
    });
    const found = findingsOf('DRV-3', hot, studyPlan(hot).options);
    expect(found[0]!.what).toContain('°C');
  });

  test('without rated current and thermal resistance it asks', () => {
    const blank = tug((drive) => {
      drive.motor.ratedCurrentA = null;
    });
    expect(statusesOf('DRV-3', blank)).toEqual(['not-checked']);
  });
});

describe('DRV-4: climbing', () => {
  const onGrade = (steepestGradePercent: number | null) =>
    tug((drive) => {
      drive.steepestGradePercent = steepestGradePercent;
    });

  test('the limit named by the finding separates a grade that warns from one that passes', () => {
    const found = findingsOf('DRV-4', onGrade(90));
    const limit = found[0]!.facts[0]!.value;
    expect(limit).toBeGreaterThan(5);
    expect(severitiesOf('DRV-4', onGrade(limit + 0.1))).toEqual(['warn']);
    expect(severitiesOf('DRV-4', onGrade(limit - 0.1))).toEqual([]);
  });

  test('an unstated grade is a question', () => {
    expect(statusesOf('DRV-4', onGrade(null))).toEqual(['not-checked']);
  });
});

test('DRV-4 says so when the outing itself is driven at a stand, and leaves a slow start alone', () => {
  const plan = tug((_drive, _controller, { outings }) => {
    outings[0]!.longestMin = 10;
    for (const { load } of outings[0]!.legs)
      if (load?.kind === 'drive' && load.gradePercent > 0) load.gradePercent = 45;
  });
  const { options } = studyPlan(plan);
  const found = findingsOf('DRV-4', plan, options);
  expect(found[0]!.what).toContain('does not move');
  // Ten minutes cut the run short, so no stand can be longer.
  expect(found[0]!.facts[0]!.value).toBeGreaterThan(1);
  expect(found[0]!.facts[0]!.value).toBeLessThanOrEqual(10);
  const { drive } = options[0]!.run;
  const standing = (stalledS: number) =>
    severitiesOf('DRV-4', plan, studiesWith(plan, { drive: { ...drive!, stalledS } }));
  expect(standing(10)).toEqual(['warn']);
  expect(standing(9.9)).toEqual([]);
});

describe('DRV-5: controller', () => {
  const withController = (change: (controller: Controller) => void) =>
    tug((_drive, controller) => change(controller));

  test("a full pack above the controller's highest voltage warns, at it passes", () => {
    const fullV = studyPlan(tug(() => {})).options[0]!.fullRestVoltageV;
    const limited = (maximumVoltageV: number | null) =>
      withController((controller) => (controller.maximumVoltageV = maximumVoltageV));
    const low = limited(fullV - 0.1);
    expect(severitiesOf('DRV-5', low, studyPlan(low).options)).toContain('warn');
    const exact = limited(fullV);
    expect(
      findingsOf('DRV-5', exact, studyPlan(exact).options)
        .map((finding) => finding.what)
        .join(),
    ).not.toContain('full pack stands');
    expect(statusesOf('DRV-5', limited(null))).toContain('not-checked');
  });

  test('a target missed for long warns, held throughout it passes', () => {
    const plan = tug(() => {});
    const [study] = studyPlan(plan).options;
    const missed = (belowTargetS: number) =>
      severitiesOf(
        'DRV-5',
        plan,
        studiesWith(plan, { drive: { ...study!.run.drive!, belowTargetS } }),
      );
    expect(missed(0)).toEqual([]);
    expect(missed(1e5)).toEqual(['warn']);
  });
});

describe('DRV-6: speed', () => {
  const allowed = (speedLimitKmh: number | null) =>
    tug((drive) => {
      drive.speedLimitKmh = speedLimitKmh;
    });

  test('the top speed named by the finding separates a limit that warns from one that passes', () => {
    const top = findingsOf('DRV-6', allowed(3))[0]!.facts[0]!.value;
    expect(severitiesOf('DRV-6', allowed(top - 0.05))).toEqual(['warn']);
    expect(severitiesOf('DRV-6', allowed(top + 0.05))).toEqual([]);
  });

  test('energy grows with the square of speed', () => {
    const facts = findingsOf('DRV-6', allowed(3))[0]!.facts;
    expect(facts[2]!.value).toBeCloseTo((facts[0]!.value / 3) ** 2, 9);
  });

  test('an unstated limit is a question', () => {
    expect(statusesOf('DRV-6', allowed(null))).toEqual(['not-checked']);
  });
});

describe('BRK-1: stopping hard', () => {
  test('release to a short warns, coasting does not ask for anything', () => {
    expect(
      severitiesOf(
        'BRK-1',
        tug((drive) => (drive.brakes.onRelease = 'short')),
      ),
    ).toEqual(['warn']);
    expect(
      severitiesOf(
        'BRK-1',
        tug((drive) => (drive.brakes.onRelease = 'coast')),
      ),
    ).toEqual([]);
  });

  test('a small resistor warns and a larger one passes at the same machine', () => {
    const through = (resistanceOhm: number) =>
      tug((drive) => {
        drive.brakes.onRelease = 'resistor';
        drive.motor.maximumCurrentA = null;
        drive.brakes.resistor = { ...newBrakeResistor(), resistanceOhm, ratedPowerW: 1000 };
      });
    expect(severitiesOf('BRK-1', through(0.02))).toEqual(['warn']);
    expect(severitiesOf('BRK-1', through(2))).toEqual([]);
  });

  test('a resistor brake without its ohms is a question', () => {
    expect(
      statusesOf(
        'BRK-1',
        tug((drive) => (drive.brakes.resistor = null)),
      ),
    ).toEqual(['not-checked']);
  });
});

test('DRV-4 asks for the mass of the blocks, and for nothing else, where it is missing', () => {
  const plan = tug((_drive, _controller, _plan, option) => (option.pack.block.massKg = null));
  const asked = findingsOf('DRV-4', plan);
  expect(asked.map((finding) => finding.status)).toEqual(['not-checked']);
  expect(asked[0]!.fields).toEqual(['options.0.pack.block.massKg']);
});

describe('DRV-7: rolling backwards', () => {
  const halting = (parking: Drive['brakes']['parking'], gradePercent: number) =>
    tug((drive, _controller, plan) => {
      drive.brakes.parking = parking;
      drive.brakes.serviceDecelerationMps2 = null;
      plan.outings[0]!.longestMin = 60;
      for (const leg of plan.outings[0]!.legs)
        if (leg.load?.kind === 'drive' && leg.load.gradePercent > 0)
          leg.load.gradePercent = gradePercent;
    });
  const severities = (plan: Plan) => severitiesOf('DRV-7', plan, studyPlan(plan).options);

  test('a halt on 7 % without any brake warns with the speed, a parking brake passes, 1 % holds by friction', () => {
    const plan = halting('none', 7);
    const found = findingsOf('DRV-7', plan, studyPlan(plan).options);
    expect(found.map((finding) => finding.severity)).toEqual(['warn']);
    expect(found[0]!.facts.find((fact) => fact.unit === 'km/h')!.value).toBeGreaterThan(0);
    expect(severities(halting('manual', 7))).toEqual([]);
    expect(severities(halting('none', 1))).toEqual([]);
  });
});

describe('BRK-2: nothing that holds', () => {
  const braked = (
    parking: Drive['brakes']['parking'],
    steepestGradePercent: number | null,
    flatLegs = false,
  ) =>
    tug((drive, _controller, plan) => {
      drive.brakes.parking = parking;
      drive.brakes.serviceDecelerationMps2 = null;
      drive.steepestGradePercent = steepestGradePercent;
      if (flatLegs)
        for (const leg of plan.outings[0]!.legs)
          if (leg.load?.kind === 'drive') leg.load.gradePercent = 0;
    });

  test('a resistor alone on a grade warns with the creeping speed, a parking brake passes, the level passes', () => {
    const found = findingsOf('BRK-2', braked('none', 9));
    expect(found.map((finding) => finding.severity)).toEqual(['warn']);
    expect(found[0]!.facts.some((fact) => fact.unit === 'km/h')).toBe(true);
    expect(severitiesOf('BRK-2', braked('manual', 9))).toEqual([]);
    expect(severitiesOf('BRK-2', braked('none', 0, true))).toEqual([]);
  });

  test('a machine that coasts without a service brake warns even on the level', () => {
    const plan = tug((drive) => {
      drive.brakes.onRelease = 'coast';
      drive.brakes.serviceDecelerationMps2 = null;
    });
    expect(severitiesOf('BRK-2', plan)).toEqual(['warn']);
  });
});

describe('BRK-3: brake resistor rating', () => {
  const rated = (ratedPowerW: number | null) =>
    tug((drive) => {
      drive.brakes.resistor = { ...newBrakeResistor(), resistanceOhm: 0.47, ratedPowerW };
    });

  test('a 10 W part warns, a 1 kW part passes, an unknown rating is a question', () => {
    expect(severitiesOf('BRK-3', rated(10))).toContain('warn');
    expect(severitiesOf('BRK-3', rated(1000))).toEqual([]);
    expect(statusesOf('BRK-3', rated(null))).toEqual(['not-checked']);
  });
});

describe('BRK-4: regeneration', () => {
  const feeding = (startPercent: number, optionId: string) =>
    tug((drive, _controller, _plan, option) => {
      drive.brakes.onRelease = 'regeneration';
      option.startPercent = startPercent;
    }, optionId);

  test('into a full lead pack warns, at 90 % it passes, into a BMS it always warns', () => {
    expect(severitiesOf('BRK-4', feeding(91, 'lead-24'))).toEqual(['warn']);
    expect(severitiesOf('BRK-4', feeding(90, 'lead-24'))).toEqual([]);
    expect(severitiesOf('BRK-4', feeding(50, 'lithium-36'))).toEqual(['warn']);
  });
});

describe('STP-1 to STP-3: stopping when the controller does not', () => {
  const chain = (changes: Partial<Drive['stopChain']>) =>
    tug((drive) => Object.assign(drive.stopChain, changes));

  test('no isolator, or one out of reach, is a stop; one in reach passes; unknown is a question', () => {
    expect(severitiesOf('STP-1', chain({ isolator: 'none' }))).toEqual(['stop']);
    expect(severitiesOf('STP-1', chain({ isolatorReachable: 'no' }))).toEqual(['stop']);
    expect(severitiesOf('STP-1', chain({}))).toEqual([]);
    expect(statusesOf('STP-1', chain({ isolator: 'unknown' }))).toEqual(['not-checked']);
  });

  test('the stall current named by the finding separates a rating that stops from one that passes', () => {
    const stallA = findingsOf('STP-2', chain({ isolatorBreakingA: 1 }))[0]!.facts[0]!.value;
    expect(severitiesOf('STP-2', chain({ isolatorBreakingA: stallA - 1 }))).toEqual(['stop']);
    expect(severitiesOf('STP-2', chain({ isolatorBreakingA: stallA + 1 }))).toEqual([]);
    expect(severitiesOf('STP-2', chain({ isolatorDcVoltageV: 24 }))).toEqual(['stop']);
    expect(statusesOf('STP-2', chain({ isolatorDcVoltageV: null }))).toContain('not-checked');
  });

  test('no fault detection and no interlock warn each, present they pass, unknown they ask', () => {
    expect(
      severitiesOf('STP-3', chain({ throttleFaultDetection: 'no', startInterlock: 'no' })),
    ).toEqual(['warn', 'warn']);
    expect(
      findingsOf('STP-3', chain({ throttleFaultDetection: 'yes', startInterlock: 'yes' })),
    ).toEqual([]);
    expect(
      statusesOf('STP-3', chain({ throttleFaultDetection: 'unknown', startInterlock: 'unknown' })),
    ).toEqual(['not-checked', 'not-checked']);
  });
});

test('every drive rule speaks German as well', () => {
  const plan = tug((drive, controller) => {
    drive.motor = bareMotor({
      ratedVoltageV: 12,
      testVoltageV: 24,
      ratedCurrentA: 1,
      maximumCurrentA: 20,
    });
    drive.brakes = {
      onRelease: 'resistor',
      resistor: { ...newBrakeResistor(), resistanceOhm: 0.05, ratedPowerW: 1 },
      regenerationLimitA: null,
      serviceDecelerationMps2: null,
      parking: 'none',
    };
    drive.speedLimitKmh = 2;
    drive.steepestGradePercent = 80;
    drive.stopChain = {
      isolator: 'none',
      isolatorReachable: 'no',
      isolatorDcVoltageV: 12,
      isolatorBreakingA: 1,
      throttleFaultDetection: 'no',
      startInterlock: 'no',
    };
    controller.motorCurrentLimitA = null;
    controller.batteryCurrentLimitA = null;
    controller.maximumVoltageV = 20;
    controller.control!.rampUpS = 0.1;
  });
  const { options } = studyPlan(plan);
  const drive = (language: 'en' | 'de') =>
    planFindings(plan, options, language).filter(({ id }) => /^(DRV|BRK|STP)/.test(id));
  const [english, german] = [drive('en'), drive('de')];
  expect(german.map(({ id }) => id)).toEqual(english.map(({ id }) => id));
  expect(new Set(english.map(({ id }) => id)).size).toBeGreaterThanOrEqual(8);
  for (const [index, finding] of german.entries())
    expect(finding.what).not.toBe(english[index]!.what);
});
