import js from '@eslint/js';
import hooks from 'eslint-plugin-react-hooks';
import tseslint from 'typescript-eslint';

export default tseslint.config(
  { ignores: ['dist/', 'public/', 'node_modules/', '.cache/'] },
  js.configs.recommended,
  ...tseslint.configs.recommended,
  {
    files: ['**/*.{ts,tsx}'],
    rules: {
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      '@typescript-eslint/no-non-null-assertion': 'off',
      'no-console': 'off',
    },
  },
  {
    files: ['src/view/**/*.{ts,tsx}', 'src/app/**/*.{ts,tsx}'],
    plugins: { 'react-hooks': hooks },
    rules: { ...hooks.configs.recommended.rules },
  },
  {
    // three's objects are changed in place, frame by frame: that is how they are meant to be used.
    files: ['src/view/scene/**/*.{ts,tsx}'],
    rules: { 'react-hooks/immutability': 'off', 'react-hooks/refs': 'off', 'react-hooks/purity': 'off' },
  },
  {
    files: ['src/core/**/*.ts'],
    rules: {
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'Draw from a seeded generator (kernel/random).' },
        { object: 'Date', property: 'now', message: 'Core has no clock.' },
        { object: 'performance', property: 'now', message: 'Core has no clock.' },
      ],
      'no-restricted-globals': ['error', 'window', 'document', 'navigator', 'localStorage', 'fetch'],
    },
  },
  {
    files: ['scripts/**/*.mjs', '*.js'],
    languageOptions: {
      globals: {
        window: 'readonly',
        HTMLInputElement: 'readonly',
        Event: 'readonly',
        process: 'readonly',
        console: 'readonly',
        URL: 'readonly',
        setTimeout: 'readonly',
      },
    },
  },
);
