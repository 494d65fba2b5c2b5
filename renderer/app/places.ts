import type { CommandId } from '#core/commands/command-table.ts';
import type { IconName } from '../controls/icons.tsx';
import type { PlaceTexts } from '../text/app.ts';
import { fetchedPart, type FetchedPart } from '../controls/Fetched.tsx';

/**
 * The places of the window, in the order of the job. To add one:
 *
 * 1. write `places/<name>/<Name>Place.tsx`, a component without props that reads the plan with `usePlan(selector)` and
 *    the figures with `useStudy()`, and edits with `editField(name, path, value)` or `edit(name, recipe)`;
 * 2. put its words into `text/<name>.ts` as `texts('<name>', english)`, the German ones of the same type into
 *    `text/german/<name>.ts`, and read them with `useText(words)`;
 * 3. add its entry here, its name to `places` in `text/app.ts`, and the roots of the plan fields it shows to `fields`,
 *    so that findings can lead to them. A field control given a plan path can be reached without more ado.
 *
 * A place stands in this table only when it exists: there are no stubs.
 */
export interface Place {
  readonly id: keyof PlaceTexts;
  readonly command: CommandId;
  readonly icon: IconName;
  /** Fetched when the place is first gone to, or ahead of that in idle time. */
  readonly body: FetchedPart<object>;
  /** Patterns of the plan fields that stand there; the first place that matches is where a link leads. */
  readonly fields: readonly RegExp[];
}

export const places: readonly Place[] = [
  {
    id: 'machine',
    command: 'place.machine',
    icon: 'machine',
    body: fetchedPart(
      async () => (await import('../places/machine/MachinePlace.tsx')).MachinePlace,
    ),
    fields: [/^machine(\.|$)/, /^outings(\.|$)/],
  },
  {
    id: 'packs',
    command: 'place.packs',
    icon: 'packs',
    body: fetchedPart(async () => (await import('../places/packs/PacksPlace.tsx')).PacksPlace),
    fields: [/^options(\.|$)/, /^ownParts(\.|$)/],
  },
  {
    id: 'run',
    command: 'place.run',
    icon: 'run',
    body: fetchedPart(async () => (await import('../places/run/RunPlace.tsx')).RunPlace),
    fields: [],
  },
  {
    id: 'charging',
    command: 'place.charging',
    icon: 'charging',
    body: fetchedPart(
      async () => (await import('../places/charging/ChargingPlace.tsx')).ChargingPlace,
    ),
    fields: [/^week(\.|$)/],
  },
  {
    id: 'wiring',
    command: 'place.wiring',
    icon: 'wiring',
    body: fetchedPart(async () => (await import('../places/wiring/WiringPlace.tsx')).WiringPlace),
    fields: [/^wiring(\.|$)/],
  },
  {
    id: 'bench',
    command: 'place.bench',
    icon: 'bench',
    body: fetchedPart(async () => (await import('../places/bench/BenchPlace.tsx')).BenchPlace),
    fields: [/^bench(\.|$)/],
  },
  {
    id: 'sheet',
    command: 'place.sheet',
    icon: 'sheet',
    body: fetchedPart(async () => (await import('../places/sheet/SheetPlace.tsx')).SheetPlace),
    fields: [],
  },
];
