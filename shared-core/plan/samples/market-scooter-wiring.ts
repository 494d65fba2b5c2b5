import { newDevice } from '../../wiring/new-parts.ts';
import type { Wiring } from '../schema/wiring.ts';
import { connector, fuse, line, switchgear } from './wiring-lines.ts';

/** Wiring of the market scooter: years old, a self-closing breaker under the seat and a tired lug. Invented. */
export function marketScooterWiring(): Wiring {
  return {
    devices: [
      newDevice('string', 'string', 'Blocks'),
      newDevice('pack', 'pack', 'Pack terminals'),
      newDevice('bus', 'junction', 'Main bus'),
      newDevice('controller', 'controller', 'Scooter controller'),
      { ...newDevice('motor', 'motor', 'Motor'), resistanceOhm: 0.19 },
      { ...newDevice('lamps', 'accessory', 'Front and tail lights'), accessoryId: 'lights' },
      { ...newDevice('dial', 'accessory', 'Battery gauge'), accessoryId: 'gauge' },
      newDevice('port', 'charge-port', 'Charge port'),
    ],
    branches: [
      line(['links', 'Block links', 'string', 'pack'], 0.4, 10, {
        joints: [{ name: 'Lug between the blocks', dropMv: 34, atCurrentA: 15 }],
      }),
      line(['main', 'Main line', 'pack', 'bus'], 0.7, 10, {
        fuse: fuse('breaker-auto-reset', 50, 48, 3000, 160),
        switchgear: switchgear('key-switch', {
          ratedVoltageV: 32,
          ratedA: 60,
          breakingA: 150,
          openedBy: 'hand',
          reachable: 'yes',
        }),
        connector: connector('Seat connector', {
          ratedA: 50,
          ratedVoltageV: 100,
          polarised: 'yes',
        }),
      }),
      line(['supply', 'Controller supply', 'bus', 'controller'], 0.4, 10),
      line(['motor-line', 'Motor line', 'controller', 'motor'], 1.1, 10, { insulationC: 90 }),
      line(['lamp-line', 'Light line', 'bus', 'lamps'], 1.5, 0.75, {
        fuse: fuse('blade', 3, 32, 1000, 40),
      }),
      line(['dial-line', 'Gauge line', 'bus', 'dial'], 1.2, 0.5, {
        fuse: fuse('blade', 1, 32, 1000, 40),
      }),
      line(['port-line', 'Charge line', 'pack', 'port'], 1.3, 1.5, {
        fuse: fuse('high-breaking', 10, 125, 20000, 100),
        connector: connector('Charge port', { ratedA: 10, ratedVoltageV: 60, polarised: 'yes' }),
      }),
    ],
    chargeInhibit: 'yes',
    portPolarity: 'yes',
    startSeconds: 3.6,
    register: [],
    readings: [],
  };
}
