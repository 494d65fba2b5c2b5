import { memo } from 'react';
import { Button } from 'react-aria-components';
import { WorkingButton } from '../controls/Figure.tsx';
import { SeriesMark } from '../controls/SeriesMark.tsx';
import { findingsOf } from '../state/findings-of.ts';
import { showFindings } from '../state/findings-view.ts';
import { chooseOption, goTo, usePlace } from '../state/place-store.ts';
import { usePlan } from '../state/plan-store.ts';
import { useSettings } from '../state/settings-store.ts';
import { appTexts } from '../text/app.ts';
import { formatDifference, formatFigure, formatMinutes, thinSpace } from '../text/format.ts';
import { stripTexts } from '../text/strip.ts';
import { useText } from '../text/use-text.ts';
import { displaySymbol, toDisplay } from '#core/units/display.ts';
import type { Finding } from '#core/findings/finding.ts';
import type { Option } from '#core/plan/schema/option.ts';
import type { OptionStudy } from '#core/study/study.ts';
import { FindingMarks } from './FindingMarks.tsx';
import { RunBar } from './RunBar.tsx';
import { SpreadCells } from './SpreadCells.tsx';
import { accessoryWorking } from '../workings/accessory-working.ts';
import { chargeWorking } from '../workings/charge-working.ts';
import { energyWorking } from '../workings/energy-working.ts';
import { massWorking, priceWorking } from '../workings/sum-workings.ts';
import { speedWorking } from '../workings/speed-working.ts';
import { runTimeWorking } from '../workings/run-time-working.ts';

interface HeadlineRowProps {
  readonly option: Option;
  readonly index: number;
  readonly study: OptionStudy | null;
  readonly findings: readonly Finding[];
  readonly goalMin: number;
  /** Minutes at the right end of the bars. */
  readonly scaleMin: number;
  /** Some option is driven with the motor model: the strip has a column of speeds. */
  readonly isDriven: boolean;
}

/** Kept as it is while its figures are: an edit changes one option, and the strip answers first. */
export const HeadlineRow = memo(function HeadlineRow({
  option,
  index,
  study,
  findings,
  goalMin,
  scaleMin,
  isDriven,
}: HeadlineRowProps) {
  const text = useText(stripTexts);
  const app = useText(appTexts);
  const { language, units } = useSettings();
  const isChosen = usePlace((state) => state.optionId === option.id);
  const currency = usePlan((plan) => plan.currency);
  const own = findingsOf(findings, option.id);
  const minutes = study === null ? '–' : formatMinutes(study.run.runTimeMin, language);
  return (
    <tr data-chosen={isChosen}>
      <th scope="row">
        <Button
          className="strip-name"
          onPress={() => {
            chooseOption(option.id);
            goTo('packs');
          }}
        >
          <SeriesMark index={index} />
          <span>{option.name}</span>
        </Button>
      </th>
      <td className="number strip-hero">
        {study === null ? (
          minutes
        ) : (
          <WorkingButton
            label={text.runTime}
            working={() => runTimeWorking(study, index, language)}
          >
            {minutes}
          </WorkingButton>
        )}
      </td>
      <SpreadCells id={option.id} name={option.name} />
      <td className="strip-bar-cell">
        <RunBar
          id={option.id}
          index={index}
          study={study}
          goalMin={goalMin}
          scaleMin={scaleMin}
          name={option.name}
        />
      </td>
      <td className="strip-end">{study === null ? '–' : app.ended[study.run.endedBy]}</td>
      {!isDriven ? null : (
        <td className="number">
          {study?.run.drive == null ? (
            '–'
          ) : (
            <WorkingButton label={text.speed} working={() => speedWorking(study, language, units)}>
              {`${formatFigure(toDisplay(study.run.drive.topSpeedKmh, 'km/h', units), language)}${thinSpace}${displaySymbol('km/h', units)}`}
            </WorkingButton>
          )}
        </td>
      )}
      <td className="number strip-wide">
        {study === null ? (
          '–'
        ) : (
          <WorkingButton label={text.accessories} working={() => accessoryWorking(study, language)}>
            {`${formatDifference(-study.accessoryCostMin, language)}${thinSpace}min`}
          </WorkingButton>
        )}
      </td>
      <td className="number strip-wide">
        {study === null ? (
          '–'
        ) : (
          <WorkingButton label={text.energy} working={() => energyWorking(study, language)}>
            {`${formatFigure(study.run.deliveredWh, language)}${thinSpace}W·h`}
          </WorkingButton>
        )}
      </td>
      <td>
        <ChargeCell study={study} hasCharger={option.charger !== null} />
      </td>
      <td className="number">
        {study?.massKg == null ? (
          '–'
        ) : (
          <WorkingButton
            label={text.mass}
            working={() => massWorking(option, index, language, units)}
          >
            {`${formatFigure(toDisplay(study.massKg, 'kg', units), language)}${thinSpace}${displaySymbol('kg', units)}`}
          </WorkingButton>
        )}
      </td>
      <td className="number">
        {study?.price == null ? (
          '–'
        ) : (
          <WorkingButton
            label={text.price}
            working={() => priceWorking(option, index, language, currency)}
          >
            {`${formatFigure(study.price, language, 4)}${thinSpace}${currency}`}
          </WorkingButton>
        )}
      </td>
      <td>
        {own.some(({ status }) => status === 'finding') ? (
          <Button
            className="strip-findings"
            aria-label={text.showFindings(option.name)}
            onPress={() => showFindings(option.id)}
          >
            <FindingMarks findings={own} />
          </Button>
        ) : (
          <span className="faint">{study === null ? '–' : text.noFinding}</span>
        )}
      </td>
    </tr>
  );
});

const ChargeCell = ({
  study,
  hasCharger,
}: {
  readonly study: OptionStudy | null;
  readonly hasCharger: boolean;
}) => {
  const text = useText(stripTexts);
  const language = useSettings((state) => state.language);
  if (study === null) return <>–</>;
  const match = study.chargerMatch;
  if (match === null || !hasCharger) return <span className="faint">{text.noCharger}</span>;
  const hours = match.hoursToFull;
  const verdict = (
    <span className={`verdict verdict-${match.verdict}`}>{text.fits[match.verdict]}</span>
  );
  return (
    <WorkingButton label={text.charge} working={() => chargeWorking(study, language)}>
      {hours === null ? null : `${formatFigure(hours, language, 2)}${thinSpace}h `}
      {verdict}
    </WorkingButton>
  );
};
