import { useLayoutEffect, useRef, type CSSProperties } from 'react';
import type { LiftPlace } from './place.ts';

/** A lift that can be moved by hand. */
export interface Slider {
  readonly place: LiftPlace;
  /** The highest station. */
  readonly last: number;
  /** Height and worst finding, as they are spoken. */
  readonly spoken: (station: number) => string;
  /** Moves it, and holds it where it is played. */
  readonly onMove: (station: number) => void;
}

interface LiftSliderProps {
  readonly slider: Slider;
  readonly className: string;
  readonly style?: CSSProperties;
  /** A second thumb for the same lift: for hands only, since keys and speech have the first. */
  readonly isSecond?: boolean;
}

/** The slider through the lift: the browser's own, so that thumbs, keys and screen readers find what they know. */
export function LiftSlider({ slider, className, style, isSecond = false }: LiftSliderProps) {
  const input = useRef<HTMLInputElement>(null);
  useLayoutEffect(
    () => (input.current === null ? undefined : bind(input.current, slider, isSecond)),
    [slider, isSecond],
  );
  return (
    <input
      ref={input}
      type="range"
      className={`lift-slider ${className}`}
      style={style}
      min={0}
      max={slider.last}
      step={1}
      aria-label="Height of the lift"
      aria-hidden={isSecond}
      tabIndex={isSecond ? -1 : 0}
    />
  );
}

/** Lets the input follow the lift and move it; returns what ends it. */
function bind(input: HTMLInputElement, { place, spoken, onMove }: Slider, isMute: boolean): () => void {
  const show = (): void => {
    input.value = String(place.get());
    if (!isMute) input.setAttribute('aria-valuetext', spoken(place.get()));
  };
  const move = (): void => onMove(Number(input.value));
  show();
  const leave = place.follow(show);
  input.addEventListener('input', move);
  return () => {
    leave();
    input.removeEventListener('input', move);
  };
}
