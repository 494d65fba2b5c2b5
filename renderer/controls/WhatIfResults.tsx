import { useState } from 'react';
import { compareRows, type CompareRow } from '../state/compare-rows.ts';
import { usePlan } from '../state/plan-store.ts';
import { useSettings } from '../state/settings-store.ts';
import { useStudyState } from '../state/study-store.ts';
import { formatDifference, formatFigure, formatMinutes, thinSpace } from '../text/format.ts';
import { packsTexts } from '../text/packs.ts';
import { useText } from '../text/use-text.ts';
import { whatIfTexts } from '../text/what-if.ts';
import { displaySymbol, toDisplay } from '#core/units/display.ts';
import type { OptionStudy } from '#core/study/study.ts';
import { SeriesMark } from './SeriesMark.tsx';

/** Figures beside the run time that are shown when the trial moves them, the weightiest first. */
const others = compareRows.filter(({ id }) =>
  ['chargeHours', 'lowestBus', 'accessories', 'delivered', 'mass', 'price'].includes(id),
);
/** A share of a figure below which a change is not worth a column. */
const worth = 1e-3;
const mostColumns = 2;

/** What each option does at the trial value, against the figures before the trial. */
export const WhatIfResults = () => {
  const text = useText(whatIfTexts);
  const names = useText(packsTexts).rows;
  const { language, units } = useSettings();
  const currency = usePlan((plan) => plan.currency);
  const goalMin = usePlan(
    (plan) => plan.outings.find(({ id }) => id === plan.headlineOuting)?.goalMin ?? 0,
  );
  const { study, stale } = useStudyState();
  const [before] = useState(study);
  if (study === null || before === null) return null;
  const old = (option: OptionStudy): OptionStudy | undefined =>
    before.options.find(({ id }) => id === option.id);
  const changes = (row: CompareRow): boolean =>
    study.options.some((option) => {
      const then = old(option);
      const one = row.read(option, goalMin);
      const other = then === undefined ? null : row.read(then, goalMin);
      return one !== null && other !== null && Math.abs(one - other) > worth * Math.abs(other);
    });
  const shown = [
    ...compareRows.filter(({ id }) => id === 'runTime'),
    ...others.filter(changes).slice(0, mostColumns - 1),
  ];
  const unitOf = (row: CompareRow): string =>
    row.unit === '¤' ? currency : displaySymbol(row.unit, units);
  const cell = (row: CompareRow, option: OptionStudy): { value: string; difference: string } => {
    const then = old(option);
    const value = row.read(option, goalMin);
    const earlier = then === undefined ? null : row.read(then, goalMin);
    if (value === null) return { value: '–', difference: '' };
    const at = (each: number): number => toDisplay(each, row.unit, units);
    const moved = earlier !== null && Math.abs(value - earlier) > worth * Math.abs(earlier);
    return {
      value:
        row.id === 'runTime'
          ? formatMinutes(value, language)
          : `${formatFigure(at(value), language)}${thinSpace}${unitOf(row)}`,
      difference: moved ? formatDifference(at(value) - at(earlier), language) : '±0',
    };
  };
  return (
    <table className="what-if-table" data-stale={stale}>
      <thead>
        <tr>
          <th scope="col">{text.option}</th>
          {shown.map((row) => (
            <th key={row.id} scope="col" colSpan={2} className="number">
              {names[row.id]}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {study.options.map((option, index) => (
          <tr key={option.id}>
            <th scope="row">
              <span className="what-if-name">
                <SeriesMark index={index} />
                <span>{option.name}</span>
              </span>
            </th>
            {shown.map((row) => {
              const { value, difference } = cell(row, option);
              return [
                <td key={row.id} className="number">
                  <b>{value}</b>
                </td>,
                <td key={`${row.id} difference`} className="number soft">
                  {difference}
                </td>,
              ];
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
};
