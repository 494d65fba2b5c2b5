import { newDriveLoad } from '../plan/drive-defaults.ts';
import type { DriveLoad } from '../plan/schema/leg-load.ts';
import type { Leg, Outing } from '../plan/schema/outing.ts';

/** Outings to start from. */
export type OutingTemplate = 'flat-paving' | 'garden' | 'hilly-lane' | 'stop-and-go';

export const outingTemplates: readonly OutingTemplate[] = [
  'flat-paving',
  'garden',
  'hilly-lane',
  'stop-and-go',
];

/** Words of a template's legs, in the language of the plan's owner. */
export interface TemplateWords {
  readonly name: string;
  readonly ride: string;
  readonly climb: string;
  readonly descend: string;
  readonly lawn: string;
  readonly pause: string;
}

/**
 * A driven outing of a usual kind, to be changed by the user. Invented patterns; speeds are those of a hand-guided or
 * child's machine.
 */
export function templateOuting(template: OutingTemplate, id: string, words: TemplateWords): Outing {
  return {
    id,
    name: words.name,
    goalMin: 60,
    ambientC: 20,
    legs: legsOf(template, words),
    longestMin: 600,
    restAfterMin: 20,
  };
}

function legsOf(template: OutingTemplate, words: TemplateWords): Leg[] {
  switch (template) {
    case 'flat-paving':
      return [leg('ride', words.ride, 10, { starts: 2 }), pause(words.pause, 2)];
    case 'garden':
      return [
        leg('ride', words.ride, 3, { surface: 'packed-gravel', starts: 2 }),
        leg('lawn', words.lawn, 5, { surface: 'short-grass', starts: 4 }),
        pause(words.pause, 3),
      ];
    case 'hilly-lane':
      return [
        leg('ride', words.ride, 4, { starts: 1 }),
        leg('climb', words.climb, 2, { gradePercent: 6, starts: 1 }),
        leg('descend', words.descend, 2, { gradePercent: -6, starts: 0, haltS: 0 }),
        pause(words.pause, 2),
      ];
    case 'stop-and-go':
      return [leg('ride', words.ride, 10, { starts: 20, haltS: 10 })];
  }
}

function leg(id: string, name: string, durationMin: number, changes: Partial<DriveLoad>): Leg {
  return { id, name, durationMin, load: { ...newDriveLoad(), ...changes }, otherLoads: [] };
}

function pause(name: string, durationMin: number): Leg {
  return { id: 'pause', name, durationMin, load: null, otherLoads: [] };
}
