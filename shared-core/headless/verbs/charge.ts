import { chargeOption, startAfterRun } from '../../charge/charge-option.ts';
import { compareChargeWays } from '../../charge/charge-ways.ts';
import type { Plan } from '../../plan/schema/plan.ts';
import type { OptionStudy } from '../../study/study.ts';
import type { Option } from '../../plan/schema/option.ts';
import { formatSignificant } from '../../units/index.ts';
import { studyPlan } from '../../study/study-plan.ts';
import { alignedTable } from '../aligned-table.ts';
import { findOuting } from '../find-outing.ts';
import { jsonText } from '../json-text.ts';
import { loadPlan } from '../load-plan.ts';
import { done, jsonOption, languageOption, outingOption, refuse, type Verb } from '../verb.ts';
import { isLanguage } from './findings.ts';

export const chargeVerb: Verb = {
  name: 'charge',
  usage: 'FILE [options]',
  summary: 'print whether each charger fits its pack, and the hours to full after the outing',
  details: [],
  options: [jsonOption, outingOption, languageOption],
  arguments: [1, 1],
  async run({ positional: [path], value, has, host }) {
    const language = value('--language') ?? 'en';
    if (!isLanguage(language)) return refuse(`--language: ${language} is not known. Use en or de.`);
    const loaded = await loadPlan(host, path!);
    if (!loaded.ok) return refuse(loaded.line);
    const outing = findOuting(loaded.plan, value('--outing'));
    if (!outing.ok) return refuse(outing.line);
    const study = studyPlan(loaded.plan, outing.outing.id, language);
    const pairs = study.options.map((entry, index) => ({
      entry,
      option: loaded.plan.options[index]!,
    }));
    if (has('--json')) {
      host.out(
        jsonText({
          outing: outing.outing.id,
          options: pairs.map(({ entry, option }) => ({
            ...chargeRecord(entry, option),
            charge:
              option.charger === null
                ? null
                : simulated(loaded.plan, option, entry, outing.outing.ambientC),
          })),
        }),
      );
      return done;
    }
    host.out(
      alignedTable(
        ['Option', 'Charger', 'Verdict', 'Charger done after h', 'Wanted end V', 'Given end V'],
        pairs.map(({ entry, option }) => [
          entry.name,
          option.charger?.name ?? 'none',
          entry.chargerMatch?.verdict ?? '–',
          figure(entry.chargerMatch?.hoursToFull ?? null, 2),
          figure(entry.chargerMatch?.wantedEndVoltageV ?? null, 3),
          figure(entry.chargerMatch?.givenEndVoltageV ?? null, 3),
        ]),
      ),
    );
    for (const { entry, option } of pairs) {
      if (option.charger !== null)
        host.out(chargeText(option, simulated(loaded.plan, option, entry, outing.outing.ambientC)));
    }
    for (const { entry } of pairs) {
      if (entry.chargerMatch === null) continue;
      host.out(`\n${entry.name}\n`);
      host.out(
        alignedTable(
          ['Aspect', 'Verdict', 'Reason'],
          entry.chargerMatch.aspects.map(({ aspect, verdict, reason }) => [
            aspect,
            verdict,
            reason,
          ]),
        ),
      );
    }
    return done;
  },
};

/** The charge after the outing, with what it costs and the ways to charge the blocks. */
function simulated(plan: Plan, option: Option, entry: OptionStudy, ambientC: number) {
  const conditions = { temperatureC: ambientC, startPercent: startAfterRun(entry.run) };
  const { series: _series, ...charge } = chargeOption(option, option.charger!, conditions);
  const price = plan.week?.tariff.pricePerKWh ?? null;
  return {
    ...charge,
    cost: price === null ? null : (price * charge.mainsWh) / 1000,
    ways: compareChargeWays(option, option.charger!, conditions),
  };
}

function chargeText(option: Option, charge: ReturnType<typeof simulated>): string {
  const ways = charge.ways
    .map(
      (way) =>
        `  ${way.way}: ${figure(way.hours, 3)} h, weakest block ${figure(way.weakestPercent, 3)} %, highest block ${figure(way.highestBlockV, 4)} V\n`,
    )
    .join('');
  return `\n${option.name}: from ${figure(charge.startPercent, 3)} % to ${figure(charge.endPercent, 3)} %, ended by ${charge.endedBy} after ${figure(charge.hours, 3)} h; 80 % after ${figure(charge.hoursTo80, 3)} h, 98 % after ${figure(charge.hoursTo98, 3)} h; in ${figure(charge.inAh, 3)} Ah, ${figure(charge.inWh, 3)} Wh, mains ${figure(charge.mainsWh, 3)} Wh${charge.cost === null ? '' : `, cost ${figure(charge.cost, 2)}`}\n${ways}`;
}

function chargeRecord(
  { id, name, chargerMatch, run }: OptionStudy,
  option: Option,
): Record<string, unknown> {
  return {
    id,
    name,
    charger: option.charger?.name ?? null,
    verdict: chargerMatch?.verdict ?? null,
    remainingPercent: run.remainingPercent,
    hoursToFull: chargerMatch?.hoursToFull ?? null,
    wantedEndVoltageV: chargerMatch?.wantedEndVoltageV ?? null,
    givenEndVoltageV: chargerMatch?.givenEndVoltageV ?? null,
    aspects: chargerMatch?.aspects ?? [],
  };
}

function figure(value: number | null, digits: number): string {
  return value === null ? '–' : formatSignificant(value, digits, 'en');
}
