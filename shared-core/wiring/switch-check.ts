import { precharge } from '../formulas/wiring/precharge.ts';
import type { Precharge } from '../formulas/wiring/precharge.ts';
import type { Switchgear, WiringBranch } from '../plan/schema/wiring-branch.ts';
import { wayBack } from './protection.ts';
import type { BranchStudy, WiringStudy } from './wiring-study.ts';

export interface SwitchAspect {
  readonly aspect: 'voltage' | 'continuous' | 'breaking' | 'independence' | 'reach' | 'coil';
  readonly verdict: 'fits' | 'misfits' | 'unknown';
  /** What the switch states and what is asked of it; null where it is not a number or not known. */
  readonly given: number | null;
  readonly asked: number | null;
  readonly unit: string;
}

/** Inrush into the controller behind a switch, and the resistor that tames it. */
export interface PrechargeAdvice {
  readonly capacitanceUf: number;
  /** When the contacts close with empty capacitors [A]. */
  readonly bareInrushA: number;
  /** Inrush aimed at [A]: a hundredth of the switch's rating or of the fuse, at least 0.5 A. */
  readonly aimA: number;
  readonly advised: Precharge;
  /** With the resistor that is fitted; null without one. */
  readonly fitted: {
    readonly inrushA: number;
    readonly timeS: number;
    readonly peakW: number;
  } | null;
}

/** A switch, relay, contactor or isolator held against what it has to do. */
export interface SwitchCheck {
  readonly branchId: string;
  readonly branchName: string;
  readonly planIndex: number;
  readonly switchgear: Switchgear;
  /** Current it has to break in the worst case [A]; null when the motors' stall is unknown. */
  readonly worstA: number | null;
  readonly aspects: readonly SwitchAspect[];
  /** Null when no controller with known capacitors lies behind it. */
  readonly precharge: PrechargeAdvice | null;
  /** True when a controller lies behind it whose capacitors are unknown. */
  readonly capacitorsUnknown: boolean;
}

/** Checks every switch in the power branches; those towards accessories have no stall to break. */
export function checkSwitches(
  study: WiringStudy,
  branches: readonly WiringBranch[],
): SwitchCheck[] {
  return study.branches.flatMap((found) => {
    const switchgear = branches[found.planIndex]?.switchgear ?? null;
    return switchgear === null ? [] : [checkSwitch(study, found, switchgear)];
  });
}

function checkSwitch(study: WiringStudy, found: BranchStudy, switchgear: Switchgear): SwitchCheck {
  const behind = controllersBehind(study, found);
  const motorZone = found.zone === 'controller';
  const worstA =
    behind.length > 0 || motorZone
      ? (study.demand.runawayA ?? study.states.stall?.currentA[indexOf(study, found)] ?? null)
      : found.peakA;
  const voltageV = found.zone === 'converter' ? found.zoneV : study.highestVoltageV;
  const aspects: SwitchAspect[] = [
    compare('voltage', switchgear.ratedVoltageV, voltageV, 'V'),
    compare('continuous', switchgear.ratedA, found.continuousA, 'A'),
    compare('breaking', switchgear.breakingA, worstA, 'A'),
  ];
  if (behind.length > 0) {
    const { openedBy, reachable } = switchgear;
    aspects.push(
      word(
        'independence',
        openedBy === 'unknown' ? 'unknown' : openedBy === 'controller' ? 'misfits' : 'fits',
      ),
      word('reach', reachable === 'unknown' ? 'unknown' : reachable === 'yes' ? 'fits' : 'misfits'),
    );
  }
  if (switchgear.coilSupply !== 'none') {
    const coilV = switchgear.coilSupply === 'converter' ? null : study.supply.nominalV;
    aspects.push(coilAspect(switchgear.coilVoltageV, coilV));
  }
  const capacitors = behind.map((device) => device.inputCapacitanceUf);
  const known = capacitors.filter((value) => value !== null);
  const capacitanceUf = known.reduce((sum, value) => sum + value, 0);
  return {
    branchId: found.id,
    branchName: found.name,
    planIndex: found.planIndex,
    switchgear,
    worstA,
    aspects,
    precharge: capacitanceUf > 0 ? prechargeAdvice(study, found, switchgear, capacitanceUf) : null,
    capacitorsUnknown: behind.length > 0 && known.length < behind.length,
  };
}

function compare(
  aspect: SwitchAspect['aspect'],
  given: number | null,
  asked: number | null,
  unit: string,
): SwitchAspect {
  const verdict =
    given === null || asked === null ? 'unknown' : given >= asked ? 'fits' : 'misfits';
  return { aspect, verdict, given, asked, unit };
}

function word(aspect: SwitchAspect['aspect'], verdict: SwitchAspect['verdict']): SwitchAspect {
  return { aspect, verdict, given: null, asked: null, unit: '' };
}

/** A coil works from about 75 to 110 % of its voltage; common practice, no source. */
function coilAspect(coilV: number | null, supplyV: number | null): SwitchAspect {
  const verdict =
    coilV === null || supplyV === null
      ? 'unknown'
      : supplyV >= 0.75 * coilV && supplyV <= 1.15 * coilV
        ? 'fits'
        : 'misfits';
  return { aspect: 'coil', verdict, given: coilV, asked: supplyV, unit: 'V' };
}

function indexOf(study: WiringStudy, found: BranchStudy): number {
  return study.branches.indexOf(found);
}

function controllersBehind(study: WiringStudy, found: BranchStudy) {
  const place = indexOf(study, found);
  return study.topology.devices.filter((device) => {
    if (device.kind !== 'controller') return false;
    const feeding = study.topology.branches.findIndex((entry) => entry.branch.to === device.id);
    return feeding >= 0 && wayBack(study.topology, feeding).includes(place);
  });
}

/**
 * Inrush without precharge `V/R` of the way to the controller, and the resistor for a hundredth of the rating.
 * Aim of a hundredth: common practice, no source.
 */
function prechargeAdvice(
  study: WiringStudy,
  found: BranchStudy,
  switchgear: Switchgear,
  capacitanceUf: number,
): PrechargeAdvice {
  const voltageV = study.supply.fullV;
  const farad = capacitanceUf / 1e6;
  const aimA = Math.max(0.5, (switchgear.ratedA ?? found.guard?.fuse.ratedA ?? 10) / 100);
  const ohm = switchgear.prechargeOhm;
  return {
    capacitanceUf,
    bareInrushA: found.faultFarA,
    aimA,
    advised: precharge(voltageV, farad, aimA),
    fitted:
      ohm === null
        ? null
        : { inrushA: voltageV / ohm, timeS: 5 * ohm * farad, peakW: voltageV ** 2 / ohm },
  };
}
