import { standingText, suggestionDetails } from '@hitchwright/core/words';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { ThresholdRuler, type RulerProps } from './ThresholdRuler.tsx';

/** Where the figure decides alone, and how what is read lies to it. */
export function Decides(props: RulerProps) {
  const { system } = usePreferences();
  const { suggestion, value, accuracy } = props;
  const [, ...decides] = suggestionDetails(suggestion, system);
  const standing = value === null ? null : standingText(suggestion, value, accuracy, system);
  if (decides.length === 0) return null;
  return (
    <div className="number-decides">
      <ThresholdRuler {...props} />
      {decides.map((text) => (
        <p key={text}>
          <Figures text={text} />
        </p>
      ))}
      {standing === null ? null : (
        <p className="standing" role="status">
          <b>
            <Figures text={standing} />
          </b>
        </p>
      )}
    </div>
  );
}
