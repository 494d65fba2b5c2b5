import { texts } from './spoken.ts';

export interface NewPlanTexts {
  readonly title: string;
  readonly lead: string;
  readonly name: string;
  readonly nameAtFirst: string;
  readonly nominal: string;
  readonly power: string;
  readonly powerHelp: string;
  readonly share: string;
  readonly shareHelp: string;
  readonly goal: string;
  readonly ambient: string;
  readonly ambientHelp: string;
  readonly accessories: string;
  readonly accessoriesHelp: string;
  readonly cutoff: string;
  readonly cutoffHelp: string;
  readonly make: string;
  readonly cancel: string;
  readonly made: string;
}

export const newPlanTexts = texts('newPlan', {
  title: 'New plan',
  lead: 'Eight answers give a plan that runs: your machine, and two packs of a size that should reach the goal. Everything can be changed afterwards.',
  name: 'What is it called?',
  nameAtFirst: 'My machine',
  nominal: 'Voltage of the machine',
  power: 'Power from the pack while it drives',
  powerHelp:
    'Volts times clamp-meter amps while it drives as usual. A walking-pace cart takes 100 to 300 W, a seated machine 200 to 600 W.',
  share: 'How much of the time does it drive?',
  shareHelp: 'The rest it stands: loading, waiting, talking.',
  goal: 'Minutes wanted',
  ambient: 'Temperature of the blocks',
  ambientHelp: 'Of the coldest usual outing: cold lead gives less.',
  accessories: 'Lights, sound and the like at 12 V',
  accessoriesHelp: 'Watts of all that is switched on together. 0 for none.',
  cutoff: 'The controller stops at',
  cutoffHelp: 'Loaded pack voltage, from its sheet. Leave it empty when not known.',
  make: 'Make the plan',
  cancel: 'Cancel',
  made: 'Plan made; the packs are first sizes from the library',
});
