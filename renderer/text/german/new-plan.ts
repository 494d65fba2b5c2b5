import type { NewPlanTexts } from '../new-plan.ts';

export const newPlan: NewPlanTexts = {
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
};
