/** The two hatchings of the drawn columns, under names of their own. */
export function PinHatch({ id }: { readonly id: string }) {
  return (
    <defs>
      {(['ink', 'misfit'] as const).map((kind) => (
        <pattern
          key={kind}
          id={`${id}-${kind}`}
          width={kind === 'ink' ? 6 : 4}
          height={kind === 'ink' ? 6 : 4}
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <line y2="6" className={`hatch-${kind}`} />
        </pattern>
      ))}
    </defs>
  );
}
