import { useMemo, useRef } from 'react';
import type { Chart } from 'chart.js';
import { Bar } from 'react-chartjs-2';
import { useTheme } from '../../app/theme.ts';
import '../../charts/register-charts.ts';
import { ChartCopies } from '../../charts/ChartCopies.tsx';
import { paintedGround } from '../../charts/direct-labels.ts';
import { DataTable } from '../../controls/DataTable.tsx';
import { Figure } from '../../controls/Figure.tsx';
import { Section } from '../../controls/Section.tsx';
import { useSettings } from '../../state/settings-store.ts';
import { formatFigure, formatFixed } from '../../text/format.ts';
import { runTexts } from '../../text/run.ts';
import { useText } from '../../text/use-text.ts';
import type { PlanStudy } from '#core/study/study.ts';
import type { Working } from '../../controls/working.ts';
import { ledgerWorking } from '../../workings/run-figure-workings.ts';
import { ledgerChart } from './ledger-chart.ts';
import { ledgerCsv } from './ledger-csv.ts';
import { ledgerParts, lostWh } from './ledger-parts.ts';

const plugins = [paintedGround];

/** Where every watt-hour went: bars to one scale, and the figures under them. */
export const LedgerSection = ({ study }: { readonly study: PlanStudy }) => {
  const text = useText(runTexts);
  const language = useSettings((state) => state.language);
  const theme = useTheme();
  const drawn = useRef<Chart<'bar', number[], string> | null>(null);
  const chart = useMemo(
    () => ledgerChart(study, text, language, theme),
    [study, text, language, theme],
  );
  const wattHours = (value: number): string => `${formatFigure(value, language)} W·h`;
  const summary = study.options
    .map(({ name, run: { ledger } }) =>
      text.ledgerSummary(name, wattHours(ledger.motorWh), wattHours(lostWh(ledger))),
    )
    .join(' ');
  return (
    <Section
      title={text.ledgerTitle}
      lead={text.ledgerLead}
      actions={
        <ChartCopies
          name={text.ledgerTitle}
          csv={() => ledgerCsv(study, text)}
          chart={() => drawn.current}
        />
      }
    >
      <div className="ledger-box" style={{ height: `${2.5 + 3 * study.options.length}rem` }}>
        <Bar
          ref={(made) => {
            drawn.current = made ?? null;
          }}
          data={chart.data}
          options={chart.options}
          plugins={plugins}
          role="img"
          aria-label={summary}
        />
      </div>
      <DataTable
        caption={text.ledgerTitle}
        hideCaption
        columns={[
          { id: 'part', label: text.ledgerAxis, unit: 'W·h' },
          ...study.options.map(({ id, name }) => ({ id, label: name, isNumber: true })),
        ]}
        rows={ledgerParts.map((part, index) => ({
          id: part,
          cells: {
            part: (
              <span className="ledger-part">
                <span
                  className="ledger-swatch"
                  style={{ backgroundColor: chart.fills[index] }}
                  aria-hidden="true"
                />
                {text.ledger[part]}
              </span>
            ),
            ...Object.fromEntries(
              study.options.map((option) => {
                const {
                  id,
                  run: { ledger },
                } = option;
                return [
                  id,
                  <Part
                    key={id}
                    value={ledger[part]}
                    whole={ledger.givenUpWh}
                    label={`${text.ledger[part]}, ${option.name}`}
                    working={() => ledgerWorking(part, option, language)}
                  />,
                ];
              }),
            ),
          },
        }))}
      />
    </Section>
  );
};

interface PartProps {
  readonly value: number;
  readonly whole: number;
  readonly label: string;
  readonly working: () => Working;
}

const Part = ({ value, whole, label, working }: PartProps) => {
  const language = useSettings((state) => state.language);
  return (
    <span className="ledger-value">
      <Figure size="inline" label={label} value={formatFigure(value, language)} working={working} />
      <span className="soft">
        {whole > 0 ? `${formatFixed((100 * value) / whole, language, 1)} %` : ''}
      </span>
    </span>
  );
};
