import { app } from './app.ts';
import { bench } from './bench.ts';
import { charging } from './charging.ts';
import { charts } from './charts.ts';
import { commands, menus } from './commands.ts';
import { compare } from './compare.ts';
import { controller } from './controller.ts';
import { controls } from './controls.ts';
import { documents } from './documents.ts';
import { doors } from './doors.ts';
import { drive } from './drive.ts';
import { fields } from './fields.ts';
import { figureWorkings } from './figure-workings.ts';
import { findings } from './findings.ts';
import { groups } from './groups.ts';
import { machine } from './machine.ts';
import { menu } from './menu.ts';
import { namePatterns, nameWords } from './names.ts';
import { newPlan } from './new-plan.ts';
import { options } from './options.ts';
import { ownParts } from './own-parts.ts';
import { packs } from './packs.ts';
import { rating } from './rating.ts';
import { run } from './run.ts';
import { search } from './search.ts';
import { seasonWorkings } from './season-workings.ts';
import { sheet } from './sheet.ts';
import { stop } from './stop.ts';
import { strip } from './strip.ts';
import { ways } from './ways.ts';
import { whatIf } from './what-if.ts';
import { wiring } from './wiring.ts';
import { workings } from './workings.ts';

/** Everything the interface says in German; fetched when German is chosen. */
export const german = {
  app,
  bench,
  charging,
  charts,
  commands,
  menus,
  compare,
  controller,
  controls,
  documents,
  doors,
  drive,
  fields,
  figureWorkings,
  findings,
  groups,
  machine,
  menu,
  namePatterns,
  nameWords,
  newPlan,
  options,
  ownParts,
  packs,
  rating,
  run,
  search,
  seasonWorkings,
  sheet,
  stop,
  strip,
  ways,
  whatIf,
  wiring,
  workings,
};

export type German = typeof german;
