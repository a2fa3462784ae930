import type { Play } from './usePlay.ts';

/** Plays the lift, and holds it. */
export function PlayButton({ play }: { readonly play: Play }) {
  const words = play.isPlaying ? 'Hold the lift' : 'Play the lift';
  return (
    <button type="button" className="lift-play" onClick={play.isPlaying ? play.stop : play.start}>
      <svg viewBox="0 0 16 16" aria-hidden="true" focusable="false">
        <path d={play.isPlaying ? 'M3 2h4v12H3zM9 2h4v12H9z' : 'M4 2l9 6-9 6z'} />
      </svg>
      <span>{words}</span>
    </button>
  );
}
