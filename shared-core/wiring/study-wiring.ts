import { highestChargeVoltageV } from '../charge/charge-wishes.ts';
import type { Option } from '../plan/schema/option.ts';
import type { Plan } from '../plan/schema/plan.ts';
import type { Wiring } from '../plan/schema/wiring.ts';
import type { RunResult } from '../run/result.ts';
import { branchResistance } from './branch-resistance.ts';
import { studyBranch } from './study-branch.ts';
import { conductorAmpacityA, conductorAreaMm2, conductorOhmPerKm } from './conductor-facts.ts';
import { wiringDemand } from './demand.ts';
import { guardOf, sizingFuse, wayBack } from './protection.ts';
import { faultCurrents } from './short-circuit.ts';
import { smallestConductor } from './smallest-conductor.ts';
import { solveState, wiringStates } from './states.ts';
import type { NetworkState, StateSolution } from './states.ts';
import { packSupply } from './supply.ts';
import { readTopology } from './topology.ts';
import { settledTemperatureC } from './wire-heating.ts';
import type { WiringStudy } from './wiring-study.ts';
import type { Conductor } from '../plan/schema/conductor.ts';

/** Stands in for an unknown conductor until its current is known. */
const firstGuess: Conductor = { system: 'metric', areaMm2: 4 };
/** Wires warm up, resist more, and change the currents a little; three rounds settle it to a millivolt. */
const rounds = 3;

/**
 * Works out every branch of the wiring for one option: currents and voltages in all states, ampacity, drop, heat,
 * short circuit, guarding fuse and the smallest conductor that would do.
 *
 * @param run the option's run on the outing: gives the driving currents
 * @param ambientC temperature of the outing [°C]; wires without their own stand in the warmer of it and 30 °C
 */
export function studyWiring(
  plan: Pick<Plan, 'machine' | 'thresholds'>,
  wiring: Wiring,
  option: Option,
  run: RunResult,
  ambientC: number,
): WiringStudy {
  const { machine } = plan;
  const topology = readTopology(wiring);
  const supply = packSupply(option, ambientC);
  const demand = wiringDemand(machine, option, wiring, run, supply);
  const highestVoltageV = highestChargeVoltageV(
    option.pack,
    option.charger,
    ambientC,
    plan.thresholds,
  );
  const kindOf = new Map(topology.devices.map((device) => [device.id, device.kind]));
  const isStringBranch = topology.branches.map(
    ({ branch }) => kindOf.get(branch.from) === 'string',
  );
  const aroundC = topology.branches.map(
    ({ branch }) => branch.surroundingC ?? Math.max(30, ambientC),
  );
  const zoneV = topology.branches.map((entry) => {
    const zone = entry.zone === null ? undefined : topology.zones[entry.zone];
    if (zone?.kind === 'converter') return machine.converter?.outputVoltageV ?? supply.nominalV;
    return zone?.kind === 'mid-point' ? supply.tapV : supply.nominalV;
  });
  const conductors = topology.branches.map(({ branch }) => branch.conductor ?? firstGuess);
  const wireC = [...aroundC];
  const guards = topology.branches.map((_, index) => guardOf(topology, index, supply.stringCount));

  const resistances = () =>
    topology.branches.map(({ branch }, index) => {
      const own = branchResistance(branch, conductors[index]!, wireC[index]!);
      if (!isStringBranch[index]) return own;
      // Links without a stated wire: the option's own figure for the string counts.
      const totalOhm = branch.conductor === null ? supply.linkOhm : own.totalOhm;
      return {
        ...own,
        wireOhm: branch.conductor === null ? supply.linkOhm : own.wireOhm,
        totalOhm,
      };
    });
  const inNetwork = (ohm: readonly { totalOhm: number }[]) =>
    ohm.map(({ totalOhm }, index) =>
      isStringBranch[index] ? totalOhm / supply.stringCount : totalOhm,
    );
  const share = (index: number) => (isStringBranch[index] ? 1 / supply.stringCount : 1);

  let ohm = resistances();
  let faults = faultCurrents(topology, inNetwork(ohm), supply, machine);
  let states = solveAll();
  for (let round = 1; round < rounds; round += 1) {
    topology.branches.forEach(({ branch }, index) => {
      const continuousA = continuousCurrentA(states, index) * share(index);
      const { dropNotePercent } = plan.thresholds.wiring;
      if (branch.conductor === null) {
        const found = smallestConductor(branch, 'metric', {
          continuousA:
            guards[index] === null
              ? Math.max(continuousA, Math.abs(states.start?.currentA[index] ?? 0) * share(index))
              : continuousA,
          dropA: continuousA,
          guard: sizingFuse(topology, index, supply.stringCount),
          faultA: faults[index]!.farA,
          zoneV: zoneV[index]!,
          dropPercent: dropNotePercent,
          ambientC: aroundC[index]!,
        });
        conductors[index] = found.conductor ?? { system: 'metric', areaMm2: 50 };
      }
      wireC[index] = Math.min(
        branch.insulationC + 60,
        settledTemperatureC(wireHeatOf(index), continuousA),
      );
    });
    ohm = resistances();
    faults = faultCurrents(topology, inNetwork(ohm), supply, machine);
    states = solveAll();
  }

  function solveAll(): Record<NetworkState, StateSolution | null> {
    const inputs = { machine, topology, branchOhm: inNetwork(ohm), supply, demand };
    return Object.fromEntries(
      wiringStates
        .filter((state): state is NetworkState => state !== 'short-circuit')
        .map((state) => [state, solveState(state, inputs)]),
    ) as Record<NetworkState, StateSolution | null>;
  }

  function wireHeatOf(index: number) {
    const { branch } = topology.branches[index]!;
    const conductor = conductors[index]!;
    return {
      ohmPerM20: conductorOhmPerKm(conductor, 20) / 1000,
      areaMm2: conductorAreaMm2(conductor),
      ampacityA: conductorAmpacityA(conductor, branch.insulationC, branch.bundled, aroundC[index]!),
      ratedC: branch.insulationC,
      ambientC: aroundC[index]!,
    };
  }

  const toController = topology.branches.findIndex(
    ({ branch }) => kindOf.get(branch.to) === 'controller',
  );
  return {
    optionId: option.id,
    supply,
    demand,
    topology,
    states,
    networkOhm: inNetwork(ohm),
    harnessOhm:
      toController < 0
        ? null
        : wayBack(topology, toController)
            .filter((index) => !isStringBranch[index])
            .reduce((sum, index) => sum + ohm[index]!.totalOhm, 0),
    highestVoltageV,
    branches: topology.branches.map((_, index) =>
      studyBranch({
        plan,
        topology,
        index,
        conductor: conductors[index]!,
        heat: wireHeatOf(index),
        wireC: wireC[index]!,
        resistance: ohm[index]!,
        share: share(index),
        zoneV: zoneV[index]!,
        guard: guards[index]!,
        fault: faults[index]!,
        brakeA: demand.brakeA,
        stringCount: supply.stringCount,
        states,
      }),
    ),
  };
}

/** Larger of driving and charging [A], as the network sees it. */
export function continuousCurrentA(
  states: Record<NetworkState, StateSolution | null>,
  index: number,
): number {
  return Math.max(
    Math.abs(states.cruising?.currentA[index] ?? 0),
    Math.abs(states.charge?.currentA[index] ?? 0),
  );
}
