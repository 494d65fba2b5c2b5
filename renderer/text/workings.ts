import type { Texts } from './use-text.ts';

interface WorkingTexts {
  readonly simulated: string;
  readonly stepwise: string;
  readonly runSource: string;
  readonly runValidity: string;
  readonly runTime: string;
  readonly delivered: string;
  readonly averageCurrent: string;
  readonly remaining: string;
  readonly fullCharge: string;
  readonly startCharge: string;
  readonly ambient: string;
  readonly endCause: string;
  readonly endVoltage: string;
  readonly with: string;
  readonly without: string;
  readonly cost: string;
  readonly costFormula: string;
  readonly costSource: string;
  readonly share: string;
  readonly efficiency: string;
  readonly energyFormula: string;
  readonly energySource: string;
  readonly givenUp: string;
  readonly losses: string;
  readonly ledgerClosure: string;
  readonly chargeFormula: string;
  readonly chargeSource: string;
  readonly hours: string;
  readonly wantedEnd: string;
  readonly givenEnd: string;
  readonly verdict: string;
  readonly blocks: string;
  readonly blockMass: string;
  readonly blockPrice: string;
  readonly charger: string;
  readonly mass: string;
  readonly price: string;
  readonly sumSource: string;
  readonly exact: string;
  readonly notKnown: string;
}

export const workingTexts: Texts<WorkingTexts> = {
  en: {
    simulated: 'run until the first cutoff of: controller, BMS, fuse, depth limit',
    stepwise: 'V = OCV(s) − I·(R0 + K·(1/s − 1)) − v_p, per block, balanced on one bus',
    runSource:
      'Two-well charge (Manwell & McGowan, Solar Energy 50 (1993) 399), knee after Shepherd (J. Electrochem. Soc. 112 (1965) 657), stepped through the outing.',
    runValidity:
      'blocks as described; the real ones spread by 10 to 20 % with age and make. The Bench narrows it by readings.',
    runTime: 'Run time',
    delivered: 'Delivered',
    averageCurrent: 'Average current',
    remaining: 'Charge left at the end',
    fullCharge: 'Rated capacity of the pack',
    startCharge: 'Charge at the start',
    ambient: 'Temperature',
    endCause: 'Ended by',
    endVoltage: 'Lowest bus voltage',
    with: 'With accessories',
    without: 'All accessories off',
    cost: 'Accessories cost',
    costFormula: 't(all off) − t(as switched), both runs of the same outing',
    costSource: 'Two simulations of the same outing (derived).',
    share: 'Share of the run time',
    efficiency: 'Converter, output over input',
    energyFormula: 'E = ∫ V · I dt at the pack terminals',
    energySource: 'Integral over the simulated run (derived).',
    givenUp: 'Given up by the blocks',
    losses: 'Lost inside the blocks',
    ledgerClosure: 'Ledger closes to',
    chargeFormula: 'bulk: missing Ah / charger current, then the tail of the chemistry',
    chargeSource: 'Estimate from charge left, current and tail (common practice).',
    hours: 'Hours to full',
    wantedEnd: 'End voltage wanted',
    givenEnd: 'End voltage given',
    verdict: 'Verdict',
    blocks: 'Blocks',
    blockMass: 'Mass of a block',
    blockPrice: 'Price of a block',
    charger: 'Charger',
    mass: 'Mass of the pack',
    price: 'Price with charger',
    sumSource: 'Sum of the figures of the plan.',
    exact: 'In full',
    notKnown: 'not known',
  },
  de: {
    simulated: 'Fahrt bis zur ersten Abschaltung: Steuerung, BMS, Sicherung, Entladegrenze',
    stepwise: 'V = OCV(s) − I·(R0 + K·(1/s − 1)) − v_p, je Block, im Gleichgewicht am Bus',
    runSource:
      'Zwei-Töpfe-Ladung (Manwell & McGowan, Solar Energy 50 (1993) 399), Knie nach Shepherd (J. Electrochem. Soc. 112 (1965) 657), schrittweise durch die Fahrt.',
    runValidity:
      'Blöcke wie beschrieben; wirkliche streuen um 10 bis 20 % je nach Alter und Hersteller. Messungen am Messplatz engen das ein.',
    runTime: 'Laufzeit',
    delivered: 'Abgegeben',
    averageCurrent: 'Mittlerer Strom',
    remaining: 'Restladung am Ende',
    fullCharge: 'Nennkapazität des Akkus',
    startCharge: 'Ladung am Anfang',
    ambient: 'Temperatur',
    endCause: 'Beendet durch',
    endVoltage: 'Niedrigste Busspannung',
    with: 'Mit Verbrauchern',
    without: 'Alle Verbraucher aus',
    cost: 'Verbraucher kosten',
    costFormula: 't(alle aus) − t(wie geschaltet), beide auf derselben Fahrt',
    costSource: 'Zwei Simulationen derselben Fahrt (hergeleitet).',
    share: 'Anteil an der Laufzeit',
    efficiency: 'Wandler, Ausgang durch Eingang',
    energyFormula: 'E = ∫ V · I dt an den Akkuklemmen',
    energySource: 'Integral über die simulierte Fahrt (hergeleitet).',
    givenUp: 'Von den Blöcken abgegeben',
    losses: 'In den Blöcken verloren',
    ledgerClosure: 'Bilanz schließt auf',
    chargeFormula: 'Hauptladung: fehlende Ah / Ladestrom, dann Nachladung je nach Chemie',
    chargeSource: 'Schätzung aus Restladung, Strom und Nachladung (gängige Praxis).',
    hours: 'Stunden bis voll',
    wantedEnd: 'Verlangte Ladeschlussspannung',
    givenEnd: 'Gegebene Ladeschlussspannung',
    verdict: 'Urteil',
    blocks: 'Blöcke',
    blockMass: 'Masse eines Blocks',
    blockPrice: 'Preis eines Blocks',
    charger: 'Ladegerät',
    mass: 'Masse des Akkus',
    price: 'Preis mit Ladegerät',
    sumSource: 'Summe der Angaben des Plans.',
    exact: 'Ungerundet',
    notKnown: 'nicht bekannt',
  },
};
