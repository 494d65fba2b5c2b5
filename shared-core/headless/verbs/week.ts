import { formatDuration, formatSignificant } from '../../units/index.ts';
import type { Option } from '../../plan/schema/option.ts';
import {
  calendarText,
  clockText,
  parseCivilDate,
  studyWeek,
  type WeekStudy,
} from '../../week/index.ts';
import { alignedTable } from '../aligned-table.ts';
import { jsonText } from '../json-text.ts';
import { loadPlan, writeTextFile } from '../load-plan.ts';
import { done, forceOption, jsonOption, languageOption, refuse, type Verb } from '../verb.ts';
import { isLanguage } from './findings.ts';

const obstacles = {
  'no-charger': 'the option has no charger',
  'no-use': 'the week names no outing',
  'no-window': 'the week names no charging window',
  'charger-cannot-charge': 'the charger cannot push current into this pack',
} as const;

/** Monday from which the calendar repeats where no day is given; any Monday does, since its entries repeat. */
const usualStart = '2026-01-05';

export const weekVerb: Verb = {
  name: 'week',
  usage: 'FILE [options]',
  summary:
    'simulate the week of the plan over its season, compare charging routines, and write a calendar',
  details: [
    'Every option is simulated under each routine; the proposed one is marked with *.',
    'A plan without a week is given a usual one, and says so.',
  ],
  options: [
    jsonOption,
    {
      name: '--option',
      value: 'ID',
      meaning: 'this option only; needed by --calendar when the plan has several',
    },
    {
      name: '--calendar',
      value: 'OUT.ics',
      meaning: 'write the proposed routine as iCalendar file',
    },
    {
      name: '--from',
      value: 'YYYY-MM-DD',
      meaning: `a day of the season's first week (else ${usualStart})`,
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
    const asked = value('--option');
    const options =
      asked === undefined ? plan.options : plan.options.filter(({ id }) => id === asked);
    if (options.length === 0) {
      return refuse(
        `--option: ${asked} is not in the plan. Use one of: ${plan.options.map(({ id }) => id).join(', ')}.`,
      );
    }
    const fromText = value('--from') ?? usualStart;
    const from = parseCivilDate(fromText);
    if (from === null) return refuse(`--from: ${fromText} is no day. Write it as YYYY-MM-DD.`);
    const studies = options.map((option) => ({ option, study: studyWeek(plan, option) }));
    const calendar = value('--calendar');
    if (calendar !== undefined) {
      const chosen =
        asked === undefined ? studies.find(({ study }) => study.obstacle === null) : studies[0];
      if (chosen === undefined || chosen.study.obstacle !== null) {
        const obstacle = chosen?.study.obstacle ?? studies[0]!.study.obstacle!;
        return refuse(`--calendar: nothing to write, because ${obstacles[obstacle]}.`);
      }
      const text = calendarText(plan, chosen.option, chosen.study, from, language);
      const trouble = await writeTextFile(host, calendar, text, has('--force'));
      if (trouble !== null) return refuse(trouble);
      host.err(`${calendar}: the routine of ${chosen.option.id} was written.\n`);
    }
    if (has('--json')) {
      host.out(
        jsonText({
          options: studies.map(({ option, study }) => ({ name: option.name, ...study })),
        }),
      );
      return done;
    }
    for (const { option, study } of studies) host.out(weekText(option, study));
    return done;
  },
};

const figure = (value: number, digits = 3) => formatSignificant(value, digits, 'en');

function weekText(option: Option, study: WeekStudy): string {
  const title = `${option.name}${study.assumedWeek ? '  (usual week: the plan has none)' : ''}\n`;
  if (study.obstacle !== null) return `${title}  not simulated: ${obstacles[study.obstacle]}\n\n`;
  const rows = study.seasons.map((season) => [
    `${season.trigger}${season.trigger === study.proposal?.trigger ? ' *' : ''}`,
    `${season.failedOutings} of ${season.outings}`,
    figure(season.lowestPercent),
    figure(season.meanDepthPercent),
    figure(season.equivalentCycles),
    figure(season.expectedSeasons, 2),
    figure(season.longestWithoutFullDays, 2),
    figure(season.mainsKWh),
    season.cost === null ? '–' : figure(season.cost),
  ]);
  const head = [
    'Plug in',
    'Outings lost',
    'Lowest %',
    'Mean depth %',
    'Full cycles',
    'Seasons',
    'Days without full',
    'Mains kWh',
    'Cost',
  ];
  return `${title}${alignedTable(head, rows)}${lostText(study)}${stepsText(study)}${storageText(study)}\n`;
}

function lostText({ seasons, proposal }: WeekStudy): string {
  const chosen = seasons.find(({ trigger }) => trigger === proposal?.trigger);
  return (chosen?.failures ?? [])
    .map(
      (failure) =>
        `  would fail: ${failure.outingId} on ${failure.day} at ${clockText(failure.startMin)}, ${failure.failed} of ${failure.wanted} times, shortest ${figure(failure.shortestMin)} of ${figure(failure.wantedMin)} min\n`,
    )
    .join('');
}

function stepsText({ steps }: WeekStudy): string {
  return steps
    .map(
      (step) =>
        `  plug in ${step.days.join(' ')} at ${clockText(step.plugMin)} for ${formatDuration(step.chargingMin, 'en')}, from ${figure(step.fromPercent, 2)} % to ${figure(step.toPercent, 2)} %${step.pack > 1 ? ` (pack ${step.pack})` : ''}\n`,
    )
    .join('');
}

function storageText({ storage }: WeekStudy): string {
  if (storage === null) return '';
  return `  storage: ${storage.days} days from month ${storage.firstMonth}, start at ${figure(storage.startPercent)} %, alone it ends at ${figure(storage.endPercentAlone)} %, top up on days ${storage.topUpDays.join(', ') || 'none'}\n`;
}
