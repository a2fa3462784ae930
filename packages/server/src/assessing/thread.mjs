// A thread does not inherit the loader that reads TypeScript: it is brought along.
import { register } from 'tsx/esm/api';

register();
await import('./thread.ts');
