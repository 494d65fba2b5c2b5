import { ICalAlarmType, ICalCalendar, ICalEventRepeatingFreq, ICalWeekday } from 'ical-generator';
import type { Language } from '../plan/language.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Plan } from '../plan/schema/plan.ts';
import type { Weekday } from '../plan/schema/week.ts';
import { dayNumber, isoMinute, type CivilDate } from './civil-date.ts';
import { reminderWords } from './reminder-words.ts';
import { reminders } from './reminders.ts';
import type { WeekStudy } from './study-week.ts';

const calendarDays: Readonly<Record<Weekday, ICalWeekday>> = {
  mon: ICalWeekday.MO,
  tue: ICalWeekday.TU,
  wed: ICalWeekday.WE,
  thu: ICalWeekday.TH,
  fri: ICalWeekday.FR,
  sat: ICalWeekday.SA,
  sun: ICalWeekday.SU,
};

/**
 * The reminders as iCalendar text (RFC 5545), floating times: eight in the evening wherever the machine is. Every date
 * comes from the caller, so that the same plan and day give the same text.
 *
 * @param from a day in the first week of the season
 */
export function calendarText(
  plan: Plan,
  option: Option,
  study: WeekStudy,
  from: CivilDate,
  language: Language = 'en',
): string {
  const calendar = new ICalCalendar({
    name: reminderWords[language].calendar(plan.machine.name),
    prodId: { company: 'Cellwain', product: 'Cellwain', language: language === 'de' ? 'DE' : 'EN' },
  });
  const stamp = isoMinute(dayNumber(from), 0);
  for (const reminder of reminders(plan, option, study, from, language)) {
    const event = calendar.createEvent({
      id: `${reminder.id}@cellwain`,
      stamp,
      start: isoMinute(reminder.firstDay, reminder.startMin),
      end: isoMinute(reminder.firstDay, reminder.startMin + reminder.durationMin),
      floating: true,
      summary: reminder.title,
      description: reminder.note,
    });
    const { repeats } = reminder;
    if (repeats.every === 'year') event.repeating({ freq: ICalEventRepeatingFreq.YEARLY });
    else {
      event.repeating({
        freq: ICalEventRepeatingFreq.WEEKLY,
        byDay: repeats.days.map((day) => calendarDays[day]),
        ...(repeats.count === null ? {} : { count: repeats.count }),
      });
    }
    event.createAlarm({
      type: ICalAlarmType.display,
      trigger: reminder.alarmMin * 60,
      description: reminder.title,
    });
  }
  return calendar.toString();
}
