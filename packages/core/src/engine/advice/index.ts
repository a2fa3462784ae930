export { adviceFrom, advise, type Advice, type Advised, type Suggestion } from './advise.ts';
export { readingOf, type Reading, type Tool } from './tools.ts';
