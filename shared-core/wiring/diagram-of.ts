import type { Language } from '../plan/language.ts';
import { formatFixed, formatSignificant } from '../units/index.ts';
import { formatConductor } from './conductor-facts.ts';
import { layoutDiagram } from './diagram-layout.ts';
import type { OneLineDiagram } from './diagram-layout.ts';
import type { ShapeRole } from './diagram-shapes.ts';
import type { WiringState } from './states.ts';
import type { BranchStudy, WiringStudy } from './wiring-study.ts';

/** The one-line diagram of a worked-out wiring with the figures of one state beside each branch. */
export function diagramOf(
  study: WiringStudy,
  state: WiringState,
  language: Language,
): OneLineDiagram {
  const { topology } = study;
  const voltageV = state === 'short-circuit' ? null : (study.states[state]?.voltageV ?? null);
  return layoutDiagram(topology, {
    branch: (index) => {
      const branch = study.branches[index]!;
      return {
        size: sizeText(branch, topology.branches[index]!.branch.lengthM, language),
        value: valueText(branch, state, language),
        role: loadRole(branch, state),
      };
    },
    device: (id) => {
      const node = topology.inputNode.get(id);
      if (voltageV === null || node === undefined) return '';
      return `${formatFixed(voltageV[node]!, 1, language)} V`;
    },
  });
}

function sizeText(branch: BranchStudy, lengthM: number, language: Language): string {
  const wire = formatConductor(branch.conductor, language);
  return `${branch.conductorAssumed ? `(${wire})` : wire}, ${formatSignificant(lengthM, 2, language)} m`;
}

/** `11.5 A / 40 A, 0.21 V`: what flows, what the wire stands, what is lost. */
function valueText(branch: BranchStudy, state: WiringState, language: Language): string {
  const at = branch.states[state];
  if (at === undefined) return '–';
  const amperes = formatSignificant(at.currentA, 3, language);
  if (state === 'short-circuit') return `${amperes} A`;
  return `${amperes} A / ${formatSignificant(branch.ampacityA, 3, language)} A, ${formatFixed(at.dropV, 2, language)} V`;
}

/** Lasting currents are held against the ampacity; starts and stalls are short and judged by the fuse. */
function loadRole(branch: BranchStudy, state: WiringState): ShapeRole {
  const at = branch.states[state];
  if (at === undefined || state === 'rest') return 'value';
  if (state === 'short-circuit')
    return branch.guard === null && branch.zone !== 'converter' ? 'stop' : 'value';
  if (state === 'start' || state === 'stall')
    return at.currentA > 1.5 * branch.ampacityA ? 'warn' : 'value';
  return at.currentA > branch.ampacityA
    ? 'stop'
    : at.currentA > 0.8 * branch.ampacityA
      ? 'warn'
      : 'value';
}
