import { controlTexts } from '../text/controls.ts';
import { useText } from '../text/use-text.ts';
import { theHost } from '../state/document-store.ts';
import { showToast } from '../state/toast-store.ts';
import { IconButton } from './Button.tsx';
import { FieldLink } from './FieldLink.tsx';
import type { Working, WorkingValue } from './working.ts';

/** A working in full: formula, inputs, steps, result, range of validity, source. */
export const WorkingView = ({ working }: { readonly working: Working }) => {
  const text = useText(controlTexts);
  const { exact } = working;
  return (
    <div className="working">
      <div className="working-formula">
        {working.formula.map((line) => (
          <div key={line}>{line}</div>
        ))}
      </div>
      <Values title={text.inputs} values={working.inputs} />
      {working.steps === undefined ? null : <Values title={text.steps} values={working.steps} />}
      <dl className="working-values working-result">
        <dt>{working.result.label}</dt>
        <dd>
          {working.result.value}
          {exact === undefined ? null : (
            <IconButton
              icon="copy"
              label={`${text.copyFull}: ${String(exact.value)} ${exact.unit}`.trim()}
              onPress={() => {
                void theHost()
                  .copyText(String(exact.value))
                  .then((copied) => {
                    if (copied.ok)
                      showToast(`${text.copied}: ${String(exact.value)} ${exact.unit}`);
                  });
              }}
            />
          )}
        </dd>
      </dl>
      {working.validity === undefined ? null : (
        <p className="working-note">
          <b>{text.validity}</b> {working.validity}
        </p>
      )}
      <p className="working-note">
        <b>{text.source}</b> {working.source}
      </p>
    </div>
  );
};

const Values = ({
  title,
  values,
}: {
  readonly title: string;
  readonly values: readonly WorkingValue[];
}) => (
  <div>
    <p className="working-head">{title}</p>
    <dl className="working-values">
      {values.map(({ label, value, field }) => (
        <div key={label} className="working-row">
          <dt>{field === undefined ? label : <FieldLink field={field}>{label}</FieldLink>}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  </div>
);
