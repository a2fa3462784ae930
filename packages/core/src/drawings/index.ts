import type { Answer } from '../engine/assess/index.ts';
import type { Setup } from '../records/index.ts';
import type { UnitSystem } from '../units/index.ts';
export interface Scene { readonly title: string }
export function rearView(setup: Setup, answer: Answer, options: { readonly system: UnitSystem }): Scene { void setup; void answer; void options; return { title: '' }; }
export function sceneToSvg(scene: Scene): string { return scene.title; }
