import { useState } from 'react';
import { FileTrigger } from 'react-aria-components';
import type { LogLoad } from '#core/plan/schema/leg-load.ts';
import { Button } from '../../../controls/Button.tsx';
import { DataTable } from '../../../controls/DataTable.tsx';
import { Dialog } from '../../../controls/Dialog.tsx';
import {
  addLogs,
  legLoadOf,
  readLog,
  remap,
  useBench,
  type BenchLog,
} from '../../../state/bench-store.ts';
import { usePlan } from '../../../state/plan-store.ts';
import { useSettings } from '../../../state/settings-store.ts';
import { benchTexts } from '../../../text/bench.ts';
import { formatFigure, formatMinutes } from '../../../text/format.ts';
import { useText } from '../../../text/use-text.ts';
import { waysTexts } from '../../../text/ways.ts';
import { ColumnsForm } from '../../bench/ColumnsForm.tsx';
import '../../bench/bench.css';

interface LogDialogProps {
  readonly onTake: (load: LogLoad) => void;
  readonly onClose: () => void;
}

/** Picks a run of a watt-meter log as the load of a leg: file, columns, run. */
export const LogDialog = ({ onTake, onClose }: LogDialogProps) => {
  const text = useText(waysTexts);
  const logs = useBench((state) => state.logs);
  const optionId = usePlan((plan) => plan.options[0]?.id ?? '');
  return (
    <Dialog title={text.logTitle} isOpen onClose={onClose} size="large">
      <div className="log-dialog">
        <p className="soft">{text.logLead}</p>
        <div>
          <FileTrigger
            acceptedFileTypes={['.csv', '.txt', '.tsv', '.log', 'text/csv', 'text/plain']}
            onSelect={(files) => addLogs(files === null ? [] : [...files], optionId)}
          >
            <Button icon="plus">{text.logPick}</Button>
          </FileTrigger>
        </div>
        {logs.length === 0 ? <p className="soft">{text.logNone}</p> : null}
        {logs.toReversed().map((log) => (
          <LogChoice
            key={log.id}
            log={log}
            onTake={(load) => {
              onTake(load);
              onClose();
            }}
          />
        ))}
      </div>
    </Dialog>
  );
};

const LogChoice = ({
  log,
  onTake,
}: {
  readonly log: BenchLog;
  readonly onTake: (load: LogLoad) => void;
}) => {
  const text = useText(waysTexts);
  const bench = useText(benchTexts).logs;
  return (
    <article className="log-card" aria-label={log.name}>
      <header className="log-head">
        <h3 className="log-name">{log.name}</h3>
        {log.state === 'ready' ? (
          <Button look="quiet" onPress={() => remap(log.id)}>
            {bench.change}
          </Button>
        ) : null}
      </header>
      {log.failure === null ? null : <p className="bench-trouble">{log.failure}</p>}
      {log.problem === null ? null : (
        <p className="bench-trouble">{`${log.problem.problem}. ${log.problem.remedy}.`}</p>
      )}
      {log.state === 'mapping' && log.mapping !== null ? (
        <>
          <ColumnsForm log={log} mapping={log.mapping} />
          <div className="bench-actions">
            <Button look="main" onPress={() => readLog(log)}>
              {bench.read}
            </Button>
          </div>
        </>
      ) : null}
      {log.state === 'reading' || log.state === 'opening' ? (
        <p className="soft" role="status">
          {text.working}
        </p>
      ) : null}
      {log.state === 'ready' ? <RunChoice log={log} onTake={onTake} /> : null}
    </article>
  );
};

const RunChoice = ({
  log,
  onTake,
}: {
  readonly log: BenchLog;
  readonly onTake: (load: LogLoad) => void;
}) => {
  const text = useText(waysTexts);
  const bench = useText(benchTexts).logs;
  const language = useSettings((state) => state.language);
  const [isEmpty, setEmpty] = useState(false);
  const take = async (run: string): Promise<void> => {
    const load = await legLoadOf(log, run);
    if (load === null) setEmpty(true);
    else onTake(load);
  };
  return (
    <>
      <DataTable
        caption={log.name}
        hideCaption
        columns={[
          { id: 'run', label: bench.run },
          { id: 'minutes', label: bench.minutes, isNumber: true },
          { id: 'charge', label: bench.charge, unit: 'A·h', isNumber: true },
          { id: 'current', label: bench.current, unit: 'A', isNumber: true },
          { id: 'take', label: '' },
        ]}
        rows={(log.summary?.runs ?? []).map((run) => ({
          id: run.name,
          cells: {
            run: run.name,
            minutes: formatMinutes(run.minutes, language),
            charge: formatFigure(run.dischargedAh, language, 4),
            current: formatFigure(run.currentA, language),
            take: (
              <Button
                label={text.logTake(run.name)}
                isDisabled={run.dischargedAh <= 0}
                onPress={() => void take(run.name)}
              >
                {text.logTakeShort}
              </Button>
            ),
          },
        }))}
      />
      {log.summary?.runs.some((run) => run.dischargedAh <= 0) === true ? (
        <p className="bench-trouble">{text.logCharges}</p>
      ) : null}
      {isEmpty ? <p className="bench-trouble">{text.logEmpty}</p> : null}
    </>
  );
};
