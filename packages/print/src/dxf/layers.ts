import type { Item, LineRole } from '@hitchwright/core/drawings';
import { Colors } from '@tarikjabiri/dxf';

/** Layers of a drawing by what lies on them; their names never come from a record. */
const layers = {
  OUTLINE: { colour: Colors.White, line: 'CONTINUOUS' },
  EXISTING: { colour: Colors.White, line: 'CONTINUOUS' },
  HIDDEN: { colour: Colors.White, line: 'HIDDEN' },
  CENTRE: { colour: Colors.Cyan, line: 'CENTRE' },
  CONTEXT: { colour: 8, line: 'CONTINUOUS' },
  MISFIT: { colour: Colors.Red, line: 'CONTINUOUS' },
  DIMENSIONS: { colour: Colors.Green, line: 'CONTINUOUS' },
  TEXT: { colour: Colors.White, line: 'CONTINUOUS' },
  HATCH: { colour: 9, line: 'CONTINUOUS' },
  NOTES: { colour: Colors.White, line: 'CONTINUOUS' },
  SCALE_BAR: { colour: Colors.White, line: 'CONTINUOUS' },
} as const;

/** One layer of a file. */
export interface Layer {
  readonly name: string;
  readonly colour: number;
  readonly line: string;
}

type LayerName = keyof typeof layers;

/** An enlarged view lies on layers of its own. */
const enlarged = 'DETAIL_';

/** Every layer, those of enlarged views last. */
export const allLayers: readonly Layer[] = ['', enlarged].flatMap((before) =>
  Object.entries(layers).map(([name, layer]) => ({ name: before + name, ...layer })),
);

const roles: Readonly<Record<LineRole, LayerName>> = {
  heavy: 'OUTLINE',
  thin: 'EXISTING',
  hidden: 'HIDDEN',
  centre: 'CENTRE',
  ghost: 'CONTEXT',
  misfit: 'MISFIT',
  dimension: 'DIMENSIONS',
};

/** The layer that an item lies on. */
export function layerOf(item: Item): string {
  return (item.view === 'detail' ? enlarged : '') + nameOf(item);
}

function nameOf(item: Item): LayerName {
  switch (item.kind) {
    case 'stroke':
    case 'circle':
      return roles[item.role];
    case 'hatch':
      return 'HATCH';
    case 'text':
      return 'TEXT';
    case 'dimension':
      return 'DIMENSIONS';
    case 'balloon':
      return 'NOTES';
    case 'scaleBar':
      return 'SCALE_BAR';
  }
}
