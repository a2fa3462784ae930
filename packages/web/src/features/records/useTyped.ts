import { useState } from 'react';

/** What is typed in a box until it is written down; what is kept replaces it where that becomes another. */
export function useTyped(kept: string): [string, (typed: string) => void] {
  const [typed, setTyped] = useState(kept);
  const [seen, setSeen] = useState(kept);
  if (seen !== kept) {
    setSeen(kept);
    setTyped(kept);
  }
  return [typed, setTyped];
}
