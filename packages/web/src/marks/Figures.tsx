import type { ReactNode } from 'react';

/** A mixed number with a denominator that tapes carry, such as `20 1/2` or `3/16`. */
const fraction = /(?<![\d/.])(?:(\d+) )?(\d{1,2})\/(2|4|8|16|32|64)(?![\d/])/g;

/** A figure and its unit stay on one line; a piece that follows a fraction begins with the unit. */
function bound(text: string): string {
  return text.replace(/(^|\d) (?=(?:in|mm|lb|kg)\b)/g, '$1\u00a0');
}

/** Text whose fractions are set as fractions; whoever listens hears `20 and 1/2`. */
export function Figures({ text }: { readonly text: string }) {
  const pieces: ReactNode[] = [];
  let end = 0;
  for (const match of text.matchAll(fraction)) {
    const [all, whole, above = '', below = ''] = match;
    pieces.push(bound(text.slice(end, match.index)));
    pieces.push(<MixedNumber key={match.index} whole={whole ?? ''} above={above} below={below} />);
    end = match.index + all.length;
  }
  pieces.push(bound(text.slice(end)));
  return <>{pieces}</>;
}

function MixedNumber({
  whole,
  above,
  below,
}: {
  readonly whole: string;
  readonly above: string;
  readonly below: string;
}) {
  return (
    <span className="figure">
      <span aria-hidden="true">
        {whole}
        <span className="fraction">
          <span className="fraction-above">{above}</span>⁄<span className="fraction-below">{below}</span>
        </span>
      </span>
      <span className="unseen">{`${whole === '' ? '' : `${whole} and `}${above}/${below}`}</span>
    </span>
  );
}
