import type { AverageScale } from '#core/drive/scale-to-average.ts';
import type { WayRow } from '#core/drive/compare-ways.ts';
import type { LoadWay } from '#core/drive/load-ways.ts';
import type { Machine } from '#core/plan/schema/machine.ts';
import type { Option } from '#core/plan/schema/option.ts';
import type { Outing } from '#core/plan/schema/outing.ts';

export type WaysRequest =
  | {
      readonly kind: 'compare';
      readonly ticket: number;
      readonly machine: Machine;
      readonly options: readonly Option[];
      readonly outing: Outing;
    }
  | {
      readonly kind: 'scale';
      readonly ticket: number;
      readonly machine: Machine;
      readonly option: Option;
      readonly outing: Outing;
      readonly way: LoadWay;
    };

export type WaysAnswer =
  | { readonly kind: 'compared'; readonly ticket: number; readonly rows: readonly WayRow[] }
  | { readonly kind: 'scaled'; readonly ticket: number; readonly scale: AverageScale }
  | { readonly kind: 'failed'; readonly ticket: number; readonly message: string };
