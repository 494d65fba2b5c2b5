import type { Texts } from './use-text.ts';

interface NewPlanTexts {
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

export const newPlanTexts: Texts<NewPlanTexts> = {
  en: {
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
  },
  de: {
    title: 'Neuer Plan',
    lead: 'Acht Antworten ergeben einen lauffähigen Plan: die Maschine und zwei Akkus, deren Größe zum Ziel reichen sollte. Alles lässt sich danach ändern.',
    name: 'Wie heißt sie?',
    nameAtFirst: 'Meine Maschine',
    nominal: 'Spannung der Maschine',
    power: 'Leistung aus dem Akku beim Fahren',
    powerHelp:
      'Volt mal Ampere der Stromzange bei üblicher Fahrt. Ein Karren im Schritttempo nimmt 100 bis 300 W, ein Sitzfahrzeug 200 bis 600 W.',
    share: 'Welchen Teil der Zeit fährt sie?',
    shareHelp: 'Sonst steht sie: Laden, Warten, Reden.',
    goal: 'Gewünschte Minuten',
    ambient: 'Temperatur der Blöcke',
    ambientHelp: 'Bei der kältesten üblichen Fahrt: Kaltes Blei gibt weniger.',
    accessories: 'Licht, Ton und anderes an 12 V',
    accessoriesHelp: 'Watt von allem, was zugleich läuft. 0 für nichts.',
    cutoff: 'Die Steuerung schaltet ab bei',
    cutoffHelp: 'Akkuspannung unter Last, aus dem Datenblatt. Leer lassen, wenn nicht bekannt.',
    make: 'Plan anlegen',
    cancel: 'Abbrechen',
    made: 'Plan angelegt; die Akkus sind erste Größen aus der Bibliothek',
  },
};
