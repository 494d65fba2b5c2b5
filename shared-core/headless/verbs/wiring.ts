import type { Language } from '../../plan/language.ts';
import type { Option } from '../../plan/schema/option.ts';
import type { Plan } from '../../plan/schema/plan.ts';
import type { Wiring } from '../../plan/schema/wiring.ts';
import { runOuting } from '../../run/run-outing.ts';
import { formatFixed, formatSignificant } from '../../units/index.ts';
import {
  checkSwitches,
  commissioningSteps,
  coordinate,
  diagramOf,
  diagramSvg,
  deduceWires,
  formatConductor,
  meterFrame,
  prefillWiring,
  registerConflicts,
  registerSteps,
  studyWiring,
  wiringRecord,
} from '../../wiring/index.ts';
import type { WiringStudy } from '../../wiring/index.ts';
import { alignedTable } from '../aligned-table.ts';
import { findOptions, findOuting } from '../find-outing.ts';
import { jsonText } from '../json-text.ts';
import { loadPlan, writeTextFile } from '../load-plan.ts';
import {
  done,
  forceOption,
  jsonOption,
  languageOption,
  outingOption,
  refuse,
  type Verb,
} from '../verb.ts';
import { isLanguage } from './findings.ts';

export const wiringVerb: Verb = {
  name: 'wiring',
  usage: 'FILE [options]',
  summary: 'print every branch of the wiring with currents, drops, limits, fuse and smallest wire',
  details: [
    'A plan without wiring gets the one the program proposes; it is not written into the file.',
  ],
  options: [
    jsonOption,
    outingOption,
    { name: '--option', value: 'ID', meaning: 'only this option' },
    {
      name: '--diagram',
      value: 'OUT.svg',
      meaning: 'write the one-line diagram of the first option',
    },
    forceOption,
    languageOption,
  ],
  arguments: [1, 1],
  async run({ positional: [path], value, has, host }) {
    const language = value('--language') ?? 'en';
    if (!isLanguage(language)) return refuse(`--language: ${language} is not known. Use en or de.`);
    const loaded = await loadPlan(host, path!);
    if (!loaded.ok) return refuse(loaded.line);
    const { plan } = loaded;
    const outing = findOuting(plan, value('--outing'));
    if (!outing.ok) return refuse(outing.line);
    const found = findOptions(plan, value('--option'));
    if (!found.ok) return refuse(found.line);
    const { ambientC } = outing.outing;
    const worked = found.options.map((option) => {
      const run = runOuting(option, plan.machine, outing.outing);
      const wiring = plan.wiring ?? prefillWiring(plan, option, run, ambientC);
      return { option, wiring, study: studyWiring(plan, wiring, option, run, ambientC) };
    });
    const target = value('--diagram');
    const first = worked[0];
    if (target !== undefined && first !== undefined) {
      const svg = diagramSvg(diagramOf(first.study, 'cruising', language), plan.name);
      const trouble = await writeTextFile(host, target, svg, has('--force'));
      if (trouble !== null) return refuse(trouble);
    }
    if (has('--json')) {
      host.out(
        jsonText({
          outing: outing.outing.id,
          proposed: plan.wiring === null,
          options: worked.map(({ option, wiring, study }) =>
            optionRecord(plan, option, wiring, study, language),
          ),
          register: registerRecord(plan, plan.options[0]!),
        }),
      );
      return done;
    }
    if (plan.wiring === null) host.out('The plan has no wiring yet; this is a proposal.\n\n');
    for (const { option, wiring, study } of worked)
      host.out(optionText(plan, option, wiring, study, language));
    return done;
  },
};

function optionRecord(
  plan: Plan,
  option: Option,
  wiring: Wiring,
  study: WiringStudy,
  language: Language,
) {
  return {
    id: option.id,
    name: option.name,
    ...wiringRecord(study),
    switches: checkSwitches(study, wiring.branches),
    coordination: wiring.branches.flatMap((branch) => {
      const chart = coordinate(study, branch, wiring.startSeconds, language);
      return chart === null
        ? []
        : [
            {
              branchId: chart.branchId,
              marks: chart.marks,
              rows: chart.rows,
              readings: chart.readings,
            },
          ];
    }),
    commissioning: commissioningSteps(plan, wiring, option, study, language),
  };
}

function registerRecord(plan: Plan, option: Option) {
  const wires = plan.wiring?.register ?? [];
  const deductions = deduceWires(wires, meterFrame(plan, option));
  return {
    deductions,
    conflicts: registerConflicts(wires, deductions),
    nextTests: registerSteps(wires, deductions),
  };
}

function optionText(
  plan: Plan,
  option: Option,
  wiring: Wiring,
  study: WiringStudy,
  language: Language,
): string {
  const figure = (value: number | null | undefined, digits = 3) =>
    value === null || value === undefined ? '–' : formatSignificant(value, digits, language);
  const rows = study.branches.map((branch) => [
    branch.name,
    `${formatConductor(branch.conductor, language)}${branch.conductorAssumed ? ' ?' : ''}`,
    figure(branch.states.cruising?.currentA),
    figure(branch.states.start?.currentA),
    figure(branch.states.stall?.currentA),
    figure(branch.states.charge?.currentA),
    figure(branch.faultFarA),
    formatFixed(branch.wayDropPercent, 2, language),
    figure(branch.ampacityA),
    branch.guard === null ? 'none' : `${figure(branch.guard.fuse.ratedA)} A`,
    formatFixed(branch.wireC, 0, language),
    branch.smallest.conductor === null
      ? 'none'
      : `${formatConductor(branch.smallest.conductor, language)} (${branch.smallest.reason})`,
  ]);
  const readings = wiring.branches.flatMap((branch) => {
    const chart = coordinate(study, branch, wiring.startSeconds, language);
    return chart === null
      ? []
      : [
          `  ${branch.name}`,
          ...chart.readings.map((reading) => `    ${reading.verdict}: ${reading.text}`),
        ];
  });
  return [
    `${option.name}\n`,
    alignedTable(
      [
        'Branch',
        'Wire',
        'Cruise A',
        'Start A',
        'Stall A',
        'Charge A',
        'Short A',
        'Drop %',
        'Stands A',
        'Fuse',
        'Wire °C',
        'Smallest (because of)',
      ],
      rows,
    ),
    study.harnessOhm === null
      ? ''
      : `Pack to controller out and back: ${figure(study.harnessOhm * 1000)} mΩ; the run counts ${figure(plan.machine.harnessResistanceOhm * 1000)} mΩ.\n`,
    readings.length === 0 ? 'No branch has a fuse.\n\n' : `Fuses:\n${readings.join('\n')}\n\n`,
  ].join('');
}
