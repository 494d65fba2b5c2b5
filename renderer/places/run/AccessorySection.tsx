import { Button } from '../../controls/Button.tsx';
import { Figure } from '../../controls/Figure.tsx';
import { Section } from '../../controls/Section.tsx';
import { SeriesMark } from '../../controls/SeriesMark.tsx';
import { goToField } from '../../state/place-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { seriesLook } from '../../styles/series.ts';
import { formatDifference, formatFigure, formatMinutes } from '../../text/format.ts';
import { runTexts } from '../../text/run.ts';
import { useText } from '../../text/use-text.ts';
import type { OptionStudy, PlanStudy } from '#core/study/study.ts';
import { accessoryWorking } from '../../workings/accessory-working.ts';
import type { Working } from '../../controls/working.ts';
import { converterWorking, standbyWorking } from '../../workings/run-figure-workings.ts';

/** The accessory question, answered per option: minutes lost, converter, fading, standby. */
export const AccessorySection = ({ study }: { readonly study: PlanStudy }) => {
  const text = useText(runTexts);
  const longest = Math.max(
    1,
    ...study.options.map((option) => option.withoutAccessories.runTimeMin),
  );
  return (
    <Section
      title={text.accessoryTitle}
      lead={text.accessoryLead}
      actions={
        <Button onPress={() => goToField('machine', 'machine.accessories.0.on')}>
          {text.switchThem}
        </Button>
      }
    >
      <ul className="answers">
        {study.options.map((option, index) => (
          <Answer key={option.id} option={option} index={index} longestMin={longest} />
        ))}
      </ul>
    </Section>
  );
};

interface AnswerProps {
  readonly option: OptionStudy;
  readonly index: number;
  readonly longestMin: number;
}

const Answer = ({ option, index, longestMin }: AnswerProps) => {
  const text = useText(runTexts);
  const language = useSettings((state) => state.language);
  const { run, withoutAccessories, standbyDaysToHalf } = option;
  const width = (minutes: number): string => `${(100 * minutes) / longestMin}%`;
  const bars = [
    { id: 'with', label: text.withAccessories, minutes: run.runTimeMin, isFull: true },
    {
      id: 'without',
      label: text.withoutAccessories,
      minutes: withoutAccessories.runTimeMin,
      isFull: false,
    },
  ];
  return (
    <li className="answer">
      <div className="answer-head">
        <span className="option-cell">
          <SeriesMark index={index} />
          <b>{option.name}</b>
        </span>
        <Figure
          label={text.accessoryTitle}
          size="inline"
          value={formatDifference(-option.accessoryCostMin, language)}
          unit="min"
          working={() => accessoryWorking(option, language)}
        />
        <span className="soft">{`${formatDifference(-option.accessoryCostPercent, language)} %`}</span>
      </div>
      {bars.map((bar) => (
        <div key={bar.id} className="answer-bar">
          <span className="answer-label">{bar.label}</span>
          <span className="answer-track">
            <span
              className={bar.isFull ? 'answer-fill' : 'answer-fill answer-fill-plain'}
              style={{
                width: width(bar.minutes),
                ...(bar.isFull
                  ? { backgroundColor: `var(--series-${seriesLook(index).number})` }
                  : {}),
              }}
            />
          </span>
          <span className="number">{formatMinutes(bar.minutes, language)}</span>
        </div>
      ))}
      <dl className="answer-facts">
        {run.converterEfficiencyPercent === null ? null : (
          <Fact
            name={text.efficiency}
            value={`${formatFigure(run.converterEfficiencyPercent, language)} %`}
            working={() => converterWorking(option, language)}
          />
        )}
        <Fact
          name={text.brownOutLabel}
          value={
            run.brownOutAtMin === null
              ? text.noBrownOut
              : text.brownOut(formatMinutes(run.brownOutAtMin, language))
          }
        />
        <Fact
          name={text.standby}
          value={
            standbyDaysToHalf === null
              ? text.standbyNever
              : `${formatFigure(standbyDaysToHalf, language, 2)} ${text.days}`
          }
          working={() => standbyWorking(option, index, language)}
        />
      </dl>
    </li>
  );
};

interface FactProps {
  readonly name: string;
  readonly value: string;
  readonly working?: () => Working;
}

const Fact = ({ name, value, working }: FactProps) => (
  <div>
    <dt>{name}</dt>
    <dd>
      {working === undefined ? (
        value
      ) : (
        <Figure size="inline" label={name} value={value} working={working} />
      )}
    </dd>
  </div>
);
