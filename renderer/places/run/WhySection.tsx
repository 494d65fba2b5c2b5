import { DataTable } from '../../controls/DataTable.tsx';
import { Figure } from '../../controls/Figure.tsx';
import { Section } from '../../controls/Section.tsx';
import { SeriesMark } from '../../controls/SeriesMark.tsx';
import { usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { formatFigure, formatMinutes } from '../../text/format.ts';
import { runTexts } from '../../text/run.ts';
import { useText } from '../../text/use-text.ts';
import { peukertReasonText } from '#core/study/peukert-reasons.ts';
import type { PlanStudy } from '#core/study/study.ts';
import { peukertWorking, plainWorking } from '../../workings/rate-workings.ts';
import { promiseWorking } from '../../workings/run-figure-workings.ts';
import { runTimeWorking } from '../../workings/run-time-working.ts';

/** The label's promise, Peukert's figure and the run, side by side, and why they differ. */
export const WhySection = ({ study }: { readonly study: PlanStudy }) => {
  const text = useText(runTexts);
  const language = useSettings((state) => state.language);
  const options = usePlan((plan) => plan.options);
  return (
    <Section title={text.whyTitle} lead={text.whyLead}>
      <DataTable
        caption={text.whyTitle}
        hideCaption
        columns={[
          { id: 'name', label: text.option },
          { id: 'plain', label: text.plain, isNumber: true },
          { id: 'peukert', label: text.peukert, isNumber: true },
          { id: 'run', label: text.simulated, isNumber: true },
          { id: 'share', label: text.missing, unit: '%', isNumber: true },
        ]}
        rows={study.options.map((entry, index) => {
          const option = options.find(({ id }) => id === entry.id);
          const minutes = (value: number): string => formatMinutes(value, language);
          const { plainMin, peukertMin } = entry;
          return {
            id: entry.id,
            cells: {
              name: (
                <span className="option-cell">
                  <SeriesMark index={index} />
                  {entry.name}
                </span>
              ),
              plain:
                plainMin === null ? (
                  '–'
                ) : (
                  <Figure
                    size="inline"
                    label={text.plain}
                    value={minutes(plainMin)}
                    working={() => plainWorking(entry, plainMin, index, language)}
                  />
                ),
              peukert:
                peukertMin === null ? (
                  '–'
                ) : option === undefined ? (
                  minutes(peukertMin)
                ) : (
                  <Figure
                    size="inline"
                    label={text.peukert}
                    value={minutes(peukertMin)}
                    working={() => peukertWorking(entry, peukertMin, option, index, language)}
                  />
                ),
              run: (
                <Figure
                  size="inline"
                  label={text.simulated}
                  value={minutes(entry.run.runTimeMin)}
                  working={() => runTimeWorking(entry, index, language)}
                />
              ),
              share:
                plainMin === null ? (
                  '–'
                ) : (
                  <Figure
                    size="inline"
                    label={`${text.missing}, ${entry.name}`}
                    value={formatFigure((100 * entry.run.runTimeMin) / plainMin, language, 2)}
                    working={() => promiseWorking(entry, plainMin, language)}
                  />
                ),
            },
          };
        })}
      />
      <ul className="why-reasons">
        {study.options.map((entry, index) => (
          <li key={entry.id}>
            <SeriesMark index={index} /> <strong>{entry.name}.</strong>{' '}
            {entry.peukertReasons.map((reason) => peukertReasonText(reason, language)).join(' ')}
          </li>
        ))}
      </ul>
      <p className="why-text">{text.whyText}</p>
    </Section>
  );
};
