import { insulationRatings } from '#core/plan/schema/conductor.ts';
import type { Conductor } from '#core/plan/schema/conductor.ts';
import type { WiringBranch } from '#core/plan/schema/wiring-branch.ts';
import {
  conductorAreaMm2,
  formatConductor,
  standardConductors,
  type BranchStudy,
} from '#core/wiring/index.ts';
import { Choice, ChoiceField } from '../../controls/ChoiceField.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { editField } from '../../state/plan-path.ts';
import { useSettings } from '../../state/settings-store.ts';
import { useFieldWords } from '../../text/field-words.ts';
import { formatFigure } from '../../text/format.ts';
import { wiringTexts } from '../../text/wiring.ts';
import { useText } from '../../text/use-text.ts';

interface WireFieldsProps {
  readonly path: string;
  readonly branch: WiringBranch;
  readonly found: BranchStudy | null;
}

const unknown = 'unknown';

/** The wire of a branch: a standard size of either system, or not known. */
export const WireFields = ({ path, branch, found }: WireFieldsProps) => {
  const text = useText(wiringTexts);
  const language = useSettings((state) => state.language);
  const units = useSettings((state) => state.units);
  const conductor = useFieldWords(`${path}.conductor`);
  const rating = useFieldWords(`${path}.insulationC`);
  const { conductor: own } = branch;
  const system = own?.system ?? (units === 'us' ? 'awg' : 'metric');
  const label = (size: Conductor): string => formatConductor(size, language);
  const sizes = standardConductors(system);
  const known =
    own === null || sizes.some((size) => label(size) === label(own)) ? sizes : [own, ...sizes];
  return (
    <fieldset className="branch-part">
      <legend>{text.branch.wirePart}</legend>
      <div className="field-grid">
        <Choice
          label={text.branch.system}
          value={system}
          entries={[
            { value: 'metric', label: text.branch.metric },
            { value: 'awg', label: text.branch.awg },
          ]}
          onChoose={(next) => {
            const other = standardConductors(next === 'awg' ? 'awg' : 'metric');
            editField(
              conductor.title,
              `${path}.conductor`,
              found === null ? null : nearest(other, found.areaMm2),
            );
          }}
        />
        <Choice
          label={conductor.title}
          help={conductor.help}
          field={`${path}.conductor`}
          value={own === null ? unknown : label(own)}
          entries={[
            { value: unknown, label: text.branch.unknownWire },
            ...known.map((size) => ({ value: label(size), label: label(size) })),
          ]}
          onChoose={(next) =>
            editField(
              conductor.title,
              `${path}.conductor`,
              known.find((size) => label(size) === next) ?? null,
            )
          }
        />
        <QuantityField path={`${path}.lengthM`} />
        <Choice
          label={rating.title}
          help={rating.help}
          field={`${path}.insulationC`}
          value={String(branch.insulationC)}
          entries={insulationRatings.map((value) => ({
            value: String(value),
            label: `${value} °C`,
          }))}
          onChoose={(next) => editField(rating.title, `${path}.insulationC`, Number(next))}
        />
        <ChoiceField
          path={`${path}.insulation`}
          entries={(['pvc', 'cross-linked'] as const).map((value) => ({
            value,
            label: text.branch.insulations[value],
          }))}
        />
        <QuantityField path={`${path}.bundled`} />
        <QuantityField
          path={`${path}.surroundingC`}
          assumed={found === null ? undefined : `${formatFigure(found.ambientC, language)} °C`}
        />
      </div>
    </fieldset>
  );
};

/** The size of the other system with at least as much copper. */
function nearest(sizes: readonly Conductor[], areaMm2: number): Conductor | null {
  return (
    sizes.find((size) => conductorAreaMm2(size) >= 0.97 * areaMm2) ??
    sizes[sizes.length - 1] ??
    null
  );
}
