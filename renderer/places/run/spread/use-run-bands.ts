import { useEffect, useMemo, useState } from 'react';
import type { ChartBand } from '../../../charts/chart-series.ts';
import { useCompare, wantCompare } from '../../../state/compare-store.ts';
import type { QuantityId } from '../../../text/run.ts';
import { bandQuantities } from '#core/compare/spread/band-quantities.ts';
import type { PlanStudy } from '#core/study/study.ts';

interface RunBands {
  /** The quantity can be drawn with a band. */
  readonly isOffered: boolean;
  readonly isOn: boolean;
  readonly setOn: (isOn: boolean) => void;
  /** Bands of the plan on screen; none while they are out of date. */
  readonly bands: readonly ChartBand[];
  /** Where the longest of them ends [min]. */
  readonly untilMin: number;
}

const none: readonly ChartBand[] = [];

/** The bands of the discharge chart; worked out while the chart is on screen and the bands are switched on. */
export function useRunBands(study: PlanStudy, quantity: QuantityId): RunBands {
  const [isOn, setOn] = useState(true);
  const computed = useCompare((state) => state.bands);
  const isFresh = useCompare((state) => state.fresh.has('band'));
  useEffect(() => (isOn ? wantCompare('band') : undefined), [isOn]);
  const drawn = bandQuantities.find((each) => each === quantity);
  const bands = useMemo(() => {
    if (!isOn || !isFresh || computed === null || drawn === undefined) return none;
    return study.options.flatMap(({ id }, index): ChartBand[] => {
      const band = computed.find((each) => each.id === id);
      if (band === undefined) return [];
      return [{ id, index, x: band.timeMin, ...band.quantities[drawn] }];
    });
  }, [isOn, isFresh, computed, drawn, study]);
  const ends = bands.map(({ x, high }) => x[Math.max(0, high.length - 1)] ?? 0);
  return {
    isOffered: drawn !== undefined,
    isOn,
    setOn,
    bands,
    untilMin: Math.max(0, ...ends),
  };
}
