export { adviceFrom, advise, type Advice, type Advised, type Deciding, type Suggestion } from './advise.ts';
export { readingOf, toolsFor, type Reading, type Tool } from './tools.ts';
