import type { WiringBranch } from '#core/plan/schema/wiring-branch.ts';
import { jointOhm, newConnector } from '#core/wiring/index.ts';
import { Button, IconButton } from '../../controls/Button.tsx';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { TextField } from '../../controls/TextField.tsx';
import { Toggle, ToggleField } from '../../controls/Toggle.tsx';
import { editField } from '../../state/plan-path.ts';
import { edit } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { useFieldWords } from '../../text/field-words.ts';
import { formatFigure } from '../../text/format.ts';
import { wiringTexts } from '../../text/wiring.ts';
import { useText } from '../../text/use-text.ts';

/** The connector of a branch, and its joints with what the meter read across them. */
export const ConnectorFields = ({
  path,
  branch,
}: {
  readonly path: string;
  readonly branch: WiringBranch;
}) => {
  const text = useText(wiringTexts).branch;
  const words = useFieldWords(`${path}.connector`);
  const at = `${path}.connector`;
  return (
    <>
      <fieldset className="branch-part">
        <legend>{text.connectorPart}</legend>
        <div className="field-grid">
          <Toggle
            label={text.hasConnector}
            isOn={branch.connector !== null}
            onChange={(on) =>
              editField(words.title, at, on ? newConnector(text.newConnector) : null)
            }
          />
          {branch.connector === null ? null : (
            <>
              <TextField path={`${at}.name`} />
              <QuantityField path={`${at}.ratedA`} />
              <QuantityField path={`${at}.ratedVoltageV`} />
              <ChoiceField
                path={`${at}.polarised`}
                entries={(['yes', 'no', 'unknown'] as const).map((value) => ({
                  value,
                  label: text.answers[value],
                }))}
              />
              <ToggleField path={`${at}.matedUnderLoad`} />
            </>
          )}
        </div>
      </fieldset>
      <JointRows path={path} branch={branch} />
    </>
  );
};

const JointRows = ({ path, branch }: { readonly path: string; readonly branch: WiringBranch }) => {
  const text = useText(wiringTexts).branch;
  const language = useSettings((state) => state.language);
  const jointsOf = (plan: { wiring: { branches: { id: string; joints: unknown[] }[] } | null }) =>
    plan.wiring?.branches.find(({ id }) => id === branch.id)?.joints;
  return (
    <fieldset className="branch-part">
      <legend>{text.joints}</legend>
      {branch.joints.map((joint, index) => {
        const ohm = jointOhm(joint);
        return (
          <div className="joint-row" key={`${branch.id}-${index}`}>
            <TextField path={`${path}.joints.${index}.name`} />
            <QuantityField path={`${path}.joints.${index}.dropMv`} />
            <QuantityField path={`${path}.joints.${index}.atCurrentA`} />
            <span className="joint-value">
              {ohm === null ? '–' : text.jointValue(formatFigure(ohm * 1000, language))}
            </span>
            <IconButton
              icon="trash"
              label={text.removeJoint(joint.name)}
              onPress={() =>
                edit(text.removeJoint(joint.name), (plan) => void jointsOf(plan)?.splice(index, 1))
              }
            />
          </div>
        );
      })}
      <Button
        icon="plus"
        isDisabled={branch.joints.length >= 24}
        onPress={() =>
          edit(
            text.addJoint,
            (plan) =>
              void jointsOf(plan)?.push({ name: text.newJoint, dropMv: null, atCurrentA: null }),
          )
        }
      >
        {text.addJoint}
      </Button>
    </fieldset>
  );
};
