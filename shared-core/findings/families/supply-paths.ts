import type { Wiring } from '../../plan/schema/wiring.ts';
import { readTopology } from '../../wiring/topology.ts';
import type { Finding } from '../finding.ts';
import type { Rule, RuleVoice } from '../rule.ts';
import { wiringRule } from './wiring-rule.ts';

/** WIR-6: every branch hangs on one supply, and no two supplies meet. */
export const supplyPaths: Rule = wiringRule(
  {
    id: 'WIR-6',
    severity: 'stop',
    sourceClass: 'derived',
    source: 'Two voltage sources on one node: surge dV / (R1 + R2), and the network has no answer',
    about: {
      en: 'Two supplies meet in the wiring, or a branch hangs on none.',
      de: 'Zwei Speisungen treffen sich in der Verkabelung, oder ein Zweig hängt an keiner.',
    },
  },
  (wiring, _plan, voice) => [
    ...secondSources(wiring, voice),
    ...meetings(wiring, voice),
    ...unfed(wiring, voice),
  ],
);

const consequence = {
  en: 'One feeds backwards into the other: surge, a burnt converter, a lithium pack charged without a charger.',
  de: 'Eine speist rückwärts in die andere: Stromstoß, ein verbrannter Wandler, ein ohne Ladegerät geladenes Lithiumpack.',
};

/** One device stands for all equal strings, one for the terminals of the pack; a further one is another battery. */
function secondSources({ devices }: Wiring, voice: RuleVoice): Finding[] {
  return (['string', 'pack'] as const).flatMap((kind) => {
    const all = devices.flatMap((device, index) =>
      device.kind === kind ? [{ device, index }] : [],
    );
    if (all.length < 2) return [];
    const names = all.map(({ device }) => device.name).join(', ');
    return [
      voice.finding({
        what: {
          en: `${names} stand in one wiring: the figures count the first only.`,
          de: `${names} stehen in einer Verkabelung: die Zahlen rechnen nur mit dem ersten.`,
        },
        consequence,
        remedy: {
          en: 'Equal strings are one device and are counted in the option. Two batteries of their own need a change-over switch, never a common node.',
          de: 'Gleiche Stränge sind ein Gerät und werden in der Variante gezählt. Zwei eigene Batterien brauchen einen Umschalter, nie einen gemeinsamen Knoten.',
        },
        fields: all.slice(1).map(({ index }) => `wiring.devices.${index}.kind`),
      }),
    ];
  });
}

/** The graph is walked from the pack first: an output it reaches is tied to the pack. */
function meetings(wiring: Wiring, voice: RuleVoice): Finding[] {
  const { branches, nodeZone, zones } = readTopology(wiring);
  const nameOf = (id: string) => wiring.devices.find((device) => device.id === id)?.name ?? id;
  return zones.flatMap((zone, zoneIndex) => {
    const holder = nodeZone[zone.node] ?? null;
    if (holder === null || holder === zoneIndex) return [];
    const [first, second] = [nameOf(zones[holder]!.deviceId), nameOf(zone.deviceId)];
    // Where two branches end in one node the supplies meet.
    const ends = branches.filter(
      ({ to }) => branches.filter((other) => other.to === to).length > 1,
    );
    return [
      voice.finding({
        what: {
          en: `What ${second} feeds is joined to what ${first} feeds${ends.length === 0 ? '' : `, by ${ends.map(({ branch }) => branch.name).join(' and ')}`}.`,
          de: `Was ${second} speist, ist mit dem verbunden, was ${first} speist${ends.length === 0 ? '' : `, durch ${ends.map(({ branch }) => branch.name).join(' und ')}`}.`,
        },
        consequence,
        remedy: {
          en: 'Feed each load from one supply; part the two with a change-over switch.',
          de: 'Jede Last aus einer Speisung versorgen; beide mit einem Umschalter trennen.',
        },
        fields:
          ends.length === 0
            ? ['wiring.branches']
            : ends.map(({ index }) => `wiring.branches.${index}.from`),
      }),
    ];
  });
}

/** Without a supply a branch has no current, so no rule can say anything about it. */
function unfed(wiring: Wiring, voice: RuleVoice): Finding[] {
  return readTopology(wiring).branches.flatMap(({ branch, index, zone }) =>
    zone === null
      ? [
          voice.notChecked({
            missing: {
              en: `${branch.name} hangs on no supply, so nothing about it can be worked out.`,
              de: `${branch.name} hängt an keiner Speisung, daher lässt sich dazu nichts rechnen.`,
            },
            remedy: {
              en: 'Let it begin at the pack or at something the pack feeds.',
              de: 'Ihn am Akku beginnen lassen oder an etwas, das der Akku speist.',
            },
            fields: [`wiring.branches.${index}.from`],
          }),
        ]
      : [],
  );
}
