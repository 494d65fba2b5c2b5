import type { Conductor } from '../plan/schema/conductor.ts';
import type { WiringDemand } from './demand.ts';
import type { Guard } from './protection.ts';
import type { SmallestConductor } from './smallest-conductor.ts';
import type { NetworkState, StateSolution, WiringState } from './states.ts';
import type { Supply } from './supply.ts';
import type { Topology, Zone } from './topology.ts';

/** A branch in one state. */
export interface BranchState {
  /** Amount, whatever the direction [A]. */
  readonly currentA: number;
  /** True when current flows towards the pack. */
  readonly towardsPack: boolean;
  readonly fromV: number;
  readonly toV: number;
  readonly dropV: number;
  /** Of the zone's voltage. */
  readonly dropPercent: number;
  readonly heatW: number;
}

export interface BranchStudy {
  readonly id: string;
  readonly name: string;
  /** Place in `plan.wiring.branches`. */
  readonly planIndex: number;
  readonly zone: Zone['kind'] | null;
  /** Voltage percentages refer to [V]. */
  readonly zoneV: number;
  readonly conductor: Conductor;
  /** True where the plan names none and this one stands in. */
  readonly conductorAssumed: boolean;
  readonly areaMm2: number;
  readonly ambientC: number;
  readonly ampacityA: number;
  readonly resistanceOhm: number;
  readonly wireOhm: number;
  /** Temperature of the wire under the lasting current [°C]. */
  readonly wireC: number;
  /** Absent states cannot be: no charger, unknown stall, collapse. */
  readonly states: Readonly<Partial<Record<WiringState, BranchState>>>;
  /** Largest lasting current: driving or charging [A]. */
  readonly continuousA: number;
  /** Largest current of all states but the short circuit [A]. */
  readonly peakA: number;
  /** Current the wire is sized for [A]: lasting, or the controller's limit on the motor side. */
  readonly sizingA: number;
  /** From the zone's supply to the far end of this branch, at the lasting driving current. */
  readonly wayDropV: number;
  readonly wayDropPercent: number;
  readonly guard: Guard | null;
  readonly faultNearA: number;
  readonly faultFarA: number;
  /** Latest opening of the guard at the far fault [s]; null without guard or when it may not open. */
  readonly clearingS: number | null;
  /** Copper the fault asks for [mm²]. */
  readonly faultAreaMm2: number;
  readonly smallest: SmallestConductor;
  readonly copperKg: number;
  readonly priceClass: 'low' | 'middle' | 'high';
}

/** The wiring of a plan worked out for one option. */
export interface WiringStudy {
  readonly optionId: string;
  readonly supply: Supply;
  readonly demand: WiringDemand;
  readonly topology: Topology;
  readonly branches: readonly BranchStudy[];
  readonly states: Readonly<Record<NetworkState, StateSolution | null>>;
  /** Resistance of each branch as the network sees it [Ω]; equal strings count as one. */
  readonly networkOhm: readonly number[];
  /** Wiring from the pack's terminals to the controller, out and back [Ω]; null without a controller. */
  readonly harnessOhm: number | null;
  readonly highestVoltageV: number;
}
