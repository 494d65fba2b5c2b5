import { newDevice } from '../../wiring/new-parts.ts';
import type { Wiring } from '../schema/wiring.ts';
import type { WiringDevice } from '../schema/wiring-branch.ts';
import { connector, fuse, line, switchgear } from './wiring-lines.ts';

/** Wiring of the campsite tug: two motors, brake resistor, accessories on a converter. Invented. */
export function campsiteTugWiring(): Wiring {
  return {
    devices: [
      newDevice('string', 'string', 'Blocks'),
      newDevice('pack', 'pack', 'Pack terminals'),
      newDevice('bus', 'junction', 'Main bus'),
      { ...newDevice('controller', 'controller', 'Motor controller'), inputCapacitanceUf: 4700 },
      newDevice('motor', 'motor', 'Two motors'),
      { ...newDevice('brake', 'brake-resistor', 'Brake resistor'), resistanceOhm: 0.47 },
      newDevice('converter', 'converter', 'Step-down to 12 V'),
      lamp('tails', 'Tail lights', 'tail-lights'),
      lamp('flash', 'Beacon', 'beacon'),
      lamp('head', 'Headlight', 'headlight'),
      lamp('hoot', 'Horn', 'horn'),
      lamp('track', 'Position tracker', 'tracker'),
      newDevice('port', 'charge-port', 'Charge port'),
    ],
    branches: [
      line(['links', 'Block links', 'string', 'pack'], 0.4, 16, { insulationC: 90 }),
      line(['main', 'Main line', 'pack', 'bus'], 0.6, 16, {
        insulationC: 90,
        fuse: fuse('bolt-down', 80, 58, 2000, 150),
        switchgear: switchgear('isolator', {
          ratedVoltageV: 48,
          ratedA: 150,
          breakingA: 300,
          reachable: 'yes',
          prechargeOhm: 100,
          prechargeW: 5,
        }),
        connector: connector('Pack connector', {
          ratedA: 120,
          ratedVoltageV: 150,
          polarised: 'yes',
        }),
      }),
      line(['supply', 'Controller supply', 'bus', 'controller'], 0.5, 16, { insulationC: 90 }),
      line(['motor-line', 'Motor line', 'controller', 'motor'], 1.2, 16, { insulationC: 90 }),
      line(['brake-line', 'Brake line', 'motor', 'brake'], 0.6, 10, {
        insulationC: 105,
        insulation: 'cross-linked',
        surroundingC: 60,
      }),
      line(['converter-line', 'Converter supply', 'bus', 'converter'], 0.8, 1.5, {
        fuse: fuse('high-breaking', 10, 125, 20000, 80),
      }),
      line(['tail-line', 'Tail light line', 'converter', 'tails'], 2.2, 1.5),
      line(['flash-line', 'Beacon line', 'converter', 'flash'], 1.8, 1.5),
      line(['head-line', 'Headlight line', 'converter', 'head'], 1.6, 1.5),
      line(['hoot-line', 'Horn line', 'converter', 'hoot'], 1.6, 1.5),
      line(['track-line', 'Tracker line', 'converter', 'track'], 0.5, 1.5),
      line(['port-line', 'Charge line', 'pack', 'port'], 1.1, 2.5, {
        fuse: fuse('high-breaking', 15, 125, 20000, 240),
        connector: connector('Charge port', { ratedA: 16, ratedVoltageV: 60, polarised: 'yes' }),
      }),
    ],
    chargeInhibit: 'yes',
    portPolarity: 'yes',
    startSeconds: 4,
    register: [],
    readings: [],
  };
}

function lamp(id: string, name: string, accessoryId: string): WiringDevice {
  return { ...newDevice(id, 'accessory', name), accessoryId };
}
