/** What ESLint asks of the page's sources and scripts; Prettier sees to the layout. */
import js from '@eslint/js';
import {configs as lit} from 'eslint-plugin-lit';
import {configs as wc} from 'eslint-plugin-wc';
import globals from 'globals';

const PAGE = ['**/src/**/*.js'];
const WORKERS = ['**/src/worker/**/*.js'];
const SCRIPTS = ['**/*.mjs'];

export default [
  {ignores: ['**/build/', '**/example-sweeps.js']}, // written by scripts
  js.configs.recommended,
  {
    linterOptions: {reportUnusedDisableDirectives: 'error'},
    rules: {
      'no-var': 'error',
      'prefer-const': 'error',
      'object-shorthand': 'error',
      'no-shadow': ['error', {allow: ['_']}],
      'no-unused-vars': [
        'error',
        {argsIgnorePattern: '^_', varsIgnorePattern: '^_', destructuredArrayIgnorePattern: '^_'},
      ],
      'no-use-before-define': ['error', {functions: false, classes: false, variables: false}],
      'no-param-reassign': ['error', {props: false}],
      'no-unused-expressions': 'error',
      'no-implicit-coercion': 'error',
      eqeqeq: 'error',
      'max-len': ['error', {code: 120}], // Prettier breaks neither texts nor templates
    },
  },
  {files: PAGE, ...lit['flat/recommended']},
  {files: PAGE, ...wc['flat/best-practice']},
  {files: PAGE, languageOptions: {globals: globals.browser}},
  {files: WORKERS, languageOptions: {globals: {...globals.worker, ...globals.serviceworker}}},
  {files: SCRIPTS, languageOptions: {globals: globals.node}},
];
