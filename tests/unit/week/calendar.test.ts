import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { chargeOption } from '#core/charge/charge-option.ts';
import { samplePlan } from '#core/plan/samples/index.ts';
import { calendarText, chargeCard, newWeek, studyWeek } from '#core/week/index.ts';

const sample = samplePlan('orchard-cart');
const plan = { ...sample, week: newWeek(sample) };
const from = { year: 2026, month: 4, day: 8 };

/** Events of a calendar as an independent reader of RFC 5545 sees them. */
const eventsOf = (text: string) =>
  new ICAL.Component(ICAL.parse(text) as [string, unknown[], unknown[]])
    .getAllSubcomponents('vevent')
    .map((part) => ({ part, event: new ICAL.Event(part) }));

describe('the calendar', () => {
  for (const option of sample.options) {
    const study = studyWeek(plan, option);
    const text = calendarText(plan, option, study, from);

    test(`of ${option.id} is read by another program with every event, alarm and repetition`, () => {
      const events = eventsOf(text);
      const top = study.storage!.topUpDays.length;
      expect(events).toHaveLength(study.steps.length + top + 2);
      const ids = new Set(events.map(({ event }) => event.uid));
      expect(ids.size).toBe(events.length);
      for (const { part, event } of events) {
        expect(event.isRecurring()).toBe(true);
        expect(part.getAllSubcomponents('valarm')).toHaveLength(1);
        expect(event.startDate.zone.tzid).toBe('floating');
        expect(event.endDate.compare(event.startDate)).toBe(1);
        expect(event.description.length).toBeGreaterThan(20);
      }
    });

    test(`of ${option.id} rings on the days and at the time of the routine, as often as the season has weeks`, () => {
      const [first] = eventsOf(text);
      const step = study.steps[0]!;
      const iterator = first!.event.iterator();
      const times: ICAL.Time[] = [];
      for (let next = iterator.next(); next; next = iterator.next()) times.push(next);
      expect(times).toHaveLength(step.days.length * plan.week.season.weeks);
      const weekday = { mon: 2, tue: 3, wed: 4, thu: 5, fri: 6, sat: 7, sun: 1 };
      expect(new Set(times.map((time) => time.dayOfWeek()))).toEqual(
        new Set(step.days.map((day) => weekday[day])),
      );
      for (const time of times) expect(time.hour * 60 + time.minute).toBe(step.plugMin);
      // 6 April 2026 is the Monday of the week asked for.
      expect(times[0]!.compare(ICAL.Time.fromDateString('2026-04-06'))).toBe(1);
      expect(times[0]!.compare(ICAL.Time.fromDateString('2026-04-13'))).toBe(-1);
    });
  }

  test('is the same text for the same plan and day, and holds no line above 75 octets', () => {
    const option = sample.options[0]!;
    const once = calendarText(plan, option, studyWeek(plan, option), from, 'de');
    expect(calendarText(plan, option, studyWeek(plan, option), from, 'de')).toBe(once);
    for (const row of once.split('\r\n')) expect(Buffer.byteLength(row)).toBeLessThanOrEqual(75);
    expect(once).toContain('Anstecken');
  });

  test('goes on for ever where the season is the whole year', () => {
    const all = { ...plan, week: { ...plan.week, season: { firstMonth: 1, weeks: 52, seed: 1 } } };
    const option = sample.options[0]!;
    expect(calendarText(all, option, studyWeek(all, option), from)).not.toContain('COUNT=');
  });
});

test('the charge card names voltages, hours, air and the cautions of its chemistry, in both languages', () => {
  const option = sample.options[0]!;
  const charge = chargeOption(option, option.charger!, { temperatureC: 20, startPercent: 40 });
  const card = chargeCard(plan, option, charge, 20);
  expect(card.lines.map(({ label }) => label)).toContain('Fresh air while charging');
  expect(card.cautions.join(' ')).toContain('hydrogen');
  const german = chargeCard(plan, sample.options[1]!, null, 20, 'de');
  expect(german.cautions.join(' ')).toContain('Nie unter 0 °C laden');
  expect(german.lines.some(({ label }) => label.startsWith('Frischluft'))).toBe(false);
});
