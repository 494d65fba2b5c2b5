import type { Language } from '../plan/language.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Plan } from '../plan/schema/plan.ts';
import type { Weekday } from '../plan/schema/week.ts';
import { formatDuration } from '../units/index.ts';
import { dayNumber, mondayOf, type CivilDate } from './civil-date.ts';
import { dayIndex } from './clock.ts';
import { reminderWords } from './reminder-words.ts';
import type { WeekStudy } from './study-week.ts';

/** One entry of the calendar, in local time. */
export interface Reminder {
  readonly id: string;
  readonly title: string;
  readonly note: string;
  /** Day number of the first time, and minute of that day. */
  readonly firstDay: number;
  readonly startMin: number;
  readonly durationMin: number;
  /** Minutes before the beginning at which the alarm rings. */
  readonly alarmMin: number;
  readonly repeats:
    | {
        readonly every: 'week';
        readonly days: readonly Weekday[];
        /** null: without end. */ readonly count: number | null;
      }
    | { readonly every: 'year' };
}

/** Storage reminders come at this minute of the day. */
const storageMin = 10 * 60;
const storageLengthMin = 30;

/**
 * What the calendar should say: the charges of the proposed routine through the season, and storage, top-ups and the
 * check before the next season.
 *
 * @param from a day of the first week of the season; the routine begins on its Monday
 */
export function reminders(
  plan: Plan,
  option: Option,
  study: WeekStudy,
  from: CivilDate,
  language: Language = 'en',
): Reminder[] {
  const words = reminderWords[language];
  const { week, storage } = study;
  const monday = mondayOf(dayNumber(from));
  const endless = week.season.weeks >= 52;
  const name = (pack: number) => (pack === 1 ? option.name : words.second(option.name));
  const list: Reminder[] = study.steps.map((step, index) => ({
    id: `${option.id}-charge-${index + 1}`,
    title: words.plugIn(name(step.pack)),
    note: `${words.plugInWhy(option.charger?.name ?? '', formatDuration(step.chargingMin, language), percentText(step.fromPercent))} ${words.care}`,
    firstDay: monday + dayIndex(step.days[0]!),
    startMin: step.plugMin,
    durationMin: Math.max(5, Math.ceil(step.chargingMin)),
    alarmMin: 10,
    repeats: {
      every: 'week',
      days: step.days,
      count: endless ? null : step.days.length * week.season.weeks,
    },
  }));
  if (storage === null) return list;
  const seasonEnd = monday + week.season.weeks * 7;
  const yearly = (id: string, title: string, note: string, firstDay: number): Reminder => ({
    id: `${option.id}-${id}`,
    title,
    note: `${note} ${words.care}`,
    firstDay,
    startMin: storageMin,
    durationMin: storageLengthMin,
    alarmMin: 60,
    repeats: { every: 'year' },
  });
  const lithium = storage.startPercent < 100;
  list.push(
    yearly(
      'store',
      words.store(option.name),
      lithium ? words.storeLithium(percentText(storage.startPercent)) : words.storeLead,
      seasonEnd,
    ),
  );
  storage.topUpDays.forEach((day, index) => {
    const limit = lithium
      ? plan.thresholds.care.lithiumStorageLowPercent
      : plan.thresholds.care.leadStoragePercent;
    list.push(
      yearly(
        `top-up-${index + 1}`,
        words.topUp(option.name),
        words.topUpWhy(percentText(limit)),
        seasonEnd + day,
      ),
    );
  });
  list.push(yearly('wake', words.wake(option.name), words.wakeWhy, seasonEnd + storage.days - 7));
  return list;
}

function percentText(percent: number): string {
  return `${Math.round(percent)} %`;
}
