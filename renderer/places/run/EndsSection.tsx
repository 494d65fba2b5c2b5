import type { ReactNode } from 'react';
import { DataTable } from '../../controls/DataTable.tsx';
import { Disclosure } from '../../controls/Disclosure.tsx';
import { Figure } from '../../controls/Figure.tsx';
import { Section } from '../../controls/Section.tsx';
import { SeriesMark } from '../../controls/SeriesMark.tsx';
import { usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { appTexts } from '../../text/app.ts';
import { formatFigure, formatMinutes } from '../../text/format.ts';
import { runTexts } from '../../text/run.ts';
import { useText } from '../../text/use-text.ts';
import type { RunEvent } from '#core/run/result.ts';
import type { OptionStudy, PlanStudy } from '#core/study/study.ts';
import { runFigureWorking, type RunFigure } from '../../workings/run-figure-workings.ts';

/** What stops each run and what is left then. */
export const EndsSection = ({ study }: { readonly study: PlanStudy }) => {
  const text = useText(runTexts);
  const app = useText(appTexts);
  const language = useSettings((state) => state.language);
  const outingAt = usePlan((plan) => plan.outings.findIndex(({ id }) => id === study.outingId));
  const restMin = usePlan(
    (plan) => plan.outings.find(({ id }) => id === study.outingId)?.restAfterMin ?? 0,
  );
  return (
    <Section title={text.endsTitle} lead={text.endsLead}>
      <DataTable
        caption={text.endsTitle}
        hideCaption
        columns={[
          { id: 'name', label: text.option },
          { id: 'endedBy', label: text.endedBy },
          { id: 'left', label: text.left, unit: '%', isNumber: true },
          { id: 'lowest', label: text.lowest, unit: 'V', isNumber: true },
          { id: 'peak', label: text.peak, unit: 'A', isNumber: true },
          { id: 'rest', label: text.afterRest(formatMinutes(restMin, language)), isNumber: true },
        ]}
        rows={study.options.map((option, index) => ({
          id: option.id,
          cells: {
            name: (
              <span className="option-cell">
                <SeriesMark index={index} />
                {option.name}
              </span>
            ),
            endedBy: app.ended[option.run.endedBy],
            left: opens(
              'left',
              option,
              index,
              formatFigure(option.run.remainingPercent, language, 2),
            ),
            lowest: opens(
              'lowest',
              option,
              index,
              formatFigure(option.run.minimumBusVoltageV, language),
            ),
            peak: opens('peak', option, index, formatFigure(option.run.peakCurrentA, language)),
            rest:
              option.run.afterRestMin === null
                ? '–'
                : opens('rest', option, index, restWords(option.run.afterRestMin)),
          },
        }))}
      />
      {study.options.map((option) => (
        <Disclosure
          key={option.id}
          title={option.name}
          note={`${text.eventsTitle}, ${text.blocksTitle}`}
        >
          <OptionEnd option={option} />
        </Disclosure>
      ))}
    </Section>
  );

  function opens(figure: RunFigure, option: OptionStudy, index: number, words: string): ReactNode {
    return (
      <Figure
        size="inline"
        label={`${text[figure === 'rest' ? 'endsTitle' : figure]}, ${option.name}`}
        value={words}
        working={() =>
          runFigureWorking(
            figure,
            option,
            index,
            { minutes: restMin, field: `outings.${outingAt}.restAfterMin` },
            language,
          )
        }
      />
    );
  }

  function restWords(minutes: number): string {
    return minutes < 0.05 ? text.noMore : `${formatMinutes(minutes, language)} ${text.more}`;
  }
};

/** Events and blocks of one run. */
const OptionEnd = ({ option }: { readonly option: OptionStudy }) => {
  const text = useText(runTexts);
  const language = useSettings((state) => state.language);
  const where = ({ string, position, group }: RunEvent): string => {
    if (string === undefined || position === undefined) return '';
    const place = text.blockPlace(string, position);
    return group === undefined ? place : `${place}${text.groupPlace(group)}`;
  };
  return (
    <div className="option-end">
      <ol className="events">
        {option.run.events.map((event, index) => (
          <li key={`${event.kind}${index}`}>
            {text.eventAt(
              formatMinutes(event.timeMin, language),
              text.event[event.kind],
              where(event),
            )}
          </li>
        ))}
      </ol>
      <DataTable
        caption={text.blocksTitle}
        columns={[
          { id: 'name', label: text.block },
          { id: 'left', label: text.blockLeft, unit: '%', isNumber: true },
          { id: 'end', label: text.blockEnd, unit: 'V', isNumber: true },
          { id: 'low', label: text.blockLow, unit: 'V', isNumber: true },
          { id: 'temperature', label: text.blockTemperature, unit: '°C', isNumber: true },
        ]}
        rows={option.run.blocks.map((block, index) => ({
          id: String(index),
          cells: {
            name: block.name,
            left: formatFigure(block.remainingPercent, language, 2),
            end: formatFigure(block.endVoltageV, language),
            low: formatFigure(block.minimumVoltageV, language),
            temperature: formatFigure(block.temperatureC, language),
          },
        }))}
      />
    </div>
  );
};
