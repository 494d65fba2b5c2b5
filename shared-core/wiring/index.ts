export { jointOhm } from './branch-resistance.ts';
export { chooseFuse } from './choose-fuse.ts';
export { commissioningSteps, expectedPackVoltage, packVoltageStep } from './commissioning.ts';
export type { CommissioningStep, Expectation } from './commissioning.ts';
export {
  conductorAmpacityA,
  conductorAreaMm2,
  conductorOhmPerKm,
  formatConductor,
  standardConductors,
} from './conductor-facts.ts';
export { coordinate } from './coordination.ts';
export type {
  Coordination,
  CoordinationReading,
  CoordinationRow,
  CurrentMark,
  CurvePoint,
} from './coordination.ts';
export { drawCoordination } from './coordination-drawing.ts';
export type {
  CoordinationDrawing,
  CoordinationLabels,
  CoordinationRole,
  CoordinationShape,
} from './coordination-drawing.ts';
export { coordinationSvg } from './coordination-svg.ts';
export { deduceWires } from './deduce-wires.ts';
export type { Deduction, MeterFrame } from './deduce-wires.ts';
export { diagramOf } from './diagram-of.ts';
export type { DiagramTarget } from './diagram-branch.ts';
export type { OneLineDiagram } from './diagram-layout.ts';
export type { DiagramShape, ShapeRole } from './diagram-shapes.ts';
export { diagramSvg } from './diagram-svg.ts';
export { fuseClasses } from './fuse-classes.ts';
export { meterFrame } from './meter-frame.ts';
export {
  newBranch,
  newConnector,
  newDevice,
  newFoundWire,
  newFuse,
  newSwitchgear,
} from './new-parts.ts';
export { prefillWiring } from './prefill.ts';
export { registerConflicts } from './register-conflicts.ts';
export type { RegisterConflict } from './register-conflicts.ts';
export { registerSteps } from './register-steps.ts';
export type { RegisterStep } from './register-steps.ts';
export { conflictWords, functionWords, reasonWords, stepWords } from './register-words.ts';
export { sizeWiring } from './size-wiring.ts';
export type { SizingReason, SmallestConductor } from './smallest-conductor.ts';
export { wiringStates } from './states.ts';
export type { WiringState } from './states.ts';
export { studyWiring } from './study-wiring.ts';
export { checkSwitches } from './switch-check.ts';
export type { PrechargeAdvice, SwitchAspect, SwitchCheck } from './switch-check.ts';
export { wiringOfPlan } from './wiring-of-plan.ts';
export { wiringRecord } from './wiring-record.ts';
export type { BranchState, BranchStudy, WiringStudy } from './wiring-study.ts';
