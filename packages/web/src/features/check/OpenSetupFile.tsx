import { linkOf } from '@hitchwright/core/exchange';
import {
  largestSetup,
  parseSetup,
  readSetupText,
  type InputError,
  type SetupDocument,
} from '@hitchwright/core/records';
import { useState } from 'react';
import { ErrorList } from './ErrorList.tsx';

const unread: InputError = {
  code: 'not-json',
  path: '',
  expected: 'a file that can be read',
  got: 'one that can’t',
  hint: 'Was it moved or taken away? Choose it again.',
};

/** Opens a setup that was saved as a file. */
export function OpenSetupFile() {
  const [errors, setErrors] = useState<readonly InputError[]>([]);
  const open = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    // What is too large is not read whole to be told so.
    const text = await file
      .slice(0, 4 * largestSetup)
      .text()
      .catch(() => null);
    if (text === null) return setErrors([unread]);
    const reading = readSetupText(text);
    setErrors(reading.ok ? [] : reading.errors);
    if (reading.ok) location.hash = linkOf(parseSetup(text) as SetupDocument);
  };
  return (
    <div className="invitation open-setup">
      <label className="button">
        Open a setup file
        <input
          type="file"
          className="unseen"
          accept="application/json,.json"
          onChange={({ target }) => {
            void open(target.files?.[0]);
            target.value = '';
          }}
        />
      </label>
      <ErrorList errors={errors} />
    </div>
  );
}
