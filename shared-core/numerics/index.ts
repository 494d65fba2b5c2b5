export { findRoot } from './find-root.ts';
export type { RootResult } from './find-root.ts';
export { fitCurve } from './fit-curve.ts';
export type { CurveFit, FitParameter } from './fit-curve.ts';
export { fitLine } from './fit-line.ts';
export type { LineFit } from './fit-line.ts';
export { interpolateLogLog, interpolateTable } from './interpolate-table.ts';
export { interpolateUniform } from './interpolate-uniform.ts';
export { percentile, percentileOfSorted } from './percentile.ts';
