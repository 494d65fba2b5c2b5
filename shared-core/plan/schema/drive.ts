import { z } from 'zod';
import { brakesSchema } from './braking.ts';
import { identifier, line, quantity, unknownQuantity } from './field.ts';
import { motorSchema } from './motor.ts';
import { stopChainSchema } from './stop-chain.ts';
import { surfaceIdSchema } from './surface.ts';

/** What moves: everything but the pack, whose mass belongs to the option. */
export const massesSchema = z
  .object({
    machineKg: quantity({
      title: 'Machine without pack',
      unit: 'kg',
      min: 0,
      aboveMin: true,
      max: 5000,
    }),
    riderKg: quantity({ title: 'Rider', unit: 'kg', min: 0, max: 500 }),
    payloadKg: quantity({ title: 'Load', unit: 'kg', min: 0, max: 5000 }),
    rotatingPercent: quantity({
      title: 'Rotating parts',
      unit: '%',
      min: 0,
      max: 100,
      help: 'What wheels, gears and rotors add to the inertia. 5 % is usual.',
    }),
  })
  .meta({ title: 'Masses' });
export type Masses = z.infer<typeof massesSchema>;

export const wheelSchema = z
  .object({
    diameterMm: quantity({
      title: 'Driven wheel, diameter',
      unit: 'mm',
      min: 20,
      max: 2000,
      help: 'Loaded: twice the height of the axle above the ground.',
    }),
    drivenSharePercent: quantity({
      title: 'Weight on the driven wheels',
      unit: '%',
      min: 1,
      max: 100,
    }),
    grip: z.enum(['rubber', 'plastic']).meta({
      title: 'Tread',
      help: 'Hard plastic wheels slip at about half the force of rubber.',
    }),
    dragAreaM2: unknownQuantity({
      title: 'Drag area',
      unit: 'm²',
      min: 0,
      max: 10,
      help: 'Drag coefficient times front area. Not known: 0.5 m², a seated rider.',
    }),
  })
  .meta({ title: 'Wheels' });
export type Wheel = z.infer<typeof wheelSchema>;

/** One position of the gear selector: how the motors are joined and how far the gears step them down. */
export const gearSchema = z
  .object({
    id: identifier(),
    name: line({ title: 'Name' }),
    ratio: quantity({
      title: 'Ratio',
      min: 0.2,
      max: 500,
      help: 'Turns of the motor for one turn of the wheel.',
    }),
    efficiencyPercent: quantity({
      title: 'Gear efficiency',
      unit: '%',
      min: 10,
      max: 100,
      help: 'About 95 % a stage; 75 to 85 % for a small gearbox of three stages.',
    }),
    motorsInSeries: quantity({
      title: 'Motors in series',
      min: 1,
      max: 4,
      integer: true,
      help: 'In series they share the voltage (slow), in parallel the current (fast).',
    }),
    direction: z.enum(['forward', 'reverse']).meta({
      title: 'Direction',
      help: 'A leg in the other direction begins once the machine stands.',
    }),
    highestDutyPercent: quantity({
      title: 'Highest duty',
      unit: '%',
      min: 5,
      max: 100,
      help: 'Many controllers give only half of the voltage in reverse or in a slow position. 100 %: no such limit.',
    }),
  })
  .meta({ title: 'Gear' });
export type Gear = z.infer<typeof gearSchema>;

/** The reading a road resistance was scaled to, so that the factor can be traced and taken back. */
export const scaledToSchema = z
  .object({
    source: line({ title: 'Scaled to', help: 'Where the current was read.' }, 200),
    readA: quantity({ title: 'Current read', unit: 'A', min: 0, aboveMin: true, max: 5000 }),
    modelA: quantity({ title: 'Current of the model before', unit: 'A', min: 0, max: 5000 }),
    fromPercent: quantity({
      title: 'Road resistance before',
      unit: '%',
      min: 10,
      max: 1000,
    }),
    toPercent: quantity({ title: 'Road resistance after', unit: '%', min: 10, max: 1000 }),
  })
  .meta({ title: 'Scaled to a reading' });
export type ScaledTo = z.infer<typeof scaledToSchema>;

export const driveSchema = z
  .object({
    masses: massesSchema,
    wheel: wheelSchema,
    motor: motorSchema,
    motorCount: quantity({
      title: 'Motors',
      min: 1,
      max: 4,
      integer: true,
      help: 'All of one type, geared to the same wheels.',
    }),
    gears: z.array(gearSchema).min(1).max(6).meta({ title: 'Gears' }),
    brakes: brakesSchema,
    stopChain: stopChainSchema,
    speedLimitKmh: unknownQuantity({
      title: 'Speed allowed',
      unit: 'km/h',
      min: 0.5,
      max: 150,
      help: 'For this rider in this place.',
    }),
    steepestGradePercent: unknownQuantity({
      title: 'Steepest grade',
      unit: '%',
      min: 0,
      max: 100,
      help: 'Rise over run: 10 % is one metre up in ten along.',
    }),
    steepestSurface: surfaceIdSchema.meta({ title: 'Surface of the steepest grade' }),
    resistancePercent: quantity({
      title: 'Road resistance against the table',
      unit: '%',
      min: 10,
      max: 1000,
      help: '100 until a reading of current on level ground scales it.',
    }),
    scaledTo: scaledToSchema.nullable().meta({
      title: 'Scaled to a reading',
      help: 'None: the road resistance is that of the table, or was typed in.',
    }),
  })
  .meta({ title: 'Drive' });
export type Drive = z.infer<typeof driveSchema>;
