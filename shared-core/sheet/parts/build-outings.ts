import type { OutingFacts, SheetFacts } from '../sheet-facts.ts';
import { filled, wordsIn, type SheetVoice } from '../sheet-voice.ts';
import type { SheetBlock, SheetCell, SheetColumn } from '../sheet.ts';
import { buildWords } from '../words/build-words.ts';
import { endWords, verdictWords } from '../words/shared-words.ts';

/** The figures a reader looks for first. */
export function headlineFigures(facts: SheetFacts, voice: SheetVoice): SheetBlock {
  const words = wordsIn(buildWords, voice.language);
  const { headline, plan } = facts;
  const { study, spread } = headline;
  const { drive } = study.run;
  const limit = plan.machine.drive?.speedLimitKmh ?? null;
  const match = study.chargerMatch;
  return {
    kind: 'figures',
    items: [
      {
        label: words.runs,
        value: voice.minutes(study.run.runTimeMin),
        detail:
          spread === null
            ? words.spreadPending
            : filled(words.spreadOf, {
                low: voice.minutes(spread.low.value),
                high: voice.minutes(spread.high.value),
              }),
      },
      ...(drive === null
        ? []
        : [
            {
              label: words.topSpeed,
              value: voice.quantity(drive.topSpeedKmh, 'km/h'),
              ...(limit === null
                ? {}
                : { detail: filled(words.allowed, { speed: voice.quantity(limit, 'km/h') }) }),
            },
          ]),
      {
        label: words.energy,
        value: voice.quantity(study.run.deliveredWh, 'W·h'),
        detail: `${voice.quantity(study.run.deliveredAh, 'A·h')}, ${voice.quantity(study.nominalVoltageV, 'V')}`,
      },
      {
        label: words.chargeTime,
        value: voice.quantity(match?.hoursToFull, 'h', 2),
        detail: match === null ? words.noCharger : verdictWords[match.verdict][voice.language],
      },
      { label: words.mass, value: voice.quantity(study.massKg, 'kg') },
      {
        label: words.price,
        value: study.price === null ? '–' : `${voice.number(study.price, 4)}\u202F${plan.currency}`,
      },
    ],
  };
}

/** Minutes of every outing, as planned and as they may turn out. */
export function outingBlocks(facts: SheetFacts, voice: SheetVoice): SheetBlock[] {
  const words = wordsIn(buildWords, voice.language);
  const anyDrive = facts.outings.some(({ study }) => study.run.drive !== null);
  const columns: SheetColumn[] = [
    { id: 'outing', label: words.outing },
    { id: 'wanted', label: words.wanted, unit: 'min', align: 'end' },
    { id: 'planned', label: words.planned, unit: 'min', align: 'end' },
    { id: 'low', label: words.low, unit: 'min', align: 'end' },
    { id: 'likely', label: words.likely, unit: 'min', align: 'end' },
    { id: 'high', label: words.high, unit: 'min', align: 'end' },
    { id: 'ended', label: words.endedBy },
    { id: 'lowest', label: words.lowest, unit: 'V', align: 'end' },
    { id: 'left', label: words.left, unit: '%', align: 'end' },
    ...(anyDrive
      ? ([
          { id: 'speed', label: words.speed, unit: voice.symbol('km/h'), align: 'end' },
          { id: 'distance', label: words.distance, unit: voice.symbol('km'), align: 'end' },
        ] as const)
      : []),
  ];
  const counts = [...new Set(facts.outings.map(({ caseCount }) => caseCount))].filter(
    (count) => count !== null,
  );
  return [
    {
      kind: 'table',
      id: 'outings',
      caption: words.outings,
      columns,
      rows: facts.outings.map((entry) => outingRow(entry, voice, anyDrive)),
    },
    ...(counts.length === 0
      ? []
      : [
          {
            kind: 'text',
            tone: 'soft',
            text: filled(words.spreadNote, {
              cases: counts.map((count) => voice.number(count)).join(' / '),
            }),
          } as const,
        ]),
  ];
}

function outingRow(
  { outing, study, spread }: OutingFacts,
  voice: SheetVoice,
  anyDrive: boolean,
): SheetCell[] {
  const { run } = study;
  const figure = (value: number | null, decimals: number): SheetCell => ({
    text: voice.fixed(value, decimals),
    value,
  });
  const shown = (value: number | undefined, symbol: string, decimals: number): SheetCell =>
    figure(value === undefined ? null : voice.shown(value, symbol), decimals);
  return [
    outing.name,
    figure(outing.goalMin, 0),
    figure(run.runTimeMin, 1),
    figure(spread?.low.value ?? null, 1),
    figure(spread?.likely.value ?? null, 1),
    figure(spread?.high.value ?? null, 1),
    endWords[run.endedBy][voice.language],
    figure(run.minimumBusVoltageV, 2),
    figure(run.remainingPercent, 0),
    ...(anyDrive
      ? [shown(run.drive?.rollingSpeedKmh, 'km/h', 1), shown(run.drive?.distanceKm, 'km', 2)]
      : []),
  ];
}
