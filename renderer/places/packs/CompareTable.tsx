import { useState, type ReactNode } from 'react';
import { Choice } from '../../controls/ChoiceField.tsx';
import { DataTable } from '../../controls/DataTable.tsx';
import { WorkingButton } from '../../controls/Figure.tsx';
import { Section } from '../../controls/Section.tsx';
import { planStore, usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { useStudy } from '../../state/shown-study.ts';
import { formatDifference, formatFigure } from '../../text/format.ts';
import { packsTexts } from '../../text/packs.ts';
import { useText } from '../../text/use-text.ts';
import { compareWorking } from '../../workings/compare-working.ts';
import { displaySymbol, toDisplay } from '#core/units/display.ts';
import { bestOf, compareRows } from '../../state/compare-rows.ts';

/** Every figure of every option with its difference against a base; the best is marked by a word. */
export const CompareTable = () => {
  const text = useText(packsTexts);
  const { language, units } = useSettings();
  const { study } = useStudy();
  const currency = usePlan((plan) => plan.currency);
  const goalMin = usePlan(
    (plan) => plan.outings.find(({ id }) => id === plan.headlineOuting)?.goalMin ?? 0,
  );
  const [baseId, setBaseId] = useState<string | null>(null);
  const options = study?.options ?? [];
  if (options.length < 2) return null;
  const base = Math.max(
    0,
    options.findIndex(({ id }) => id === baseId),
  );
  return (
    <Section
      title={text.compareTitle}
      lead={text.compareLead}
      actions={
        <div className="compare-base">
          <Choice
            label={text.base}
            value={options[base]?.id ?? ''}
            entries={options.map(({ id, name }) => ({ value: id, label: name }))}
            onChoose={setBaseId}
          />
        </div>
      }
    >
      <DataTable
        caption={text.compareTitle}
        hideCaption
        columns={[
          { id: 'figure', label: text.figure },
          ...options.map(({ id, name }) => ({ id, label: name, isNumber: true })),
        ]}
        rows={compareRows.map((row) => {
          const values = options.map((option) => {
            const value = row.read(option, goalMin);
            return value === null ? null : toDisplay(value, row.unit, units);
          });
          const best = bestOf(values, row.better);
          const unit = row.unit === '¤' ? currency : displaySymbol(row.unit, units);
          const atBase = values[base] ?? null;
          const cells = options.map((option, index) => {
            const value = values[index] ?? null;
            return [
              option.id,
              value === null ? (
                <span key="none" className="faint">
                  –
                </span>
              ) : (
                <span key="value" className="compare-cell">
                  {best.has(index) ? <span className="compare-best">{text.best}</span> : null}
                  <span className="compare-value">
                    <WorkingButton
                      label={`${text.rows[row.id]}, ${option.name}`}
                      working={() =>
                        compareWorking(row.id, option, planStore.getState().plan, language, units)
                      }
                    >
                      {formatFigure(value, language)}
                    </WorkingButton>
                  </span>
                  <span className="compare-difference">
                    {index === base || atBase === null
                      ? ''
                      : formatDifference(value - atBase, language, 3)}
                  </span>
                </span>
              ),
            ];
          });
          return {
            id: row.id,
            cells: {
              figure: (
                <>
                  {text.rows[row.id]} <span className="faint">{unit}</span>
                </>
              ),
              ...(Object.fromEntries(cells) as Record<string, ReactNode>),
            },
          };
        })}
      />
    </Section>
  );
};
