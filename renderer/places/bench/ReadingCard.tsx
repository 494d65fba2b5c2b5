import { usualAccuracyPercent } from '#core/bench/readings/new-reading.ts';
import { useId } from 'react';
import type { Option } from '#core/plan/schema/option.ts';
import { IconButton } from '../../controls/Button.tsx';
import { Choice, ChoiceField } from '../../controls/ChoiceField.tsx';
import { FieldFrame } from '../../controls/FieldFrame.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { TextField } from '../../controls/TextField.tsx';
import { ToggleField } from '../../controls/Toggle.tsx';
import { editField } from '../../state/plan-path.ts';
import { edit, usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { benchTexts } from '../../text/bench.ts';
import { formatFigure } from '../../text/format.ts';
import { useText } from '../../text/use-text.ts';
import { surfaceEntries } from '../machine/drive/entries.ts';
import { placedKinds, readingFields, readingTexts } from './reading-fields.ts';

interface ReadingCardProps {
  readonly index: number;
  readonly option: Option;
}

/** One reading: what it tells, its figures, its accuracy. */
export const ReadingCard = ({ index, option }: ReadingCardProps) => {
  const text = useText(benchTexts).readings;
  const reading = usePlan((plan) => plan.bench?.readings[index]);
  const language = useSettings((state) => state.language);
  const outings = usePlan((plan) => plan.outings);
  if (reading === undefined) return null;
  const path = `bench.readings.${index}`;
  const words = text.kinds[reading.kind];
  const remove = (): void =>
    edit(text.remove, (plan) => {
      plan.bench?.readings.splice(index, 1);
    });
  return (
    <article className="reading" aria-label={words.name}>
      <header className="reading-head">
        <div>
          <h3 className="reading-name">{words.name}</h3>
          <p className="soft">
            {`${words.tells} ${text.usualError(`${formatFigure(usualAccuracyPercent[reading.kind], language)} %`)}`}
          </p>
        </div>
        <IconButton icon="trash" label={text.remove} onPress={remove} />
      </header>
      <div className="field-grid">
        {placedKinds.has(reading.kind) ? <PlaceChoice path={path} option={option} /> : null}
        {reading.kind === 'time-to-cutoff' ? (
          <ChoiceField
            path={`${path}.outingId`}
            entries={outings.map(({ id, name }) => ({ value: id, label: name }))}
          />
        ) : null}
        {reading.kind === 'speed' ? (
          <ChoiceField path={`${path}.surface`} entries={surfaceEntries(language)} />
        ) : null}
        {readingTexts[reading.kind]?.map((name) => (
          <TextField key={name} path={`${path}.${name}`} />
        ))}
        {readingFields[reading.kind].map((name) => (
          <QuantityField key={name} path={`${path}.${name}`} />
        ))}
        <QuantityField path={`${path}.accuracyPercent`} />
        <DateField path={`${path}.date`} label={text.date} value={reading.date} />
      </div>
      {reading.kind === 'watt-meter' ? <ToggleField path={`${path}.untilCutoff`} /> : null}
    </article>
  );
};

const PlaceChoice = ({ path, option }: { readonly path: string; readonly option: Option }) => {
  const bench = useText(benchTexts);
  const text = bench.readings;
  const reading = usePlan((plan) => plan.bench?.readings[Number(path.split('.')[2])]);
  const { seriesCount, parallelCount } = option.pack;
  const places = Array.from({ length: parallelCount * seriesCount }, (_, place) => ({
    string: Math.floor(place / seriesCount) + 1,
    position: (place % seriesCount) + 1,
  }));
  if (reading === undefined) return null;
  return (
    <Choice
      label={bench.health.block}
      value={`${reading.string}/${reading.position}`}
      entries={[
        { value: '1/0', label: text.wholePack },
        ...places.map(({ string, position }) => ({
          value: `${string}/${position}`,
          label: text.place(string, position),
        })),
      ]}
      onChoose={(value) => {
        const [string, position] = value.split('/').map(Number);
        edit(bench.health.block, (plan) => {
          const target = plan.bench?.readings[Number(path.split('.')[2])];
          if (target !== undefined) Object.assign(target, { string, position });
        });
      }}
    />
  );
};

interface DateFieldProps {
  readonly path: string;
  readonly label: string;
  readonly value: string;
}

const DateField = ({ path, label, value }: DateFieldProps) => {
  const id = useId();
  return (
    <FieldFrame id={id} label={label}>
      <div className="input-box">
        <input
          id={id}
          type="date"
          className="bench-date"
          data-field={path}
          value={value}
          onChange={({ target }) => {
            if (/^\d{4}-\d{2}-\d{2}$/.test(target.value)) editField(label, path, target.value);
          }}
        />
      </div>
    </FieldFrame>
  );
};
