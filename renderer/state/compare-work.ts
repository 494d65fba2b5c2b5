/** What the page itself needs of the core to hand out and sum up work behind the figures; fetched after the figures. */
export { openWork } from '#core/compare/work/work.ts';
export { summariseSensitivity, sensitivityTrials } from '#core/compare/sensitivity/sensitivity.ts';
export { summariseBand } from '#core/compare/spread/band.ts';
export { spreadRows } from '#core/compare/spread/spread-plan.ts';
export { summariseSpread } from '#core/compare/spread/summarise-spread.ts';
export { spreadFindings } from '#core/findings/spread-findings.ts';
