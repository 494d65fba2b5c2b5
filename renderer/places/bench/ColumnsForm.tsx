import { doubtText, timeFormats, type LogMapping } from '#core/bench/index.ts';
import { Choice, type ChoiceEntry } from '../../controls/ChoiceField.tsx';
import { setMapping, type BenchLog } from '../../state/bench-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { benchTexts } from '../../text/bench.ts';
import { useText } from '../../text/use-text.ts';

interface ColumnsFormProps {
  readonly log: BenchLog;
  readonly mapping: LogMapping;
}

const nothing = 'none';
const senses = ['auto', 'discharge-positive', 'charge-positive'] as const;

/** Which column is what, guessed, shown over the first rows, and changed where the guess is wrong. */
export const ColumnsForm = ({ log, mapping }: ColumnsFormProps) => {
  const text = useText(benchTexts).logs;
  const language = useSettings((state) => state.language);
  const columns: ChoiceEntry[] = mapping.columnNames.map((label, index) => ({
    value: String(index),
    label,
  }));
  const orNone: ChoiceEntry[] = [{ value: nothing, label: text.none }, ...columns];
  const set = (change: Partial<LogMapping>): void => setMapping(log.id, { ...mapping, ...change });
  const numberOf = (value: string): number | null => (value === nothing ? null : Number(value));
  const nameOf = (column: number | undefined): string =>
    column === undefined ? nothing : String(column);
  const same = (
    column: number,
    before: { scale: number } | null,
  ): { column: number; scale: number } => ({
    column,
    scale: before?.scale ?? 1,
  });
  return (
    <div className="log-columns">
      <p className="soft">{text.columnsLead}</p>
      <div className="field-grid">
        <Choice
          label={text.roles.time}
          value={String(mapping.time.column)}
          entries={columns}
          onChoose={(value) => set({ time: { ...mapping.time, column: Number(value) } })}
        />
        <Choice
          label={text.roles.format}
          value={mapping.time.format}
          entries={timeFormats.map((format) => ({ value: format, label: format }))}
          onChoose={(value) => {
            const format = timeFormats.find((entry) => entry === value);
            if (format !== undefined) set({ time: { ...mapping.time, format } });
          }}
        />
        <Choice
          label={text.roles.current}
          value={String(mapping.current.column)}
          entries={columns}
          onChoose={(value) => set({ current: { ...mapping.current, column: Number(value) } })}
        />
        <Choice
          label={text.roles.sense}
          value={mapping.current.sense}
          entries={senses.map((sense) => ({ value: sense, label: text.senses[sense] }))}
          onChoose={(value) => {
            const sense = senses.find((entry) => entry === value);
            if (sense !== undefined) set({ current: { ...mapping.current, sense } });
          }}
        />
        <Choice
          label={text.roles.voltage}
          value={nameOf(mapping.voltage?.column)}
          entries={mapping.unitVoltages.length > 0 ? orNone : columns}
          onChoose={(value) => {
            const column = numberOf(value);
            set({ voltage: column === null ? null : same(column, mapping.voltage) });
          }}
        />
        <Choice
          label={text.roles.speed}
          value={nameOf(mapping.speed?.column)}
          entries={orNone}
          onChoose={(value) => {
            const column = numberOf(value);
            set({ speed: column === null ? null : same(column, mapping.speed) });
          }}
        />
        <Choice
          label={text.roles.temperature}
          value={nameOf(mapping.temperature?.column)}
          entries={orNone}
          onChoose={(value) => {
            const column = numberOf(value);
            set({
              temperature:
                column === null
                  ? null
                  : {
                      ...same(column, mapping.temperature),
                      offset: mapping.temperature?.offset ?? 0,
                    },
            });
          }}
        />
        <Choice
          label={text.roles.run}
          value={nameOf(mapping.run[0])}
          entries={orNone}
          onChoose={(value) => {
            const column = numberOf(value);
            set({ run: column === null ? [] : [column] });
          }}
        />
        {mapping.unitVoltages.length === 0 ? null : (
          <div className="field">
            <span className="field-label">{text.roles.units}</span>
            <span>
              {mapping.unitVoltages.map(({ column }) => mapping.columnNames[column]).join(', ')}
            </span>
          </div>
        )}
      </div>
      {log.doubts.length === 0 ? null : (
        <ul className="bench-list soft">
          {log.doubts.map((doubt) => {
            const words = doubtText(doubt, language);
            return <li key={words}>{`${words.charAt(0).toUpperCase()}${words.slice(1)}.`}</li>;
          })}
        </ul>
      )}
      <Preview caption={text.preview} mapping={mapping} rows={log.preview} />
    </div>
  );
};

interface PreviewProps {
  readonly caption: string;
  readonly mapping: LogMapping;
  readonly rows: readonly (readonly string[])[];
}

const Preview = ({ caption, mapping, rows }: PreviewProps) => (
  <div className="table-box" tabIndex={0} role="group" aria-label={caption}>
    <table className="table log-preview">
      <caption className="only-spoken">{caption}</caption>
      <thead>
        <tr>
          {mapping.columnNames.map((name, column) => (
            // Columns have no identity but their place.
            <th key={`${column} ${name}`} scope="col">
              {name}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row, index) => (
          <tr key={`${index} ${row.join()}`}>
            {row.map((cell, column) => (
              <td key={`${column} ${mapping.columnNames[column]}`}>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);
