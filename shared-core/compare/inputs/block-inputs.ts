import { chemistryTraits } from '../../battery/chemistry.ts';
import { defaultResistanceOhm } from '../../battery/default-resistance.ts';
import { blockParts } from '../../library/index.ts';
import type { FitRecord } from '../../plan/schema/bench.ts';
import type { Block } from '../../plan/schema/block.ts';
import type { Option } from '../../plan/schema/option.ts';
import type { InputRange, RangeClass, UncertainInput } from './input.ts';
import { scaleCapacity, scaleResistance, withPack } from './scale-pack.ts';
import { z90 } from './value-at.ts';

interface Known extends InputRange {
  readonly rangeClass: RangeClass;
  readonly source: string;
}

const practice = 'common practice, no source';

/** Blocks that are the same thing to buy share their draws: options built from one type differ in nothing else. */
function blockKey({ chemistry, cellGroups, capacityAh, ratedHours, partId }: Block): string {
  return [partId ?? 'own', chemistry, cellGroups, capacityAh, ratedHours].join('/');
}

const shares = (likely: number, low: number, high: number): InputRange => ({
  low: likely * low,
  likely,
  high: likely * high,
});

/** From the 95 % limits of a fit to the 10th and 90th percentile. */
function fittedRange(
  fit: FitRecord | undefined,
  name: string,
  likely: number,
  otherwise: number,
): Known {
  const value = fit?.values.find((entry) => entry.name === name && entry.identified);
  const share = z90 / 1.959964;
  const factor = (limit: number | null | undefined, other: number): number =>
    value === undefined || limit === null || limit === undefined || value.value <= 0 || limit <= 0
      ? other
      : (limit / value.value) ** share;
  return {
    low: likely * Math.min(1, factor(value?.low, 1 / (1 + otherwise))),
    likely,
    high: likely * Math.max(1, factor(value?.high, 1 + otherwise)),
    rangeClass: 'measured',
    source:
      value === undefined
        ? `Fitted on the bench; repeatability of a test, ${practice}`
        : 'Fitted on the bench, from the confidence limits of the fit',
  };
}

function capacityRange(block: Block, fit: FitRecord | undefined): Known {
  const { capacityAh } = block;
  if (block.fitted !== null) return fittedRange(fit, 'charge when full', capacityAh, 0.03);
  const lead = chemistryTraits[block.chemistry].family === 'lead';
  if (block.rating.kind !== 'exponent') {
    return {
      ...shares(capacityAh, lead ? 0.93 : 0.96, 1.04),
      rangeClass: 'rated-points',
      source: `Scatter of new blocks around their maker's table; ${practice}`,
    };
  }
  return {
    ...shares(capacityAh, lead ? 0.88 : 0.94, lead ? 1.08 : 1.04),
    rangeClass: block.partId === null ? 'entered' : 'library',
    source: `New blocks against the label; a measured AGM block gave 1.14 of it; ${practice}`,
  };
}

function resistanceRange(block: Block, fit: FitRecord | undefined): Known {
  const likely = block.fitted?.resistanceOhm ?? block.resistanceOhm ?? defaultResistanceOhm(block);
  if (block.fitted !== null) return fittedRange(fit, 'ohmic resistance', likely, 0.08);
  const part = blockParts.find(({ id }) => id === block.partId);
  const figure = part?.figures.find(({ field }) => field === 'resistanceOhm');
  if (figure !== undefined && part?.value.resistanceOhm === block.resistanceOhm) {
    return {
      ...shares(likely, figure.low / figure.typical, figure.high / figure.typical),
      rangeClass: 'library',
      source: figure.source,
    };
  }
  return block.resistanceOhm === null
    ? {
        ...shares(likely, 0.7, 1.5),
        rangeClass: 'usual-for-kind',
        source: `Usual for chemistry and capacity; ${practice}`,
      }
    : {
        ...shares(likely, 0.85, 1.2),
        rangeClass: 'entered',
        source: `Scatter of blocks around a stated resistance; ${practice}`,
      };
}

/**
 * A default exponent is widened downwards by half its distance to 1: a measured 17 A·h AGM block showed no rate loss at
 * all, which the range must reach. An entered one is believed to a quarter of its distance from 1.
 */
function exponentRange(block: Block): Known | null {
  if (block.fitted !== null || block.rating.kind !== 'exponent') return null;
  const { exponent } = block.rating;
  if (exponent !== null) {
    const loss = exponent - 1;
    return {
      low: 1 + 0.75 * loss,
      likely: exponent,
      high: 1 + 1.25 * loss,
      rangeClass: 'entered',
      source: `Entered exponent, a quarter either way; ${practice}`,
    };
  }
  const { low, likely, high } = chemistryTraits[block.chemistry].exponent;
  return {
    low: 1 + (low - 1) / 2,
    likely,
    high,
    rangeClass: 'usual-for-kind',
    source: `Usual for the chemistry; ${practice}`,
  };
}

/** Years and cycles as counted say only roughly how far a block has aged. */
function wearInput(option: Option, key: string): UncertainInput[] {
  const { block, ageYears, cyclesDone, differences } = option.pack;
  const aged =
    ageYears > 0 || cyclesDone > 0 || differences.some((each) => (each.ageYears ?? 0) > 0);
  const measuredSince =
    block.fitted !== null &&
    ageYears <= block.fitted.ageYears &&
    cyclesDone <= block.fitted.cyclesDone;
  if (!aged || measuredSince) return [];
  return [
    {
      id: 'wear',
      key: `wear/${key}`,
      label: { en: 'Wear against the usual', de: 'Verschleiß gegen üblich' },
      unit: '%',
      shape: 'ratio',
      low: 60,
      likely: 100,
      high: 170,
      least: 20,
      most: 400,
      rangeClass: 'usual-for-kind',
      source: `Lives of blocks of one age differ by about a factor of two; ${practice}`,
      measure: {
        en: 'Discharge one full block with a steady load to its end voltage and count the ampere-hours.',
        de: 'Einen vollen Block mit gleichbleibender Last bis zur Endspannung entladen und die Amperestunden zählen.',
      },
      apply: (scenario, value) =>
        withPack(scenario, (pack) => ({
          ...pack,
          ageYears: (pack.ageYears * value) / 100,
          cyclesDone: (pack.cyclesDone * value) / 100,
          differences: pack.differences.map((each) => ({
            ...each,
            ageYears: each.ageYears === null ? null : (each.ageYears * value) / 100,
          })),
        })),
    },
  ];
}

/** What is uncertain about the blocks of an option. */
export function blockInputs(option: Option, fit: FitRecord | undefined): UncertainInput[] {
  const { block } = option.pack;
  const key = blockKey(block);
  const capacity = capacityRange(block, fit);
  const resistance = resistanceRange(block, fit);
  const exponent = exponentRange(block);
  const inputs: UncertainInput[] = [
    {
      ...capacity,
      id: 'capacity',
      key: `capacity/${key}`,
      label: { en: 'Capacity of a block', de: 'Kapazität eines Blocks' },
      unit: 'A·h',
      shape: 'ratio',
      least: capacity.likely * 0.3,
      most: capacity.likely * 1.5,
      measure: {
        en: 'Discharge one full block with a steady load to its end voltage and count the ampere-hours.',
        de: 'Einen vollen Block mit gleichbleibender Last bis zur Endspannung entladen und die Amperestunden zählen.',
      },
      apply: (scenario, value) =>
        withPack(scenario, (pack) => ({
          ...pack,
          block: scaleCapacity(pack.block, value / capacity.likely),
        })),
    },
    {
      ...resistance,
      id: 'resistance',
      key: `resistance/${key}`,
      label: { en: 'Inner resistance of a block', de: 'Innenwiderstand eines Blocks' },
      unit: 'Ω',
      shape: 'ratio',
      least: resistance.likely * 0.3,
      most: resistance.likely * 5,
      measure: {
        en: 'Read the voltage before and one second after a load of some amperes: volts lost over amperes.',
        de: 'Spannung vor und eine Sekunde nach einer Last von einigen Ampere ablesen: verlorene Volt durch Ampere.',
      },
      apply: (scenario, value) =>
        withPack(scenario, (pack) => ({
          ...pack,
          block: scaleResistance(pack.block, value / resistance.likely),
        })),
    },
  ];
  if (exponent !== null) {
    inputs.push({
      ...exponent,
      id: 'exponent',
      key: `exponent/${key}`,
      label: { en: 'Rate exponent', de: 'Ratenexponent' },
      unit: '',
      shape: 'difference',
      least: 1,
      most: 1.5,
      measure: {
        en: "Enter a second rating from the maker's sheet, or log a discharge at the machine's current.",
        de: 'Eine zweite Angabe aus dem Datenblatt eintragen oder eine Entladung beim Strom der Maschine aufzeichnen.',
      },
      apply: (scenario, value) =>
        withPack(scenario, (pack) => ({
          ...pack,
          block: { ...pack.block, rating: { kind: 'exponent', exponent: value } },
        })),
    });
  }
  return [...inputs, ...wearInput(option, key), startInput(option)];
}

function startInput(option: Option): UncertainInput {
  const likely = option.startPercent;
  return {
    id: 'start-charge',
    key: `start-charge/${option.pack.block.chemistry}`,
    label: { en: 'Charge at the start', de: 'Ladung am Anfang' },
    unit: '%',
    shape: 'difference',
    low: Math.max(0, likely - 4),
    likely,
    high: Math.min(100, likely + 4),
    least: 0,
    most: 100,
    rangeClass: 'usual-for-kind',
    source: `Chargers end a few percent short of full; ${practice}`,
    measure: {
      en: 'Leave the charger on until its current has fallen for good, then rest the pack and read its voltage.',
      de: 'Das Ladegerät angeschlossen lassen, bis der Strom nicht mehr fällt, dann ruhen lassen und die Spannung ablesen.',
    },
    apply: (scenario, value) => ({
      ...scenario,
      option: { ...scenario.option, startPercent: value },
    }),
  };
}
