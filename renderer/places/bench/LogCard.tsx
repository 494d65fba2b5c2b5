import { ProgressBar } from 'react-aria-components';
import { Button, IconButton } from '../../controls/Button.tsx';
import { readLog, remap, removeLog, stopReading, type BenchLog } from '../../state/bench-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { benchTexts } from '../../text/bench.ts';
import { formatFixed } from '../../text/format.ts';
import { useText } from '../../text/use-text.ts';
import { ColumnsForm } from './ColumnsForm.tsx';
import { problemSentence } from './problem-sentence.ts';
import { RunsTable } from './RunsTable.tsx';

interface LogCardProps {
  readonly log: BenchLog;
}

/** One log: first its columns, then the reading, then its runs. */
export const LogCard = ({ log }: LogCardProps) => {
  const text = useText(benchTexts).logs;
  const language = useSettings((state) => state.language);
  const whole = (value: number): string => formatFixed(value, language, 0);
  return (
    <article className="log-card" aria-label={log.name}>
      <header className="log-head">
        <h3 className="log-name">{log.name}</h3>
        {log.summary === null ? null : (
          <span className="soft">
            {[
              text.rows(whole(log.summary.rowsKept), whole(log.summary.rowsRead)),
              ...log.summary.dropped.map(
                ([reason, count]) => `${whole(count)} ${text.reasons[reason] ?? reason}`,
              ),
            ].join(', ')}
          </span>
        )}
        <span className="log-tools">
          {log.state === 'ready' ? (
            <Button look="quiet" onPress={() => remap(log.id)}>
              {text.change}
            </Button>
          ) : null}
          <IconButton
            icon="trash"
            label={text.remove(log.name)}
            onPress={() => removeLog(log.id)}
          />
        </span>
      </header>
      {log.failure === null ? null : <p className="bench-trouble">{log.failure}</p>}
      {log.problem === null ? null : (
        <p className="bench-trouble">{problemSentence(log.problem, language)}</p>
      )}
      {log.state === 'mapping' && log.mapping !== null ? (
        <>
          <ColumnsForm log={log} mapping={log.mapping} />
          <div className="bench-actions">
            <Button look="main" onPress={() => readLog(log)}>
              {text.read}
            </Button>
          </div>
        </>
      ) : null}
      {log.state === 'reading' ? (
        <Progress
          label={text.reading(`${whole(log.share * 100)} %`)}
          share={log.share}
          cancel={text.stop}
          onCancel={() => stopReading(log.id)}
        />
      ) : null}
      {log.summary !== null && log.state === 'ready' ? (
        <RunsTable log={log} summary={log.summary} />
      ) : null}
    </article>
  );
};

interface ProgressProps {
  readonly label: string;
  readonly share: number;
  readonly cancel: string;
  readonly onCancel: () => void;
}

/** How far a piece of work has come, with a way out of it. */
export const Progress = ({ label, share, cancel, onCancel }: ProgressProps) => (
  <div className="bench-progress">
    <ProgressBar aria-label={label} value={share * 100} className="bench-progress-box">
      <span className="soft">{label}</span>
      <span className="bench-track" aria-hidden="true">
        <span className="bench-track-fill" style={{ width: `${share * 100}%` }} />
      </span>
    </ProgressBar>
    <Button onPress={onCancel}>{cancel}</Button>
  </div>
);
