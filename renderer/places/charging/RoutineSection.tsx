import { useState } from 'react';
import type { Option } from '#core/plan/schema/option.ts';
import { weekdays, type Routine } from '#core/plan/schema/week.ts';
import { calendarText, clockText, parseCivilDate, type WeekStudy } from '#core/week/index.ts';
import { exportAs } from '../../charts/export-chart.ts';
import { Button } from '../../controls/Button.tsx';
import { Section } from '../../controls/Section.tsx';
import { edit, planStore, usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { chargingTexts } from '../../text/charging.ts';
import { formatFigure, formatMinutes } from '../../text/format.ts';
import { useText } from '../../text/use-text.ts';
import { DayToggles } from './DayToggles.tsx';
import { RoutineTable } from './RoutineTable.tsx';
import { nextSeasonStart, today } from './season-start.ts';
import { StorageText } from './StorageText.tsx';

interface RoutineSectionProps {
  readonly option: Option;
  readonly study: WeekStudy;
}

/** The ways of plugging in compared, the proposed one with its steps, what would fail, storage, and the calendar. */
export const RoutineSection = ({ option, study }: RoutineSectionProps) => {
  const text = useText(chargingTexts);
  const words = text.routine;
  const language = useSettings((state) => state.language);
  const outings = usePlan((plan) => plan.outings);
  const routine = usePlan((plan) => plan.week?.routine ?? null);
  const [firstDay, setFirstDay] = useState(() =>
    nextSeasonStart(study.week.season.firstMonth, today()),
  );
  const { seasons, proposal, obstacle, steps, storage, week } = study;
  if (routine === null) return null;
  const figure = (value: number, digits = 3) => formatFigure(value, language, digits);
  const percent = (value: number) => `${figure(value, 2)} %`;
  const proposed = seasons.find(({ trigger }) => trigger === proposal?.trigger);
  const take = (trigger: Routine['trigger']): void =>
    edit(words.taken, (plan) => {
      if (plan.week !== null) plan.week.routine.trigger = trigger;
    });
  const save = (): void => {
    const from = parseCivilDate(firstDay);
    if (from !== null)
      void exportAs(
        'ics',
        `${option.name} charging`,
        calendarText(planStore.getState().plan, option, study, from, language),
      );
  };
  return (
    <Section
      title={words.title}
      lead={words.lead(week.season.weeks)}
      actions={
        steps.length === 0 ? undefined : (
          <>
            <label className="first-day">
              <span className="field-label">{words.firstDay}</span>
              <span className="input-box">
                <input
                  className="time-input"
                  type="date"
                  value={firstDay}
                  onChange={(event) => setFirstDay(event.target.value)}
                />
              </span>
            </label>
            <Button isDisabled={parseCivilDate(firstDay) === null} onPress={save}>
              {words.calendar}
            </Button>
          </>
        )
      }
    >
      {obstacle === null ? null : <p className="charging-failure">{words.obstacles[obstacle]}</p>}
      {proposal === null ? null : (
        <p className="charging-answer">
          <b>{words.triggers[proposal.trigger]}.</b>
          {` ${words.because} ${proposal.reasons.map((reason) => words.reasons[reason]).join(', ')}.`}
        </p>
      )}
      {seasons.length === 0 ? null : (
        <RoutineTable
          seasons={seasons}
          proposed={proposal?.trigger ?? null}
          chosen={routine.trigger}
          onTake={take}
        />
      )}
      <div className="own-days">
        <span className="field-label">{words.ownDays}</span>
        <DayToggles
          path="week.routine.ownDays"
          label={words.ownDays}
          days={routine.ownDays}
          needsOne={false}
        />
      </div>
      <div className="routine-columns">
        {proposed === undefined ? null : (
          <div>
            <h3 className="charging-head">{words.stepsTitle}</h3>
            <ul className="plain-list">
              {steps.length === 0 ? <li>{words.noSteps}</li> : null}
              {steps.map((step) => (
                <li key={`${step.pack}-${step.plugMin}`}>
                  {words.step(
                    step.days.length === weekdays.length
                      ? text.week.daily
                      : step.days.map((day) => text.days[day]).join(', '),
                    clockText(step.plugMin),
                    formatMinutes(step.chargingMin, language),
                    percent(step.fromPercent),
                    percent(step.toPercent),
                    step.pack,
                  )}
                </li>
              ))}
            </ul>
            <h3 className="charging-head">{words.failTitle}</h3>
            <ul className="plain-list">
              {proposed.failures.length === 0 ? <li>{words.failNone}</li> : null}
              {proposed.failures.map((failure) => (
                <li key={`${failure.usageId}-${failure.day}`}>
                  {words.fail(
                    outings.find(({ id }) => id === failure.outingId)?.name ?? failure.outingId,
                    text.daysLong[failure.day],
                    clockText(failure.startMin),
                    failure.failed,
                    failure.wanted,
                    formatMinutes(failure.shortestMin, language),
                    formatMinutes(failure.wantedMin, language),
                  )}
                </li>
              ))}
              {proposed.coldHours > 0 ? (
                <li>{words.cold(`${figure(proposed.coldHours)} h`)}</li>
              ) : null}
            </ul>
          </div>
        )}
        {storage === null ? null : <StorageText storage={storage} />}
      </div>
    </Section>
  );
};
