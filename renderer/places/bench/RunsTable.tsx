import { Checkbox } from 'react-aria-components';
import { DataTable } from '../../controls/DataTable.tsx';
import { Icon } from '../../controls/icons.tsx';
import { chooseRun, type BenchLog } from '../../state/bench-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { benchTexts, type BenchTexts } from '../../text/bench.ts';
import { formatFigure, formatMinutes } from '../../text/format.ts';
import { useText } from '../../text/use-text.ts';
import type { LogSummary, RunSummary } from '../../workers/bench-message.ts';
import type { Language } from '#core/plan/language.ts';

interface RunsTableProps {
  readonly log: BenchLog;
  readonly summary: LogSummary;
}

/** Runs found in a log, with what was done to them; those ticked are fitted. */
export const RunsTable = ({ log, summary }: RunsTableProps) => {
  const text = useText(benchTexts).logs;
  const language = useSettings((state) => state.language);
  return (
    <DataTable
      caption={log.name}
      hideCaption
      columns={[
        { id: 'run', label: text.run },
        { id: 'minutes', label: text.minutes, isNumber: true },
        { id: 'charge', label: text.charge, unit: 'A·h', isNumber: true },
        { id: 'current', label: text.current, unit: 'A', isNumber: true },
        { id: 'lowest', label: text.lowest, unit: 'V', isNumber: true },
        { id: 'remarks', label: text.remarks },
      ]}
      rows={summary.runs.map((run) => ({
        id: run.name,
        cells: {
          run: (
            <Checkbox
              className="bench-check"
              aria-label={text.take(run.name)}
              isSelected={log.chosen.includes(run.name)}
              isDisabled={run.dischargedAh <= 0}
              onChange={(isChosen) => chooseRun(log, run.name, isChosen)}
            >
              <span className="bench-box" aria-hidden="true">
                <Icon name="check" />
              </span>
              {run.name}
            </Checkbox>
          ),
          minutes: formatMinutes(run.minutes, language),
          charge: formatFigure(run.dischargedAh, language, 4),
          current: formatFigure(run.currentA, language),
          lowest: formatFigure(run.lowestV, language, 4),
          remarks: notesOf(run, text, language),
        },
      }))}
    />
  );
};

function notesOf({ notes }: RunSummary, text: BenchTexts['logs'], language: Language): string {
  return [
    ...(notes.turned ? [text.turned] : []),
    ...(notes.sortedRows > 0 ? [text.sorted(notes.sortedRows)] : []),
    ...(notes.gaps > 0
      ? [text.gaps(notes.gaps, formatMinutes(notes.longestGapS / 60, language))]
      : []),
  ].join('; ');
}
