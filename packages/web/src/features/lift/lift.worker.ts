import { openLiftPictures, sceneToSvg, type LiftPictures, type Scene } from '@hitchwright/core/drawings';
import { drawnPicture } from './drawnPicture.ts';
import type { LiftDelivery, LiftDrawingName, LiftOrder, LiftPaper, LiftPicture } from './painter.ts';

type Numbered = LiftOrder & { readonly number: number };

/** Heights that are drawn before the worker looks for a newer order. */
const batch = 8;
let latest = 0;

/** Draws a lift at every height, away from the page's own thread. */
addEventListener('message', ({ data }: MessageEvent<Numbered>) => {
  latest = data.number;
  const pictures = openLiftPictures(data.setup, data.answer, data);
  if (pictures !== null) deliver(data, pictures, nearestFirst(pictures.stations, data.first));
});

function deliver(order: Numbered, pictures: LiftPictures, stations: readonly number[]): void {
  const later = stations.slice(batch);
  const delivery: LiftDelivery = {
    order: order.number,
    paper: paperOf(pictures, order.first),
    pictures: stations.slice(0, batch).map((station) => [station, pictureAt(pictures, station, order.format)]),
  };
  postMessage(delivery);
  if (later.length === 0) return;
  setTimeout(() => {
    if (latest === order.number) deliver(order, pictures, later);
  });
}

function nearestFirst(count: number, first: number): number[] {
  const stations = Array.from({ length: count }, (_, station) => station);
  return stations.sort((a, b) => Math.abs(a - first) - Math.abs(b - first));
}

function paperOf(pictures: LiftPictures, station: number): LiftPaper {
  const [view, plots] = [pictures.view(station), pictures.plots(station)];
  const { areBeside } = pictures;
  return {
    areBeside,
    hasDrive: pictures.top !== undefined && pictures.shaftPlots !== undefined,
    hasAxles: pictures.balance !== undefined && pictures.balancePlot !== undefined,
    view: view.bounds,
    plots: plots.bounds,
    viewScale: view.scale,
    plotScale: plots.scale,
  };
}

function pictureAt(pictures: LiftPictures, station: number, format: string): LiftPicture {
  const scenes: Partial<Record<LiftDrawingName, Scene | undefined>> = {
    view: pictures.view(station),
    plots: pictures.plots(station),
    top: pictures.top?.(station),
    drivePlots: pictures.shaftPlots?.(station),
    seeSaw: pictures.balance?.(station),
    axlePlots: pictures.balancePlot?.(station),
  };
  const drawings = Object.entries(scenes).flatMap(([name, scene]) =>
    scene === undefined ? [] : [[name, drawnPicture(sceneToSvg(scene, { idPrefix: `${name}-${format}` }))] as const],
  );
  return { drawings: Object.fromEntries(drawings), words: wordsOf(scenes) };
}

/** What each drawing tells, and nothing twice. */
function wordsOf({
  view,
  top,
  drivePlots,
  seeSaw,
  axlePlots,
}: Partial<Record<LiftDrawingName, Scene | undefined>>): string[] {
  const said = new Set<string>();
  const fresh = (scene: Scene | undefined): string[] => {
    const sentences = (scene?.description ?? '').split(/(?<=[.:]) (?=\p{Lu})/u);
    const told = sentences.filter((sentence) => sentence !== '' && !said.has(sentence));
    for (const sentence of told) said.add(sentence);
    return told;
  };
  const parts = [fresh(view), [...fresh(top), ...fresh(drivePlots)], [...fresh(seeSaw), ...fresh(axlePlots)]];
  return parts.map((told) => told.join(' ')).filter(Boolean);
}
