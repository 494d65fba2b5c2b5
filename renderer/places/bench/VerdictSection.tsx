import { useMemo } from 'react';
import { explainGap, judgeReadings } from '#core/bench/index.ts';
import type { Option } from '#core/plan/schema/option.ts';
import { DataTable } from '../../controls/DataTable.tsx';
import { Section } from '../../controls/Section.tsx';
import { usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { useStudyState } from '../../state/study-store.ts';
import { benchTexts } from '../../text/bench.ts';
import { formatFigure, formatMinutes } from '../../text/format.ts';
import { useText } from '../../text/use-text.ts';

interface VerdictSectionProps {
  readonly option: Option;
}

/** Measured against planned, and what explains a difference in minutes. */
export const VerdictSection = ({ option }: VerdictSectionProps) => {
  const bench = useText(benchTexts);
  const text = bench.verdict;
  const language = useSettings((state) => state.language);
  const plan = usePlan((whole) => whole);
  const study = useStudyState((state) => state.study);
  const own = useMemo(
    () => (plan.bench?.readings ?? []).filter((reading) => reading.optionId === option.id),
    [plan, option],
  );
  const judged = useMemo(
    () =>
      judgeReadings(plan, own, (optionId, outingId) =>
        study?.outingId === outingId
          ? (study.options.find(({ id }) => id === optionId) ?? null)
          : null,
      ),
    [plan, own, study],
  );
  const outingId = own.findLast((reading) => reading.kind === 'time-to-cutoff')?.outingId;
  const gap = useMemo(
    () => (outingId === undefined ? null : explainGap(plan, option.id, outingId)),
    [plan, option, outingId],
  );
  if (own.length === 0) return null;
  const figure = (value: number, unit: string): string =>
    unit === 'min' ? formatMinutes(value, language) : `${formatFigure(value, language)} ${unit}`;
  const where = (readingId: string): string => {
    const reading = own.find(({ id }) => id === readingId);
    if (reading === undefined || reading.position === 0) return '';
    return `, ${bench.readings.place(reading.string, reading.position)}`;
  };
  return (
    <Section title={text.title} lead={text.lead}>
      <DataTable
        caption={text.title}
        hideCaption
        columns={[
          { id: 'subject', label: text.subject },
          { id: 'measured', label: text.measured, isNumber: true },
          { id: 'planned', label: text.planned, isNumber: true },
          { id: 'band', label: text.band, isNumber: true },
          { id: 'state', label: text.state },
        ]}
        rows={judged.map((line) => ({
          id: `${line.readingId} ${line.subject}`,
          cells: {
            subject: `${text.subjects[line.subject]}${where(line.readingId)}`,
            measured: figure(line.measured, line.unit),
            planned: line.planned === null ? '–' : figure(line.planned, line.unit),
            band:
              line.planned === null
                ? '–'
                : `± ${formatFigure(line.tolerancePercent, language, 2)} %`,
            state: (
              <span className={`bench-state bench-state-${line.state}`}>
                {text.states[line.state]}
              </span>
            ),
          },
        }))}
      />
      {gap === null ? null : (
        <div className="bench-gap">
          <p>
            {text.gap(
              formatMinutes(gap.plannedMin, language),
              formatMinutes(gap.measuredMin, language),
            )}
          </p>
          {gap.causes.length === 0 ? (
            <p className="soft">{text.noCause}</p>
          ) : (
            <ol className="bench-list">
              {gap.causes.map((cause) => (
                <li key={cause.readingId}>
                  {`${text.causes[cause.kind]}${where(cause.readingId)} ${text.explains(`${formatFigure(cause.explainsPercent, language, 2)} %`, formatMinutes(cause.runTimeMin, language))}`}
                </li>
              ))}
            </ol>
          )}
        </div>
      )}
    </Section>
  );
};
