import { sceneToSvg, tapeDrawing } from '@hitchwright/core/drawings';
import { fieldRules } from '@hitchwright/core/records';
import { useMemo } from 'react';
import { usePreferences } from '../../app/preferences.ts';
import { useFormat } from '../check/useFormat.ts';

interface TapeDrawingProps {
  readonly path: string;
  /** Between which points it is read, where that was said. */
  readonly way: string | null;
  readonly reading: string | null;
}

/** Where the tape goes, drawn; the picture carries the same in words. */
export function TapeDrawing({ path, way, reading }: TapeDrawingProps) {
  const { system } = usePreferences();
  const format = useFormat();
  const scene = useMemo(() => {
    const from = fieldRules.get(path)?.from?.find((point) => point === way);
    return tapeDrawing(path, { system, format, reading, ...(from === undefined ? {} : { from }) });
  }, [path, way, system, format, reading]);
  if (scene === null) return null;
  return (
    <div className="tape-drawing">
      <div className="drawing-picture" dangerouslySetInnerHTML={{ __html: sceneToSvg(scene, { idPrefix: 'tape' }) }} />
    </div>
  );
}
