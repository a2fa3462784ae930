import type { Making } from './useMaker.ts';

const papers = [
  ['letter', 'Letter'],
  ['a4', 'A4'],
] as const;

/** Letter or A4. */
export function PaperChoice({
  desk: { paper, choosePaper },
}: {
  readonly desk: Pick<Making<unknown>, 'paper' | 'choosePaper'>;
}) {
  return (
    <label>
      <span>Paper</span>
      <select
        value={paper}
        onChange={({ target }) => choosePaper(papers.find(([name]) => name === target.value)?.[0] ?? paper)}
      >
        {papers.map(([name, words]) => (
          <option key={name} value={name}>
            {words}
          </option>
        ))}
      </select>
    </label>
  );
}
