import type { Scene } from '@hitchwright/core/drawings';
import { paintScene } from '../../scene/paintScene.ts';
import { paperSize } from '../../scene/sceneMap.ts';
import type { Block } from '../block.ts';
import type { Press } from '../press.ts';

/** A drawing at its own scale, told in words to whoever can't see it. */
export function drawing({ ink, tags }: Press, scene: Scene): Block {
  return {
    height: paperSize(scene).height,
    paint: (at) => tags.leaf('Figure', () => paintScene(ink, scene, at), { alt: scene.description }),
  };
}
