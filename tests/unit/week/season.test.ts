import { describe, expect, test } from 'vitest';
import { samplePlan } from '#core/plan/samples/index.ts';
import type { Plan } from '#core/plan/schema/plan.ts';
import type { Week } from '#core/plan/schema/week.ts';
import { runOuting } from '#core/run/run-outing.ts';
import { availableMin, outingTable, percentAfter } from '#core/week/outing-table.ts';
import { chargeFor, chargeTable, hoursFromTo } from '#core/week/charge-table.ts';
import { newWeek, studyWeek } from '#core/week/index.ts';
import { simulateSeason } from '#core/week/simulate-season.ts';
import { weekModel } from '#core/week/week-model.ts';

const plan = samplePlan('orchard-cart');
const lead = plan.options[0]!;
const lithium = plan.options[1]!;
const outing = plan.outings.find(({ id }) => id === plan.headlineOuting)!;
const weekOf = (change: Partial<Week> = {}): Week => ({ ...newWeek(plan), ...change });
const planOf = (change: Partial<Week> = {}): Plan => ({ ...plan, week: weekOf(change) });
const use = (change: Partial<Week['usage'][number]> = {}): Week['usage'] => [
  { ...newWeek(plan).usage[0]!, durationMin: 20, ...change },
];
const everyDay = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;
const season = (change: Partial<Week>, option = lead) => {
  const week = weekOf(change);
  return simulateSeason(weekModel({ ...plan, week }, option, option.charger!, week), week.routine);
};

describe('the line of an outing', () => {
  const table = outingTable(lead, plan.machine, outing, 20, 6000);

  test('gives within 8 % the minutes a direct run from a part charge gives', () => {
    for (const startPercent of [92, 78, 62]) {
      const direct = runOuting({ ...lead, startPercent }, plan.machine, {
        ...outing,
        ambientC: 20,
        longestMin: 6000,
      });
      const read = availableMin(table, startPercent);
      expect(
        Math.abs(read / direct.runTimeMin - 1),
        `${read} against ${direct.runTimeMin}`,
      ).toBeLessThan(0.08);
    }
  });

  test('lasts shorter and ends no lower the less charge it starts with', () => {
    for (let percent = 100; percent >= 5; percent -= 5) {
      expect(availableMin(table, percent - 5)).toBeLessThanOrEqual(availableMin(table, percent));
      expect(percentAfter(table, percent, 1000)).toBeLessThanOrEqual(percent);
    }
    expect(availableMin(table, 5)).toBe(table.minutes.at(-1));
  });

  test('leaves the charge alone when it lasts no minute', () => {
    expect(percentAfter(table, 80, 0)).toBe(80);
  });
});

describe('the line of a charge', () => {
  const table = chargeTable(lead, lead.charger!, 20);

  test('charges in two sittings as far as in one', () => {
    const once = chargeFor(table, 40, 5, 100);
    const first = chargeFor(table, 40, 2, 100);
    const second = chargeFor(table, first.percent, 3, 100);
    expect(second.percent).toBeCloseTo(once.percent, 6);
    expect(first.mainsWh + second.mainsWh).toBeCloseTo(once.mainsWh, 6);
  });

  test('takes no energy into a full pack', () => {
    expect(chargeFor(table, 100, 8, 100)).toEqual({ percent: 100, mainsWh: 0, hours: 0 });
  });

  test('needs the hours it says', () => {
    const hours = hoursFromTo(table, 50, 90);
    expect(chargeFor(table, 50, hours, 100).percent).toBeCloseTo(90, 6);
  });
});

describe('a season', () => {
  test('without outings loses none and needs little', () => {
    const result = season({ usage: use({ chancePercent: 0 }) });
    expect(result.outings).toBe(0);
    expect(result.failedOutings).toBe(0);
    expect(result.equivalentCycles).toBeLessThan(2);
  });

  test('counts two outings a week', () => {
    const result = season({ usage: use() });
    expect(result.outings).toBe(2 * result.weeks);
    expect(result.failedOutings).toBe(0);
    expect(result.equivalentCycles).toBeCloseTo(
      (result.outings * result.meanDepthPercent) / 100,
      0,
    );
  });

  test('with a chance of one half has about half the outings, and the same ones for the same seed', () => {
    const one = season({ usage: use({ days: [...everyDay], chancePercent: 50 }) });
    const same = season({ usage: use({ days: [...everyDay], chancePercent: 50 }) });
    expect(one.outings).toBe(same.outings);
    expect(one.outings / (7 * one.weeks)).toBeGreaterThan(0.35);
    expect(one.outings / (7 * one.weeks)).toBeLessThan(0.65);
  });

  test('names the outing that is too long, with the minutes it lasts', () => {
    const result = season({ usage: use({ durationMin: 300, days: ['sat'] }) });
    expect(result.failedOutings).toBe(result.outings);
    const [failure] = result.failures;
    expect(failure!.day).toBe('sat');
    expect(failure!.wantedMin).toBe(300);
    expect(failure!.shortestMin).toBeLessThan(100);
    expect(failure!.shortestMin).toBeGreaterThan(20);
  });

  test('charged at weekends only loses the outings of the week that a nightly charge allows', () => {
    const usage = use({ days: [...everyDay], durationMin: 40 });
    const routine = newWeek(plan).routine;
    const nightly = season({ usage, routine: { ...routine, trigger: 'nightly' } });
    const weekend = season({ usage, routine: { ...routine, trigger: 'weekend' } });
    expect(nightly.failedOutings).toBe(0);
    expect(weekend.failedOutings).toBeGreaterThan(weekend.weeks * 2);
  });

  test('with two packs in rotation drives what one pack cannot', () => {
    const usage = use({ days: ['sat'], durationMin: 100 });
    const one = season({ usage });
    const two = season({ usage, packCount: 2 });
    expect(one.failedOutings).toBe(one.outings);
    expect(two.failedOutings).toBe(0);
  });

  test('with one charger for two packs needs the window that two chargers do not', () => {
    const usage = use({ days: [...everyDay], durationMin: 100 });
    const windows = [{ ...newWeek(plan).windows[0]!, fromMin: 22 * 60, toMin: 5 * 60 }];
    const shared = season({ usage, windows, packCount: 2, sharedCharger: true });
    const apart = season({ usage, windows, packCount: 2, sharedCharger: false });
    expect(shared.lowestPercent).toBeLessThanOrEqual(apart.lowestPercent);
    expect(shared.failedOutings).toBeGreaterThan(apart.failedOutings);
  });

  test('does not charge lithium below freezing and says how long it could not', () => {
    const climate = { warmestMonthC: 10, coldestMonthC: -12, warmestMonth: 7 };
    const cold = season(
      { usage: use({ durationMin: 60 }), climate, season: { firstMonth: 1, weeks: 8, seed: 1 } },
      lithium,
    );
    expect(cold.coldHours).toBeGreaterThan(100);
    expect(cold.failedOutings).toBeGreaterThan(0);
    const indoors = season(
      {
        usage: use({ durationMin: 60 }),
        climate,
        season: { firstMonth: 1, weeks: 8, seed: 1 },
        place: { ...newWeek(plan).place, chargeTemperatureC: 15 },
      },
      lithium,
    );
    expect(indoors.coldHours).toBe(0);
  });

  test('costs less on a night tariff, by the hours that fall into it', () => {
    const usage = use();
    const day = season({ usage, tariff: { pricePerKWh: 0.4, cheap: null } });
    const night = season({
      usage,
      tariff: { pricePerKWh: 0.4, cheap: { pricePerKWh: 0.2, fromMin: 18 * 60, toMin: 8 * 60 } },
    });
    expect(night.mainsKWh).toBeCloseTo(day.mainsKWh, 9);
    expect(night.cost!).toBeCloseTo(day.cost! / 2, 9);
    expect(day.cost!).toBeCloseTo(day.mainsKWh * 0.4, 9);
    expect(season({ usage, tariff: { pricePerKWh: null, cheap: null } }).cost).toBeNull();
  });

  test('of a whole year takes well under a tenth of a second once the tables stand', () => {
    const week = weekOf({
      usage: use({ days: [...everyDay], chancePercent: 70 }),
      season: { firstMonth: 1, weeks: 52, seed: 2 },
    });
    const model = weekModel({ ...plan, week }, lead, lead.charger!, week);
    simulateSeason(model, week.routine);
    const from = performance.now();
    simulateSeason(model, week.routine);
    expect(performance.now() - from).toBeLessThan(100);
  });
});

describe('the study of a week', () => {
  test('proposes the routine that loses the fewest outings', () => {
    const study = studyWeek(planOf({ usage: use({ days: [...everyDay], durationMin: 40 }) }), lead);
    const chosen = study.seasons.find((entry) => entry.trigger === study.proposal!.trigger)!;
    expect(chosen.failedOutings).toBe(
      Math.min(...study.seasons.map((entry) => entry.failedOutings)),
    );
    expect(study.proposal!.trigger).not.toBe('weekend');
    expect(study.steps.length).toBeGreaterThan(0);
    expect(study.steps[0]!.plugMin).toBe(20 * 60);
  });

  test('has a typical week without gap and without overlap', () => {
    const { proposedWeek } = studyWeek(planOf({ usage: use() }), lead);
    let at = 0;
    for (const stretch of proposedWeek.filter(({ pack }) => pack === 1)) {
      expect(stretch.startMin).toBeCloseTo(at, 6);
      at = stretch.endMin;
    }
    expect(at).toBeCloseTo(7 * 1440, 6);
  });

  test('says what stands in its way instead of guessing', () => {
    expect(studyWeek(planOf(), { ...lead, charger: null }).obstacle).toBe('no-charger');
    expect(studyWeek(planOf({ usage: [] }), lead).obstacle).toBe('no-use');
    expect(studyWeek(planOf({ windows: [] }), lead).obstacle).toBe('no-window');
    const small = {
      ...lead,
      charger: { ...lead.charger!, cellGroups: 6, endVoltageV: 14.7, floatVoltageV: 13.6 },
    };
    expect(studyWeek(planOf(), small).obstacle).toBe('charger-cannot-charge');
  });

  test('tops a stored lead pack up every month and stores lithium half full', () => {
    const leadStorage = studyWeek(planOf({ usage: use() }), lead).storage!;
    expect(leadStorage.topUpDays[0]).toBe(30);
    expect(leadStorage.lowestPercent).toBeGreaterThan(leadStorage.endPercentAlone);
    const lithiumStorage = studyWeek(planOf({ usage: use() }), lithium).storage!;
    expect(lithiumStorage.startPercent).toBe(50);
    expect(
      studyWeek(planOf({ season: { firstMonth: 1, weeks: 52, seed: 1 } }), lead).storage,
    ).toBeNull();
  });
});
