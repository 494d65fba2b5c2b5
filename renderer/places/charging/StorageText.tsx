import type { StoragePlan } from '#core/week/index.ts';
import { useSettings } from '../../state/settings-store.ts';
import { chargingTexts } from '../../text/charging.ts';
import { formatFigure } from '../../text/format.ts';
import { useText } from '../../text/use-text.ts';

/** How the pack comes through the rest of the year. */
export const StorageText = ({ storage }: { readonly storage: StoragePlan }) => {
  const text = useText(chargingTexts).routine;
  const language = useSettings((state) => state.language);
  const percent = (value: number) => `${formatFigure(value, language, 2)} %`;
  return (
    <div>
      <h3 className="charging-head">{text.storageTitle}</h3>
      <p>
        {text.storage(
          storage.days,
          percent(storage.startPercent),
          percent(storage.endPercentAlone),
          storage.topUpDays.length,
        )}
      </p>
      {storage.belowLimitDay === null ? null : <p>{text.storageLow(storage.belowLimitDay)}</p>}
      {storage.mayFreeze ? <p>{text.freeze}</p> : null}
    </div>
  );
};
