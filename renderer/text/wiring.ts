import type {
  CommissioningStep,
  CurrentMark,
  SizingReason,
  SwitchAspect,
  WiringState,
} from '#core/wiring/index.ts';
import type { FuseClass, Switchgear, WiringDevice } from '#core/plan/schema/wiring-branch.ts';
import { texts } from './spoken.ts';

export interface WiringTexts {
  readonly option: string;
  readonly waiting: string;
  readonly caution: string;
  readonly empty: { readonly title: string; readonly lead: string; readonly propose: string };
  readonly states: Readonly<Record<WiringState, string>>;
  readonly diagram: {
    readonly title: string;
    readonly lead: string;
    readonly state: string;
    readonly picture: string;
    readonly table: string;
    readonly again: string;
    readonly againDone: string;
    readonly choose: (name: string) => string;
    readonly impossible: string;
    readonly harness: string;
    readonly harnessNote: (milliohm: string) => string;
    readonly takeHarness: string;
    readonly source: string;
  };
  readonly table: {
    readonly branch: string;
    readonly wire: string;
    readonly current: string;
    readonly drop: string;
    readonly stands: string;
    readonly fuse: string;
    readonly warmth: string;
    readonly short: string;
    readonly smallest: string;
    readonly price: string;
    readonly prices: Readonly<Record<'low' | 'middle' | 'high', string>>;
    readonly reasons: Readonly<Record<SizingReason, string>>;
    readonly none: string;
    readonly take: (size: string, name: string) => string;
    readonly takeIt: string;
    readonly assumed: string;
  };
  readonly branch: {
    readonly title: string;
    readonly lead: string;
    readonly pick: string;
    readonly add: string;
    readonly added: string;
    readonly newName: string;
    readonly remove: string;
    readonly removed: (name: string) => string;
    readonly bringBack: string;
    readonly addDevice: string;
    readonly newDevice: string;
    readonly devices: string;
    readonly deviceKinds: Readonly<Record<WiringDevice['kind'], string>>;
    readonly removeDevice: (name: string) => string;
    readonly system: string;
    readonly metric: string;
    readonly awg: string;
    readonly unknownWire: string;
    readonly size: string;
    readonly insulation: string;
    readonly insulations: Readonly<Record<'pvc' | 'cross-linked', string>>;
    readonly wirePart: string;
    readonly fusePart: string;
    readonly noFuse: string;
    readonly fuseClasses: Readonly<Record<FuseClass, string>>;
    readonly switchPart: string;
    readonly noSwitch: string;
    readonly switchKinds: Readonly<Record<Switchgear['kind'], string>>;
    readonly openedBy: Readonly<Record<Switchgear['openedBy'], string>>;
    readonly coil: Readonly<Record<Switchgear['coilSupply'], string>>;
    readonly answers: Readonly<Record<'yes' | 'no' | 'unknown', string>>;
    readonly connectorPart: string;
    readonly hasConnector: string;
    readonly newConnector: string;
    readonly joints: string;
    readonly addJoint: string;
    readonly newJoint: string;
    readonly jointValue: (milliohm: string) => string;
    readonly removeJoint: (name: string) => string;
  };
  readonly save: {
    readonly menu: (name: string) => string;
    readonly picture: string;
    readonly table: string;
  };
  readonly fuses: {
    readonly title: string;
    readonly lead: string;
    readonly pick: string;
    readonly none: string;
    readonly current: string;
    readonly time: string;
    readonly band: string;
    readonly rated: string;
    readonly harmed: string;
    readonly marks: Readonly<Record<CurrentMark['kind'], string>>;
    readonly earliest: string;
    readonly latest: string;
    readonly at: string;
    readonly never: string;
    readonly verdicts: Readonly<Record<'good' | 'warn' | 'stop', string>>;
    readonly gates: (source: string) => string;
    readonly verdict: string;
    readonly showChart: string;
    readonly showTable: string;
  };
  readonly switches: {
    readonly title: string;
    readonly lead: string;
    readonly none: string;
    readonly aspects: Readonly<Record<SwitchAspect['aspect'], string>>;
    readonly verdicts: Readonly<Record<SwitchAspect['verdict'], string>>;
    readonly aspect: string;
    readonly given: string;
    readonly asked: string;
    readonly precharge: string;
    readonly bare: (amperes: string, microfarad: string) => string;
    readonly advice: (ohm: string, seconds: string, joule: string, watt: string) => string;
    readonly fitted: (ohm: string, amperes: string, seconds: string) => string;
    readonly unknown: string;
  };
  readonly register: {
    readonly title: string;
    readonly lead: string;
    readonly add: string;
    readonly added: string;
    readonly remove: (name: string) => string;
    readonly removed: (name: string) => string;
    readonly empty: string;
    readonly emptyLead: string;
    readonly deduced: string;
    readonly open: string;
    readonly probably: string;
    readonly known: string;
    readonly joined: string;
    readonly notKnown: string;
    readonly conflicts: string;
    readonly noConflicts: string;
    readonly next: string;
    readonly done: string;
  };
  readonly steps: {
    readonly title: string;
    readonly lead: string;
    readonly phases: Readonly<Record<CommissioningStep['phase'], string>>;
    readonly expected: string;
    readonly reading: string;
    readonly atLeast: (value: string) => string;
    readonly yes: string;
    readonly no: string;
    readonly verdicts: Readonly<Record<CommissioningStep['verdict'], string>>;
    readonly counts: (passed: number, failed: number, open: number) => string;
  };
}

export const wiringTexts = texts('wiring', {
  option: 'Option',
  waiting: 'The currents come from the run; it is being worked out.',
  caution:
    'Wire that no fuse guards burns. Work with the pack disconnected, insulate tools, and have someone who is licensed look at what you are not sure of. Local codes and makers’ instructions come first.',
  empty: {
    title: 'No wiring yet',
    lead: 'The machine, the pack and the run already say which branches there are and what they carry. Start from that proposal and make it yours.',
    propose: 'Propose the wiring',
  },
  states: {
    rest: 'At rest',
    cruising: 'Cruising',
    start: 'Start',
    stall: 'Stall',
    charge: 'Charging',
    'short-circuit': 'Short circuit',
  },
  diagram: {
    title: 'One-line diagram',
    lead: 'Each line is supply and return together. Beside it: wire and length above, current, what the wire stands, and the drop below. Press a branch to change it.',
    state: 'State of the machine',
    picture: 'Show the diagram',
    table: 'Show the table',
    again: 'Propose anew',
    againDone: 'Propose the wiring anew',
    choose: (name) => `Edit ${name}`,
    impossible: 'This state cannot be worked out: a limit, a winding or a charger is missing.',
    harness: 'Pack to controller, out and back',
    harnessNote: (milliohm) => `the run counts ${milliohm} mΩ`,
    takeHarness: 'Use this in the run',
    source: 'Ohm’s law over the branches; wires at the temperature of the lasting current',
  },
  table: {
    branch: 'Branch',
    wire: 'Wire',
    current: 'Current',
    drop: 'Drop',
    stands: 'Wire stands',
    fuse: 'Guarded by',
    warmth: 'Wire at',
    short: 'Short circuit, far end',
    smallest: 'Smallest that passes',
    price: 'Copper',
    prices: { low: 'cheap', middle: 'middle', high: 'dear' },
    reasons: {
      current: 'current decides',
      fuse: 'fuse decides',
      drop: 'drop decides',
      fault: 'short circuit decides',
      'thinnest-made': 'thinnest in the list',
    },
    none: 'none',
    takeIt: 'Take it',
    take: (size, name) => `Take ${size} for ${name}`,
    assumed: 'not known, counted as',
  },
  branch: {
    title: 'Branch',
    lead: 'From the side of the source to the side of the load.',
    pick: 'Branch shown',
    add: 'Add branch',
    added: 'Add branch',
    newName: 'New branch',
    remove: 'Remove branch',
    removed: (name) => `Removed ${name}`,
    bringBack: 'Undo',
    addDevice: 'Add device',
    newDevice: 'New junction',
    devices: 'Devices',
    deviceKinds: {
      string: 'Blocks of a string',
      pack: 'Pack terminals',
      'mid-point': 'Tap between blocks',
      junction: 'Junction',
      controller: 'Controller',
      motor: 'Motor',
      'brake-resistor': 'Brake resistor',
      converter: 'Step-down converter',
      accessory: 'Accessory',
      'charge-port': 'Charge port',
    },
    removeDevice: (name) => `Remove ${name}`,
    system: 'Sizes in',
    metric: 'mm²',
    awg: 'AWG',
    unknownWire: 'not known',
    size: 'Size',
    insulation: 'Insulation',
    insulations: { pvc: 'PVC', 'cross-linked': 'cross-linked, rubber, silicone' },
    wirePart: 'Wire',
    fusePart: 'Fuse or breaker',
    noFuse: 'none',
    fuseClasses: {
      blade: 'Blade fuse',
      'bolt-down': 'Bolt-down fuse',
      'high-breaking': 'High-breaking fuse',
      glass: 'Glass fuse',
      'breaker-manual': 'Breaker closed by hand',
      'breaker-auto-reset': 'Breaker that closes by itself',
    },
    switchPart: 'Switch',
    noSwitch: 'none',
    switchKinds: {
      isolator: 'Isolator',
      contactor: 'Contactor',
      relay: 'Relay',
      'kill-switch': 'Kill switch',
      'key-switch': 'Key switch',
    },
    openedBy: {
      hand: 'by hand',
      'own-circuit': 'by a coil with its own switch',
      controller: 'by the controller',
      unknown: 'not known',
    },
    coil: { none: 'no coil', pack: 'pack', converter: 'converter' },
    answers: { yes: 'yes', no: 'no', unknown: 'not known' },
    connectorPart: 'Connector',
    hasConnector: 'There is a connector',
    newConnector: 'Connector',
    joints: 'Joints',
    addJoint: 'Add joint',
    newJoint: 'Lug',
    jointValue: (milliohm) => `${milliohm} mΩ`,
    removeJoint: (name) => `Remove ${name}`,
  },
  save: {
    menu: (name) => `Save: ${name}`,
    picture: 'Save as picture (SVG)…',
    table: 'Save table as CSV…',
  },
  fuses: {
    title: 'Fuse, wire and motor in time',
    lead: 'The fuse must lie left of the wire’s harm and right of every start. Both axes are logarithmic.',
    pick: 'Fuse of',
    none: 'No branch has a fuse yet.',
    current: 'Current',
    time: 'Time',
    band: 'Fuse opens',
    rated: 'Wire reaches its rating',
    harmed: 'Insulation destroyed',
    marks: {
      cruising: 'Cruising',
      charge: 'Charging',
      limit: 'Controller limit',
      start: 'Start',
      stall: 'Stall',
      runaway: 'Controller shorted',
      fault: 'Short at the far end',
    },
    earliest: 'Fuse, earliest',
    latest: 'Fuse, latest',
    at: 'At',
    never: 'never',
    verdicts: { good: 'Good', warn: 'Mind', stop: 'Stop' },
    showChart: 'Show the chart',
    showTable: 'Show the table',
    verdict: 'Verdict',
    gates: (source) => `Opening times: ${source}. Put the sheet of your fuse above them.`,
  },
  switches: {
    title: 'Isolator, contactor, precharge',
    lead: 'Direct current keeps its arc. A switch must be rated for the pack’s highest voltage and for the motors held fast with a controller that failed shorted.',
    none: 'No branch has a switch. Something a hand can reach must stop the machine whatever the controller does.',
    aspects: {
      voltage: 'Direct voltage',
      continuous: 'Lasting current',
      breaking: 'Breaking current',
      independence: 'Independent of the controller',
      reach: 'Within reach',
      coil: 'Coil voltage',
    },
    verdicts: { fits: 'fits', misfits: 'does not fit', unknown: 'not known' },
    aspect: 'Rating',
    given: 'Switch',
    asked: 'Asked',
    precharge: 'Precharge',
    bare: (amperes, microfarad) =>
      `Without a resistor ${microfarad} µF draw up to ${amperes} A when the contacts close.`,
    advice: (ohm, seconds, joule, watt) =>
      `${ohm} Ω for ${seconds} s; the resistor takes ${joule} J, at first ${watt} W.`,
    fitted: (ohm, amperes, seconds) =>
      `Fitted: ${ohm} Ω. Inrush ${amperes} A, full after ${seconds} s.`,
    unknown: 'Enter the controller’s input capacitors under Devices to size the precharge.',
  },
  register: {
    title: 'Wire register',
    lead: 'For a machine with wires nobody knows: write down what you see and what the meter says; the function is deduced, contradictions are shown.',
    add: 'Add wire',
    added: 'Add wire to the register',
    remove: (name) => `Remove wire ${name}`,
    removed: (name) => `Removed wire ${name}`,
    empty: 'No unknown wires',
    emptyLead: 'Add each wire you are not sure of, with its colour and both ends.',
    deduced: 'Function',
    open: 'open',
    probably: 'probably',
    known: 'Known for sure',
    joined: 'Beeps with',
    notKnown: 'not known',
    conflicts: 'Contradictions',
    noConflicts: 'No contradictions among the wires.',
    next: 'Test next',
    done: 'Every wire has its function.',
  },
  steps: {
    title: 'Commissioning list',
    lead: 'Meter steps before the last connector is closed and before anyone rides, in the order that keeps a mistake cheap. Readings stay in the plan.',
    phases: {
      'before-power': 'Pack disconnected',
      'last-connector': 'At the last open connector',
      'power-on': 'Power on, nothing moves',
      'wheels-up': 'Wheels off the ground',
      'first-drive': 'First drive, dead weight instead of a rider',
      charging: 'First charge',
    },
    expected: 'Expected',
    reading: 'Reading',
    atLeast: (value) => `at least ${value}`,
    yes: 'as it should be',
    no: 'not so',
    verdicts: { passed: 'passed', failed: 'failed', open: 'open' },
    counts: (passed, failed, open) => `${passed} passed, ${failed} failed, ${open} open`,
  },
});
