import { Choice } from '../controls/ChoiceField.tsx';
import { edit, usePlan } from '../state/plan-store.ts';
import { useSettings } from '../state/settings-store.ts';
import { useStudyState } from '../state/study-store.ts';
import { formatMinutes } from '../text/format.ts';
import { useCompare } from '../state/compare-store.ts';
import { compareTexts } from '../text/compare.ts';
import { stripTexts } from '../text/strip.ts';
import { useText } from '../text/use-text.ts';
import { HeadlineRow } from './HeadlineRow.tsx';
import './strip.css';

/** The options and their figures, always in sight: one row each, the run time drawn to one scale with the goal on it. */
export const HeadlineStrip = () => {
  const text = useText(stripTexts);
  const compare = useText(compareTexts);
  const spread = useCompare((state) => state.spread);
  const language = useSettings((state) => state.language);
  const study = useStudyState((state) => state.study);
  const stale = useStudyState((state) => state.stale);
  const options = usePlan((plan) => plan.options);
  const outings = usePlan((plan) => plan.outings);
  const headlineOuting = usePlan((plan) => plan.headlineOuting);
  const outing = outings.find(({ id }) => id === headlineOuting) ?? outings[0];
  const goalMin = outing?.goalMin ?? 0;
  const highs = (spread?.options ?? [])
    .filter(({ id }) => options.some((option) => option.id === id))
    .map(({ high }) => high.value);
  const runs = study?.options.map(({ run }) => run.runTimeMin) ?? [];
  const isDriven = study?.options.some(({ run }) => run.drive !== null) ?? false;
  const longest = Math.max(goalMin, ...runs, ...highs, 1);
  return (
    <div className="strip" data-stale={stale}>
      <div className="strip-scroll" tabIndex={0} role="group" aria-label={text.title}>
        <table className="strip-table">
          <thead>
            <tr>
              <th scope="col">{text.option}</th>
              <th scope="col" className="number">
                {text.runTime}
              </th>
              <th scope="col" className="number">
                {compare.spreadColumn}
              </th>
              <th scope="col" className="number">
                {compare.chanceColumn}
              </th>
              <th scope="col" className="strip-bar-cell">
                {outings.length > 1 ? (
                  <span className="strip-outing">
                    <Choice
                      label={text.outing}
                      hideLabel
                      value={headlineOuting}
                      field="headlineOuting"
                      entries={outings.map(({ id, name, goalMin: goal }) => ({
                        value: id,
                        label: text.scale(formatMinutes(goal, language), name),
                      }))}
                      onChoose={(id) =>
                        edit(text.outing, (plan) => {
                          plan.headlineOuting = id;
                        })
                      }
                    />
                  </span>
                ) : (
                  text.scale(formatMinutes(goalMin, language), outing?.name ?? '')
                )}
              </th>
              <th scope="col">{text.endedBy}</th>
              {isDriven ? (
                <th scope="col" className="number">
                  {text.speed}
                </th>
              ) : null}
              <th scope="col" className="number strip-wide">
                {text.accessories}
              </th>
              <th scope="col" className="number strip-wide">
                {text.energy}
              </th>
              <th scope="col">{text.charge}</th>
              <th scope="col" className="number">
                {text.mass}
              </th>
              <th scope="col" className="number">
                {text.price}
              </th>
              <th scope="col">{text.findings}</th>
            </tr>
          </thead>
          <tbody>
            {options.map((option, index) => (
              <HeadlineRow
                key={option.id}
                option={option}
                index={index}
                study={study?.options.find(({ id }) => id === option.id) ?? null}
                findings={study?.findings ?? []}
                goalMin={goalMin}
                scaleMin={longest}
                isDriven={isDriven}
              />
            ))}
          </tbody>
        </table>
      </div>
    </div>
  );
};
