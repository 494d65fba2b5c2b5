import type { LoadTerms } from '../run/load-source.ts';
import type { DriveTotals } from './drive-totals.ts';
import type { DriveTrain, GearTrain } from './drive-train.ts';
import { addStep } from './drive-step-totals.ts';
import { hold, release } from './drive-regimes.ts';
import { canHold, slopeBeatsMotor } from './standstill.ts';
import { meanSpeed, speedAfter, timeToReach } from './linear-motion.ts';
import { newMotionStep } from './motion-step.ts';
import type { MotionState, MotionStep } from './motion-step.ts';
import { busTerms, pull } from './operating-point.ts';
import type { CircuitLimits } from './operating-point.ts';
import type { Road } from './road.ts';
import { roadForceN, roadSlope } from './road.ts';

/** What the rider asks of the drive now. */
export interface MotionCommand {
  readonly road: Road;
  readonly gear: GearTrain;
  readonly duty: number;
  /** Infinite where the pedal is held instead of a speed. */
  readonly targetMps: number;
  /** Pedal released: coast or brake to a stand. */
  readonly released: boolean;
}

/** Copper: rise of resistance per kelvin from 20 °C. */
export const copperPerK = 0.00393;
/** Largest share of the distance to the settled speed that one step may bridge, squared; sets the accuracy of a start. */
const settleTolerance = 7e-3;
/** From this share of the battery limit on a power is asked as a current. */
const nearLimit = 0.8;
const limpHysteresis = 1.04;

/** Motors, gears and road in motion: asks the bus for current and moves the machine with what it gets. */
export class DriveMotion {
  readonly train: DriveTrain;
  readonly ambientC: number;
  readonly state: MotionState;
  /** Of the last step [kg]: a load may be put down between legs. */
  private inertiaKg = 0;
  private readonly step: MotionStep = newMotionStep();
  private readonly limits: CircuitLimits = {
    motorA: Infinity,
    batteryA: Infinity,
    gripN: Infinity,
    resistanceOhm: 1,
  };

  constructor(train: DriveTrain, ambientC: number, busV: number) {
    this.train = train;
    this.ambientC = ambientC;
    this.state = { speedMps: 0, duty: 0, windingC: ambientC, limitShare: 1, busV };
  }

  /** Longest step [s] in which current and speed follow their straight lines closely, at the last bus voltage. */
  longestStepS(command: MotionCommand): number {
    const { state, step, train } = this;
    this.resolve(command, state.busV, 0);
    const { point, accelerationMps2: a, dampingPerS: damping } = step;
    if (step.holding) return this.holdStepS(command);
    let longest = this.rampStepS(command);
    if (a === 0) return longest;
    const speed = state.speedMps;
    if (damping > 1e-6) {
      const gap = Math.abs(a) / damping;
      const scale = Math.max(speed, speed + a / damping, 0.3);
      const share = Math.max(0.08, Math.sqrt((settleTolerance * scale) / gap));
      longest = Math.min(longest, share / damping);
    }
    if (point.regime !== 'duty' && point.regime !== 'short-or-resistor') {
      const scale =
        point.regime === 'idle' ? Math.max(1, speed) * 4 : state.busV / command.gear.forcePerA;
      longest = Math.min(longest, Math.max(0.004, (0.04 * scale) / Math.abs(a)));
    }
    if (a > 0) {
      if (speed === 0) longest = Math.min(longest, this.firstStepS(command));
      if (speed < command.targetMps)
        longest = Math.min(longest, timeToReach(speed, a, damping, command.targetMps));
      if (point.regime === 'motor-limit') {
        const leavesMps =
          (point.duty * state.busV - this.limits.resistanceOhm * point.motorA) /
          command.gear.forcePerA;
        if (leavesMps > speed)
          longest = Math.min(longest, timeToReach(speed, a, damping, leavesMps) + 1e-3);
      }
      if (point.regime === 'slip')
        longest = Math.min(longest, timeToReach(speed, a, damping, point.treadMps) + 1e-3);
    } else {
      const floor = speed > command.targetMps && !command.released ? command.targetMps : 0;
      longest = Math.min(longest, timeToReach(speed, a, damping, floor));
    }
    if (train.reducesBelowV > 0 && state.busV < train.reducesBelowV * 1.1)
      longest = Math.min(longest, 1);
    return longest;
  }

  /** Terms of a step that is meant to last `plannedS`, at the voltage `busV`. */
  terms(command: MotionCommand, busV: number, plannedS: number, into: LoadTerms): void {
    this.resolve(command, busV, plannedS);
    const { point, accelerationMps2, dampingPerS, holding } = this.step;
    const speed = this.state.speedMps;
    const mean = holding
      ? speed
      : Math.max(0, meanSpeed(speed, accelerationMps2, dampingPerS, plannedS));
    busTerms(into, point, this.train, command.gear, this.limits, mean);
    // A constant power at a voltage that is about to sag would overrun the controller's battery limit for a step.
    if (into.powerW > nearLimit * busV * this.limits.batteryA) {
      into.currentA = Math.min(this.limits.batteryA, into.powerW / busV);
      into.powerW = 0;
    }
  }

  /** Moves on by `stepS` at the mean bus voltage, adding to the totals. */
  advance(
    command: MotionCommand,
    stepS: number,
    busV: number,
    currentA: number,
    totals: DriveTotals,
  ): void {
    const { state, step, train } = this;
    this.resolve(command, busV, stepS);
    this.inertiaKg = command.road.inertiaKg;
    const before = state.speedMps;
    let after = before;
    let mean = before;
    if (!step.holding) {
      after = speedAfter(before, step.accelerationMps2, step.dampingPerS, stepS);
      mean = meanSpeed(before, step.accelerationMps2, step.dampingPerS, stepS);
      if (before < command.targetMps && after > command.targetMps * (1 - 1e-9))
        after = command.targetMps;
      if (before > command.targetMps && after < command.targetMps && !command.released)
        after = command.targetMps;
      if (after < 1e-6) after = 0;
      if (mean < 0) mean = 0;
    }
    if (command.released && this.parks(after, command)) after = 0;
    step.before = before;
    step.mean = mean;
    step.after = after;
    addStep(totals, this, command, step, this.limits, stepS, busV, currentA);
    if (train.heat !== null) {
      const { heat } = train;
      const lossW = totals.lossJ / stepS / train.motorCount;
      const settledC = this.ambientC + lossW * heat.resistanceKPerW;
      state.windingC = settledC + (state.windingC - settledC) * Math.exp(-stepS / heat.timeS);
      totals.peakTemperatureC = Math.max(totals.peakTemperatureC, state.windingC);
    }
    state.speedMps = after;
    state.duty = step.holding
      ? Math.min(1, Math.max(0, this.holdingDuty(command, busV)))
      : this.dutyAfter(command, stepS);
    state.busV = busV;
    if (busV < train.reducesBelowV) state.limitShare = train.reducedShare;
    else if (busV > train.reducesBelowV * limpHysteresis) state.limitShare = 1;
  }

  motorA(): number {
    return this.step.point.motorA;
  }

  motionJ(): number {
    return 0.5 * this.inertiaKg * this.state.speedMps ** 2;
  }

  /** Finds operating point and motion at the present speed, with the duty the ramp reaches in mid-step. */
  private resolve(command: MotionCommand, busV: number, stepS: number): void {
    const { state, step, train, limits } = this;
    const { road, gear } = command;
    const speed = state.speedMps;
    limits.motorA = train.motorLimitA * state.limitShare;
    limits.batteryA = train.batteryLimitA * state.limitShare;
    limits.gripN = road.gripN;
    limits.resistanceOhm =
      gear.resistanceOhm * (train.heat === null ? 1 : 1 + copperPerK * (state.windingC - 20));
    step.mechanicalBrakeN = 0;
    step.holding = false;
    step.rollsBack = false;
    step.pulling = !command.released && speed <= command.targetMps;
    if (!command.released && Math.abs(speed - command.targetMps) < 1e-6) {
      const outcome = hold(step, train, command, limits, busV, speed);
      if (outcome === 'held') {
        step.holding = true;
        step.accelerationMps2 = 0;
        step.dampingPerS = 0;
        return;
      }
      if (outcome === 'pushed') step.pulling = false;
    }
    const ramped = this.dutyAfter(command, stepS / 2);
    step.rampDone = ramped === this.dutyGoal(command);
    const duty = Math.min(ramped, this.dutyCeiling());
    if (step.pulling || (duty > 0 && speed <= command.targetMps))
      pull(step.point, train, gear, limits, busV, duty, speed);
    else release(step, train, command, limits, speed);
    const push = step.point.forceN - step.mechanicalBrakeN - roadForceN(road, speed);
    if (speed === 0 && push <= 0) {
      step.accelerationMps2 = 0;
      step.dampingPerS = 0;
      step.rollsBack = !canHold(train) && slopeBeatsMotor(gear, road, step.point.motorA);
      return;
    }
    step.accelerationMps2 = push / road.inertiaKg;
    step.dampingPerS = (roadSlope(road, speed) - step.point.forceSlope) / road.inertiaKg;
  }

  /** Without any current limit to lower, a limping controller lowers its duty. */
  private dutyCeiling(): number {
    const { train, state } = this;
    return train.motorLimitA === Infinity && train.batteryLimitA === Infinity
      ? state.limitShare
      : 1;
  }

  private dutyGoal(command: MotionCommand): number {
    return command.released || this.state.speedMps > command.targetMps + 1e-6 ? 0 : command.duty;
  }

  private dutyAfter(command: MotionCommand, seconds: number): number {
    const { train, state } = this;
    const goal = this.dutyGoal(command);
    if (goal === state.duty) return goal;
    const rate = goal > state.duty ? train.rampUpPerS : train.rampDownPerS;
    if (rate === Infinity) return goal;
    return goal > state.duty
      ? Math.min(goal, state.duty + rate * seconds)
      : Math.max(goal, state.duty - rate * seconds);
  }

  /** The first moment of a start holds the peak current: a short step catches it before the speed takes it away. */
  private firstStepS({ gear, road }: MotionCommand): number {
    const timeS = (road.inertiaKg * gear.resistanceOhm) / (gear.efficiency * gear.forcePerA ** 2);
    return Math.max(1e-3, 0.003 * timeS);
  }

  /**
   * A speed held with little to spare is looked at often: a sagging pack soon lets the controller's limits take over. The
   * run itself keeps a step from moving the bus by more than a quarter of a percent, so that a margin of five is safe for long.
   */
  private holdStepS(command: MotionCommand): number {
    const { state, step, train } = this;
    const motorV = this.holdingDuty(command, 1);
    const batteryA = (step.point.motorA * motorV) / (train.controllerEfficiency * state.busV);
    const used = Math.max(motorV / (command.duty * state.busV), batteryA / train.batteryLimitA);
    return used > 0.98 ? 0.25 : used > 0.95 ? 1 : Infinity;
  }

  private rampStepS(command: MotionCommand): number {
    const { train, state } = this;
    const gap = this.dutyGoal(command) - state.duty;
    if (gap === 0) return Infinity;
    const rate = gap > 0 ? train.rampUpPerS : train.rampDownPerS;
    // Letting go matters only while it still drives.
    const share = gap > 0 ? 0.125 : 0.3;
    return rate === Infinity ? Infinity : Math.max(1e-3, Math.min(Math.abs(gap), share) / rate);
  }

  private holdingDuty(command: MotionCommand, busV: number): number {
    const motorV =
      this.step.point.motorA * this.limits.resistanceOhm +
      command.gear.forcePerA * this.state.speedMps;
    return motorV / busV;
  }

  /** A brake that holds closes at walking pace; on the level friction alone ends the last creep. */
  private parks(speedMps: number, command: MotionCommand): boolean {
    return (
      speedMps < 0.15 &&
      (canHold(this.train) || (speedMps < 1e-3 && command.road.rollingN > -command.road.climbN))
    );
  }
}
