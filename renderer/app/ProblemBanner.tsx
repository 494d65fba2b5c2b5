import { Button } from '../controls/Button.tsx';
import { FieldLink } from '../controls/FieldLink.tsx';
import { retryStudy, useStudyState } from '../state/study-store.ts';
import { appTexts } from '../text/app.ts';
import { useText } from '../text/use-text.ts';

/** Why the figures stand still, and the way to the field that mends it. */
export const ProblemBanner = () => {
  const text = useText(appTexts);
  const { problems, failure } = useStudyState();
  if (failure !== null) {
    return (
      <div className="banner" role="alert">
        <b>{text.failed}</b> {failure}
        <Button onPress={retryStudy}>{text.again}</Button>
      </div>
    );
  }
  const [first] = problems;
  if (first === undefined) return null;
  return (
    <div className="banner" role="alert">
      <b>{text.standStill}</b>
      <span>{`${first.problem} ${first.remedy}`}</span>
      {first.path === '' ? null : <FieldLink field={first.path}>{first.title}</FieldLink>}
    </div>
  );
};
