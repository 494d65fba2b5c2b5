import { useState, type DragEvent } from 'react';
import { FileTrigger } from 'react-aria-components';
import type { Option } from '#core/plan/schema/option.ts';
import { Button } from '../../controls/Button.tsx';
import { Section } from '../../controls/Section.tsx';
import { addLogs, useBench } from '../../state/bench-store.ts';
import { benchTexts } from '../../text/bench.ts';
import { useText } from '../../text/use-text.ts';
import { LogCard } from './LogCard.tsx';

interface LogsSectionProps {
  readonly option: Option;
}

/** Logs on the bench: put on by button or by dropping them, each with its columns and runs. */
export const LogsSection = ({ option }: LogsSectionProps) => {
  const text = useText(benchTexts).logs;
  const logs = useBench((state) => state.logs);
  const [isOver, setOver] = useState(false);
  const hasFiles = (event: DragEvent): boolean => event.dataTransfer.types.includes('Files');
  return (
    <Section title={text.title} lead={text.lead}>
      <div
        className="log-drop"
        data-over={isOver}
        onDragOver={(event) => {
          if (!hasFiles(event)) return;
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={(event) => {
          if (!hasFiles(event)) return;
          event.preventDefault();
          setOver(false);
          addLogs([...event.dataTransfer.files], option.id);
        }}
      >
        <FileTrigger
          allowsMultiple
          acceptedFileTypes={['.csv', '.txt', '.tsv', '.log', 'text/csv', 'text/plain']}
          onSelect={(files) => addLogs(files === null ? [] : [...files], option.id)}
        >
          <Button icon="plus">{text.add}</Button>
        </FileTrigger>
        <span className="soft">{text.drop}</span>
      </div>
      {logs.map((log) => (
        <LogCard key={log.id} log={log} />
      ))}
    </Section>
  );
};
