import { newDevice, newFoundWire } from '../../wiring/new-parts.ts';
import type { Wiring } from '../schema/wiring.ts';
import { connector, fuse, line, switchgear } from './wiring-lines.ts';

/** Wiring of the orchard cart: a tidy one, with work lights at the end of a long thin wire. Invented. */
export function orchardCartWiring(): Wiring {
  return {
    devices: [
      newDevice('string', 'string', 'Blocks'),
      newDevice('pack', 'pack', 'Pack terminals'),
      newDevice('bus', 'junction', 'Main bus'),
      { ...newDevice('controller', 'controller', 'Motor controller'), inputCapacitanceUf: 2200 },
      { ...newDevice('motor', 'motor', 'Geared motor'), resistanceOhm: 0.16 },
      newDevice('converter', 'converter', 'Step-down 24 to 12 V'),
      {
        ...newDevice('light-front', 'accessory', 'Work light, front'),
        accessoryId: 'work-light-front',
      },
      {
        ...newDevice('light-rear', 'accessory', 'Work light, rear'),
        accessoryId: 'work-light-rear',
      },
      { ...newDevice('radio', 'accessory', 'Radio'), accessoryId: 'radio' },
      newDevice('port', 'charge-port', 'Charge port'),
    ],
    branches: [
      line(['links', 'Block links', 'string', 'pack'], 0.3, 6, { insulationC: 90 }),
      line(['main', 'Main line', 'pack', 'bus'], 0.5, 6, {
        insulationC: 90,
        fuse: fuse('bolt-down', 40, 58, 2000, 120),
        switchgear: switchgear('isolator', {
          ratedVoltageV: 48,
          ratedA: 100,
          breakingA: 250,
          reachable: 'yes',
        }),
        connector: connector('Pack connector', {
          ratedA: 50,
          ratedVoltageV: 100,
          polarised: 'yes',
        }),
        joints: [{ name: 'Lug at pack plus', dropMv: 8, atCurrentA: 12 }],
      }),
      line(['supply', 'Controller supply', 'bus', 'controller'], 0.4, 6, { insulationC: 90 }),
      line(['motor-line', 'Motor line', 'controller', 'motor'], 1.4, 10, { insulationC: 90 }),
      line(['converter-line', 'Converter supply', 'bus', 'converter'], 0.6, 1, {
        fuse: fuse('blade', 5, 32, 1000, 60),
      }),
      line(['front-line', 'Front light line', 'converter', 'light-front'], 1.2, 1),
      line(['rear-line', 'Rear light line', 'converter', 'light-rear'], 2.6, 0.75),
      line(['radio-line', 'Radio line', 'converter', 'radio'], 0.8, 0.75),
      line(['port-line', 'Charge line', 'pack', 'port'], 0.9, 1.5, {
        fuse: fuse('high-breaking', 10, 125, 20000, 90),
        connector: connector('Charge port', { ratedA: 10, ratedVoltageV: 60, polarised: 'yes' }),
      }),
    ],
    chargeInhibit: 'no',
    portPolarity: 'unknown',
    startSeconds: 3.6,
    register: [
      {
        ...newFoundWire('lever-red', 'L1'),
        colour: 'red, thin',
        endA: 'Thumb lever',
        endB: 'Controller plug',
        keyOffV: 0,
        keyOnV: 5.02,
        throttleV: 5.01,
        toMinusOhm: 8200,
      },
      {
        ...newFoundWire('lever-black', 'L2'),
        colour: 'black, thin',
        endA: 'Thumb lever',
        endB: 'Controller plug',
        keyOffV: 0,
        keyOnV: 0,
        throttleV: 0,
        toMinusOhm: 0.2,
      },
      {
        ...newFoundWire('lever-green', 'L3'),
        colour: 'green',
        endA: 'Thumb lever',
        endB: 'Controller plug',
        keyOffV: 0,
        keyOnV: 0.84,
        throttleV: 3.9,
        toMinusOhm: 6100,
      },
      {
        ...newFoundWire('blue-loose', 'X1'),
        colour: 'blue',
        endA: 'Controller plug',
        endB: 'loose under the tray',
      },
    ],
    readings: [],
  };
}
