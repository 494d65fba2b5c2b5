import { useState } from 'react';
import { newWeek } from '#core/week/default-week.ts';
import { Button } from '../../controls/Button.tsx';
import { EmptyState, Section } from '../../controls/Section.tsx';
import { SeriesMark } from '../../controls/SeriesMark.tsx';
import { useChargingState } from '../../state/charging-store.ts';
import { edit, usePlan } from '../../state/plan-store.ts';
import { chargingTexts } from '../../text/charging.ts';
import { useText } from '../../text/use-text.ts';
import { CardSection } from './CardSection.tsx';
import { ConditionsSection } from './ConditionsSection.tsx';
import { CurveSection } from './CurveSection.tsx';
import { MatchSection } from './MatchSection.tsx';
import { OptionPick } from './OptionPick.tsx';
import { RoutineSection } from './RoutineSection.tsx';
import { SeasonSection } from './SeasonSection.tsx';
import { WeekSection } from './WeekSection.tsx';
import './charging.css';

/** Which charger, how it charges, and when to plug in: for one option at a time. */
export const ChargingPlace = () => {
  const text = useText(chargingTexts);
  const options = usePlan((plan) => plan.options);
  const hasWeek = usePlan((plan) => plan.week !== null);
  const [picked, setPicked] = useState<string | null>(null);
  const { study, stale, failure } = useChargingState();
  const at = Math.max(
    0,
    options.findIndex(({ id }) => id === picked),
  );
  const option = options[at];
  if (option === undefined) return null;
  const charging = study?.options.find(({ optionId }) => optionId === option.id) ?? null;
  return (
    <div className="place-body charging" data-stale={stale}>
      <OptionPick
        label={text.option}
        selected={option.id}
        entries={options.map(({ id, name }, index) => ({
          id,
          label: name,
          mark: <SeriesMark index={index} />,
        }))}
        onSelect={setPicked}
      />
      {failure === null ? null : <p className="charging-failure">{`${text.failed} ${failure}`}</p>}
      {charging === null ? (
        <p className="soft">{text.waiting}</p>
      ) : (
        <>
          <MatchSection optionIndex={at} charging={charging} />
          {charging.charge === null ? null : (
            <CurveSection option={option} index={at} charging={charging} />
          )}
        </>
      )}
      {hasWeek ? (
        <>
          <WeekSection option={option} study={charging?.week ?? null} />
          {charging?.week == null ? null : (
            <>
              <RoutineSection option={option} study={charging.week} />
              {charging.week.seasons.length === 0 ? null : <SeasonSection study={charging.week} />}
            </>
          )}
          <ConditionsSection />
        </>
      ) : (
        <WeekStart />
      )}
      {charging === null ? null : <CardSection option={option} charging={charging} />}
    </div>
  );
};

const WeekStart = () => {
  const text = useText(chargingTexts);
  return (
    <Section title={text.week.title}>
      <EmptyState
        icon="charging"
        title={text.week.empty}
        action={
          <Button
            look="main"
            field="week"
            onPress={() =>
              edit(text.week.start, (plan) => {
                plan.week = newWeek(plan);
              })
            }
          >
            {text.week.start}
          </Button>
        }
      >
        {text.week.startLead}
      </EmptyState>
    </Section>
  );
};
