import type { Routine } from '../plan/schema/week.ts';
import { weekdays } from '../plan/schema/week.ts';
import { minutesPerWeek } from './clock.ts';
import { expectedSeasons } from './cycle-wear.ts';
import { bookFailure, failuresOf, type FailureBook } from './failures.ts';
import { availableMin, percentAfter } from './outing-table.ts';
import { bookDepth, plugIn, stand } from './park.ts';
import { plugStretches, type PlugStretch } from './plug-stretches.ts';
import type { SeasonResult, WeekStretch } from './season-result.ts';
import {
  startPackState,
  startTally,
  type PackState,
  type SeasonTally,
  type Trace,
} from './season-state.ts';
import { wantedOutings, type WantedOuting } from './wanted-outings.ts';
import type { WeekModel } from './week-model.ts';

/** A routine at work: the season's clock, its packs, its sums. */
interface Season {
  readonly model: WeekModel;
  readonly routine: Routine;
  readonly untilPercent: number;
  readonly packs: PackState[];
  readonly tally: SeasonTally;
  readonly failures: FailureBook;
  readonly weekStartPercent: Float64Array;
  readonly weekLowestPercent: Float64Array;
  readonly weekFailed: Float64Array;
  readonly trace: Trace | null;
}

/** Simulates a season under a routine. Deterministic for a given seed. */
export function simulateSeason(model: WeekModel, routine: Routine): SeasonResult {
  const { weeks } = model.week.season;
  const season = startSeason(model, routine, weeks, null);
  const outings = wantedOutings(model, weeks, true);
  sweep(season, outings, weeks);
  const { packs, tally } = season;
  for (const pack of packs) bookDepth(model, pack);
  const busiest = packs.reduce((one, other) => (other.wear > one.wear ? other : one));
  const temperatures = Float64Array.from({ length: weeks }, (_, week) => model.temperatureC(week));
  const meanC = (model.week.climate.warmestMonthC + model.week.climate.coldestMonthC) / 2;
  return {
    trigger: routine.trigger,
    weeks,
    outings: outings.length,
    failedOutings: tally.failed,
    failures: failuresOf(season.failures),
    belowMinimum: tally.belowMinimum,
    lowestPercent: tally.lowestPercent,
    meanDepthPercent: outings.length === 0 ? 0 : tally.depthSum / outings.length,
    deepestPercent: tally.deepest,
    equivalentCycles: busiest.equivalentCycles,
    expectedSeasons: expectedSeasons(model.option.pack.block.chemistry, busiest.wear, meanC),
    fullCharges: tally.fullCharges,
    longestWithoutFullDays: tally.longestWithoutFullMin / 1440,
    mainsKWh: tally.mainsWh / 1000,
    cost: model.week.tariff.pricePerKWh === null ? null : tally.cost,
    chargingHours: tally.chargingHours,
    unattendedHours: tally.unattendedHours,
    coldHours: tally.coldHours,
    weekStartPercent: season.weekStartPercent,
    weekLowestPercent: season.weekLowestPercent,
    weekFailed: season.weekFailed,
    weekTemperatureC: temperatures,
  };
}

/** The third week in a row in which every likely use takes place, stretch by stretch. */
export function typicalWeek(model: WeekModel, routine: Routine): WeekStretch[] {
  const weeks = 3;
  const trace: Trace = { fromMin: 2 * minutesPerWeek, untilMin: 3 * minutesPerWeek, stretches: [] };
  sweep(startSeason(model, routine, weeks, trace), wantedOutings(model, weeks, false), weeks);
  return trace.stretches;
}

function startSeason(
  model: WeekModel,
  routine: Routine,
  weeks: number,
  trace: Trace | null,
): Season {
  const untilPercent = routine.untilPercent ?? 100;
  const startPercent = Math.min(
    untilPercent,
    model.charge(model.week.place.chargeTemperatureC ?? 20).endPercent,
  );
  return {
    model,
    routine,
    untilPercent,
    packs: Array.from({ length: model.week.packCount }, () => startPackState(startPercent)),
    tally: startTally(),
    failures: new Map(),
    weekStartPercent: new Float64Array(weeks).fill(-1),
    weekLowestPercent: new Float64Array(weeks).fill(startPercent),
    weekFailed: new Float64Array(weeks),
    trace,
  };
}

function sweep(season: Season, outings: readonly WantedOuting[], weeks: number): void {
  const pattern = plugStretches(season.model.week.windows, season.routine);
  const plugs: PlugStretch[] = [];
  for (let week = -1; week < weeks; week += 1) {
    const shift = week * minutesPerWeek;
    for (const stretch of pattern)
      plugs.push({
        ...stretch,
        startMin: stretch.startMin + shift,
        endMin: stretch.endMin + shift,
      });
  }
  let nowMin = 0;
  let nextPlug = 0;
  const parkUntil = (endMin: number) => {
    while (nextPlug < plugs.length && plugs[nextPlug]!.endMin <= nowMin) nextPlug += 1;
    for (
      let index = nextPlug;
      index < plugs.length && plugs[index]!.startMin < endMin;
      index += 1
    ) {
      const plug = plugs[index]!;
      const startMin = Math.max(plug.startMin, nowMin);
      if (startMin > nowMin) idle(season, nowMin, startMin);
      onCharger(season, { ...plug, startMin, endMin: Math.min(plug.endMin, endMin) });
      nowMin = Math.min(plug.endMin, endMin);
    }
    if (endMin > nowMin) idle(season, nowMin, endMin);
    nowMin = Math.max(nowMin, endMin);
  };
  for (const outing of outings) {
    parkUntil(Math.max(outing.startMin, nowMin));
    nowMin += drive(season, outing, nowMin);
  }
  parkUntil(weeks * minutesPerWeek);
}

const fullest = (packs: readonly PackState[]) =>
  packs.reduce((best, pack, index) => (pack.percent > packs[best]!.percent ? index : best), 0);

function weekAt(season: Season, minute: number): number {
  return Math.min(season.weekStartPercent.length - 1, Math.floor(minute / minutesPerWeek));
}

/** Notes the charge of the fullest pack in the week's columns. */
function note(season: Season, minute: number): void {
  const week = weekAt(season, minute);
  const percent = season.packs[fullest(season.packs)]!.percent;
  if (season.weekStartPercent[week] === -1) season.weekStartPercent[week] = percent;
  if (percent < season.weekLowestPercent[week]!) season.weekLowestPercent[week] = percent;
}

function idle(season: Season, startMin: number, endMin: number): void {
  note(season, startMin);
  const before = season.packs.map((pack) => pack.percent);
  stand(
    season.model,
    season.packs,
    fullest(season.packs),
    endMin - startMin,
    season.model.temperatureC(weekAt(season, startMin)),
  );
  season.packs.forEach((pack, index) =>
    traced(season, 'parked', startMin, endMin, index, before[index]!, pack.percent),
  );
  note(season, endMin);
}

function onCharger(season: Season, stretch: PlugStretch): void {
  note(season, stretch.startMin);
  const rests =
    season.routine.trigger === 'after-use' && !season.packs.some((pack) => pack.usedSinceFull);
  if (rests) {
    idle(season, stretch.startMin, stretch.endMin);
    return;
  }
  const before = season.packs.map((pack) => pack.percent);
  const minutes = plugIn(season.model, season.packs, season.tally, stretch, season.untilPercent);
  season.packs.forEach((pack, index) => {
    const doneMin = stretch.startMin + minutes[index]!;
    traced(season, 'charge', stretch.startMin, doneMin, index, before[index]!, pack.percent);
    traced(season, 'plugged', doneMin, stretch.endMin, index, pack.percent, pack.percent);
  });
}

/** Drives an outing, on the second pack where the first gives out; returns its minutes. */
function drive(season: Season, outing: WantedOuting, startMin: number): number {
  const { model, packs, tally } = season;
  note(season, startMin);
  const week = weekAt(season, startMin);
  const temperatureC = model.temperatureC(week);
  const table = model.outing(outing.usage.outingId, temperatureC);
  let drivenMin = 0;
  let lowest = 100;
  for (let turn = 0; turn < packs.length && drivenMin < outing.wantedMin - 1e-6; turn += 1) {
    const index = fullest(packs);
    const pack = packs[index]!;
    const minutes = Math.min(outing.wantedMin - drivenMin, availableMin(table, pack.percent));
    if (minutes <= 0) break;
    const before = pack.percent;
    pack.percent = percentAfter(table, before, minutes);
    pack.troughPercent = Math.min(pack.troughPercent, pack.percent);
    pack.usedSinceFull = true;
    lowest = Math.min(lowest, pack.percent);
    tally.depthSum += before - pack.percent;
    tally.deepest = Math.max(tally.deepest, pack.peakPercent - pack.percent);
    const fails = turn === packs.length - 1 && drivenMin + minutes < outing.wantedMin - 0.5;
    traced(
      season,
      'outing',
      startMin + drivenMin,
      startMin + drivenMin + minutes,
      index,
      before,
      pack.percent,
      outing.usage.id,
      fails,
    );
    drivenMin += minutes;
  }
  tally.lowestPercent = Math.min(tally.lowestPercent, lowest);
  if (lowest < model.week.minimumPercent) tally.belowMinimum += 1;
  const failed = drivenMin < outing.wantedMin - 0.5;
  bookFailure(season.failures, outing, weekdays[outing.dayIndex]!, failed, drivenMin, temperatureC);
  if (failed) {
    tally.failed += 1;
    season.weekFailed[week] = season.weekFailed[week]! + 1;
  }
  note(season, startMin);
  return drivenMin;
}

function traced(
  { trace }: Season,
  kind: WeekStretch['kind'],
  startMin: number,
  endMin: number,
  pack: number,
  fromPercent: number,
  toPercent: number,
  usageId: string | null = null,
  failed = false,
): void {
  if (trace === null || endMin <= trace.fromMin || startMin >= trace.untilMin || endMin <= startMin)
    return;
  // A stretch that crosses the week's edge is cut there, its charge in proportion.
  const at = (minute: number) =>
    fromPercent + ((toPercent - fromPercent) * (minute - startMin)) / (endMin - startMin);
  const from = Math.max(startMin, trace.fromMin);
  const until = Math.min(endMin, trace.untilMin);
  trace.stretches.push({
    kind,
    startMin: from - trace.fromMin,
    endMin: until - trace.fromMin,
    pack: pack + 1,
    fromPercent: at(from),
    toPercent: at(until),
    usageId,
    failed,
  });
}
