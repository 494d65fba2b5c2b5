import type { Verb } from './verb.ts';
import { chargeVerb } from './verbs/charge.ts';
import { demoVerb } from './verbs/demo.ts';
import { driveVerb } from './verbs/drive.ts';
import { findingsVerb } from './verbs/findings.ts';
import { fitVerb } from './verbs/fit.ts';
import { runVerb } from './verbs/run.ts';
import { sampleVerb } from './verbs/sample.ts';
import { searchVerb } from './verbs/search.ts';
import { sensitivityVerb } from './verbs/sensitivity.ts';
import { sheetVerb } from './verbs/sheet.ts';
import { spreadVerb } from './verbs/spread.ts';
import { schemaVerb } from './verbs/schema.ts';
import { weekVerb } from './verbs/week.ts';
import { wiringVerb } from './verbs/wiring.ts';
import { workingVerb } from './verbs/working.ts';

/** Every verb there is, in the order of the help. A new verb is a file in `verbs/`, named here. */
export const verbs: readonly Verb[] = [
  demoVerb,
  sampleVerb,
  runVerb,
  findingsVerb,
  chargeVerb,
  weekVerb,
  fitVerb,
  driveVerb,
  wiringVerb,
  spreadVerb,
  sensitivityVerb,
  searchVerb,
  sheetVerb,
  workingVerb,
  schemaVerb,
];
