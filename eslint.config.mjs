import jsdoc from 'eslint-plugin-jsdoc';
import reactHooks from 'eslint-plugin-react-hooks';
import ts from 'typescript-eslint';

const notInCore = [
  { object: 'Date', property: 'now', message: 'Pass the time in.' },
  { object: 'Math', property: 'random', message: 'Pass a seed in.' },
];

export default ts.config(
  { ignores: ['**/dist/**', '**/node_modules/**', '.cache/**', '**/*.cjs'] },
  ...ts.configs.strict,
  ...ts.configs.stylistic,
  {
    rules: {
      '@typescript-eslint/consistent-type-definitions': ['error', 'interface'],
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-non-null-assertion': 'error',
      'no-empty': ['error', { allowEmptyCatch: false }],
      'prefer-arrow-callback': 'error',
      eqeqeq: ['error', 'always', { null: 'ignore' }],
    },
  },
  {
    files: ['**/*.mjs'],
    languageOptions: { globals: { process: 'readonly', console: 'readonly', URL: 'readonly', setTimeout: 'readonly' } },
  },
  {
    files: ['packages/core/src/**/*.ts'],
    ignores: ['**/*.test.ts'],
    plugins: { jsdoc },
    settings: { jsdoc: { mode: 'typescript' } },
    rules: {
      'jsdoc/require-jsdoc': [
        'error',
        {
          publicOnly: true,
          require: { FunctionDeclaration: true },
          contexts: ['TSInterfaceDeclaration', 'TSTypeAliasDeclaration'],
        },
      ],
      'jsdoc/require-description': 'error',
      'jsdoc/check-param-names': ['error', { checkDestructured: false }],
      'jsdoc/require-param-description': 'error',
      'jsdoc/no-types': 'error',
      'jsdoc/check-tag-names': ['error', { definedTags: ['remarks', 'source'] }],
      'jsdoc/match-description': [
        'error',
        {
          mainDescription: false,
          tags: { param: '[\\s\\S]*\\[[^\\]]+\\][\\s\\S]*', returns: '[\\s\\S]*\\[[^\\]]+\\][\\s\\S]*' },
        },
      ],
      'no-restricted-properties': ['error', ...notInCore],
      'no-restricted-syntax': [
        'error',
        {
          selector: "ImportDeclaration[source.value='zod']",
          message: 'Import zod/mini as a namespace: the whole of zod is four times the size.',
        },
      ],
      'max-lines': ['error', { max: 300, skipBlankLines: true, skipComments: true }],
      'max-lines-per-function': ['error', { max: 60, skipBlankLines: true, skipComments: true }],
      complexity: ['error', 14],
      'max-params': ['error', 5],
    },
  },
  {
    files: ['packages/web/src/**/*.{ts,tsx}'],
    plugins: { 'react-hooks': reactHooks },
    rules: { ...reactHooks.configs.recommended.rules },
  },
);
