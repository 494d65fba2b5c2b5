import { z } from 'zod';
import { conductorSchema, insulationRatingSchema } from './conductor.ts';
import { identifier, line, quantity, unknownQuantity } from './field.ts';

/** Something that wires lead to. */
export const wiringDeviceSchema = z
  .object({
    id: identifier(),
    name: line({ title: 'Name' }),
    kind: z
      .enum([
        'string',
        'pack',
        'mid-point',
        'junction',
        'controller',
        'motor',
        'brake-resistor',
        'converter',
        'accessory',
        'charge-port',
      ])
      .meta({
        title: 'Kind',
        help: 'string: the blocks in series, one stands for every equal string. pack: where the strings come together.',
      }),
    accessoryId: z
      .string()
      .max(64)
      .nullable()
      .meta({ title: 'Accessory', help: 'Which accessory of the machine this is.' }),
    resistanceOhm: unknownQuantity({
      title: 'Resistance',
      unit: 'Ω',
      min: 0,
      aboveMin: true,
      max: 1000,
      help: 'Motor: winding with brushes, all motors as joined. Not known: from the drive. Brake resistor: its own.',
    }),
    inputCapacitanceUf: unknownQuantity({
      title: 'Input capacitors',
      unit: 'µF',
      min: 0,
      max: 1e6,
      help: 'Of the controller; printed on the capacitors behind its supply terminals.',
    }),
  })
  .meta({ title: 'Device' });
export type WiringDevice = z.infer<typeof wiringDeviceSchema>;

export const fuseClassSchema = z
  .enum(['blade', 'bolt-down', 'high-breaking', 'glass', 'breaker-manual', 'breaker-auto-reset'])
  .meta({
    title: 'Class',
    help: 'blade: plug-in car fuse. bolt-down: strip under screws. high-breaking: fast, sand-filled, for thousands of amperes. breakers: with a lever, or closing again by themselves.',
  });
export type FuseClass = z.infer<typeof fuseClassSchema>;

export const fuseSchema = z
  .object({
    class: fuseClassSchema,
    ratedA: quantity({ title: 'Rating', unit: 'A', min: 0, aboveMin: true, max: 2000 }),
    ratedVoltageV: unknownQuantity({
      title: 'Rated direct voltage',
      unit: 'V',
      min: 0,
      aboveMin: true,
      max: 1500,
    }),
    breakingA: unknownQuantity({
      title: 'Breaking capacity',
      unit: 'A',
      min: 0,
      aboveMin: true,
      max: 300000,
      help: 'Largest current it can open at that voltage. 1000 A for blade fuses.',
    }),
    fromSourceMm: unknownQuantity({
      title: 'Distance from the source',
      unit: 'mm',
      min: 0,
      max: 20000,
      help: 'Wire between the battery terminal or bus and the fuse: nothing protects it.',
    }),
    resistanceOhm: unknownQuantity({ title: 'Resistance', unit: 'Ω', min: 0, max: 1 }),
  })
  .meta({ title: 'Fuse' });
export type Fuse = z.infer<typeof fuseSchema>;

export const switchgearSchema = z
  .object({
    kind: z
      .enum(['isolator', 'contactor', 'relay', 'kill-switch', 'key-switch'])
      .meta({ title: 'Kind' }),
    ratedVoltageV: unknownQuantity({
      title: 'Rated direct voltage',
      unit: 'V',
      min: 0,
      max: 1500,
      help: '0 when only an alternating rating is printed: it then has none for direct current.',
    }),
    ratedA: unknownQuantity({
      title: 'Continuous current',
      unit: 'A',
      min: 0,
      aboveMin: true,
      max: 5000,
    }),
    breakingA: unknownQuantity({
      title: 'Breaking current',
      unit: 'A',
      min: 0,
      aboveMin: true,
      max: 10000,
      help: 'Direct current it can open at its rated voltage.',
    }),
    resistanceOhm: unknownQuantity({ title: 'Contact resistance', unit: 'Ω', min: 0, max: 1 }),
    openedBy: z.enum(['hand', 'own-circuit', 'controller', 'unknown']).meta({
      title: 'Opened by',
      help: 'hand: a lever or plug. own-circuit: a coil with its own switch. controller: the controller itself holds it, so a failed controller may not let go.',
    }),
    reachable: z.enum(['yes', 'no', 'unknown']).meta({ title: 'Within reach while moving' }),
    coilVoltageV: unknownQuantity({
      title: 'Coil voltage',
      unit: 'V',
      min: 0,
      aboveMin: true,
      max: 400,
    }),
    coilSupply: z
      .enum(['none', 'pack', 'converter'])
      .meta({ title: 'Coil fed from', help: 'none: no coil, worked by hand.' }),
    prechargeOhm: unknownQuantity({
      title: 'Precharge resistor',
      unit: 'Ω',
      min: 0,
      aboveMin: true,
      max: 100000,
      help: 'Bridges the open contacts. None fitted: leave unknown.',
    }),
    prechargeW: unknownQuantity({
      title: 'Precharge resistor, rated power',
      unit: 'W',
      min: 0,
      aboveMin: true,
      max: 1000,
    }),
  })
  .meta({ title: 'Switch' });
export type Switchgear = z.infer<typeof switchgearSchema>;

export const connectorSchema = z
  .object({
    name: line({ title: 'Name' }),
    ratedA: unknownQuantity({
      title: 'Rated current',
      unit: 'A',
      min: 0,
      aboveMin: true,
      max: 2000,
      help: 'With the wire that is crimped in it: the same shell carries less on thin wire.',
    }),
    ratedVoltageV: unknownQuantity({
      title: 'Rated voltage',
      unit: 'V',
      min: 0,
      aboveMin: true,
      max: 1500,
    }),
    polarised: z.enum(['yes', 'no', 'unknown']).meta({ title: 'Fits one way only' }),
    matedUnderLoad: z.boolean().meta({ title: 'Pulled or plugged under load' }),
  })
  .meta({ title: 'Connector' });
export type Connector = z.infer<typeof connectorSchema>;

/** A lug, crimp, contact or screw terminal in a branch. */
export const jointSchema = z
  .object({
    name: line({ title: 'Name' }),
    dropMv: unknownQuantity({
      title: 'Drop read',
      unit: 'mV',
      min: 0,
      max: 10000,
      help: 'Meter across the joint while a known current flows.',
    }),
    atCurrentA: unknownQuantity({
      title: 'At a current of',
      unit: 'A',
      min: 0,
      aboveMin: true,
      max: 2000,
    }),
  })
  .meta({ title: 'Joint' });
export type Joint = z.infer<typeof jointSchema>;

/** One two-wire stretch, supply and return, from the side of the source to the side of the load. */
export const wiringBranchSchema = z
  .object({
    id: identifier(),
    name: line({ title: 'Name' }),
    from: identifier().meta({ title: 'From' }),
    to: identifier().meta({ title: 'To' }),
    conductor: conductorSchema
      .nullable()
      .meta({ title: 'Conductor', help: 'Not known: read the jacket or measure the strands.' }),
    lengthM: quantity({
      title: 'Length one way',
      unit: 'm',
      min: 0,
      max: 100,
      help: 'The return is counted by itself.',
    }),
    insulationC: insulationRatingSchema,
    insulation: z
      .enum(['pvc', 'cross-linked'])
      .meta({ title: 'Insulation', help: 'cross-linked also for rubber and silicone.' }),
    bundled: quantity({
      title: 'Loaded wires in the bundle',
      min: 1,
      max: 24,
      integer: true,
      help: 'This branch alone is 2 wires and counts as not bundled; 3 and more heat each other.',
    }),
    surroundingC: unknownQuantity({
      title: 'Temperature around it',
      unit: '°C',
      min: -30,
      max: 100,
      help: 'Beside motors and brake resistors warmer than outside. Not known: 30 °C, or the outing where hotter.',
    }),
    fuse: fuseSchema.nullable().meta({ title: 'Fuse or breaker' }),
    switchgear: switchgearSchema.nullable().meta({ title: 'Switch' }),
    connector: connectorSchema.nullable().meta({ title: 'Connector' }),
    joints: z.array(jointSchema).max(24).meta({ title: 'Joints' }),
  })
  .meta({ title: 'Branch' });
export type WiringBranch = z.infer<typeof wiringBranchSchema>;
