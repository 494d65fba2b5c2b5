import type { Wiring } from '#core/plan/schema/wiring.ts';
import {
  formatConductor,
  type BranchStudy,
  type WiringState,
  type WiringStudy,
} from '#core/wiring/index.ts';
import { Button } from '../../controls/Button.tsx';
import { DataTable } from '../../controls/DataTable.tsx';
import { edit } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { formatFigure, formatFixed } from '../../text/format.ts';
import { wiringTexts } from '../../text/wiring.ts';
import { useText } from '../../text/use-text.ts';

interface BranchTableProps {
  readonly wiring: Wiring;
  readonly wired: WiringStudy;
  readonly state: WiringState;
  readonly onSelect: (branchId: string) => void;
}

/** The twin of the diagram: every branch with all its figures in one state, and the wire that would do. */
export const BranchTable = ({ wiring, wired, state, onSelect }: BranchTableProps) => {
  const text = useText(wiringTexts);
  const language = useSettings((settings) => settings.language);
  const figure = (value: number): string => formatFigure(value, language);
  const take = (branch: BranchStudy, name: string): void =>
    edit(name, (plan) => {
      const target = plan.wiring?.branches[branch.planIndex];
      if (target !== undefined) target.conductor = branch.smallest.conductor;
    });
  const guardOf = ({ guard, zone, faultNearA }: BranchStudy): string => {
    if (guard === null) {
      return zone === 'converter'
        ? `${figure(faultNearA)} A, ${text.branch.deviceKinds.converter}`
        : text.table.none;
    }
    const holder = wired.branches[guard.branchIndex]!;
    return `${figure(guard.fuse.ratedA)} A, ${wiring.branches[holder.planIndex]!.name}`;
  };
  const rows = wired.branches.map((branch) => {
    const at = branch.states[state];
    const { conductor: least, reason } = branch.smallest;
    const size = formatConductor(branch.conductor, language);
    const leastSize = least === null ? text.table.none : formatConductor(least, language);
    const differs = least !== null && (branch.conductorAssumed || leastSize !== size);
    const takeName = text.table.take(leastSize, branch.name);
    return {
      id: branch.id,
      cells: {
        branch: (
          <Button
            look="quiet"
            label={text.diagram.choose(branch.name)}
            onPress={() => onSelect(branch.id)}
          >
            {branch.name}
          </Button>
        ),
        wire: branch.conductorAssumed ? `${text.table.assumed} ${size}` : size,
        current: at === undefined ? '–' : figure(at.currentA),
        drop:
          at === undefined || state === 'short-circuit'
            ? '–'
            : `${formatFixed(at.dropV, language, 2)} (${formatFixed(at.dropPercent, language, 1)} %)`,
        stands: figure(branch.ampacityA),
        fuse: guardOf(branch),
        warmth: formatFixed(branch.wireC, language, 0),
        short: figure(branch.faultFarA),
        smallest: (
          <span className="wiring-smallest">
            {`${leastSize}, ${text.table.reasons[reason]}`}
            {differs ? (
              <Button look="quiet" label={takeName} onPress={() => take(branch, takeName)}>
                {text.table.takeIt}
              </Button>
            ) : null}
          </span>
        ),
        price: text.table.prices[branch.priceClass],
      },
    };
  });
  return (
    <div className="branch-table">
      <DataTable
        caption={text.states[state]}
        columns={[
          { id: 'branch', label: text.table.branch },
          { id: 'wire', label: text.table.wire },
          { id: 'current', label: text.table.current, unit: 'A', isNumber: true },
          { id: 'drop', label: text.table.drop, unit: 'V', isNumber: true },
          { id: 'stands', label: text.table.stands, unit: 'A', isNumber: true },
          { id: 'warmth', label: text.table.warmth, unit: '°C', isNumber: true },
          { id: 'fuse', label: text.table.fuse },
          { id: 'short', label: text.table.short, unit: 'A', isNumber: true },
          { id: 'smallest', label: text.table.smallest },
          { id: 'price', label: text.table.price },
        ]}
        rows={rows}
      />
    </div>
  );
};
