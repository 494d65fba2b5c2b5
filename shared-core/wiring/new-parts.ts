import type {
  Connector,
  Fuse,
  FuseClass,
  Switchgear,
  WiringBranch,
  WiringDevice,
} from '../plan/schema/wiring-branch.ts';
import type { FoundWire } from '../plan/schema/wire-register.ts';

export function newDevice(id: string, kind: WiringDevice['kind'], name: string): WiringDevice {
  return { id, name, kind, accessoryId: null, resistanceOhm: null, inputCapacitanceUf: null };
}

/** A branch of unknown wire with nothing in it. */
export function newBranch(
  id: string,
  name: string,
  from: string,
  to: string,
  lengthM: number,
): WiringBranch {
  return {
    id,
    name,
    from,
    to,
    conductor: null,
    lengthM,
    insulationC: 75,
    insulation: 'pvc',
    bundled: 1,
    surroundingC: null,
    fuse: null,
    switchgear: null,
    connector: null,
    joints: [],
  };
}

export function newFuse(fuseClass: FuseClass, ratedA: number): Fuse {
  return {
    class: fuseClass,
    ratedA,
    ratedVoltageV: null,
    breakingA: null,
    fromSourceMm: null,
    resistanceOhm: null,
  };
}

export function newSwitchgear(kind: Switchgear['kind']): Switchgear {
  return {
    kind,
    ratedVoltageV: null,
    ratedA: null,
    breakingA: null,
    resistanceOhm: null,
    openedBy: kind === 'isolator' ? 'hand' : 'unknown',
    reachable: 'unknown',
    coilVoltageV: null,
    coilSupply: kind === 'contactor' || kind === 'relay' ? 'pack' : 'none',
    prechargeOhm: null,
    prechargeW: null,
  };
}

export function newConnector(name: string): Connector {
  return { name, ratedA: null, ratedVoltageV: null, polarised: 'unknown', matedUnderLoad: false };
}

export function newFoundWire(id: string, label: string): FoundWire {
  return {
    id,
    label,
    colour: '',
    endA: '',
    endB: '',
    keyOffV: null,
    keyOnV: null,
    throttleV: null,
    toMinusOhm: null,
    joinedTo: [],
    known: null,
  };
}
