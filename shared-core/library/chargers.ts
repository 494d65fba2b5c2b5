import { chemistryTraits } from '../battery/chemistry.ts';
import { newCharger } from '../plan/defaults.ts';
import type { Chemistry } from '../plan/schema/block.ts';
import type { Charger } from '../plan/schema/charger.ts';
import { asOnSheets, type FigureRange, type Part } from './part.ts';

/** A kind of charger: chemistries on its label and what it gives per cell. */
interface ChargerKind {
  readonly key: string;
  readonly label: string;
  readonly chemistries: Chemistry[];
  readonly cellV: number;
  readonly floatCellV: number | null;
  readonly compensationMvPerCellK: number;
  readonly tailShare: number;
  readonly equalises?: boolean;
}

const lead: ChargerKind = {
  key: 'lead',
  label: 'Lead',
  chemistries: ['agm', 'flooded'],
  cellV: 14.7 / 6,
  floatCellV: 13.65 / 6,
  compensationMvPerCellK: 0,
  tailShare: 0.15,
};
const compensated: ChargerKind = {
  key: 'lead-compensated',
  label: 'Lead, temperature compensated',
  chemistries: ['agm', 'flooded'],
  cellV: 14.55 / 6,
  floatCellV: 13.65 / 6,
  compensationMvPerCellK: -4,
  tailShare: 0.1,
};
const gel: ChargerKind = {
  key: 'gel',
  label: 'Gel',
  chemistries: ['gel'],
  cellV: 14.25 / 6,
  floatCellV: 13.65 / 6,
  compensationMvPerCellK: 0,
  tailShare: 0.15,
};
const pulsing: ChargerKind = {
  ...lead,
  key: 'lead-pulse',
  label: 'Lead with equalising pulses',
  equalises: true,
};
const lfp: ChargerKind = {
  key: 'lfp',
  label: 'LFP',
  chemistries: ['lfp'],
  cellV: chemistryTraits.lfp.chargeEndV,
  floatCellV: null,
  compensationMvPerCellK: 0,
  tailShare: 0.1,
};
const nmc: ChargerKind = {
  key: 'nmc',
  label: 'NMC',
  chemistries: ['nmc'],
  cellV: chemistryTraits.nmc.chargeEndV,
  floatCellV: null,
  compensationMvPerCellK: 0,
  tailShare: 0.1,
};

/** Kind, nominal class [V], cells, currents [A]. */
const rows: readonly (readonly [ChargerKind, number, number, readonly number[]])[] = [
  [lead, 6, 3, [1]],
  [lead, 12, 6, [1, 2, 5, 10]],
  [lead, 24, 12, [1.5, 2, 3, 5, 8]],
  [lead, 36, 18, [2, 5]],
  [lead, 48, 24, [2, 5, 8]],
  [compensated, 12, 6, [5]],
  [compensated, 24, 12, [3, 5]],
  [compensated, 48, 24, [5]],
  [gel, 12, 6, [2, 5]],
  [gel, 24, 12, [3, 5]],
  [pulsing, 12, 6, [4]],
  [pulsing, 24, 12, [4]],
  [lfp, 12, 4, [2, 5, 10]],
  [lfp, 24, 8, [2, 5, 10]],
  [lfp, 36, 12, [2, 5]],
  [lfp, 48, 16, [2, 5, 10]],
  [nmc, 24, 7, [2, 4]],
  [nmc, 36, 10, [2, 4]],
  [nmc, 48, 13, [2, 4]],
];

function chargerPart(
  kind: ChargerKind,
  classV: number,
  cells: number,
  currentA: number,
): Part<Charger> {
  const id = `charger-${kind.key}-${classV}v-${String(currentA).replace('.', '-')}a`;
  const name = `${kind.label} charger ${classV} V ${currentA} A`;
  const endVoltageV = asVolts(cells * kind.cellV);
  return {
    id,
    group: `${kind.label}, ${classV} V`,
    name,
    value: {
      ...newCharger(),
      name,
      chemistries: [...kind.chemistries],
      cellGroups: cells,
      currentA,
      endVoltageV,
      floatVoltageV: kind.floatCellV === null ? null : asVolts(cells * kind.floatCellV),
      tailCurrentA: asOnSheets(kind.tailShare * currentA),
      compensationMvPerCellK: kind.compensationMvPerCellK,
      equalises: kind.equalises ?? false,
      maximumHours: 24,
      efficiencyPercent: 85,
      partId: id,
    },
    figures: [endRange(kind, cells, endVoltageV)],
    sourceClass: 'common-practice',
  };
}

function endRange(kind: ChargerKind, cells: number, typical: number): FigureRange {
  const isLead = kind.floatCellV !== null;
  const [low, high] = isLead
    ? kind === gel
      ? [14.1 / 6, 14.4 / 6]
      : [14.4 / 6, 14.7 / 6]
    : [kind.cellV * 0.99, kind.cellV];
  return {
    field: 'endVoltageV',
    unit: 'V',
    low: asVolts(cells * low),
    typical,
    high: asVolts(cells * high),
    sourceClass: 'published',
    source: isLead
      ? 'Cyclic end voltage of lead 14.4 to 14.7 V per 12 V block at 25 °C, gel 14.1 to 14.4; makers disagree.'
      : 'LFP 3.65 V, NMC 4.20 V per cell group; a little less loses little charge and spares the cells.',
  };
}

function asVolts(value: number): number {
  return Math.round(value * 100) / 100;
}

/** The plug-in supplies that came with small machines: no regulation, no end. From memory. */
const wallSupplies: readonly Part<Charger>[] = [
  [6, 3, 0.5, 8.6, 2.6],
  [12, 6, 1, 16.5, 2.2],
  [24, 12, 1, 32, 4],
].map(([classV, cells, currentA, openV, sourceOhm]) => {
  const id = `wall-supply-${classV}v`;
  const name = `Unregulated wall supply ${classV} V`;
  return {
    id,
    group: 'Wall supplies',
    name,
    value: {
      ...newCharger(),
      name,
      kind: 'wall-supply' as const,
      cellGroups: cells!,
      currentA: currentA!,
      endVoltageV: openV!,
      sourceResistanceOhm: sourceOhm!,
      compensationMvPerCellK: 0,
      efficiencyPercent: 60,
      partId: id,
    },
    figures: [],
    sourceClass: 'from-memory' as const,
  };
});

/** Chargers of the library. */
export const chargerParts: readonly Part<Charger>[] = [
  ...rows.flatMap(([kind, classV, cells, currents]) =>
    currents.map((currentA) => chargerPart(kind, classV, cells, currentA)),
  ),
  ...wallSupplies,
];
