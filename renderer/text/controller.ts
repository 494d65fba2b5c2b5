import { texts } from './spoken.ts';

/** Words of an option's own controller. */
export interface ControllerTexts {
  readonly group: string;
  readonly which: string;
  readonly own: string;
  readonly shared: string;
  readonly control: string;
  readonly described: string;
  readonly notDescribed: string;
  readonly kind: string;
  readonly kinds: Readonly<Record<'pwm' | 'switch', string>>;
  readonly asMachine: string;
  readonly noStage: string;
  readonly noLimit: string;
}

export const controllerTexts = texts('controller', {
  group: 'Controller',
  which: 'Which controller',
  own: 'Its own',
  shared: "The machine's",
  control: 'Motor control',
  described: 'Described',
  notDescribed: 'Not described',
  kind: 'Kind',
  kinds: { pwm: 'Electronic (PWM)', switch: 'Plain switch' },
  asMachine: "the machine's",
  noStage: 'no such stage',
  noLimit: 'no limit',
});
