import type { ChargerCandidate } from '#core/charge/charger-table.ts';
import type { MatchAspect } from '#core/charge/match-result.ts';
import type { OptionCharging } from '#core/study/study-charging.ts';
import { Button } from '../../controls/Button.tsx';
import { DataTable, type Row } from '../../controls/DataTable.tsx';
import { Disclosure } from '../../controls/Disclosure.tsx';
import { Figure } from '../../controls/Figure.tsx';
import { matchWorking } from '../../workings/charge-working.ts';
import { Section } from '../../controls/Section.tsx';
import { edit } from '../../state/plan-store.ts';
import { useSettings } from '../../state/settings-store.ts';
import { chargingTexts } from '../../text/charging.ts';
import { formatMinutes } from '../../text/format.ts';
import { nameIn, namedIn } from '../../text/names.ts';
import { useText } from '../../text/use-text.ts';
import { Verdict } from './Verdict.tsx';

interface MatchSectionProps {
  readonly optionIndex: number;
  readonly charging: OptionCharging;
}

const rank = { misfits: 3, unknown: 2, limits: 1, fits: 0 } as const;

/** The aspect that decided the verdict; of a charger that fits, its current. */
export function decidingAspect({ match }: ChargerCandidate): MatchAspect | undefined {
  const worst = match.aspects
    .filter(({ aspect, verdict }) => aspect !== 'port' || verdict !== 'unknown')
    .toSorted((a, b) => rank[b.verdict] - rank[a.verdict])[0];
  return worst?.verdict === 'fits'
    ? match.aspects.find(({ aspect }) => aspect === 'current')
    : worst;
}

/** Every charger of plan and library against the option, best first. */
export const MatchSection = ({ optionIndex, charging }: MatchSectionProps) => {
  const text = useText(chargingTexts).match;
  const language = useSettings((state) => state.language);
  const { chargers } = charging;
  const shown = chargers.filter(
    ({ origin, match }) => origin !== 'library' || match.verdict === 'fits',
  );
  const library = chargers.filter(({ origin }) => origin === 'library');
  const limited = library.filter(
    ({ match }) => match.verdict === 'limits' || match.verdict === 'unknown',
  );
  const misfits = library.filter(({ match }) => match.verdict === 'misfits');
  const old = chargers.find(({ origin }) => origin === 'other-option');
  const take = ({ charger }: ChargerCandidate): void =>
    edit(text.used(charger.name), (plan) => {
      const option = plan.options[optionIndex];
      if (option !== undefined) option.charger = structuredClone(namedIn(charger, language));
    });
  const columns = [
    { id: 'charger', label: text.charger },
    { id: 'verdict', label: text.verdict },
    { id: 'hours', label: text.hours, isNumber: true },
    { id: 'reason', label: text.reason },
    { id: 'origin', label: text.origin },
    { id: 'take', label: '' },
  ];
  const rowOf = (candidate: ChargerCandidate): Row => {
    const { id, charger, origin, match, fromOption } = candidate;
    const aspect = decidingAspect(candidate);
    return {
      id,
      cells: {
        charger: nameIn(charger.name, language),
        verdict: <Verdict verdict={match.verdict} />,
        hours:
          match.hoursToFull === null ? (
            '–'
          ) : (
            <Figure
              size="inline"
              label={`${text.hours}, ${nameIn(charger.name, language)}`}
              value={formatMinutes(match.hoursToFull * 60, language)}
              working={() => matchWorking(match, charging.charge?.startPercent ?? 0, language)}
            />
          ),
        reason:
          aspect === undefined
            ? ''
            : `${aspect.reason}${aspect.findingId === null || aspect.verdict === 'fits' ? '' : ` (${aspect.findingId})`}`,
        origin: fromOption ?? text.origins[origin],
        take:
          origin === 'own' ? (
            <span className="soft">{text.inUse}</span>
          ) : (
            <Button
              look="quiet"
              label={`${text.use}: ${charger.name}`}
              onPress={() => take(candidate)}
            >
              {text.use}
            </Button>
          ),
      },
    };
  };
  return (
    <Section title={text.title} lead={text.lead}>
      {charging.charge === null ? <p className="soft">{text.none}</p> : null}
      {old === undefined ? null : (
        <p className="charging-answer">
          <Verdict verdict={old.match.verdict} isShort />
          {text.keepOld(text.verdicts[old.match.verdict], decidingAspect(old)?.reason ?? '')}
        </p>
      )}
      <DataTable caption={text.title} hideCaption columns={columns} rows={shown.map(rowOf)} />
      {limited.length === 0 ? null : (
        <Disclosure title={text.limited(limited.length)}>
          <DataTable
            caption={text.limited(limited.length)}
            hideCaption
            columns={columns}
            rows={limited.map(rowOf)}
          />
        </Disclosure>
      )}
      {misfits.length === 0 ? null : (
        <Disclosure title={text.misfits(misfits.length)}>
          <DataTable
            caption={text.misfits(misfits.length)}
            hideCaption
            columns={columns}
            rows={misfits.map(rowOf)}
          />
        </Disclosure>
      )}
    </Section>
  );
};
