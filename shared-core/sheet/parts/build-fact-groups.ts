import { cardWords } from '../../week/card-words.ts';
import type { SheetFacts } from '../sheet-facts.ts';
import { filled, wordsIn, type SheetVoice } from '../sheet-voice.ts';
import type { SheetBlock } from '../sheet.ts';
import { buildWords } from '../words/build-words.ts';
import { chargerKindWords, verdictWords } from '../words/shared-words.ts';

type Facts = Extract<SheetBlock, { kind: 'facts' }>;
type Row = Facts['rows'][number];

/** A line, or none where there is nothing to say. */
const row = (label: string, value: string | null): Row[] =>
  value === null || value === '–' ? [] : [{ label, value }];

/** Machine, pack, limits and charger, each as a short list. */
export function factGroups(facts: SheetFacts, voice: SheetVoice): Facts[] {
  return [
    packFacts(facts, voice),
    machineFacts(facts, voice),
    limitFacts(facts, voice),
    chargerFacts(facts, voice),
  ];
}

function packFacts({ option, headline }: SheetFacts, voice: SheetVoice): Facts {
  const words = wordsIn(buildWords, voice.language);
  const { pack } = option;
  const { study } = headline;
  const { block } = pack;
  return {
    kind: 'facts',
    title: words.pack,
    rows: [
      { label: words.block, value: block.name },
      {
        label: words.chemistry,
        value: cardWords[voice.language].chemistryNames[block.chemistry],
      },
      {
        label: words.layout,
        value: filled(words.layoutOf, {
          series: String(pack.seriesCount),
          parallel: String(pack.parallelCount),
        }),
      },
      { label: words.nominal, value: voice.quantity(study.nominalVoltageV, 'V') },
      { label: words.fullRest, value: voice.quantity(study.fullRestVoltageV, 'V') },
      { label: words.highest, value: voice.quantity(study.highestChargeVoltageV, 'V') },
      {
        label: words.capacity,
        value: filled(words.capacityAt, {
          capacity: voice.quantity(study.capacityAh, 'A·h'),
          hours: voice.quantity(block.ratedHours, 'h'),
        }),
      },
      { label: words.start, value: voice.quantity(option.startPercent, '%') },
      {
        label: words.age,
        value: filled(words.years, {
          years: voice.number(pack.ageYears, 2),
          cycles: voice.number(pack.cyclesDone),
        }),
      },
      ...row(
        words.differs,
        pack.differences.length + pack.groupDifferences.length === 0
          ? null
          : String(pack.differences.length + pack.groupDifferences.length),
      ),
      ...row(words.mass, voice.quantity(study.massKg, 'kg')),
    ],
  };
}

function machineFacts({ plan, option, headline }: SheetFacts, voice: SheetVoice): Facts {
  const words = wordsIn(buildWords, voice.language);
  const { machine } = plan;
  const { drive, converter } = machine;
  const on = machine.accessories.filter((accessory) => accessory.on);
  return {
    kind: 'facts',
    title: words.machine,
    rows: [
      { label: words.name, value: machine.name },
      ...row(
        words.motors,
        drive === null ? null : `${drive.motorCount} × ${drive.motor.name || words.motors}`,
      ),
      ...row(
        words.totalMass,
        drive === null
          ? null
          : [drive.masses.machineKg, drive.masses.riderKg, drive.masses.payloadKg]
              .map((mass) => voice.quantity(mass, 'kg'))
              .join(' + '),
      ),
      ...row(words.speedLimit, voice.quantity(drive?.speedLimitKmh, 'km/h')),
      ...row(words.steepest, voice.quantity(drive?.steepestGradePercent, '%')),
      { label: words.controller, value: (option.controller ?? machine.controller).name },
      ...row(words.converter, converter?.name ?? null),
      ...row(
        words.accessories,
        on.length === 0 ? null : on.map((accessory) => accessory.name).join(', '),
      ),
      ...row(
        words.accessoryCost,
        on.length === 0 ? null : voice.quantity(headline.study.accessoryCostMin, 'min'),
      ),
    ],
  };
}

function limitFacts({ plan, option, headline }: SheetFacts, voice: SheetVoice): Facts {
  const words = wordsIn(buildWords, voice.language);
  const controller = option.controller ?? plan.machine.controller;
  const { block } = option.pack;
  const { bms } = block;
  const { minimumVoltageV, maximumVoltageV } = controller;
  return {
    kind: 'facts',
    title: words.cutoffs,
    rows: [
      { label: words.cutoff, value: voice.quantity(controller.cutoffVoltageV, 'V') },
      ...row(words.restart, voice.quantity(controller.restartVoltageV, 'V')),
      ...row(
        words.supplyRange,
        minimumVoltageV === null && maximumVoltageV === null
          ? null
          : `${voice.number(minimumVoltageV)} – ${voice.quantity(maximumVoltageV, 'V')}`,
      ),
      ...row(words.batteryLimit, voice.quantity(controller.batteryCurrentLimitA, 'A')),
      ...row(words.motorLimit, voice.quantity(controller.motorCurrentLimitA, 'A')),
      ...row(words.bms, voice.quantity(bms?.groupLowV, 'V')),
      ...row(words.bmsHigh, voice.quantity(bms?.groupHighV, 'V')),
      ...row(words.bmsCurrent, voice.quantity(bms?.continuousDischargeA, 'A')),
      ...row(words.depth, voice.quantity(option.depthLimitPercent, '%')),
      ...row(words.blockLimit, voice.quantity(block.continuousDischargeA, 'A')),
      ...row(words.blockPeak, voice.quantity(block.peakDischargeA, 'A')),
      { label: words.peak, value: voice.quantity(headline.study.run.peakCurrentA, 'A') },
      ...row(words.converterFloor, voice.quantity(plan.machine.converter?.minimumInputV, 'V')),
    ],
  };
}

function chargerFacts({ option, headline }: SheetFacts, voice: SheetVoice): Facts {
  const words = wordsIn(buildWords, voice.language);
  const { charger } = option;
  const match = headline.study.chargerMatch;
  if (charger === null || match === null)
    return {
      kind: 'facts',
      title: words.charger,
      rows: [{ label: words.charger, value: words.noCharger }],
    };
  return {
    kind: 'facts',
    title: words.charger,
    rows: [
      { label: words.charger, value: charger.name },
      { label: words.kind, value: chargerKindWords[charger.kind][voice.language] },
      { label: words.chargeCurrent, value: voice.quantity(charger.currentA, 'A') },
      { label: words.endVoltage, value: voice.quantity(charger.endVoltageV, 'V', 4) },
      {
        label: words.float,
        value:
          charger.floatVoltageV === null
            ? words.none
            : voice.quantity(charger.floatVoltageV, 'V', 4),
      },
      { label: words.verdict, value: verdictWords[match.verdict][voice.language] },
      ...row(words.chargeTime, voice.quantity(match.hoursToFull, 'h', 2)),
      ...row(words.portLimit, voice.quantity(option.portLimitA, 'A')),
    ],
  };
}
