export { summariseCategory, type CategorySummary } from './category.ts';
export { checksByHold, hookupIds } from './kinds.ts';
export { limits } from './limits.ts';
export { hookupLines } from './lines.ts';
