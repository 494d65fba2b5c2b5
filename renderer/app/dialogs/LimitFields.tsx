import { limitGroups, type Limit } from '#core/findings/limits.ts';
import { defaultThresholds } from '#core/plan/defaults.ts';
import { valueAt } from '#core/plan/value-at.ts';
import { Button, IconButton } from '../../controls/Button.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { setField } from '../../state/plan-path.ts';
import { edit, usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { useFieldWords } from '../../text/field-words.ts';
import { findingTexts } from '../../text/findings.ts';
import { formatFigure, thinSpace } from '../../text/format.ts';
import { useText } from '../../text/use-text.ts';

const usualOf = ({ path }: Limit): number => Number(valueAt(defaultThresholds, path.split('.')));

/** Every limit with its usual value, a way back to it, and the rules that ask it. */
export const LimitFields = () => {
  const text = useText(findingTexts);
  const thresholds = usePlan((plan) => plan.thresholds);
  const shifted = limitGroups
    .flatMap(({ limits }) => limits)
    .filter((limit) => valueAt(thresholds, limit.path.split('.')) !== usualOf(limit));
  const resetAll = (): void =>
    edit(text.resetAll, (plan) => {
      for (const limit of shifted) setField(plan.thresholds, limit.path, usualOf(limit));
    });
  return (
    <>
      <div className="limits-head">
        <p className="soft">{text.limitsLead}</p>
        <Button isDisabled={shifted.length === 0} onPress={resetAll}>
          {text.resetAll}
        </Button>
      </div>
      {limitGroups.map((group) => (
        <section key={group.id} className="limits-group">
          <h3>{text.groups[group.id]}</h3>
          <ul>
            {group.limits.map((limit) => (
              <LimitRow
                key={limit.path}
                limit={limit}
                isShifted={shifted.some(({ path }) => path === limit.path)}
              />
            ))}
          </ul>
        </section>
      ))}
    </>
  );
};

const LimitRow = ({ limit, isShifted }: { readonly limit: Limit; readonly isShifted: boolean }) => {
  const text = useText(findingTexts);
  const language = useSettings((state) => state.language);
  const path = `thresholds.${limit.path}`;
  const words = useFieldWords(path);
  const unit = words.unit === undefined || words.unit === '' ? '' : `${thinSpace}${words.unit}`;
  const usual = `${formatFigure(usualOf(limit), language, 4)}${unit}`;
  return (
    <li className="limit-row" data-shifted={isShifted}>
      <QuantityField path={path} />
      <span className="limit-usual">
        <span>{text.usual(usual)}</span>
        <span className="faint">{text.usedBy(limit.rules.join(', '))}</span>
      </span>
      <IconButton
        icon="undo"
        label={text.reset(words.title)}
        isDisabled={!isShifted}
        onPress={() =>
          edit(text.reset(words.title), (plan) => setField(plan, path, usualOf(limit)))
        }
      />
    </li>
  );
};
