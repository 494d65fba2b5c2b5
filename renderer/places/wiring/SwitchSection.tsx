import type { Wiring } from '#core/plan/schema/wiring.ts';
import { checkSwitches, type SwitchCheck, type WiringStudy } from '#core/wiring/index.ts';
import { DataTable } from '../../controls/DataTable.tsx';
import { Section } from '../../controls/Section.tsx';
import { useSettings } from '../../state/settings-store.ts';
import { formatFigure } from '../../text/format.ts';
import { wiringTexts } from '../../text/wiring.ts';
import { useText } from '../../text/use-text.ts';

/** One card for each switch: its ratings against what it must do, and its precharge. */
export const SwitchSection = ({
  wiring,
  wired,
}: {
  readonly wiring: Wiring;
  readonly wired: WiringStudy;
}) => {
  const text = useText(wiringTexts).switches;
  const checks = checkSwitches(wired, wiring.branches);
  return (
    <Section title={text.title} lead={text.lead}>
      {checks.length === 0 ? <p className="wiring-answer">{text.none}</p> : null}
      <div className="switch-cards">
        {checks.map((check) => (
          <SwitchCard key={check.branchId} check={check} />
        ))}
      </div>
    </Section>
  );
};

const SwitchCard = ({ check }: { readonly check: SwitchCheck }) => {
  const words = useText(wiringTexts);
  const text = words.switches;
  const language = useSettings((state) => state.language);
  const figure = (value: number | null, unit: string): string =>
    value === null ? '–' : `${formatFigure(value, language)} ${unit}`;
  const plain = (value: number): string => formatFigure(value, language);
  const { precharge, switchgear } = check;
  return (
    <article className="switch-card">
      <h3 className="switch-name">{`${words.branch.switchKinds[switchgear.kind]}, ${check.branchName}`}</h3>
      <DataTable
        caption={check.branchName}
        hideCaption
        columns={[
          { id: 'aspect', label: text.aspect },
          { id: 'given', label: text.given, isNumber: true },
          { id: 'asked', label: text.asked, isNumber: true },
          { id: 'verdict', label: words.fuses.verdict },
        ]}
        rows={check.aspects.map((aspect) => ({
          id: aspect.aspect,
          cells: {
            aspect: text.aspects[aspect.aspect],
            given: figure(aspect.given, aspect.unit),
            asked: figure(aspect.asked, aspect.unit),
            verdict: (
              <span className={`verdict verdict-${aspect.verdict}`}>
                {text.verdicts[aspect.verdict]}
              </span>
            ),
          },
        }))}
      />
      {precharge === null && !check.capacitorsUnknown ? null : (
        <div className="switch-precharge">
          <h4>{text.precharge}</h4>
          {precharge === null ? (
            <p className="soft">{text.unknown}</p>
          ) : (
            <>
              <p>{text.bare(plain(precharge.bareInrushA), plain(precharge.capacitanceUf))}</p>
              <p>
                {precharge.fitted === null
                  ? text.advice(
                      plain(precharge.advised.resistanceOhm),
                      plain(precharge.advised.timeS),
                      plain(precharge.advised.energyJ),
                      plain(precharge.advised.peakW),
                    )
                  : text.fitted(
                      plain(switchgear.prechargeOhm ?? 0),
                      plain(precharge.fitted.inrushA),
                      plain(precharge.fitted.timeS),
                    )}
              </p>
            </>
          )}
        </div>
      )}
    </article>
  );
};
