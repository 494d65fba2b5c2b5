import { applyFit, remarkText } from '#core/bench/index.ts';
import { Button } from '../../controls/Button.tsx';
import { Figure } from '../../controls/Figure.tsx';
import { forgetFit, useBench } from '../../state/bench-store.ts';
import { edit, planStore, undo, usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { showToast } from '../../state/toast-store.ts';
import { today } from '../../state/today.ts';
import { benchTexts } from '../../text/bench.ts';
import { formatFigure } from '../../text/format.ts';
import { useText } from '../../text/use-text.ts';
import type { FitAnswer } from '../../workers/bench-message.ts';
import { FitCharts } from './FitCharts.tsx';
import { PredictionTable, UnitTable, ValueTable } from './FitTables.tsx';

interface FitResultProps {
  readonly answer: FitAnswer;
  readonly isStale: boolean;
}

/** What a fit found, how far to trust it, and the step into the plan. */
export const FitResult = ({ answer, isStale }: FitResultProps) => {
  const text = useText(benchTexts).fit;
  const language = useSettings((state) => state.language);
  const logs = useBench((state) => state.logs);
  const option = usePlan((plan) => plan.options.find(({ id }) => id === answer.optionId));
  const { fit, layout, leftOut, optionId } = answer;
  if (option === undefined) return null;
  const apply = (): void => {
    const names = logs.filter((log) => log.chosen.length > 0).map((log) => log.name);
    const next = applyFit(planStore.getState().plan, {
      optionId,
      fit,
      layout,
      date: today(),
      logs: names.length === 0 ? [fit.fitted.source.slice(0, 200)] : names,
      language,
    });
    edit(text.apply, (plan) => {
      Object.assign(plan, { options: next.options, bench: next.bench });
    });
    showToast(text.applied, { label: text.undo, run: undo });
  };
  const percent = (value: number): string => formatFigure(value, language);
  return (
    <div className="fit-result" data-stale={isStale}>
      <div className="fit-figures">
        <Figure label={text.misfit} value={formatFigure(fit.rmsMv, language, 2)} unit="mV" />
        <Figure
          label={text.capacityLeft}
          value={percent(fit.health.capacityPercent)}
          unit="%"
          note={text.againstLabel}
        />
        <Figure
          label={text.resistance}
          value={percent(fit.health.resistancePercent)}
          unit="%"
          note={text.againstNew}
        />
      </div>
      <div className="bench-actions">
        <Button look="main" onPress={apply} isDisabled={isStale}>
          {text.apply}
        </Button>
        <Button onPress={forgetFit}>{text.discard}</Button>
        <span className="soft">{text.applyLead(option.name)}</span>
      </div>
      <FitCharts replays={fit.replays} leftOut={leftOut} rmsMv={fit.rmsMv} />
      <ValueTable values={fit.values} />
      {fit.units.length === 0 || layout.kind === 'pack' ? null : (
        <UnitTable caption={text.unitsTitle[layout.kind]} units={fit.units} />
      )}
      {leftOut.length === 0 ? (
        <p className="soft">{text.testNeeds}</p>
      ) : (
        <>
          <h3 className="bench-head">{text.testTitle}</h3>
          <p className="soft">{text.testLead}</p>
          <PredictionTable predictions={leftOut} />
        </>
      )}
      <h3 className="bench-head">{text.remarks}</h3>
      <ul className="bench-list">
        {fit.remarks.map((remark) => {
          const words = remarkText(remark, language);
          return <li key={words}>{words}</li>;
        })}
      </ul>
    </div>
  );
};
