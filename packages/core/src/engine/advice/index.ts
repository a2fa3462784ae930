export { adviceFrom, advise, type Advice, type Advised, type Suggestion } from './advise.ts';
export { readingOf, toolsFor, type Reading, type Tool } from './tools.ts';
