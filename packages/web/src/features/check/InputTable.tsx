import type { Driver } from '@hitchwright/core/findings';
import { labelOf } from '@hitchwright/core/words';
import { usePreferences } from '../../app/preferences.ts';
import { Figures } from '../../marks/Figures.tsx';
import { rangeText } from './margin.ts';

const origins: Readonly<Record<Driver['origin'], string>> = {
  stated: 'given',
  range: 'given as a range',
  default: 'stands in for a figure',
  class: 'from its category',
  habit: 'common practice',
  unknown: 'not known',
  limit: 'a limit of the trade',
  setting: 'can be set',
};

/** The inputs of a finding: what each was taken to be, and where that came from. */
export function InputTable({ drivers }: { readonly drivers: readonly Driver[] }) {
  const { system } = usePreferences();
  return (
    <dl className="input-table">
      {drivers.map(({ path, range, origin, basis }) => (
        <div key={path}>
          <dt>{labelOf(path)}</dt>
          <dd>
            <Figures text={[rangeText(path, range, system), origins[origin]].filter(Boolean).join(', ')} />
            {basis === null ? null : (
              <span className="basis">
                <Figures text={basis} />
              </span>
            )}
          </dd>
        </div>
      ))}
    </dl>
  );
}
