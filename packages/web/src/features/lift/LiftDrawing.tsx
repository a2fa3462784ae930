import { useLayoutEffect, useRef } from 'react';
import type { DrawnPicture } from './painter.ts';
import { elementOf, openDrawing, type ShownDrawing } from './patch.ts';
import type { LiftPlace } from './place.ts';
import { pictureAt, type Pictures } from './usePictures.ts';

interface LiftDrawingProps {
  readonly pictures: Pictures;
  readonly which: 'view' | 'plots';
  readonly place: LiftPlace;
}

/** A drawing that follows the lift: written once, then patched. */
export function LiftDrawing({ pictures, which, place }: LiftDrawingProps) {
  const holder = useRef<HTMLDivElement>(null);
  const shown = useRef<Shown | null>(null);
  useLayoutEffect(() => {
    const draw = (): void => {
      const picture = pictureAt(pictures, place.get())?.[which];
      if (holder.current !== null && picture !== undefined)
        shown.current = drawnIn(holder.current, shown.current, picture);
    };
    draw();
    return place.follow(draw);
  }, [pictures, which, place]);
  return <div ref={holder} className="drawing-picture lift-drawing" />;
}

interface Shown {
  readonly root: string;
  readonly drawing: ShownDrawing;
}

function drawnIn(holder: Element, shown: Shown | null, { root, items }: DrawnPicture): Shown {
  if (shown?.root === root) {
    shown.drawing.show(items);
    return shown;
  }
  const svg = elementOf(`${root}${items.join('')}</svg>`);
  holder.replaceChildren(svg);
  return { root, drawing: openDrawing(svg, items) };
}
