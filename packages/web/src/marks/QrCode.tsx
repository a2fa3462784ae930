import { qrOf } from '@hitchwright/core/exchange';

/** A code that a phone reads off the screen or off paper; nothing where the text is too long for one. Dark on light in either theme, as readers want it. */
export function QrCode({ text, label }: { readonly text: string; readonly label: string }) {
  const squares = qrOf(text);
  if (squares === null) return null;
  const dark = squares.flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? [`M${x} ${y}h1v1h-1z`] : [])));
  return (
    <svg
      className="qr"
      viewBox={`0 0 ${squares.length} ${squares.length}`}
      role="img"
      aria-label={label}
      shapeRendering="crispEdges"
    >
      <rect width="100%" height="100%" fill="#fff" />
      <path d={dark.join('')} fill="#000" />
    </svg>
  );
}
