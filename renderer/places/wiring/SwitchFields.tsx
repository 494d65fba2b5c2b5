import type { Switchgear, WiringBranch } from '#core/plan/schema/wiring-branch.ts';
import { newSwitchgear } from '#core/wiring/index.ts';
import { Choice, ChoiceField } from '../../controls/ChoiceField.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { editField } from '../../state/plan-path.ts';
import { useFieldWords } from '../../text/field-words.ts';
import { wiringTexts } from '../../text/wiring.ts';
import { useText } from '../../text/use-text.ts';

const none = 'none';
const entriesOf = <K extends string>(words: Readonly<Record<K, string>>) =>
  (Object.keys(words) as K[]).map((value) => ({ value, label: words[value] }));

/** The switch of a branch, or that there is none. */
export const SwitchFields = ({
  path,
  branch,
}: {
  readonly path: string;
  readonly branch: WiringBranch;
}) => {
  const text = useText(wiringTexts).branch;
  const words = useFieldWords(`${path}.switchgear`);
  const { switchgear } = branch;
  const at = `${path}.switchgear`;
  return (
    <fieldset className="branch-part">
      <legend>{text.switchPart}</legend>
      <div className="field-grid">
        <Choice
          label={text.switchPart}
          field={`${at}.kind`}
          value={switchgear?.kind ?? none}
          entries={[{ value: none, label: text.noSwitch }, ...entriesOf(text.switchKinds)]}
          onChoose={(value) => {
            const kind = value as Switchgear['kind'];
            const next =
              value === none
                ? null
                : switchgear === null
                  ? newSwitchgear(kind)
                  : { ...switchgear, kind };
            editField(words.title, at, next);
          }}
        />
        {switchgear === null ? null : (
          <>
            <QuantityField path={`${at}.ratedVoltageV`} />
            <QuantityField path={`${at}.ratedA`} />
            <QuantityField path={`${at}.breakingA`} />
            <ChoiceField path={`${at}.openedBy`} entries={entriesOf(text.openedBy)} />
            <ChoiceField path={`${at}.reachable`} entries={entriesOf(text.answers)} />
            <ChoiceField path={`${at}.coilSupply`} entries={entriesOf(text.coil)} />
            {switchgear.coilSupply === 'none' ? null : (
              <QuantityField path={`${at}.coilVoltageV`} />
            )}
            <QuantityField path={`${at}.prechargeOhm`} emptyWords={text.noSwitch} />
            {switchgear.prechargeOhm === null ? null : <QuantityField path={`${at}.prechargeW`} />}
          </>
        )}
      </div>
    </fieldset>
  );
};
