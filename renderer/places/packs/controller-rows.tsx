import { newMotorControl } from '#core/plan/drive-defaults.ts';
import type { Controller } from '#core/plan/schema/controller.ts';
import type { Option } from '#core/plan/schema/option.ts';
import { Choice, ChoiceField } from '../../controls/ChoiceField.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { TextField } from '../../controls/TextField.tsx';
import { edit, usePlan } from '../../state/plan-store.ts';
import { controllerTexts } from '../../text/controller.ts';
import { useFieldWords } from '../../text/field-words.ts';
import { useText } from '../../text/use-text.ts';
import { MatrixRow } from './MatrixRow.tsx';

interface ControllerRowProps {
  /** Path inside the controller, e.g. `batteryCurrentLimitA`. */
  readonly path: string;
  readonly emptyWords?: string;
  readonly assumed?: string;
}

/** A number of the option's own controller; those without one show whose figures count. */
const ControllerRow = ({ path, emptyWords, assumed }: ControllerRowProps) => {
  const text = useText(controllerTexts);
  const words = useFieldWords(`options.0.controller.${path}`);
  return (
    <MatrixRow
      label={words.title}
      help={words.help}
      renderCell={(option, index) =>
        isThere(option, path) ? (
          <QuantityField
            path={`options.${index}.controller.${path}`}
            label={`${words.title}, ${option.name}`}
            hideLabel
            {...(emptyWords === undefined ? {} : { emptyWords })}
            {...(assumed === undefined ? {} : { assumed })}
          />
        ) : (
          <span className="faint matrix-empty">
            {option.controller === null ? text.asMachine : '–'}
          </span>
        )
      }
    />
  );
};

/** The option has the part of the controller a path leads into. */
function isThere({ controller }: Option, path: string): boolean {
  if (controller === null) return false;
  if (!path.startsWith('control.')) return true;
  if (controller.control === null) return false;
  return controller.control.kind === 'pwm' || path === 'control.efficiencyPercent';
}

const copyOf = (controller: Controller): Controller => ({
  ...controller,
  control:
    controller.control === null
      ? null
      : { ...controller.control, throttle: { ...controller.control.throttle } },
});

const OwnRow = () => {
  const text = useText(controllerTexts);
  const machineController = usePlan((plan) => plan.machine.controller);
  return (
    <MatrixRow
      label={text.which}
      renderCell={(option, index) => (
        <Choice
          label={`${text.which}, ${option.name}`}
          hideLabel
          field={`options.${index}.controller`}
          value={option.controller === null ? 'shared' : 'own'}
          entries={[
            { value: 'shared', label: text.shared },
            { value: 'own', label: text.own },
          ]}
          onChoose={(next) =>
            edit(text.which, (plan) => {
              const target = plan.options[index];
              if (target === undefined) return;
              // A copy to begin with: most figures of another controller are the same.
              target.controller = next === 'own' ? copyOf(machineController) : null;
            })
          }
        />
      )}
    />
  );
};

const ControlRow = () => {
  const text = useText(controllerTexts);
  return (
    <MatrixRow
      label={text.control}
      renderCell={(option, index) =>
        option.controller === null ? (
          <span className="faint matrix-empty">{text.asMachine}</span>
        ) : (
          <Choice
            label={`${text.control}, ${option.name}`}
            hideLabel
            field={`options.${index}.controller.control`}
            value={option.controller.control === null ? 'none' : 'described'}
            entries={[
              { value: 'none', label: text.notDescribed },
              { value: 'described', label: text.described },
            ]}
            onChoose={(next) =>
              edit(text.control, (plan) => {
                const controller = plan.options[index]?.controller;
                if (controller != null)
                  controller.control = next === 'none' ? null : newMotorControl();
              })
            }
          />
        )
      }
    />
  );
};

const KindRow = () => {
  const text = useText(controllerTexts);
  return (
    <MatrixRow
      label={text.kind}
      renderCell={(option, index) =>
        option.controller?.control == null ? (
          <span className="faint matrix-empty">
            {option.controller === null ? text.asMachine : '–'}
          </span>
        ) : (
          <ChoiceField
            path={`options.${index}.controller.control.kind`}
            label={`${text.kind}, ${option.name}`}
            hideLabel
            entries={(['pwm', 'switch'] as const).map((value) => ({
              value,
              label: text.kinds[value],
            }))}
          />
        )
      }
    />
  );
};

/** The controller of each option: the machine's, or one of its own with limits, ramps, limp stage and throttle curve. */
export const ControllerRows = () => {
  const text = useText(controllerTexts);
  const name = useFieldWords('options.0.controller.name').title;
  return (
    <>
      <OwnRow />
      <MatrixRow
        label={name}
        renderCell={(option, index) =>
          option.controller === null ? (
            <span className="faint matrix-empty">{text.asMachine}</span>
          ) : (
            <TextField
              path={`options.${index}.controller.name`}
              label={`${name}, ${option.name}`}
              hideLabel
            />
          )
        }
      />
      <ControllerRow path="minimumVoltageV" />
      <ControllerRow path="maximumVoltageV" />
      <ControllerRow path="cutoffVoltageV" />
      <ControllerRow path="restartVoltageV" />
      <ControllerRow path="cutoffDelayS" />
      <ControllerRow path="batteryCurrentLimitA" emptyWords={text.noLimit} />
      <ControllerRow path="motorCurrentLimitA" emptyWords={text.noLimit} />
      <ControllerRow path="idleCurrentA" />
      <ControlRow />
      <KindRow />
      <ControllerRow path="control.rampUpS" assumed="0.5 s" />
      <ControllerRow path="control.rampDownS" assumed="0.25 s" />
      <ControllerRow path="control.efficiencyPercent" assumed="96 %" />
      <ControllerRow path="control.reducesBelowV" emptyWords={text.noStage} />
      <ControllerRow path="control.reducedCurrentPercent" />
      <ControllerRow path="control.throttle.pedalRestV" />
      <ControllerRow path="control.throttle.pedalFullV" />
      <ControllerRow path="control.throttle.startV" />
      <ControllerRow path="control.throttle.fullV" />
      <ControllerRow path="control.throttle.exponent" />
    </>
  );
};
