import type { PartOf, WorkKind, WorkOf } from '#core/compare/work/work.ts';

export type CompareRequest =
  /** Lays the work out in the worker; its pieces are asked for afterwards. */
  | { readonly kind: 'open'; readonly job: number; readonly work: WorkOf<WorkKind> }
  | { readonly kind: 'do'; readonly job: number; readonly from: number; readonly to: number };

export type CompareAnswer =
  | {
      readonly kind: 'done';
      readonly job: number;
      readonly from: number;
      readonly to: number;
      readonly part: PartOf<WorkKind>;
      /** Time the pieces took [ms]. */
      readonly tookMs: number;
    }
  | { readonly kind: 'failed'; readonly job: number; readonly message: string };
