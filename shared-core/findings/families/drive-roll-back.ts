import { descent } from '../../drive/resistor-heat.ts';
import { releaseOhm } from '../../drive/drive-regimes.ts';
import { gearById } from '../../drive/drive-train.ts';
import { roadOf } from '../../drive/road.ts';
import type { DriveLoad } from '../../plan/schema/leg-load.ts';
import type { Outing } from '../../plan/schema/outing.ts';
import type { Rule } from '../rule.ts';
import { optionRule } from '../rule.ts';
import { driveFacts } from './drive-facts.ts';

/** A moment before the ramp has built up the push is no rolling back worth a word [s]. */
const shortestS = 1;

/** The steepest stretch driven uphill, with its place in the outing. */
function steepestClimb({ legs }: Outing): { readonly load: DriveLoad; readonly at: number } | null {
  let most: { load: DriveLoad; at: number } | null = null;
  legs.forEach(({ load }, at) => {
    if (load?.kind === 'drive' && load.gradePercent > (most?.load.gradePercent ?? 0))
      most = { load, at };
  });
  return most;
}

const rollsBack: Rule = optionRule(
  {
    id: 'DRV-7',
    severity: 'warn',
    sourceClass: 'derived',
    source: 'Derived: slope against motor torque and friction at a stand',
    about: {
      en: 'Rolling backwards where nothing holds it on a slope',
      de: 'Rückwärtsrollen, wo sie am Hang nichts hält',
    },
  },
  (entry, voice, context) => {
    const drive = entry.study?.run.drive ?? null;
    const facts = driveFacts(entry, context);
    const climb = steepestClimb(context.outing);
    if (drive === null || facts === null || climb === null || drive.rollsBackS < shortestS)
      return [];
    const { load, at } = climb;
    const outingAt = context.plan.outings.indexOf(context.outing);
    const { train } = facts;
    const down = roadOf(train, load.surface, -load.gradePercent, 0, load.loadPercent);
    const back = descent(gearById(train, load.gearId), down, releaseOhm(train) ?? Infinity);
    const free = !Number.isFinite(back.creepMps);
    const kmh = back.creepMps * 3.6;
    const pace = {
      en: free ? 'ever faster' : `at ${voice.say(kmh, 'km/h')}`,
      de: free ? 'immer schneller' : `mit ${voice.say(kmh, 'km/h')}`,
    };
    return [
      voice.finding({
        optionId: entry.option.id,
        what: {
          en: `Standing on ${voice.say(load.gradePercent, '%')} it rolls backwards ${pace.en}; the run counts it as standing, ${voice.say(drive.rollsBackS, 's', 0)} in all.`,
          de: `Bei ${voice.say(load.gradePercent, '%')} Steigung rollt sie im Stand ${pace.de} rückwärts; der Lauf zählt sie als stehend, insgesamt ${voice.say(drive.rollsBackS, 's', 0)}.`,
        },
        consequence: {
          en: 'It runs into whoever stands behind it; distance and minutes of this run are those of a machine that is held.',
          de: 'Sie rollt in den, der dahinter steht; Weg und Minuten dieses Laufs gelten für eine Maschine, die gehalten wird.',
        },
        remedy: {
          en: 'Fit a brake that holds the loaded machine: a service brake or a parking brake that closes by itself.',
          de: 'Eine Bremse anbauen, die die beladene Maschine hält: eine Betriebsbremse oder eine Feststellbremse, die von selbst schließt.',
        },
        facts: [
          [{ en: 'Grade', de: 'Steigung' }, load.gradePercent, '%'],
          ...(free
            ? []
            : [[{ en: 'Rolls back at', de: 'Rollt zurück mit' }, kmh, 'km/h'] as const]),
        ],
        fields: [
          'machine.drive.brakes.parking',
          'machine.drive.brakes.serviceDecelerationMps2',
          `outings.${outingAt}.legs.${at}.load.gradePercent`,
        ],
      }),
    ];
  },
);

export const rollBackRules: readonly Rule[] = [rollsBack];
