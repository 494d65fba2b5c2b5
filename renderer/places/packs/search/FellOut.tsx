import { rejectRules, type SearchResult } from '#core/compare/search/candidate.ts';
import { DataTable } from '../../../controls/DataTable.tsx';
import { Disclosure } from '../../../controls/Disclosure.tsx';
import { useSettings } from '../../../state/settings-store.ts';
import { formatFixed } from '../../../text/format.ts';
import { searchTexts } from '../../../text/search.ts';
import { useText } from '../../../text/use-text.ts';

/** How many candidates fell out by which wish: the first one each does not meet. */
export const FellOut = ({ result }: { readonly result: SearchResult }) => {
  const text = useText(searchTexts);
  const language = useSettings((state) => state.language);
  const counts = rejectRules.filter((rule) => result.rejected[rule] > 0);
  return (
    <Disclosure title={text.fellOut} isOpenAtFirst={result.found.length === 0}>
      <DataTable
        caption={text.fellOut}
        hideCaption
        columns={[
          { id: 'rule', label: text.rule },
          { id: 'count', label: text.count, isNumber: true },
        ]}
        rows={counts.map((rule) => ({
          id: rule,
          cells: {
            rule: text.rules[rule],
            count: formatFixed(result.rejected[rule], language, 0),
          },
        }))}
      />
    </Disclosure>
  );
};
