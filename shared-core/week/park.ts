import { minutesInside, minutesPerWeek } from './clock.ts';
import { chargeFor, type ChargeTable } from './charge-table.ts';
import { cyclesAtDepth } from './cycle-wear.ts';
import type { PlugStretch } from './plug-stretches.ts';
import type { PackState, SeasonTally } from './season-state.ts';
import type { WeekModel } from './week-model.ts';

/** Charge from which a charge counts as full, short of where the charger stops [%]. */
const fullSlackPercent = 0.3;
const fullMark = 98;

/** Lets the packs stand without charger: self-discharge, and standby drain of the one in the machine. */
export function stand(
  model: WeekModel,
  packs: readonly PackState[],
  active: number,
  minutes: number,
  temperatureC: number,
): void {
  packs.forEach((pack, index) => {
    const isolated = model.week.isolatedWhenParked || index !== active;
    pack.percent = Math.max(0, pack.percent - minutes * model.drain(temperatureC, isolated));
    if (pack.percent < pack.troughPercent) pack.troughPercent = pack.percent;
  });
}

/** The packs on the charger from `startMin` to `endMin` of the season. Returns the minutes each was really charging. */
export function plugIn(
  model: WeekModel,
  packs: readonly PackState[],
  tally: SeasonTally,
  stretch: PlugStretch,
  untilPercent: number,
): number[] {
  const { week } = model;
  const outdoorC = model.temperatureC(Math.floor(stretch.startMin / minutesPerWeek));
  const temperatureC = week.place.chargeTemperatureC ?? outdoorC;
  const hours = (stretch.endMin - stretch.startMin) / 60;
  if (model.lithium && temperatureC < 0) {
    tally.coldHours += hours;
    stand(model, packs, -1, hours * 60, outdoorC);
    return packs.map(() => 0);
  }
  const table = model.charge(temperatureC);
  const order = packs
    .map((_, index) => index)
    .toSorted((a, b) => packs[a]!.percent - packs[b]!.percent);
  const minutes = packs.map(() => 0);
  let usedH = 0;
  for (const index of order) {
    const offsetH = week.sharedCharger || packs.length === 1 ? usedH : 0;
    const workedH = chargePack(model, packs[index]!, tally, stretch, table, offsetH, untilPercent);
    minutes[index] = workedH * 60;
    usedH += workedH;
  }
  return minutes;
}

function chargePack(
  model: WeekModel,
  pack: PackState,
  tally: SeasonTally,
  stretch: PlugStretch,
  table: ChargeTable,
  offsetH: number,
  untilPercent: number,
): number {
  const fromMin = stretch.startMin + offsetH * 60;
  const availableH = (stretch.endMin - fromMin) / 60;
  const before = pack.percent;
  const charged = chargeFor(table, before, availableH, untilPercent);
  if (charged.hours > 0) {
    bookDepth(model, pack);
    pack.percent = charged.percent;
    pack.peakPercent = charged.percent;
    pack.troughPercent = charged.percent;
    tally.mainsWh += charged.mainsWh;
    tally.chargingHours += charged.hours;
    if (!stretch.attended) tally.unattendedHours += charged.hours;
    tally.cost += costOf(model, fromMin, charged.hours, charged.mainsWh);
  }
  const fullPercent = Math.min(fullMark, table.endPercent, untilPercent) - fullSlackPercent;
  if (pack.percent >= fullPercent) {
    const fullMin = fromMin + charged.hours * 60;
    if (pack.usedSinceFull) {
      tally.fullCharges += 1;
      tally.longestWithoutFullMin = Math.max(
        tally.longestWithoutFullMin,
        fullMin - pack.lastFullMin,
      );
    }
    pack.lastFullMin = fullMin;
    pack.usedSinceFull = false;
  }
  return charged.hours;
}

/** Books the swing since the last charge as wear. */
export function bookDepth(model: WeekModel, pack: PackState): void {
  const depth = (pack.peakPercent - pack.troughPercent) / 100;
  if (depth <= 0.001) return;
  pack.wear += 1 / cyclesAtDepth(model.option.pack.block.chemistry, depth);
  pack.equivalentCycles += depth;
}

function costOf(model: WeekModel, fromMin: number, hours: number, mainsWh: number): number {
  const { pricePerKWh, cheap } = model.week.tariff;
  if (pricePerKWh === null) return 0;
  const span = { startMin: fromMin, endMin: fromMin + hours * 60 };
  const cheapShare =
    cheap === null ? 0 : minutesInside(span, cheap.fromMin, cheap.toMin) / (hours * 60);
  const price = pricePerKWh + cheapShare * ((cheap?.pricePerKWh ?? 0) - pricePerKWh);
  return (mainsWh / 1000) * price;
}
