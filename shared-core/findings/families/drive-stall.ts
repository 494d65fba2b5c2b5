import type { Rule } from '../rule.ts';
import { optionRule } from '../rule.ts';
import { driveFacts } from './drive-facts.ts';

/** Driven at a stand for longer than this is no slow start [s]. Common practice, no source. */
const longStallS = 10;

const standsStill: Rule = optionRule(
  {
    id: 'DRV-4',
    severity: 'warn',
    sourceClass: 'derived',
    source: 'Derived: seconds of the simulated outing driven without moving',
    about: { en: 'Will it climb the steepest grade?', de: 'Kommt sie die steilste Stelle hinauf?' },
  },
  (entry, voice, context) => {
    const drive = entry.study?.run.drive ?? null;
    if (drive === null || driveFacts(entry, context) === null || drive.stalledS < longStallS)
      return [];
    const slips = drive.slipS > drive.stalledS / 2;
    const legs = context.outing.legs.flatMap(({ load }, at) =>
      load?.kind === 'drive' ? [{ gradePercent: load.gradePercent, at }] : [],
    );
    const steepest = legs.reduce((most, leg) =>
      leg.gradePercent > most.gradePercent ? leg : most,
    );
    const outingAt = context.plan.outings.indexOf(context.outing);
    const minutes = voice.say(drive.stalledS / 60, 'min', 2);
    const grade = voice.say(steepest.gradePercent, '%');
    const metres = voice.say(1000 * drive.distanceKm, 'm', 2);
    return [
      voice.finding({
        optionId: entry.option.id,
        what: {
          en: `For ${minutes} of the outing it is driven and does not move${slips ? ', its wheels slipping' : ''}; it covers ${metres} in all. The steepest leg has ${grade}.`,
          de: `${minutes} der Ausfahrt wird sie angetrieben und rührt sich nicht${slips ? ', die Räder drehen durch' : ''}; insgesamt schafft sie ${metres}. Das steilste Teilstück hat ${grade}.`,
        },
        consequence: slips
          ? {
              en: 'It digs in or polishes the ground, drains the pack, and the minutes shown are minutes at a stand.',
              de: 'Sie gräbt sich ein, leert den Akku, und die gezeigten Minuten sind Minuten im Stand.',
            }
          : {
              en: 'Full current flows into motors that stand still: the windings burn within minutes, and the minutes shown are minutes at a stand.',
              de: 'Voller Strom fließt in stehende Motoren: Die Wicklungen verbrennen in Minuten, und die gezeigten Minuten sind Minuten im Stand.',
            },
        remedy: slips
          ? {
              en: 'More weight on the driven wheels or a better tread; carry less; a gentler way up.',
              de: 'Mehr Gewicht auf die Antriebsräder oder besseres Profil; weniger laden; ein flacherer Weg.',
            }
          : {
              en: 'A higher ratio, motors in series, a higher motor current limit where the motor stands it, less load, or a gentler way up.',
              de: 'Größere Übersetzung, Motoren in Reihe, höhere Motorstrombegrenzung, falls der Motor sie verträgt, weniger Last oder ein flacherer Weg.',
            },
        facts: [
          [{ en: 'Driven at a stand', de: 'Im Stand angetrieben' }, drive.stalledS / 60, 'min'],
          [{ en: 'Steepest leg', de: 'Steilstes Teilstück' }, steepest.gradePercent, '%'],
        ],
        fields: [
          `outings.${outingAt}.legs.${steepest.at}.load.gradePercent`,
          `${entry.controllerPath}.motorCurrentLimitA`,
          'machine.drive.gears',
        ],
      }),
    ];
  },
);

export const stallRules: readonly Rule[] = [standsStill];
