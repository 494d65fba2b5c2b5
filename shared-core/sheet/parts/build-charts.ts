import { barDrawing } from '../drawing/bar-drawing.ts';
import { ink, type Drawing } from '../drawing/drawing.ts';
import { lineDrawing } from '../drawing/line-drawing.ts';
import type { SheetFacts } from '../sheet-facts.ts';
import { filled, wordsIn, type SheetVoice } from '../sheet-voice.ts';
import { buildWords } from '../words/build-words.ts';
import { ledgerWords } from '../words/ledger-words.ts';
import { endWords } from '../words/shared-words.ts';

const solid = { colour: ink.first, width: 1.5 };

/** The charts of the headline outing, from the series of the run and of the charge after it. */
export function buildCharts(facts: SheetFacts, voice: SheetVoice): Drawing[] {
  const words = wordsIn(buildWords, voice.language);
  const { plan, option, headline, charge } = facts;
  const { outing, study } = headline;
  const { run } = study;
  const controller = option.controller ?? plan.machine.controller;
  const minutes = Float64Array.from(run.series.timeS, (seconds) => seconds / 60);
  const { converter } = plan.machine;
  const levels = [
    ...(controller.cutoffVoltageV === null
      ? []
      : [
          {
            label: filled(words.cutoffAt, {
              volts: voice.quantity(controller.cutoffVoltageV, 'V'),
            }),
            y: controller.cutoffVoltageV,
          },
        ]),
    ...(converter?.minimumInputV == null || converter.minimumInputV < run.minimumBusVoltageV - 2
      ? []
      : [
          {
            label: filled(words.converterAt, {
              volts: voice.quantity(converter.minimumInputV, 'V'),
            }),
            y: converter.minimumInputV,
          },
        ]),
  ];
  const drawings = [
    lineDrawing(
      {
        id: 'voltage',
        title: words.voltageChart,
        summary: filled(words.voltageSummary, {
          outing: outing.name,
          minutes: voice.minutes(run.runTimeMin),
          cause: endWords[run.endedBy][voice.language],
          volts: voice.quantity(run.minimumBusVoltageV, 'V'),
        }),
        xLabel: words.minutes,
        yLabel: words.volts,
        lines: [{ name: option.name, x: minutes, y: run.series.busVoltageV, stroke: solid }],
        levels,
      },
      voice,
    ),
    lineDrawing(
      {
        id: 'charge-left',
        title: words.chargeChart,
        summary: filled(words.chargeSummary, {
          percent: voice.quantity(run.remainingPercent, '%', 2),
          outing: outing.name,
        }),
        xLabel: words.minutes,
        yLabel: words.percent,
        lines: [{ name: option.name, x: minutes, y: run.series.chargePercent, stroke: solid }],
        yLow: 0,
        yHigh: 100,
      },
      voice,
    ),
    barDrawing(
      {
        id: 'ledger',
        title: words.ledgerChart,
        summary: filled(words.ledgerSummary, {
          motor: voice.quantity(run.ledger.motorWh, 'W·h'),
          whole: voice.quantity(run.ledger.givenUpWh, 'W·h'),
        }),
        bars: (Object.keys(ledgerWords) as (keyof typeof ledgerWords)[])
          .map((key) => ({ label: ledgerWords[key][voice.language], value: run.ledger[key] }))
          .filter(({ value }) => value > 0.001 * run.ledger.givenUpWh),
      },
      voice,
    ),
  ];
  if (charge === null || charge.series.timeH.length < 2) return drawings;
  const chargeLine = lineDrawing(
    {
      id: 'charging',
      title: words.chargingChart,
      summary: filled(words.chargingSummary, {
        from: voice.quantity(charge.startPercent, '%', 2),
        to: voice.quantity(charge.endPercent, '%', 2),
        hours: voice.quantity(charge.hours, 'h', 2),
      }),
      xLabel: words.hours,
      yLabel: words.percent,
      lines: [
        {
          name: option.name,
          x: charge.series.timeH,
          y: charge.series.chargePercent,
          stroke: solid,
        },
      ],
      yLow: 0,
      yHigh: 100,
    },
    voice,
  );
  return [...drawings, chargeLine];
}
