import type { Accessory } from '../plan/schema/accessory.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Plan } from '../plan/schema/plan.ts';
import type { Switchgear, WiringBranch, WiringDevice } from '../plan/schema/wiring-branch.ts';
import type { Wiring } from '../plan/schema/wiring.ts';
import type { RunResult } from '../run/result.ts';
import { newBranch, newDevice, newFuse, newSwitchgear } from './new-parts.ts';
import { sizeWiring } from './size-wiring.ts';

/** Lengths taken until the user measures [m]; common practice, no source. */
const usualLengthM = {
  links: 0.3,
  main: 0.5,
  supply: 0.5,
  motor: 1,
  brake: 0.5,
  converter: 0.8,
  accessory: 1.5,
  port: 1,
} as const;

/**
 * Proposes the machine's power wiring from the plan: strings, pack, main fuse and isolator, controller, motors, brake
 * resistor, converter with its accessories, charge port; wires and fuses as small as they may be for this option.
 *
 * @param run the option's run; gives the driving currents
 * @param ambientC temperature of the outing [°C]
 */
export function prefillWiring(
  plan: Plan,
  option: Option,
  run: RunResult,
  ambientC: number,
): Wiring {
  const { machine } = plan;
  const { pack } = option;
  const several = pack.parallelCount > 1;
  const devices: WiringDevice[] = [
    newDevice('string', 'string', several ? 'String' : 'Blocks'),
    newDevice('pack', 'pack', 'Pack terminals'),
    newDevice('bus', 'junction', 'Main bus'),
    newDevice('controller', 'controller', machine.controller.name),
    newDevice('motor', 'motor', (machine.drive?.motorCount ?? 1) > 1 ? 'Motors' : 'Motor'),
  ];
  const links = newBranch('links', 'Block links', 'string', 'pack', usualLengthM.links);
  const main = newBranch('main', 'Main line', 'pack', 'bus', usualLengthM.main);
  const branches: WiringBranch[] = [
    several || pack.stringFuseA !== null
      ? { ...links, fuse: newFuse('bolt-down', pack.stringFuseA ?? 30) }
      : links,
    { ...main, fuse: newFuse('bolt-down', pack.mainFuseA ?? 60), switchgear: isolator(plan) },
    newBranch('supply', 'Controller supply', 'bus', 'controller', usualLengthM.supply),
    newBranch('motor-line', 'Motor line', 'controller', 'motor', usualLengthM.motor),
  ];
  const resistor = machine.drive?.brakes.resistor ?? null;
  if (resistor !== null) {
    devices.push({
      ...newDevice('brake', 'brake-resistor', 'Brake resistor'),
      resistanceOhm: resistor.resistanceOhm,
    });
    branches.push(newBranch('brake-line', 'Brake line', 'motor', 'brake', usualLengthM.brake));
  }
  const fed = (supply: Accessory['supply']) =>
    machine.accessories.filter((accessory) => accessory.supply === supply);
  if (machine.converter !== null) {
    devices.push(newDevice('converter', 'converter', machine.converter.name));
    branches.push({
      ...newBranch(
        'converter-line',
        'Converter supply',
        'bus',
        'converter',
        usualLengthM.converter,
      ),
      fuse: newFuse('blade', 10),
    });
    for (const accessory of fed('converter')) addAccessory(accessory, 'converter', false);
  }
  for (const accessory of fed('pack')) addAccessory(accessory, 'bus', true);
  if (fed('mid-point').length > 0) {
    devices.push(newDevice('tap', 'mid-point', 'Mid-point tap'));
    for (const accessory of fed('mid-point')) addAccessory(accessory, 'tap', true);
  }
  devices.push(newDevice('port', 'charge-port', 'Charge port'));
  branches.push({
    ...newBranch('port-line', 'Charge line', 'pack', 'port', usualLengthM.port),
    fuse: newFuse('blade', 15),
    connector: {
      name: 'Charge port',
      ratedA: option.portLimitA,
      ratedVoltageV: null,
      polarised: 'unknown',
      matedUnderLoad: false,
    },
  });
  const wiring: Wiring = {
    devices,
    branches,
    chargeInhibit: 'unknown',
    portPolarity: 'unknown',
    startSeconds: 3,
    register: [],
    readings: [],
  };
  return sizeWiring(plan, wiring, option, run, ambientC);

  function addAccessory(accessory: Accessory, from: string, fused: boolean): void {
    const id = `load-${accessory.id}`.slice(0, 60);
    devices.push({ ...newDevice(id, 'accessory', accessory.name), accessoryId: accessory.id });
    const line = newBranch(
      `line-${accessory.id}`.slice(0, 60),
      `${accessory.name}, line`,
      from,
      id,
      usualLengthM.accessory,
    );
    branches.push(fused ? { ...line, fuse: newFuse('blade', 5) } : line);
  }
}

/** The isolator that the stop chain names; null where there is none. */
function isolator(plan: Plan): Switchgear | null {
  const chain = plan.machine.drive?.stopChain;
  if (chain === undefined || chain.isolator === 'none' || chain.isolator === 'unknown') return null;
  return {
    ...newSwitchgear(chain.isolator === 'contactor' ? 'contactor' : 'isolator'),
    ratedVoltageV: chain.isolatorDcVoltageV,
    breakingA: chain.isolatorBreakingA,
    reachable: chain.isolatorReachable,
    openedBy: chain.isolator === 'contactor' ? 'own-circuit' : 'hand',
  };
}
