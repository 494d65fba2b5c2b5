import { useMemo, useState } from 'react';
import { applyRoad, fitRoad, samplesOfReadings } from '#core/bench/index.ts';
import type { Option } from '#core/plan/schema/option.ts';
import type { SurfaceId } from '#core/plan/schema/surface.ts';
import { Button } from '../../controls/Button.tsx';
import { Choice } from '../../controls/ChoiceField.tsx';
import { DataTable } from '../../controls/DataTable.tsx';
import { Section } from '../../controls/Section.tsx';
import { useBench } from '../../state/bench-store.ts';
import { edit, planStore, undo, usePlan } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { showToast } from '../../state/toast-store.ts';
import { today } from '../../state/today.ts';
import { benchTexts } from '../../text/bench.ts';
import { formatFigure } from '../../text/format.ts';
import { useText } from '../../text/use-text.ts';
import { surfaceEntries } from '../machine/drive/entries.ts';

/** Road resistance and drag area from timed stretches and logged drives, and the step that takes them into the plan. */
export const RoadSection = ({ option }: { readonly option: Option }) => {
  const bench = useText(benchTexts);
  const text = bench.road;
  const language = useSettings((state) => state.language);
  const plan = usePlan((whole) => whole);
  const logs = useBench((state) => state.logs);
  const [surface, setSurface] = useState<SurfaceId>('worn-paving');
  const { drive } = plan.machine;
  const readings = useMemo(() => samplesOfReadings(plan, option.id), [plan, option]);
  const driven = useMemo(
    () =>
      logs.flatMap((log) =>
        (log.summary?.runs ?? [])
          .filter((run) => log.chosen.includes(run.name) && run.drive.length > 0)
          .map((run) => ({ name: log.name, drive: run.drive })),
      ),
    [logs],
  );
  const outcome = useMemo(
    () =>
      fitRoad(plan.machine, option, [
        ...readings,
        ...driven.flatMap((run) => run.drive.map((stretch) => ({ ...stretch, surface }))),
      ]),
    [plan.machine, option, readings, driven, surface],
  );
  if (drive === null || (readings.length === 0 && driven.length === 0)) return null;
  const figure = (value: number): string => formatFigure(value, language);
  const remarks = outcome.ok
    ? [
        ...(outcome.fit.dragTold
          ? []
          : [text.dragUntold(`${figure(outcome.fit.fastestKmh)} km/h`)]),
        ...(outcome.fit.outliers > 0 ? [text.outliers(outcome.fit.outliers)] : []),
      ]
    : [];
  const apply = (): void => {
    if (!outcome.ok) return;
    const names = [...new Set(driven.map(({ name }) => name))].join(', ');
    const next = applyRoad(planStore.getState().plan, {
      optionId: option.id,
      fit: outcome.fit,
      date: today(),
      source: text.source(readings.length, names, today()),
      remarks,
    });
    edit(text.apply, (target) => {
      Object.assign(target, { machine: next.machine, bench: next.bench });
    });
    showToast(text.applied, { label: bench.fit.undo, run: undo });
  };
  const limits = ({ low, high }: { readonly low: number; readonly high: number }): string =>
    `${figure(low)} – ${figure(high)}`;
  return (
    <Section title={text.title} lead={text.lead}>
      {drive.scaledTo === null ? null : (
        <p className="bench-in-plan">{text.inPlan(drive.scaledTo.source)}</p>
      )}
      {driven.length === 0 ? null : (
        <div className="bench-road-surface">
          <Choice
            label={text.surface}
            value={surface}
            entries={surfaceEntries(language)}
            onChoose={(value) => setSurface(value as SurfaceId)}
          />
        </div>
      )}
      {outcome.ok ? (
        <div className="bench-road">
          <p>
            {text.summary(
              outcome.fit.used,
              `${figure(outcome.fit.readA)} A`,
              `${figure(outcome.fit.modelA)} A`,
            )}
          </p>
          <DataTable
            caption={text.title}
            hideCaption
            columns={[
              { id: 'value', label: bench.fit.value },
              { id: 'fitted', label: bench.fit.fitted, isNumber: true },
              { id: 'limits', label: bench.fit.limits, isNumber: true },
              { id: 'now', label: text.now, isNumber: true },
              { id: 'told', label: bench.fit.told },
            ]}
            rows={[
              {
                id: 'rolling',
                cells: {
                  value: text.rolling,
                  fitted: `${figure(outcome.fit.resistancePercent.value)} %`,
                  limits: limits(outcome.fit.resistancePercent),
                  now: `${figure(drive.resistancePercent)} %`,
                  told: bench.fit.yes,
                },
              },
              {
                id: 'drag',
                cells: {
                  value: text.drag,
                  fitted: `${figure(outcome.fit.dragAreaM2.value)} m²`,
                  limits: limits(outcome.fit.dragAreaM2),
                  now:
                    drive.wheel.dragAreaM2 === null ? '–' : `${figure(drive.wheel.dragAreaM2)} m²`,
                  told: outcome.fit.dragTold ? bench.fit.yes : bench.fit.usual,
                },
              },
            ]}
          />
          {remarks.length === 0 ? null : (
            <ul className="bench-list">
              {remarks.map((remark) => (
                <li key={remark}>{remark}</li>
              ))}
            </ul>
          )}
          <div className="bench-actions">
            <Button look="main" field="machine.drive.resistancePercent" onPress={apply}>
              {text.apply}
            </Button>
          </div>
        </div>
      ) : outcome.reason === 'no-samples' ? null : (
        <p className="bench-trouble">{text.reasons[outcome.reason]}</p>
      )}
    </Section>
  );
};
