import { texts } from './spoken.ts';

/** Words of the stopping helper: what the plan's brakes do, the resistor for a wish, and how the figures come about. */
export interface StopTexts {
  readonly planned: string;
  readonly wish: string;
  readonly deceleration: string;
  readonly peakCurrent: string;
  readonly eachMotor: (amps: string) => string;
  readonly peakPower: string;
  readonly energy: string;
  readonly way: string;
  readonly neverStands: string;
  readonly oneStop: string;
  readonly repeated: string;
  readonly repeatedNote: (stops: string) => string;
  readonly descent: string;
  readonly creep: string;
  readonly creepNote: (grade: string) => string;
  readonly holds: string;
  readonly rollsFree: string;
  readonly noRating: string;
  readonly fromCold: string;
  readonly tooHot: (limit: string) => string;
  readonly mass: string;
  readonly rolling: string;
  readonly constant: string;
  readonly winding: string;
  readonly friction: string;
  readonly efficiency: string;
  readonly speed: string;
  readonly wished: string;
  readonly brakeForce: string;
  readonly current: string;
  readonly ohm: string;
  readonly ohmValidity: string;
  readonly derived: string;
  readonly rating: string;
  readonly needs: Readonly<Record<'pulse' | 'energy' | 'average' | 'descent', string>>;
  readonly ratingSource: string;
  readonly ratingValidity: string;
  readonly stops: string;
  readonly heatValidity: string;
}

export const stopTexts = texts('stop', {
  planned: 'As planned now',
  wish: 'For the deceleration you want',
  deceleration: 'First deceleration',
  peakCurrent: 'Peak current',
  eachMotor: (amps) => `${amps} in each motor`,
  peakPower: 'Peak in the resistor',
  energy: 'Energy a stop',
  way: 'Way to a stand',
  neverStands: 'does not come to a stand',
  oneStop: 'Resistor after one stop',
  repeated: 'Resistor, repeated stops',
  repeatedNote: (stops) => `${stops} stops an hour`,
  descent: 'Resistor, long descent',
  creep: 'Creeps downhill',
  creepNote: (grade) => `on ${grade}, electric brake alone`,
  holds: 'friction holds it',
  rollsFree: 'rolls freely',
  noRating: "The resistor's rated power is missing: nothing is said about its temperature.",
  fromCold: 'from 25 °C',
  tooHot: (limit) => `above the ${limit} of its rating`,
  mass: 'Mass with rotating parts',
  rolling: 'Rolling and air',
  constant: 'Volts for each m/s (k)',
  winding: 'Motor circuit',
  friction: 'Current without load',
  efficiency: 'Gear efficiency',
  speed: 'Speed',
  wished: 'Deceleration',
  brakeForce: 'Force left to the motors',
  current: 'Brake current',
  ohm: 'Resistor',
  ohmValidity: 'At the first moment; the brake fades with the speed and never holds.',
  derived: 'Motor equations with the equation of motion (derived)',
  rating: 'Rating, at least',
  needs: {
    pulse: 'First moment: peak power / 5',
    energy: 'One stop: energy / (5 × 5 s)',
    average: 'Repeated stops: average power / 0.5',
    descent: 'Long descent: continuous power',
  },
  ratingSource:
    'Overload of metal-element power resistors 5 × rated for 5 s: MIL-PRF-49465, from memory. Half the rating on average: common practice, no source.',
  ratingValidity: "More overload only where the part's own sheet says so.",
  stops: 'Stops an hour',
  heatValidity:
    'One thermal node; 250 K at rated power and 150 s unless the part says otherwise (common practice, no source).',
});
