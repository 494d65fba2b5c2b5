import type { ControllerTexts } from '../controller.ts';

export const controller: ControllerTexts = {
  group: 'Steuerung',
  which: 'Welche Steuerung',
  own: 'Eine eigene',
  shared: 'Die der Maschine',
  control: 'Motorsteuerung',
  described: 'Beschrieben',
  notDescribed: 'Nicht beschrieben',
  kind: 'Art',
  kinds: { pwm: 'Elektronisch (PWM)', switch: 'Schalter' },
  asMachine: 'wie die Maschine',
  noStage: 'keine solche Stufe',
  noLimit: 'keine Grenze',
};
