import { describe, expect, test } from 'vitest';
import { samplePlan, type SampleName } from '#core/plan/samples/index.ts';
import { newDevice, wiringStates } from '#core/wiring/index.ts';
import { checkAgainst } from '../support/check-against.ts';
import { findNgspice, runTransient } from '../support/ngspice.ts';
import { wiredSample } from '../unit/wiring/wired.ts';

const ngspice = findNgspice();

/** Node voltages of a resistive deck with loads of constant current and power [V]. */
function nodeVoltages(elements: string[], nodes: readonly number[]): Map<number, number> {
  // A leak keeps nodes without a path defined; the transient only serves to write the operating point.
  const leaks = nodes.map((node) => `Rleak${node} n${node} 0 1e9`);
  const rows = runTransient(
    [...elements, ...leaks, '.options reltol=1e-9 vntol=1e-9 abstol=1e-12'].join('\n'),
    '1e-4 1e-3',
    nodes.map((node) => `v(n${node})`),
  );
  const last = rows[rows.length - 1]!;
  return new Map(nodes.map((node, index) => [node, last[index + 1]!]));
}

const cases: readonly [SampleName, string][] = [
  ['orchard-cart', 'agm-series'],
  ['orchard-cart', 'agm-two-strings'],
  ['campsite-tug', 'lead-24'],
  ['campsite-tug', 'lithium-36'],
  ['market-scooter', 'new-pair'],
];

describe.skipIf(ngspice === null)('the network of the wiring against the circuit simulator', () => {
  test.each(cases)(
    '%s, %s: voltages and currents in rest, cruising, start, stall and charge agree',
    (name, optionId) => {
      const { study } = wiredSample(name, optionId);
      const { topology, networkOhm } = study;
      let compared = 0;
      let startMainA = 0;
      for (const solution of Object.values(study.states)) {
        if (solution === null) continue;
        for (const { zone, sources, loads } of solution.networks) {
          const members = topology.branches.flatMap((entry, index) =>
            entry.zone === zone ? [{ entry, index }] : [],
          );
          const nodes = topology.nodeZone.flatMap((at, node) => (at === zone ? [node] : []));
          const deck = [
            ...sources.map(
              (source, place) =>
                `Vs${place} e${place} 0 ${source.emfV}\nRs${place} e${place} n${source.node} ${Math.max(1e-6, source.resistanceOhm)}`,
            ),
            ...members.map(
              ({ entry, index }) => `Rb${index} n${entry.from} n${entry.to} ${networkOhm[index]}`,
            ),
            ...loads.map(
              (load, place) =>
                `Bl${place} n${load.node} 0 I = ${load.currentA} + ${load.powerW}/max(v(n${load.node}), 1) + ${load.conductanceS}*v(n${load.node})`,
            ),
          ];
          const volts = nodeVoltages(deck, nodes);
          for (const node of nodes) {
            expect(
              Math.abs(volts.get(node)! - solution.voltageV[node]!),
              `${solution.state}, node ${node}`,
            ).toBeLessThan(1e-4);
          }
          for (const { entry, index } of members) {
            const theirs = (volts.get(entry.from)! - volts.get(entry.to)!) / networkOhm[index]!;
            expect(
              Math.abs(theirs - solution.currentA[index]!),
              `${solution.state}, ${entry.branch.id}`,
            ).toBeLessThan(2e-3);
            compared += 1;
            if (solution.state === 'start' && entry.branch.id === 'main') startMainA = theirs;
          }
        }
      }
      expect(compared).toBeGreaterThan(20);
      const main = topology.branches.findIndex((entry) => entry.branch.id === 'main');
      checkAgainst({
        chapter: 'Wiring',
        quantity: `Current in the main line at a start, ${name} ${optionId}`,
        unit: 'A',
        source: 'ngspice operating point of the same network',
        class: 'tool',
        reference: startMainA,
        ours: study.branches[main]!.states.start!.currentA,
        within: { absolute: 2e-3 },
      });
    },
  );

  test.each(cases)(
    '%s, %s: the short circuit at the far end of each pack branch agrees',
    (name, optionId) => {
      const { study } = wiredSample(name, optionId);
      const { topology, networkOhm, supply } = study;
      const packZone = topology.zones.findIndex((zone) => zone.kind === 'pack');
      topology.branches.forEach((entry, index) => {
        if (entry.zone !== packZone) return;
        const nodes = topology.nodeZone.flatMap((at, node) => (at === packZone ? [node] : []));
        const volts = nodeVoltages(
          [
            `Vs e 0 ${supply.fullV}`,
            `Rs e n${topology.zones[packZone]!.node} ${supply.stringOhm / supply.stringCount}`,
            ...topology.branches.flatMap((other, place) =>
              other.zone === packZone
                ? [`Rb${place} n${other.from} n${other.to} ${networkOhm[place]}`]
                : [],
            ),
            `Rfault n${entry.to} 0 1e-7`,
          ],
          nodes,
        );
        const theirs = (volts.get(entry.from)! - volts.get(entry.to)!) / networkOhm[index]!;
        checkAgainst({
          chapter: 'Wiring',
          quantity: `Short circuit at the far end of ${entry.branch.name}, ${name} ${optionId}`,
          unit: 'A',
          source: 'ngspice operating point of the same network',
          class: 'tool',
          reference: theirs,
          ours: study.branches[index]!.faultFarA,
          within: { share: 1e-3 },
        });
      });
    },
  );
});

test.skipIf(ngspice === null)(
  'an accessory at the middle of the string lowers pack and tap as two blocks in one circuit do',
  () => {
    const { study } = wiredSample('orchard-cart', 'agm-series', (plan, wiring) => {
      plan.machine.accessories[2]!.supply = 'mid-point';
      plan.machine.accessories[2]!.load = { kind: 'current', currentA: 6 };
      const radio = wiring.devices.find(
        ({ accessoryId }) => accessoryId === plan.machine.accessories[2]!.id,
      )!;
      wiring.devices.push(newDevice('tap', 'mid-point', 'Mid-point'));
      wiring.branches = wiring.branches.map((branch) =>
        branch.to === radio.id ? { ...branch, from: 'tap' } : branch,
      );
    });
    const { topology, networkOhm, supply } = study;
    const cruising = study.states.cruising!;
    const packZone = topology.zones.findIndex(({ kind }) => kind === 'pack');
    const tapZone = topology.zones.findIndex(({ kind }) => kind === 'mid-point');
    const loads = cruising.networks
      .filter(({ zone }) => zone === packZone || zone === tapZone)
      .flatMap((network) => network.loads);
    const [packNode, tapNode] = [topology.zones[packZone]!.node, topology.zones[tapZone]!.node];
    const nodes = topology.nodeZone.flatMap((at, node) =>
      at === packZone || at === tapZone ? [node] : [],
    );
    // The two blocks as they stand in the machine: the lower one between minus and tap, the upper one on top.
    const volts = nodeVoltages(
      [
        `Vlow l 0 ${supply.tapV}`,
        `Rlow l n${tapNode} ${supply.tapOhm}`,
        `Vhigh h n${tapNode} ${supply.fullV - supply.tapV}`,
        `Rhigh h n${packNode} ${supply.stringOhm - supply.tapOhm}`,
        ...topology.branches.flatMap((entry, index) =>
          entry.zone === packZone || entry.zone === tapZone
            ? [`Rb${index} n${entry.from} n${entry.to} ${networkOhm[index]}`]
            : [],
        ),
        ...loads.map(
          (load, place) =>
            `Bl${place} n${load.node} 0 I = ${load.currentA} + ${load.powerW}/max(v(n${load.node}), 1) + ${load.conductanceS}*v(n${load.node})`,
        ),
      ],
      nodes,
    );
    for (const [quantity, node] of [
      ['Pack voltage', packNode],
      ['Mid-point voltage', tapNode],
    ] as const) {
      checkAgainst({
        chapter: 'Wiring',
        quantity: `${quantity} with 6 A drawn at the middle while cruising`,
        unit: 'V',
        source: 'ngspice operating point, both blocks in one circuit',
        class: 'tool',
        reference: volts.get(node)!,
        ours: cruising.voltageV[node]!,
        within: { absolute: 1e-4 },
      });
    }
  },
);

test('all six states are covered by the two comparisons', () => {
  expect(wiringStates).toEqual(['rest', 'cruising', 'start', 'stall', 'charge', 'short-circuit']);
  expect(samplePlan('campsite-tug').wiring).not.toBeNull();
});
