import { cardWords } from '../../week/card-words.ts';
import { formatConductor } from '../../wiring/index.ts';
import { shortHash } from '../plan-hash.ts';
import type { SheetFacts } from '../sheet-facts.ts';
import { filled, plainSpaces, wordsIn, type SheetVoice } from '../sheet-voice.ts';
import type { SheetPart } from '../sheet.ts';
import { chargerKindWords, endWords, severityWords, verdictWords } from '../words/shared-words.ts';
import { questionWords } from '../words/question-words.ts';

interface Mark {
  readonly date: string;
  readonly version: string;
  readonly hash: string;
}

/** The question block: what a reader elsewhere must know before he can answer. */
export function questionPart(facts: SheetFacts, voice: SheetVoice, mark: Mark): SheetPart {
  const words = wordsIn(questionWords, voice.language);
  return {
    id: 'question',
    title: words.title,
    lead: words.lead,
    wide: false,
    blocks: [{ kind: 'plain', text: questionText(facts, voice, mark) }],
  };
}

function questionText(facts: SheetFacts, voice: SheetVoice, mark: Mark): string {
  const words = wordsIn(questionWords, voice.language);
  const { plan } = facts;
  const lines = [
    ...(plan.invented ? [words.invented] : []),
    ...packLines(facts, voice),
    ...machineLines(facts, voice),
    ...wiringLines(facts, voice),
    ...resultLines(facts, voice),
    ...findingLines(facts, voice),
    filled(words.made, { ...mark, hash: shortHash(mark.hash) }),
    '',
    words.question,
  ];
  return plainSpaces(lines.join('\n'));
}

function packLines({ option, headline }: SheetFacts, voice: SheetVoice): string[] {
  const words = wordsIn(questionWords, voice.language);
  const { pack, charger } = option;
  const { block } = pack;
  const layout = filled(words.layout, {
    series: String(pack.seriesCount),
    parallel: String(pack.parallelCount),
    block: block.name,
    chemistry: cardWords[voice.language].chemistryNames[block.chemistry],
    capacity: voice.quantity(block.capacityAh, 'A·h'),
    hours: voice.quantity(block.ratedHours, 'h'),
  });
  const age = filled(words.aged, {
    years: voice.number(pack.ageYears, 2),
    cycles: voice.number(pack.cyclesDone),
  });
  const match = headline.study.chargerMatch;
  return [
    `${words.pack}: ${option.name}: ${layout}; ${age}`,
    charger === null || match === null
      ? `${words.charger}: ${words.noCharger}`
      : `${words.charger}: ${chargerKindWords[charger.kind][voice.language]}, ${voice.quantity(charger.currentA, 'A')}, ${voice.quantity(charger.endVoltageV, 'V', 4)} (${verdictWords[match.verdict][voice.language]})`,
  ];
}

function machineLines({ plan, option }: SheetFacts, voice: SheetVoice): string[] {
  const words = wordsIn(questionWords, voice.language);
  const { machine } = plan;
  const controller = option.controller ?? machine.controller;
  const { drive } = machine;
  const on = machine.accessories.filter((accessory) => accessory.on).map(({ name }) => name);
  return [
    `${words.machine}: ${machine.name}`,
    `${words.controller}: ${controller.name}, ${filled(words.cutoff, { volts: voice.quantity(controller.cutoffVoltageV, 'V') })}, ${filled(words.limit, { amperes: voice.quantity(controller.batteryCurrentLimitA, 'A') })}`,
    ...(drive === null
      ? []
      : [
          `${words.drive}: ${drive.motorCount} × ${drive.motor.name}, ${filled(words.masses, {
            machine: voice.quantity(drive.masses.machineKg, 'kg'),
            rider: voice.quantity(drive.masses.riderKg, 'kg'),
            load: voice.quantity(drive.masses.payloadKg, 'kg'),
          })}`,
        ]),
    `${words.accessories}: ${on.length === 0 ? words.none : on.join(', ')}`,
  ];
}

function wiringLines({ wiring, wiringStudy }: SheetFacts, voice: SheetVoice): string[] {
  const words = wordsIn(questionWords, voice.language);
  return wiring.branches.flatMap((branch) => {
    const study = wiringStudy.branches.find(({ id }) => id === branch.id);
    if (study === undefined || study.continuousA < 5) return [];
    return [
      `${words.wiring}: ${filled(branch.fuse === null ? words.noFuse : words.fuse, {
        branch: branch.name,
        wire: formatConductor(study.conductor, voice.language),
        metres: voice.quantity(branch.lengthM, 'm'),
        fuse: voice.quantity(branch.fuse?.ratedA, 'A'),
      })}`,
    ];
  });
}

function resultLines({ outings }: SheetFacts, voice: SheetVoice): string[] {
  const words = wordsIn(questionWords, voice.language);
  return outings.flatMap(({ outing, study, spread }) => {
    const { run } = study;
    return [
      `${words.outing}: ${outing.name}, ${filled(words.wanted, {
        minutes: voice.minutes(outing.goalMin),
        celsius: voice.quantity(outing.ambientC, '°C'),
      })}`,
      `  ${words.result}: ${filled(words.runs, {
        minutes: voice.minutes(run.runTimeMin),
        cause: endWords[run.endedBy][voice.language],
      })}`,
      ...(spread === null
        ? []
        : [
            `  ${filled(words.spread, {
              low: voice.minutes(spread.low.value),
              likely: voice.minutes(spread.likely.value),
              high: voice.minutes(spread.high.value),
            })}`,
          ]),
      `  ${filled(words.volts, {
        volts: voice.quantity(run.minimumBusVoltageV, 'V'),
        amperes: voice.quantity(run.peakCurrentA, 'A'),
        average: voice.quantity(run.averageCurrentA, 'A'),
      })}`,
    ];
  });
}

function findingLines({ findings }: SheetFacts, voice: SheetVoice): string[] {
  const words = wordsIn(questionWords, voice.language);
  const standing = findings.filter(
    ({ status, severity }) => status === 'finding' && severity !== 'note',
  );
  if (standing.length === 0) return [`${words.open}: ${words.none}`];
  return [
    `${words.open}:`,
    ...standing.map(
      ({ id, severity, what }) => `  ${id} (${severityWords[severity][voice.language]}): ${what}`,
    ),
  ];
}
