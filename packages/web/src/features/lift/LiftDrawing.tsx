import { useLayoutEffect, useRef } from 'react';
import type { DrawnPicture, LiftDrawingName } from './painter.ts';
import { elementOf, openDrawing, type ShownDrawing } from './patch.ts';
import type { LiftPlace } from './place.ts';
import { pictureAt, type Pictures } from './usePictures.ts';

interface LiftDrawingProps {
  readonly pictures: Pictures;
  readonly which: LiftDrawingName;
  readonly place: LiftPlace;
}

/** A drawing that follows the lift: written once, then patched while it is in sight. */
export function LiftDrawing({ pictures, which, place }: LiftDrawingProps) {
  const holder = useRef<HTMLDivElement>(null);
  const shown = useRef<Shown | null>(null);
  useLayoutEffect(() => {
    if (holder.current === null) return undefined;
    const element = holder.current;
    const draw = (): void => {
      const picture = pictureAt(pictures, place.get())?.drawings[which];
      if (picture !== undefined) shown.current = drawnIn(element, shown.current, picture);
    };
    draw();
    return followInSight(element, place, draw);
  }, [pictures, which, place]);
  return <div ref={holder} className="drawing-picture lift-drawing" data-drawing={which} />;
}

/** Draws on every change while the element is on the screen or near it, and when it comes back; returns what ends it. */
function followInSight(element: Element, place: LiftPlace, draw: () => void): () => void {
  let isInSight = true;
  const leave = place.follow(() => {
    if (isInSight) draw();
  });
  const watcher = new IntersectionObserver(
    (entries) => {
      isInSight = entries.at(-1)?.isIntersecting ?? true;
      if (isInSight) draw();
    },
    { rootMargin: '120px' },
  );
  watcher.observe(element);
  return () => {
    leave();
    watcher.disconnect();
  };
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
