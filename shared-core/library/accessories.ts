import type { Accessory } from '../plan/schema/accessory.ts';
import type { Load } from '../plan/schema/load.ts';
import type { Part } from './part.ts';

interface AccessoryRow {
  readonly id: string;
  readonly group: string;
  readonly name: string;
  readonly load: Load;
  readonly dutyPercent?: number;
  readonly startupCurrentA?: number;
  readonly standbyA?: number;
  readonly maximumInputV: number;
}

const watts = (powerW: number): Load => ({ kind: 'power', powerW });
const amperes = (currentA: number): Load => ({ kind: 'current', currentA });
/** A filament lamp when hot; cold it takes about ten times as much for a moment. */
const filament = (powerW: number, voltageV = 12): Load => ({
  kind: 'resistance',
  resistanceOhm: Math.round(((voltageV * voltageV) / powerW) * 100) / 100,
});

/** Powers and currents from memory of usual labels; a clamp meter beats them. */
const rows: readonly AccessoryRow[] = [
  {
    id: 'work-light-led-10w',
    group: 'Light',
    name: 'LED work light 10 W',
    load: watts(10),
    maximumInputV: 30,
  },
  {
    id: 'work-light-led-18w',
    group: 'Light',
    name: 'LED work light 18 W',
    load: watts(18),
    maximumInputV: 30,
  },
  {
    id: 'work-light-led-27w',
    group: 'Light',
    name: 'LED work light 27 W',
    load: watts(27),
    maximumInputV: 30,
  },
  {
    id: 'light-strip-led',
    group: 'Light',
    name: 'LED strip 12 V, 2 m',
    load: filament(14),
    maximumInputV: 14.5,
  },
  {
    id: 'filament-lamp-21w',
    group: 'Light',
    name: 'Filament lamp 21 W',
    load: filament(21),
    startupCurrentA: 15,
    maximumInputV: 15,
  },
  {
    id: 'filament-lamp-55w',
    group: 'Light',
    name: 'Halogen headlamp 55 W',
    load: filament(55),
    startupCurrentA: 40,
    maximumInputV: 15,
  },
  {
    id: 'tail-light-led',
    group: 'Light',
    name: 'LED tail light pair',
    load: watts(3),
    maximumInputV: 30,
  },
  {
    id: 'beacon-led',
    group: 'Light',
    name: 'LED beacon',
    load: watts(8),
    dutyPercent: 40,
    maximumInputV: 30,
  },
  {
    id: 'radio-8w',
    group: 'Sound',
    name: 'Radio, moderate',
    load: watts(8),
    standbyA: 0.005,
    maximumInputV: 16,
  },
  {
    id: 'sound-25w',
    group: 'Sound',
    name: 'Sound amplifier 2 × 50 W, music',
    load: watts(25),
    startupCurrentA: 6,
    standbyA: 0.02,
    maximumInputV: 16,
  },
  {
    id: 'toy-sound',
    group: 'Sound',
    name: 'Sound module with engine noise',
    load: watts(2),
    maximumInputV: 15,
  },
  {
    id: 'horn-4a',
    group: 'Sound',
    name: 'Horn',
    load: amperes(4),
    dutyPercent: 0.5,
    startupCurrentA: 8,
    maximumInputV: 15,
  },
  {
    id: 'phone-socket',
    group: 'Comfort',
    name: 'Phone socket, charging',
    load: watts(11),
    standbyA: 0.004,
    maximumInputV: 30,
  },
  {
    id: 'seat-heater',
    group: 'Comfort',
    name: 'Seat heater',
    load: filament(35),
    maximumInputV: 15,
  },
  {
    id: 'fan-120mm',
    group: 'Comfort',
    name: 'Fan',
    load: watts(4),
    startupCurrentA: 0.8,
    maximumInputV: 14.5,
  },
  {
    id: 'voltmeter',
    group: 'Instruments',
    name: 'Digital voltmeter',
    load: amperes(0.015),
    standbyA: 0.015,
    maximumInputV: 100,
  },
  {
    id: 'tracker',
    group: 'Instruments',
    name: 'Position tracker',
    load: watts(0.5),
    standbyA: 0.012,
    maximumInputV: 60,
  },
  {
    id: 'radio-remote',
    group: 'Instruments',
    name: 'Radio remote receiver',
    load: amperes(0.04),
    standbyA: 0.01,
    maximumInputV: 30,
  },
  {
    id: 'pump-3a',
    group: 'Tools',
    name: 'Small water pump',
    load: amperes(3),
    startupCurrentA: 9,
    dutyPercent: 20,
    maximumInputV: 15,
  },
  {
    id: 'actuator-5a',
    group: 'Tools',
    name: 'Tipping actuator',
    load: amperes(5),
    startupCurrentA: 12,
    dutyPercent: 2,
    maximumInputV: 15,
  },
];

/** Loads of the library, as fed from a 12 V converter. */
export const accessoryParts: readonly Part<Accessory>[] = rows.map((row) => ({
  id: row.id,
  group: row.group,
  name: row.name,
  value: {
    id: row.id,
    name: row.name,
    on: true,
    supply: 'converter',
    load: row.load,
    dutyPercent: row.dutyPercent ?? 100,
    startupCurrentA: row.startupCurrentA ?? null,
    maximumInputV: row.maximumInputV,
    standbyA: row.standbyA ?? 0,
    partId: row.id,
  },
  figures: [],
  sourceClass: 'from-memory',
}));
