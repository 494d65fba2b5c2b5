import type { FitRecord, HealthPoint } from '../../plan/schema/bench.ts';
import type { Option } from '../../plan/schema/option.ts';
import type { Plan } from '../../plan/schema/plan.ts';
import { freshId } from '../../plan/fresh-id.ts';
import type { BlockFit } from './fit-block.ts';
import { remarkText } from './fit-remark.ts';
import type { UnitLayout } from './fit-run.ts';

export interface FitToApply {
  readonly optionId: string;
  readonly fit: BlockFit;
  readonly layout: UnitLayout;
  /** Year-month-day. */
  readonly date: string;
  readonly logs: readonly string[];
  /** Names the plan already uses for fits and the language of the remarks. */
  readonly language?: 'en' | 'de';
}

/** Parts of a pack within this of their neighbours are alike. */
const alikePercent = 0.05;

/**
 * The plan with a fit taken in: the block carries the fitted values with their source, parts of the pack that were found
 * to differ are entered as such, and the bench keeps a record and a point of each block's health. Label figures stay.
 */
export function applyFit(
  plan: Plan,
  { optionId, fit, layout, date, logs, language = 'en' }: FitToApply,
): Plan {
  const bench = plan.bench ?? { readings: [], fits: [], health: [] };
  const option = plan.options.find((entry) => entry.id === optionId);
  if (option === undefined) return plan;
  const id = freshId(
    'fit',
    bench.fits.map((record) => record.id),
  );
  return {
    ...plan,
    options: plan.options.map((entry) =>
      entry.id === optionId ? withFit(entry, fit, layout) : entry,
    ),
    bench: {
      ...bench,
      fits: [
        ...bench.fits,
        {
          id,
          date,
          optionId,
          logs: logs.slice(0, 40).map((name) => name.slice(0, 200)),
          values: [...fit.values],
          rmsMv: fit.rmsMv,
          before: beforeFits(plan, option, layout),
          remarks: fit.remarks.map((remark) => remarkText(remark, language).slice(0, 400)),
        },
      ],
      health: [...bench.health, ...healthPoints(option, fit, layout, date)],
    },
  };
}

/** What the option's lists of differing parts held before the first fit of the block that stands now. */
function beforeFits(plan: Plan, option: Option, layout: UnitLayout): FitRecord['before'] {
  const { block, differences, groupDifferences } = option.pack;
  const last =
    block.fitted === null
      ? undefined
      : plan.bench?.fits.findLast(
          (record) => record.optionId === option.id && record.before !== null,
        );
  return {
    differences: last?.before?.differences ?? (layout.kind === 'block' ? differences : null),
    groupDifferences:
      last?.before?.groupDifferences ?? (layout.kind === 'group' ? groupDifferences : null),
  };
}

function limit(value: number, low: number, high: number): number {
  return Number(Math.min(high, Math.max(low, value)).toPrecision(5));
}

function withFit(option: Option, fit: BlockFit, layout: UnitLayout): Option {
  const { pack } = option;
  const strings = Array.from({ length: pack.parallelCount }, (_, index) => index + 1);
  const block = { ...pack.block, fitted: fit.fitted };
  const figures = fit.units.map((unit) => ({
    capacityPercent: limit(unit.capacityPercent, 1, 200),
    resistancePercent: limit(unit.resistancePercent, 10, 2000),
    startPercent: limit(unit.startPercent, 0, 100),
  }));
  const differ = (figure: (typeof figures)[number]) =>
    Math.max(
      Math.abs(figure.capacityPercent - 100),
      Math.abs(figure.resistancePercent - 100),
      100 - figure.startPercent,
    ) > alikePercent;
  if (layout.kind === 'group') {
    const groups = pack.block.cellGroups;
    return {
      ...option,
      pack: {
        ...pack,
        block,
        groupDifferences: strings.flatMap((string) =>
          figures.flatMap((figure, index) =>
            differ(figure)
              ? [
                  {
                    string,
                    position: Math.floor(index / groups) + 1,
                    group: (index % groups) + 1,
                    ...figure,
                  },
                ]
              : [],
          ),
        ),
      },
    };
  }
  if (layout.kind === 'block') {
    const kept = (string: number, position: number) =>
      pack.differences.find((entry) => entry.string === string && entry.position === position);
    return {
      ...option,
      pack: {
        ...pack,
        block,
        differences: strings.flatMap((string) =>
          figures.map((figure, index) => ({
            string,
            position: index + 1,
            restVoltageV: kept(string, index + 1)?.restVoltageV ?? null,
            // The fit holds for the block as it stands: its own age and another type are in the figures already.
            ageYears: null,
            replacement: null,
            ...figure,
          })),
        ),
      },
    };
  }
  return { ...option, pack: { ...pack, block } };
}

/** Capacity and resistance of each measured block against the label, or of all blocks alike where only the pack was logged. */
function healthPoints(
  option: Option,
  fit: BlockFit,
  layout: UnitLayout,
  date: string,
): HealthPoint[] {
  const { block, seriesCount, parallelCount } = option.pack;
  const share = (position: number, key: 'capacityPercent' | 'resistancePercent') => {
    const own =
      layout.kind === 'block'
        ? fit.units.slice(position - 1, position)
        : fit.units.slice((position - 1) * block.cellGroups, position * block.cellGroups);
    const values = own.map((unit) => unit[key]);
    if (values.length === 0) return 1;
    // The smallest group ends the block; the resistances of its groups add up.
    return (
      (key === 'capacityPercent'
        ? Math.min(...values)
        : values.reduce((sum, value) => sum + value, 0) / values.length) / 100
    );
  };
  return Array.from({ length: parallelCount }, (_, string) =>
    Array.from({ length: seriesCount }, (__, index): HealthPoint => ({
      date,
      optionId: option.id,
      string: string + 1,
      position: index + 1,
      capacityPercent: Math.min(
        300,
        fit.health.capacityPercent * share(index + 1, 'capacityPercent'),
      ),
      resistancePercent: Math.min(
        5000,
        fit.health.resistancePercent * share(index + 1, 'resistancePercent'),
      ),
      source: fit.fitted.source.slice(0, 200),
    })),
  ).flat();
}
