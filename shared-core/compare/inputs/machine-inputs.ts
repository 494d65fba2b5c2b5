import { accessoryDemands, isIdle } from '../../accessories/demands.ts';
import { converterLoss } from '../../accessories/converter-input.ts';
import type { Controller } from '../../plan/schema/controller.ts';
import type { Load } from '../../plan/schema/load.ts';
import type { Scenario } from '../scenario.ts';
import type { UncertainInput } from './input.ts';

const practice = 'common practice, no source';

function scaleAccessory(load: Load, factor: number): Load {
  switch (load.kind) {
    case 'current':
      return { ...load, currentA: load.currentA * factor };
    case 'power':
      return { ...load, powerW: load.powerW * factor };
    case 'resistance':
      return { ...load, resistanceOhm: load.resistanceOhm / factor };
  }
}

/** The controller that works with the option, changed where it stands. */
function withController(scenario: Scenario, change: (from: Controller) => Controller): Scenario {
  const { option, machine } = scenario;
  return option.controller === null
    ? { ...scenario, machine: { ...machine, controller: change(machine.controller) } }
    : { ...scenario, option: { ...option, controller: change(option.controller) } };
}

const shared = { unit: '%', shape: 'ratio', likely: 100, least: 10, most: 500 } as const;

/** What is uncertain about controller, wiring, converter and accessories. */
export function machineInputs({ option, machine }: Scenario): UncertainInput[] {
  const inputs: UncertainInput[] = [
    {
      ...shared,
      id: 'wiring-resistance',
      key: 'wiring-resistance',
      label: { en: 'Cables and links against the plan', de: 'Leitungen und Verbinder gegen Plan' },
      low: 70,
      high: 160,
      rangeClass: 'entered',
      source: `Lugs, contacts and cable warmth; ${practice}`,
      measure: {
        en: 'Measure the volts lost between pack and controller under load.',
        de: 'Die Volt messen, die zwischen Batterie und Steuerung unter Last verloren gehen.',
      },
      apply: (scenario, value) => ({
        ...scenario,
        machine: {
          ...scenario.machine,
          harnessResistanceOhm: (scenario.machine.harnessResistanceOhm * value) / 100,
        },
        option: {
          ...scenario.option,
          pack: {
            ...scenario.option.pack,
            linkResistanceOhm: (scenario.option.pack.linkResistanceOhm * value) / 100,
          },
        },
      }),
    },
  ];
  const demands = accessoryDemands(machine);
  if (Object.values(demands).some((demand) => !isIdle(demand))) {
    inputs.push({
      ...shared,
      id: 'accessory-load',
      key: 'accessory-load',
      label: { en: 'Accessories against the plan', de: 'Zubehör gegen Plan' },
      low: 80,
      high: 120,
      rangeClass: 'entered',
      source: `Labels against what parts draw; ${practice}`,
      measure: {
        en: 'Clamp the lead of the accessories with everything switched on.',
        de: 'Mit der Stromzange die Zuleitung des Zubehörs messen, alles eingeschaltet.',
      },
      apply: (scenario, value) => ({
        ...scenario,
        machine: {
          ...scenario.machine,
          accessories: scenario.machine.accessories.map((accessory) => ({
            ...accessory,
            load: scaleAccessory(accessory.load, value / 100),
          })),
        },
      }),
    });
  }
  if (machine.converter !== null && !isIdle(demands.converter)) {
    inputs.push({
      ...shared,
      id: 'converter-loss',
      key: 'converter-loss',
      label: { en: 'Converter losses against the plan', de: 'Wandlerverluste gegen Plan' },
      low: 70,
      high: 150,
      rangeClass: 'entered',
      source: `Efficiency of step-down converters 85 to 95 %; ${practice}`,
      measure: {
        en: 'Read amperes and volts on both sides of the converter.',
        de: 'Ampere und Volt auf beiden Seiten des Wandlers ablesen.',
      },
      apply: (scenario, value) => {
        const { converter } = scenario.machine;
        if (converter === null) return scenario;
        const loss = converterLoss(converter);
        const factor = value / 100;
        return {
          ...scenario,
          machine: {
            ...scenario.machine,
            converter: {
              ...converter,
              loss: {
                kind: 'coefficients',
                idleLossW: loss.idleLossW * factor,
                dropV: loss.dropV * factor,
                lossResistanceOhm: loss.lossResistanceOhm * factor,
              },
            },
          },
        };
      },
    });
  }
  const { cutoffVoltageV } = option.controller ?? machine.controller;
  if (cutoffVoltageV !== null && cutoffVoltageV > 0) {
    inputs.push({
      id: 'cutoff-voltage',
      key: `cutoff-voltage/${option.controller === null ? 'machine' : option.id}`,
      label: { en: 'Low-voltage cutoff', de: 'Unterspannungsabschaltung' },
      unit: 'V',
      shape: 'difference',
      low: cutoffVoltageV * 0.985,
      likely: cutoffVoltageV,
      high: cutoffVoltageV * 1.015,
      least: cutoffVoltageV * 0.9,
      most: cutoffVoltageV * 1.1,
      rangeClass: 'entered',
      source: `Tolerance of a controller's threshold, 1.5 %; ${practice}`,
      measure: {
        en: 'Feed the controller from a bench supply, turn it down and note where the motor stops.',
        de: 'Die Steuerung aus einem Labornetzteil speisen, herunterdrehen und notieren, wo der Motor stehen bleibt.',
      },
      apply: (scenario, value) =>
        withController(scenario, (controller) => ({ ...controller, cutoffVoltageV: value })),
    });
  }
  return inputs;
}
