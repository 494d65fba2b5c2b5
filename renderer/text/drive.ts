import { texts } from './spoken.ts';

/** Words of the drive: inputs in the place Machine, results in the place Run. */
export interface DriveTexts {
  readonly title: string;
  readonly lead: string;
  readonly none: string;
  readonly noneLead: string;
  readonly add: string;
  readonly remove: string;
  readonly change: string;
  readonly masses: string;
  readonly motors: string;
  readonly motorsLead: string;
  readonly fitted: (ohm: string, constant: string, idle: string) => string;
  readonly motorPick: string;
  readonly motorPoints: (stall: string, best: string, at: string, rated: string) => string;
  readonly ratedGap: (label: string, model: string) => string;
  readonly fitFails: (problem: string) => string;
  readonly heatFrom: string;
  readonly heat: string;
  readonly gears: string;
  readonly gear: string;
  readonly addGear: string;
  readonly newGear: string;
  readonly direction: Readonly<Record<'forward' | 'reverse', string>>;
  readonly removeGear: (name: string) => string;
  readonly control: string;
  readonly controlLead: string;
  readonly addControl: string;
  readonly controlKind: Readonly<Record<'pwm' | 'switch', string>>;
  readonly throttle: string;
  readonly goal: string;
  readonly brakes: string;
  readonly brakesLead: string;
  readonly onRelease: Readonly<Record<'coast' | 'short' | 'resistor' | 'regeneration', string>>;
  readonly parking: Readonly<Record<'none' | 'manual' | 'automatic', string>>;
  readonly addResistor: string;
  readonly chain: string;
  readonly chainLead: string;
  readonly isolator: Readonly<Record<'none' | 'switch' | 'contactor' | 'plug' | 'unknown', string>>;
  readonly answers: Readonly<Record<'yes' | 'no' | 'unknown', string>>;
  readonly tread: Readonly<Record<'rubber' | 'plastic', string>>;
  readonly stopTitle: string;
  readonly stopLead: string;
  readonly wished: string;
  readonly fromSpeed: string;
  readonly stopsPerHour: string;
  readonly wishedOhm: string;
  readonly standardOhm: string;
  readonly rating: string;
  readonly ratedBy: Readonly<Record<'pulse' | 'energy' | 'average' | 'descent', string>>;
  readonly takeResistor: string;
  readonly rollsOut: (rate: string) => string;
  readonly tooWeak: (rate: string) => string;
  readonly stopCare: string;
  readonly voltageTitle: string;
  readonly voltageLead: (surface: string) => string;
  readonly option: string;
  readonly topSpeed: string;
  readonly startEach: string;
  readonly startPack: string;
  readonly thrust: string;
  readonly climbs: string;
  readonly onGrade: (grade: string) => string;
  readonly againstRating: string;
  readonly motorVoltage: string;
  readonly runTime: string;
  readonly setBy: Readonly<
    Record<'duty' | 'motor-limit' | 'battery-limit' | 'slip' | 'other', string>
  >;
  readonly ask: Readonly<
    Record<
      | 'pack-mass'
      | 'rated-power'
      | 'steepest-grade'
      | 'current-limit'
      | 'motor-heat'
      | 'speed-limit',
      string
    >
  >;
  readonly questions: string;
  readonly templates: string;
  readonly template: Readonly<
    Record<'flat-paving' | 'garden' | 'hilly-lane' | 'stop-and-go', string>
  >;
  readonly templateLegs: Readonly<Record<'ride' | 'climb' | 'descend' | 'lawn' | 'pause', string>>;
  readonly command: Readonly<Record<'throttle' | 'speed', string>>;
  readonly commandTitle: string;
  readonly firstGear: string;
  readonly notSet: string;
  readonly legMore: string;
  readonly scaleTitle: string;
  readonly scaleLead: (gear: string) => string;
  readonly scaleFromBench: string;
  readonly scaleTyped: string;
  readonly scaleSurface: string;
  readonly scaleSpeed: string;
  readonly scaleAmps: string;
  readonly scaleAnswer: (amps: string, percent: string) => string;
  readonly scaleTake: string;
  readonly scaleFails: Readonly<
    Record<'not-computable' | 'too-little-current' | 'out-of-range', string>
  >;
  readonly runTitle: string;
  readonly runLead: string;
  readonly figure: string;
  readonly runRows: Readonly<
    Record<
      | 'distance'
      | 'rolling'
      | 'top'
      | 'perKm'
      | 'starts'
      | 'eachRms'
      | 'motorPeak'
      | 'packRms'
      | 'packPeak'
      | 'temperature'
      | 'shaft'
      | 'slip'
      | 'below'
      | 'stalled'
      | 'rollsBack'
      | 'returned',
      string
    >
  >;
  readonly wheelTitle: string;
  readonly wheelLead: string;
  readonly wheel: Readonly<
    Record<
      | 'controllerLossWh'
      | 'windingLossWh'
      | 'motorFrictionWh'
      | 'gearLossWh'
      | 'slipWh'
      | 'rollingWh'
      | 'climbingWh'
      | 'airWh'
      | 'electricBrakeWh'
      | 'mechanicalBrakeWh'
      | 'motionWh',
      string
    >
  >;
}

export const driveTexts = texts('drive', {
  title: 'Drive',
  lead: 'Motors, gears and masses: with them legs can be driven at a speed instead of given in watts.',
  none: 'No drive described',
  noneLead:
    'Legs of the outings are then given in watts or amps, and nothing is said about speed, motor heat and stopping.',
  add: 'Describe the drive',
  remove: 'Remove the drive',
  change: 'Change',
  masses: 'Masses and wheels',
  motors: 'Motors',
  motorsLead:
    'Two readings are enough: speed without load, and winding ohms, stall amps or the rated point.',
  fitted: (ohm, constant, idle) =>
    `Fitted: ${ohm} winding, ${constant} per volt, ${idle} without load.`,
  motorPick: 'Choose a motor',
  motorPoints: (stall, best, at, rated) =>
    `At its rated voltage: ${stall} stalled, best efficiency ${best} at ${at}, ${rated} at the rated current.`,
  ratedGap: (label, model) =>
    `The label says ${label} at the rated current, the readings give ${model}: one of them is off.`,
  fitFails: (problem) => `Not yet computable: ${problem}.`,
  heatFrom: 'from the rated point',
  heat: 'Heat and limits',
  gears: 'Gears',
  gear: 'Gear',
  addGear: 'Add gear',
  newGear: 'New gear',
  direction: { forward: 'Forward', reverse: 'Reverse' },
  removeGear: (name) => `Remove ${name}`,
  control: 'Motor control',
  controlLead: 'How the controller feeds the motors. Its limits stand under Controller and cable.',
  addControl: 'Describe the motor control',
  controlKind: { pwm: 'Electronic (PWM)', switch: 'Plain switch or relay' },
  throttle: 'Throttle curve',
  goal: 'What it must do',
  brakes: 'Brakes',
  brakesLead: 'What happens when the pedal is let go, and what holds the machine.',
  onRelease: {
    coast: 'Coasts',
    short: 'Motor shorted',
    resistor: 'Through a resistor',
    regeneration: 'Back into the pack',
  },
  parking: { none: 'None', manual: 'Set by hand', automatic: 'Closes by itself' },
  addResistor: 'Describe the resistor',
  chain: 'Stop chain',
  chainLead:
    'What stops the motor when the controller no longer obeys. Answer from the machine, not from memory.',
  isolator: {
    none: 'None',
    switch: 'Switch',
    contactor: 'Contactor',
    plug: 'Pull-out plug',
    unknown: 'Not known',
  },
  answers: { yes: 'Yes', no: 'No', unknown: 'Not known' },
  tread: { rubber: 'Rubber', plastic: 'Hard plastic' },
  stopTitle: 'Size a brake resistor',
  stopLead: 'From the deceleration you want to ohms, a standard value and a rating.',
  wished: 'Wished deceleration',
  fromSpeed: 'From speed',
  stopsPerHour: 'Stops an hour',
  wishedOhm: 'Exact value',
  standardOhm: 'Standard value (E12)',
  rating: 'Rating, at least',
  ratedBy: {
    pulse: 'set by the first moment',
    energy: 'set by one stop',
    average: 'set by repeated stops',
    descent: 'set by the long descent',
  },
  takeResistor: 'Use this resistor',
  rollsOut: (rate) =>
    `It already slows with ${rate} by rolling alone: no resistor is needed for this wish.`,
  tooWeak: (rate) => `Even a short gives only ${rate}: a mechanical brake is needed.`,
  stopCare:
    "Mount it on metal, away from cables and plastic. Try it wheels-up, then at walking pace, before anyone rides. Makers' instructions and local rules come first.",
  voltageTitle: 'What the voltage does',
  voltageLead: (surface) =>
    `Every option at full throttle, pack full, on ${surface}. Questions stand where data are missing.`,
  option: 'Option, gear',
  topSpeed: 'Top speed',
  startEach: 'Start, each motor',
  startPack: 'Start, pack',
  thrust: 'Push',
  climbs: 'Climbs up to',
  onGrade: (grade) => `Speed up ${grade}`,
  againstRating: 'Motor load there',
  motorVoltage: 'Motor voltage',
  runTime: 'Run time',
  setBy: {
    duty: 'set by winding and pack',
    'motor-limit': 'set by the motor limit',
    'battery-limit': 'set by the battery limit',
    slip: 'the wheels slip',
    other: '',
  },
  ask: {
    'pack-mass': 'What does the pack weigh? Until then nothing is said about climbing.',
    'rated-power': 'What power is the motor rated for? Without it nothing is said about its load.',
    'steepest-grade': 'How steep is the steepest place?',
    'current-limit':
      'Has the controller a current limit? Without one the start takes all that pack and winding give.',
    'motor-heat':
      "What is the motor's rated current? Without it nothing is said about its temperature.",
    'speed-limit': 'What speed is allowed for this rider?',
  },
  questions: 'Still open',
  templates: 'Add a driven outing',
  template: {
    'flat-paving': 'Flat paving',
    garden: 'Garden',
    'hilly-lane': 'Hilly lane',
    'stop-and-go': 'Stop and go',
  },
  templateLegs: { ride: 'Ride', climb: 'Climb', descend: 'Descend', lawn: 'Lawn', pause: 'Pause' },
  command: { throttle: 'Pedal held', speed: 'Speed kept' },
  commandTitle: 'Driven by',
  firstGear: 'First gear',
  notSet: 'by duration',
  legMore: 'Halts, distance, load, wind',
  scaleTitle: 'Scale to a reading',
  scaleLead: (gear) =>
    `Drive evenly on the level, accessories off, and read the pack current. First option, gear "${gear}".`,
  scaleFromBench: 'From the bench',
  scaleTyped: 'Typed in here',
  scaleSurface: 'Surface driven on',
  scaleSpeed: 'Speed driven',
  scaleAmps: 'Pack current read',
  scaleAnswer: (amps, percent) =>
    `The model says ${amps} A. A road resistance of ${percent} makes it agree.`,
  scaleTake: 'Take it over',
  scaleFails: {
    'not-computable': 'The drive cannot be computed yet.',
    'too-little-current':
      'So little current does not even turn the motors at that speed: check the reading.',
    'out-of-range':
      'No plausible road resistance explains this reading: check speed, masses and gear.',
  },
  runTitle: 'The drive on this outing',
  runLead: 'Speed, currents and heat while the legs are driven with the motor model.',
  figure: 'Figure',
  runRows: {
    distance: 'Distance',
    rolling: 'Average speed while rolling',
    top: 'Top speed',
    perKm: 'Energy for each km',
    starts: 'Starts',
    eachRms: 'Current of each motor, root mean square',
    motorPeak: 'Motor circuit, peak',
    packRms: 'Pack current for the motors, root mean square',
    packPeak: 'Pack current for the motors, peak',
    temperature: 'Highest winding temperature',
    shaft: 'Shaft power of each motor while pulling',
    slip: 'Wheels slip for',
    below: 'Below the target speed for',
    stalled: 'Driven without moving for',
    rollsBack: 'Would roll backwards for',
    returned: 'Fed back into the pack',
  },
  wheelTitle: 'From pack to wheel',
  wheelLead: 'Where the energy of the motor circuit went.',
  wheel: {
    controllerLossWh: 'Controller',
    windingLossWh: 'Motor windings',
    motorFrictionWh: 'Motor friction and iron',
    gearLossWh: 'Gears',
    slipWh: 'Slipping wheels',
    rollingWh: 'Rolling',
    climbingWh: 'Climbing, less descending',
    airWh: 'Air',
    electricBrakeWh: 'Electric brake',
    mechanicalBrakeWh: 'Mechanical brake',
    motionWh: 'Still in motion',
  },
});
