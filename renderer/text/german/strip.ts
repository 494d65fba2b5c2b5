import type { StripTexts } from '../strip.ts';

export const strip: StripTexts = {
  title: 'Varianten auf einen Blick',
  option: 'Variante',
  runTime: 'Läuft',
  scale: (goal, outing) => `${outing}, Ziel ${goal}`,
  endedBy: 'Beendet durch',
  speed: 'Spitze',
  accessories: 'Verbraucher',
  energy: 'Liefert',
  charge: 'Ladegerät',
  mass: 'Masse',
  price: 'Preis',
  findings: 'Befunde',
  fits: { fits: 'passt', limits: 'passt, langsam', misfits: 'passt nicht', unknown: 'unbekannt' },
  noCharger: 'keiner gewählt',
  noFinding: 'keine',
  showFindings: (name) => `Befunde zu ${name}`,
  barOf: (name, minutes, percent) => `${name} läuft ${minutes}, ${percent} % vom Ziel`,
  outing: 'Fahrt',
};
