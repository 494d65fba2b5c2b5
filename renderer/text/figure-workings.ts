import type { LedgerPart } from '../places/run/ledger-parts.ts';
import type { Texts } from './use-text.ts';

interface FigureWorkingTexts {
  readonly ofRun: string;
  readonly speed: string;
  readonly drive: string;
  readonly averageSpeed: string;
  readonly rollingSpeed: string;
  readonly ofCharge: string;
  readonly left: string;
  readonly lowest: string;
  readonly peak: string;
  readonly rest: string;
  readonly restInput: string;
  readonly cable: string;
  readonly delivered: string;
  readonly goal: string;
  readonly goalFormula: string;
  readonly energy: string;
  readonly nominal: string;
  readonly standby: string;
  readonly standbySource: string;
  readonly standbyInput: string;
  readonly perMinute: string;
  readonly share: string;
  readonly plainTime: string;
  readonly efficiency: string;
  readonly intoConverter: string;
  readonly outOfConverter: string;
  readonly ledger: Readonly<Record<LedgerPart, string>>;
  readonly ledgerShare: string;
  readonly chargeTime: string;
  readonly chargeMark: (percent: number) => string;
  readonly start: string;
  readonly end: string;
  readonly current: string;
  readonly tail: string;
  readonly bulk: string;
  readonly held: string;
  readonly into: string;
  readonly stored: string;
  readonly gassed: string;
  readonly bled: string;
  readonly mains: string;
  readonly intoPack: string;
  readonly chargerEfficiency: string;
  readonly costFormula: string;
  readonly price: string;
  readonly highest: string;
  readonly endVoltage: string;
  readonly chargeValidity: string;
}

export const figureWorkingTexts: Texts<FigureWorkingTexts> = {
  en: {
    speed: 'highest v of the run, from m · dv/dt = F(motor) − F(rolling) − F(grade) − F(air)',
    drive: 'Motors, gears, masses',
    averageSpeed: 'Average, standing counted',
    rollingSpeed: 'Average while it rolls',
    ofRun: 'Read off the simulated run (derived). How the run goes: the working of its minutes.',
    ofCharge: 'Read off the simulated charge (derived): current, then voltage held, step by step.',
    left: 's = Σ charge in the blocks / Σ capacity in these conditions',
    lowest: 'lowest of V(pack) − I · R(cable) over the whole run',
    peak: 'highest pack current over the whole run, starts counted',
    rest: 'after the rest the run goes on from where it stopped, until it stops again',
    restInput: 'Rest before trying again',
    cable: 'Cable resistance',
    delivered: 'Delivered',
    goal: 'Minutes wanted',
    goalFormula: 'share = t(run) / t(wanted)',
    energy: 'E = C(pack) · V(nominal)',
    nominal: 'Nominal voltage',
    standby: 'd = half the capacity / (standing current + self-discharge)',
    standbySource:
      'Sum of what draws while parked, and the self-discharge of the chemistry (derived).',
    standbyInput: 'What stays on',
    perMinute: 'price / t(run)',
    share: 'share = t(run) / t(Ah / A)',
    plainTime: 'Ah / A',
    efficiency: 'η = ∫ P(out) dt / ∫ P(in) dt over the run',
    intoConverter: 'Into the converter',
    outOfConverter: 'Out of it, into the accessories',
    ledger: {
      motorWh: '∫ V(controller) · I(motor circuit) dt',
      accessoriesWh: '∫ V · I dt at the accessories',
      converterLossWh: '∫ (P(in) − P(out)) dt of the converter',
      controllerIdleWh: '∫ V(controller) · I(idle) dt',
      harnessLossWh: '∫ I² · R(cable) dt',
      linkLossWh: 'Σ strings ∫ I² · R(links) dt',
      resistanceLossWh: 'Σ blocks ∫ I² · (R0 + knee) dt',
      polarisationLossWh: 'Σ blocks ∫ I · v(polarisation) dt',
      rateLossWh: 'energy lost while charge flows to the plates, between the two wells',
    },
    ledgerShare: 'Share of what the blocks gave up',
    chargeTime: 't = t(current held) + t(voltage held, until the current has fallen)',
    chargeMark: (percent) => `time at which the curve reaches ${percent} %`,
    start: 'Charge at the start',
    end: 'Charge at the end',
    current: 'Charge current',
    tail: 'Ends at current',
    bulk: 'Current held for',
    held: 'Voltage held for',
    into: 'Q = ∫ I dt at the pack terminals',
    stored: 'Stored over put in',
    gassed: 'Into gas and heat',
    bled: 'Burnt by balancing',
    mains: 'E(mains) = ∫ V · I dt / η(charger)',
    intoPack: 'Into the pack',
    chargerEfficiency: 'Efficiency of the charger',
    costFormula: 'cost = price · E(mains)',
    price: 'Price of a kWh',
    highest: 'highest pack voltage of the curve',
    endVoltage: 'End voltage of the charger',
    chargeValidity:
      'blocks at one temperature throughout; full is 98 %, as the last 2 % of lead take as long as the 20 % before.',
  },
  de: {
    speed: 'höchstes v der Fahrt, aus m · dv/dt = F(Motor) − F(Rollen) − F(Steigung) − F(Luft)',
    drive: 'Motoren, Getriebe, Massen',
    averageSpeed: 'Mittel mit Stehen',
    rollingSpeed: 'Mittel im Rollen',
    ofRun:
      'Aus der simulierten Fahrt abgelesen (hergeleitet). Wie die Fahrt verläuft: Rechenweg ihrer Minuten.',
    ofCharge:
      'Aus der simulierten Ladung abgelesen (hergeleitet): erst Strom, dann Spannung gehalten, Schritt für Schritt.',
    left: 's = Σ Ladung in den Blöcken / Σ Kapazität unter diesen Bedingungen',
    lowest: 'kleinster Wert von V(Akku) − I · R(Kabel) über die ganze Fahrt',
    peak: 'höchster Akkustrom der ganzen Fahrt, Anfahren mitgezählt',
    rest: 'nach der Pause geht die Fahrt weiter, wo sie stehen blieb, bis sie wieder endet',
    restInput: 'Pause bis zum nächsten Versuch',
    cable: 'Kabelwiderstand',
    delivered: 'Abgegeben',
    goal: 'Gewünschte Minuten',
    goalFormula: 'Anteil = t(Fahrt) / t(gewünscht)',
    energy: 'E = C(Akku) · V(Nenn)',
    nominal: 'Nennspannung',
    standby: 'd = halbe Kapazität / (Ruhestrom + Selbstentladung)',
    standbySource:
      'Summe dessen, was im Stand Strom zieht, und die Selbstentladung der Chemie (hergeleitet).',
    standbyInput: 'Was an bleibt',
    perMinute: 'Preis / t(Fahrt)',
    share: 'Anteil = t(Fahrt) / t(Ah / A)',
    plainTime: 'Ah / A',
    efficiency: 'η = ∫ P(aus) dt / ∫ P(ein) dt über die Fahrt',
    intoConverter: 'In den Wandler',
    outOfConverter: 'Aus ihm, in die Verbraucher',
    ledger: {
      motorWh: '∫ V(Steuerung) · I(Motorkreis) dt',
      accessoriesWh: '∫ V · I dt an den Verbrauchern',
      converterLossWh: '∫ (P(ein) − P(aus)) dt des Wandlers',
      controllerIdleWh: '∫ V(Steuerung) · I(Leerlauf) dt',
      harnessLossWh: '∫ I² · R(Kabel) dt',
      linkLossWh: 'Σ Stränge ∫ I² · R(Verbinder) dt',
      resistanceLossWh: 'Σ Blöcke ∫ I² · (R0 + Knie) dt',
      polarisationLossWh: 'Σ Blöcke ∫ I · v(Polarisation) dt',
      rateLossWh:
        'Energie, die verloren geht, während Ladung zu den Platten nachfließt (zwei Töpfe)',
    },
    ledgerShare: 'Anteil an dem, was die Blöcke abgaben',
    chargeTime: 't = t(Strom gehalten) + t(Spannung gehalten, bis der Strom gefallen ist)',
    chargeMark: (percent) => `Zeit, zu der die Kurve ${percent} % erreicht`,
    start: 'Ladung am Anfang',
    end: 'Ladung am Ende',
    current: 'Ladestrom',
    tail: 'Endet bei Strom',
    bulk: 'Strom gehalten',
    held: 'Spannung gehalten',
    into: 'Q = ∫ I dt an den Akkuklemmen',
    stored: 'Gespeichert von Zugeführtem',
    gassed: 'In Gas und Wärme',
    bled: 'Beim Ausgleichen verheizt',
    mains: 'E(Netz) = ∫ V · I dt / η(Ladegerät)',
    intoPack: 'In den Akku',
    chargerEfficiency: 'Wirkungsgrad des Ladegeräts',
    costFormula: 'Kosten = Preis · E(Netz)',
    price: 'Preis einer kWh',
    highest: 'höchste Akkuspannung der Kurve',
    endVoltage: 'Ladeschlussspannung des Ladegeräts',
    chargeValidity:
      'Blöcke durchweg bei einer Temperatur; voll heißt 98 %, denn die letzten 2 % dauern bei Blei so lange wie die 20 % davor.',
  },
};
