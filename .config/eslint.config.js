import js from '@eslint/js';
import astro from 'eslint-plugin-astro';
import tseslint from 'typescript-eslint';

const root = `${import.meta.dirname}/..`;

export default tseslint.config(
  { ignores: ['dist/', 'tests/.sites/', 'node_modules/', '.astro/', '.cache/', 'tests/fixtures/content/'] },
  js.configs.recommended,
  ...tseslint.configs.strictTypeChecked,
  ...astro.configs.recommended,
  {
    languageOptions: {
      parserOptions: {
        projectService: { allowDefaultProject: ['.config/*.js'] },
        tsconfigRootDir: root,
        extraFileExtensions: ['.astro'],
      },
    },
    rules: {
      complexity: ['error', 12],
      'max-lines': ['error', { max: 300, skipBlankLines: true, skipComments: true }],
      'max-lines-per-function': ['error', { max: 50, skipBlankLines: true, skipComments: true }],
      '@typescript-eslint/explicit-module-boundary-types': 'error',
      // Taking keys out of an object by name.
      '@typescript-eslint/no-unused-vars': ['error', { ignoreRestSiblings: true, varsIgnorePattern: '^_' }],
      // Numbers in messages are wanted as they are.
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/no-confusing-void-expression': [
        'error',
        { ignoreArrowShorthand: true, ignoreVoidOperator: true },
      ],
      '@typescript-eslint/no-meaningless-void-operator': 'off',
    },
  },
  // Typed arrays indexed by numbers that the search itself counts: a check at each access would be noise.
  { files: ['src/plan/{arrange,search}/*.ts'], rules: { '@typescript-eslint/no-non-null-assertion': 'off' } },
  // One describe block may hold many cases.
  { files: ['tests/**/*.ts'], rules: { 'max-lines-per-function': 'off', 'max-lines': 'off' } },
  // Astro's own types reach templates only through its checker, which runs beside this.
  { files: ['**/*.astro', '**/*.astro/*.ts', '*.mjs', '.config/*.js'], ...tseslint.configs.disableTypeChecked },
);
