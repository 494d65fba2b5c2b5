import { chemistryTraits } from '../battery/chemistry.ts';
import { blockParts, chargerParts, converterParts } from '../library/index.ts';
import type { Part } from '../library/part.ts';
import { newAccessory, newConverter, newMachine, newOption, newPack, newPlan } from './defaults.ts';
import type { Block, Chemistry } from './schema/block.ts';
import type { Charger } from './schema/charger.ts';
import type { Converter } from './schema/accessory.ts';
import type { Option } from './schema/option.ts';
import type { Plan } from './schema/plan.ts';

/** What a person knows before he has chosen anything. */
export interface StartAnswers {
  readonly name: string;
  /** Nominal voltage of the machine [V]: 12, 24, 36 or 48. */
  readonly nominalV: number;
  /** Motor power from the pack while it drives [W], above 0. */
  readonly drivingPowerW: number;
  /** Share of the outing in which it drives [%], above 0 to 100. */
  readonly drivingPercent: number;
  /** Minutes wanted [min], above 0. */
  readonly goalMin: number;
  /** Temperature of the coldest usual outing [°C]. */
  readonly ambientC: number;
  /** Power of lights, sound and the like at 12 V [W]; 0 for none. */
  readonly accessoryW: number;
  /** Loaded voltage at which the controller stops [V]; null when not known. */
  readonly cutoffVoltageV: number | null;
}

/** Minutes of the pattern of driving and standing that repeats. */
const cycleMin = 10;

/** Share of the rated energy a pack gives up at these rates, for a first size. Common practice, no source. */
const usableShare: Readonly<Record<'agm' | 'lfp', number>> = { agm: 0.6, lfp: 0.9 };

/**
 * A plan to start from: the machine as described and two packs of the library that should just reach the goal, one of
 * lead blocks in series and one of lithium, each with a charger made for it. The run decides; these are only sizes to
 * begin with.
 */
export function startPlan(answers: StartAnswers): Plan {
  const { name, nominalV, drivingPowerW, drivingPercent, goalMin, accessoryW } = answers;
  const base = newPlan(name);
  const machine = newMachine(name);
  const averageW = drivingPowerW * (drivingPercent / 100) + accessoryW;
  const energyWh = (averageW * goalMin) / 60;
  const drives = (cycleMin * drivingPercent) / 100;
  const throughConverter = nominalV > 12;
  return {
    ...base,
    machine: {
      ...machine,
      controller: { ...machine.controller, cutoffVoltageV: answers.cutoffVoltageV },
      converter: accessoryW > 0 && throughConverter ? converterFor(nominalV, accessoryW) : null,
      accessories:
        accessoryW > 0
          ? [
              {
                ...newAccessory(),
                name: 'Lights and sound',
                supply: throughConverter ? 'converter' : 'pack',
                load: { kind: 'power', powerW: accessoryW },
              },
            ]
          : [],
    },
    outings: base.outings.map((outing) => ({
      ...outing,
      name: 'Usual outing',
      goalMin,
      ambientC: answers.ambientC,
      legs: [
        { ...outing.legs[0]!, durationMin: drives, load: { kind: 'power', powerW: drivingPowerW } },
        ...(drives < cycleMin
          ? [
              {
                id: 'stand',
                name: 'Stand',
                durationMin: cycleMin - drives,
                load: null,
                otherLoads: [],
              },
            ]
          : []),
      ],
    })),
    options: [packOf('agm', nominalV, energyWh), packOf('lfp', nominalV, energyWh)],
  };
}

/** A pack of the smallest block that holds the energy, or of the largest one with as many strings as it takes. */
function packOf(chemistry: 'agm' | 'lfp', nominalV: number, energyWh: number): Option {
  const cells = chemistry === 'agm' ? nominalV / 2 : Math.ceil(nominalV / 3.2 - 0.6);
  const wantedAh =
    energyWh / usableShare[chemistry] / (cells * chemistryTraits[chemistry].nominalV);
  const blocks = blockParts
    .filter(({ value }) => value.chemistry === chemistry && cells % value.cellGroups === 0)
    // Few large blocks rather than many small ones.
    .toSorted((one, other) => other.value.cellGroups - one.value.cellGroups);
  const cellGroups = blocks[0]?.value.cellGroups ?? cells;
  const sizes = blocks
    .filter(({ value }) => value.cellGroups === cellGroups)
    .toSorted((one, other) => one.value.capacityAh - other.value.capacityAh);
  const part = sizes.find(({ value }) => value.capacityAh >= wantedAh) ?? sizes.at(-1);
  const block: Block = structured(part, chemistry, cells, wantedAh);
  const parallelCount = Math.min(12, Math.max(1, Math.ceil(wantedAh / block.capacityAh)));
  const seriesCount = cells / block.cellGroups;
  const count = seriesCount * parallelCount;
  const option = newOption([], { ...newPack(block, seriesCount), parallelCount });
  return {
    ...option,
    id: chemistry,
    name: count === 1 ? block.name : `${count} x ${block.name}`,
    charger: chargerFor(chemistry, cells, block.capacityAh * parallelCount),
  };
}

/** A copy of the part; where the library has none of that voltage, a block of round figures. */
function structured(
  part: Part<Block> | undefined,
  chemistry: Chemistry,
  cells: number,
  wantedAh: number,
): Block {
  if (part !== undefined) return JSON.parse(JSON.stringify(part.value)) as Block;
  const capacityAh = Math.max(5, Math.ceil(wantedAh / 5) * 5);
  const { block } = newPack();
  return {
    ...block,
    name: `${chemistry.toUpperCase()} ${capacityAh} A·h`,
    chemistry,
    cellGroups: cells,
    capacityAh,
  };
}

/** The charger made for the pack whose current is nearest to a sixth of its capacity. */
function chargerFor(chemistry: Chemistry, cells: number, capacityAh: number): Charger | null {
  const wantedA = capacityAh / 6;
  const fitting = chargerParts
    .filter(({ value }) => value.kind === 'staged' && !value.equalises)
    .filter(({ value }) => value.cellGroups === cells && value.chemistries.includes(chemistry))
    .toSorted(
      (one, other) =>
        Math.abs(one.value.currentA - wantedA) - Math.abs(other.value.currentA - wantedA),
    );
  return fitting[0] === undefined
    ? null
    : (JSON.parse(JSON.stringify(fitting[0].value)) as Charger);
}

/** The smallest converter of the library that carries the load at three quarters of its rating. */
function converterFor(nominalV: number, loadW: number): Converter {
  const wantedA = loadW / 12 / 0.75;
  const fitting = converterParts
    .filter(({ value }) => value.outputVoltageV >= 12 && value.outputVoltageV < 14)
    .filter(
      ({ value }) =>
        (value.minimumInputV ?? 0) <= 0.85 * nominalV &&
        (value.maximumInputV ?? Infinity) >= 1.25 * nominalV,
    )
    .toSorted((one, other) => one.value.ratedCurrentA - other.value.ratedCurrentA);
  const part = fitting.find(({ value }) => value.ratedCurrentA >= wantedA);
  return part === undefined
    ? { ...newConverter(), ratedCurrentA: Math.ceil(wantedA) }
    : (JSON.parse(JSON.stringify(part.value)) as Converter);
}
