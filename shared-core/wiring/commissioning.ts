import { readUniform } from '../battery/uniform-table.ts';
import { buildBlockModel, newBlockConditions } from '../battery/build-block-model.ts';
import type { Language } from '../plan/language.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Plan } from '../plan/schema/plan.ts';
import type { CommissioningReading, Wiring } from '../plan/schema/wiring.ts';
import { formatSignificant } from '../units/index.ts';
import { commissioningWords } from './commissioning-words.ts';
import type { StepTopic } from './commissioning-words.ts';
import { checkSwitches } from './switch-check.ts';
import type { WiringStudy } from './wiring-study.ts';

/** What the meter or the tester should find. */
export type Expectation =
  | {
      readonly kind: 'range';
      readonly min: number;
      readonly max: number | null;
      readonly unit: string;
    }
  | { readonly kind: 'answer' };

export interface CommissioningStep {
  /** Stable; readings refer to it. */
  readonly id: string;
  /** When: before the pack is joined, at its last connector, with power on, wheels up, or on the first drive. */
  readonly phase:
    | 'before-power'
    | 'last-connector'
    | 'power-on'
    | 'wheels-up'
    | 'first-drive'
    | 'charging';
  readonly what: string;
  readonly how: string;
  readonly expected: Expectation;
  readonly reading: CommissioningReading | null;
  /** Field of the wiring that holds the answer, where it is more than a step: other rules ask for it too. */
  readonly field: AnswerField | null;
  readonly verdict: 'passed' | 'failed' | 'open';
}

/** Answers that stand in the wiring itself. */
export type AnswerField = 'portPolarity' | 'chargeInhibit';

const answer: Expectation = { kind: 'answer' };

function range(min: number, max: number | null, unit: string): Expectation {
  return { kind: 'range', min, max, unit };
}

/** Identifier of the step in which the pack's voltage is read at the last open connector. */
export const packVoltageStep = 'pack-voltage';

/** Voltage the pack may show at its last open connector [V]: a fifth charged to full, with a volt of meter and surface charge. */
export function expectedPackVoltage(option: Option): { min: number; max: number } {
  const { min, max } = expectedBlockVoltage(option);
  const { seriesCount } = option.pack;
  return { min: seriesCount * min, max: seriesCount * max };
}

function expectedBlockVoltage(option: Option): { min: number; max: number } {
  const { openCircuit, hysteresisV } = buildBlockModel(option.pack.block, newBlockConditions);
  return {
    min: readUniform(openCircuit, 0.2) - hysteresisV,
    max: readUniform(openCircuit, 1) * 1.03,
  };
}

/**
 * The steps between the last crimp and the first drive, in the order that keeps a mistake cheap, with what each should
 * read. Expected voltages come from the option's blocks, currents and drops from the wiring study.
 *
 * The order and the limits without another source: common practice, no source.
 */
export function commissioningSteps(
  plan: Plan,
  wiring: Wiring,
  option: Option,
  study: WiringStudy,
  language: Language,
): CommissioningStep[] {
  const steps: CommissioningStep[] = [];
  const add = (
    id: string,
    phase: CommissioningStep['phase'],
    topic: StepTopic,
    expected: Expectation,
    names: Readonly<Record<string, string>> = {},
    field: AnswerField | null = null,
  ) => {
    const words = commissioningWords[topic];
    const fill = (text: string) => text.replace(/\{(\w+)\}/g, (_, key: string) => names[key] ?? '');
    const reading =
      field === null
        ? (wiring.readings.find((entry) => entry.step === id) ?? null)
        : answered(id, wiring[field]);
    steps.push({
      id,
      phase,
      what: fill(words.what[language]),
      how: fill(words.how[language]),
      expected,
      reading,
      field,
      verdict: verdictOf(expected, reading),
    });
  };
  const say = (value: number) => formatSignificant(value, 3, language);
  const { pack } = option;
  const whole = expectedPackVoltage(option);
  const block = expectedBlockVoltage(option);

  add('insulation-plus', 'before-power', 'insulation-plus', range(1e6, null, 'Ω'));
  add('insulation-minus', 'before-power', 'insulation-minus', range(1e6, null, 'Ω'));
  add('short-circuit', 'before-power', 'no-short', range(10, null, 'Ω'));
  for (const branch of wiring.branches) {
    if (branch.fuse === null) continue;
    add(`fuse-${branch.id}`, 'before-power', 'fuse', answer, {
      name: branch.name,
      rating: say(branch.fuse.ratedA),
    });
  }
  for (let string = 1; string <= Math.min(12, pack.parallelCount); string += 1) {
    for (let position = 1; position <= Math.min(20, pack.seriesCount); position += 1) {
      const name = pack.parallelCount > 1 ? `${string}.${position}` : `${position}`;
      add(
        `block-${string}-${position}`,
        'before-power',
        'block',
        range(block.min, block.max, 'V'),
        { name },
      );
    }
  }
  if (pack.parallelCount > 1)
    add('string-difference', 'before-power', 'strings', range(0, 0.1 * pack.seriesCount, 'V'));
  add(packVoltageStep, 'last-connector', 'pack-voltage', range(whole.min, whole.max, 'V'));
  add('polarity', 'last-connector', 'polarity', answer);
  for (const check of checkSwitches(study, wiring.branches)) {
    if (check.precharge?.fitted) {
      add(
        `precharge-${check.branchId}`,
        'power-on',
        'precharge',
        range(0.95 * whole.min, whole.max, 'V'),
        {
          name: check.branchName,
          seconds: say(check.precharge.fitted.timeS),
        },
      );
    }
  }
  add('idle-current', 'power-on', 'idle-current', range(0, Math.max(0.05, 3 * idleA(study)), 'A'));
  if (plan.machine.converter !== null) {
    const { outputVoltageV } = plan.machine.converter;
    add(
      'converter',
      'power-on',
      'converter',
      range(0.95 * outputVoltageV, 1.05 * outputVoltageV, 'V'),
    );
  }
  add('direction', 'wheels-up', 'direction', answer);
  for (const wire of ['supply', 'signal', 'return'] as const)
    add(`throttle-${wire}`, 'wheels-up', `throttle-${wire}`, answer);
  add('interlock', 'wheels-up', 'interlock', answer);
  add('stop', 'wheels-up', 'stop', answer);
  if (plan.machine.drive !== null && plan.machine.drive.brakes.resistor !== null)
    add('brake-resistor', 'wheels-up', 'brake-resistor', answer);
  for (const branch of wiring.branches) {
    const found = study.branches.find((candidate) => candidate.id === branch.id);
    if (
      found === undefined ||
      found.continuousA < 5 ||
      branch.joints.length + (branch.connector === null ? 0 : 1) === 0
    )
      continue;
    add(
      `joints-${branch.id}`,
      'first-drive',
      'joints',
      range(0, plan.thresholds.wiring.jointWarnMohm * found.continuousA, 'mV'),
      {
        name: branch.name,
        current: say(found.continuousA),
      },
    );
  }
  const main = study.branches.find((found) => found.zone === 'pack' && found.continuousA > 0);
  if (main !== undefined)
    add(
      'cruise-current',
      'first-drive',
      'cruise-current',
      range(0.5 * main.continuousA, 1.5 * main.continuousA, 'A'),
    );
  add('brake', 'first-drive', 'brake', answer);
  if (option.charger !== null) {
    add('port-polarity', 'charging', 'port-polarity', answer, {}, 'portPolarity');
    add('charge-inhibit', 'charging', 'charge-inhibit', answer, {}, 'chargeInhibit');
    add(
      'charge-end',
      'charging',
      'charge-end',
      range(0.98 * study.highestVoltageV, 1.01 * study.highestVoltageV, 'V'),
    );
  }
  return steps;
}

function answered(step: string, word: Wiring[AnswerField]): CommissioningReading | null {
  return word === 'unknown' ? null : { step, value: null, passed: word, note: '' };
}

function idleA(study: WiringStudy): number {
  const feeding = study.branches.find((found) => found.zone === 'pack');
  return study.demand.controllerIdleA + (feeding?.states.rest?.currentA ?? 0);
}

function verdictOf(
  expected: Expectation,
  reading: CommissioningReading | null,
): CommissioningStep['verdict'] {
  if (reading === null) return 'open';
  if (expected.kind === 'answer' || reading.value === null) {
    return reading.passed === null ? 'open' : reading.passed === 'yes' ? 'passed' : 'failed';
  }
  const { min, max } = expected;
  return reading.value >= min && (max === null || reading.value <= max) ? 'passed' : 'failed';
}
