import type { RunStart } from './run-start.ts';

/** How the charge at the begin of a run is known, in words. */
const startWords: Readonly<Record<RunStart['known'], readonly [en: string, de: string]>> = {
  given: ['as entered', 'wie eingegeben'],
  full: ['its first volts speak for full', 'die ersten Spannungen sprechen für voll'],
  'rest-volts': ['found with its rest volts before the load', 'aus der Ruhespannung vor der Last'],
  'loaded-volts': [
    'found with its first volts under load; enter it if you know better',
    'aus den ersten Spannungen unter Last; eingeben, wenn genauer bekannt',
  ],
};

/** What a fit has to say about itself besides its values. */
export type FitRemark =
  | {
      readonly kind: 'together';
      readonly first: string;
      readonly second: string;
      readonly correlation: number;
    }
  | { readonly kind: 'not-told'; readonly name: string }
  | { readonly kind: 'one-rate'; readonly currentA: number }
  | { readonly kind: 'ends-early'; readonly chargePercent: number; readonly voltageV: number }
  | { readonly kind: 'no-temperature'; readonly temperatureC: number }
  | { readonly kind: 'runs-differ'; readonly percent: number }
  | { readonly kind: 'taken-as-full' }
  | {
      readonly kind: 'began-at';
      readonly run: string;
      readonly percent: number;
      readonly known: RunStart['known'];
    }
  | { readonly kind: 'outliers'; readonly rows: number }
  | { readonly kind: 'stale'; readonly rows: number }
  | { readonly kind: 'taps-differ'; readonly gapV: number }
  | { readonly kind: 'rest-not-used' };

/** The remark in words. */
export function remarkText(remark: FitRemark, language: 'en' | 'de' = 'en'): string {
  const en = language === 'en';
  switch (remark.kind) {
    case 'together':
      return en
        ? `${remark.first} and ${remark.second} could not be told apart well (correlation ${remark.correlation.toFixed(2)}): trust their joint effect rather than either value.`
        : `${remark.first} und ${remark.second} ließen sich kaum trennen (Korrelation ${remark.correlation.toFixed(2)}): eher der gemeinsamen Wirkung trauen als dem einzelnen Wert.`;
    case 'not-told':
      return en
        ? `The data say little about ${remark.name}; the usual value stands.`
        : `Die Daten sagen wenig über ${remark.name}; der übliche Wert bleibt stehen.`;
    case 'one-rate':
      return en
        ? `All runs were made near ${remark.currentA.toPrecision(3)} A, so the loss at other rates is not measured. Add a run at a clearly different current.`
        : `Alle Läufe lagen nahe ${remark.currentA.toPrecision(3)} A; der Verlust bei anderen Strömen ist nicht gemessen. Einen Lauf mit deutlich anderem Strom ergänzen.`;
    case 'ends-early':
      return en
        ? `The logs end at ${remark.voltageV.toFixed(2)} V per cell group; the last ${remark.chargePercent.toFixed(0)} % of the charge are carried on from the usual curve.`
        : `Die Protokolle enden bei ${remark.voltageV.toFixed(2)} V je Zellgruppe; die letzten ${remark.chargePercent.toFixed(0)} % der Ladung sind mit der üblichen Kurve fortgesetzt.`;
    case 'no-temperature':
      return en
        ? `No temperature was logged: the blocks are taken to have started at ${remark.temperatureC.toFixed(0)} °C and to have warmed as usual.`
        : `Keine Temperatur im Protokoll: angenommen sind ${remark.temperatureC.toFixed(0)} °C beim Start und übliche Erwärmung.`;
    case 'runs-differ':
      return en
        ? `The runs disagree by ${remark.percent.toFixed(1)} % in charge, more than their rates explain; expect a single run to scatter by as much.`
        : `Die Läufe weichen in der Ladung um ${remark.percent.toFixed(1)} % voneinander ab, mehr als ihre Ströme erklären; ein einzelner Lauf streut ebenso.`;
    case 'taken-as-full':
      return en
        ? 'Every run is taken to begin with a full pack, as its first volts suggest.'
        : 'Jeder Lauf gilt als voll geladen begonnen, wie es die ersten Spannungen nahelegen.';
    case 'began-at':
      return en
        ? `Run ${remark.run} is taken to have begun at ${remark.percent.toFixed(0)} % charge: ${startWords[remark.known][0]}.`
        : `Lauf ${remark.run} gilt als mit ${remark.percent.toFixed(0)} % Ladung begonnen: ${startWords[remark.known][1]}.`;
    case 'outliers':
      return en
        ? `${remark.rows} ${remark.rows === 1 ? 'row stands' : 'rows stand'} out from both neighbours and did not count.`
        : `${remark.rows} Zeilen fallen aus ihrer Nachbarschaft heraus und zählten nicht mit.`;
    case 'stale':
      return en
        ? `${remark.rows} rows at a change of current carry volts from before it and did not count.`
        : `${remark.rows} Zeilen an Stromsprüngen tragen noch die Spannung von davor und zählten nicht mit.`;
    case 'taps-differ':
      return en
        ? `At rest the single units read ${(remark.gapV * 1000).toFixed(0)} mV more in sum than the pack's terminals. The pack's volts count; the units were shifted alike.`
        : `In Ruhe zeigen die einzelnen Einheiten zusammen ${(remark.gapV * 1000).toFixed(0)} mV mehr als die Klemmen des Packs. Es gilt die Packspannung; die Einheiten wurden gleichmäßig verschoben.`;
    case 'rest-not-used':
      return en
        ? 'Rest volts shortly after charge or discharge were not used: surface charge and slow acid hide the true rest voltage.'
        : 'Ruhespannungen kurz nach Ladung oder Entladung wurden nicht benutzt: Oberflächenladung und träge Säure verdecken die wahre Ruhespannung.';
  }
}
