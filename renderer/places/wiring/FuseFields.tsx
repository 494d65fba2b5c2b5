import type { FuseClass, WiringBranch } from '#core/plan/schema/wiring-branch.ts';
import { fuseClasses, newFuse } from '#core/wiring/index.ts';
import { Choice } from '../../controls/ChoiceField.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { editField } from '../../state/plan-path.ts';
import { edit } from '../../state/plan-store.ts';
import { useFieldWords } from '../../text/field-words.ts';
import { wiringTexts } from '../../text/wiring.ts';
import { useText } from '../../text/use-text.ts';

const none = 'none';

/** The fuse of a branch, or that there is none. */
export const FuseFields = ({
  path,
  branch,
}: {
  readonly path: string;
  readonly branch: WiringBranch;
}) => {
  const text = useText(wiringTexts).branch;
  const words = useFieldWords(`${path}.fuse`);
  const { fuse } = branch;
  const choose = (value: string): void => {
    if (value === none) return editField(words.title, `${path}.fuse`, null);
    const fuseClass = value as FuseClass;
    if (fuse === null)
      return editField(
        words.title,
        `${path}.fuse`,
        newFuse(fuseClass, fuseClasses[fuseClass].ratingsA[4] ?? 5),
      );
    edit(words.title, (plan) => {
      const target = plan.wiring?.branches.find(({ id }) => id === branch.id)?.fuse;
      if (target != null) target.class = fuseClass;
    });
  };
  return (
    <fieldset className="branch-part">
      <legend>{text.fusePart}</legend>
      <div className="field-grid">
        <Choice
          label={text.fusePart}
          field={`${path}.fuse.class`}
          value={fuse?.class ?? none}
          entries={[
            { value: none, label: text.noFuse },
            ...(Object.keys(fuseClasses) as FuseClass[]).map((value) => ({
              value,
              label: text.fuseClasses[value],
            })),
          ]}
          onChoose={choose}
        />
        {fuse === null ? null : (
          <>
            <QuantityField path={`${path}.fuse.ratedA`} />
            <QuantityField path={`${path}.fuse.ratedVoltageV`} />
            <QuantityField path={`${path}.fuse.breakingA`} />
            <QuantityField path={`${path}.fuse.fromSourceMm`} />
          </>
        )}
      </div>
    </fieldset>
  );
};
