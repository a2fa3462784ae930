export { answerJson, inputErrorsJson } from './answerJson.ts';
export { setupJsonSchema } from './setupJsonSchema.ts';
