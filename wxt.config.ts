import { writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'wxt';
import { makePatternsLate } from './src/tools/make-patterns-late.ts';
import { openUmdHeads } from './src/tools/open-umd-heads.ts';
import { settleZip } from './src/tools/settle-zip.ts';
import { writeInAscii } from './src/tools/write-in-ascii.ts';
import { foldersOf, gatherPackages, noticeOf } from './src/tools/write-notice.ts';
import { languages } from './src/wording/languages.ts';
import { listMessages } from './src/wording/list-messages.ts';

/**
 * The sources that the extension's own pages may use: the content of the package, and nothing else. The editor of the
 * desk writes its style sheet with this nonce (`desk/passage-editor.ts`).
 */
const POLICY = [
  "default-src 'none'",
  // The reader of pictures is WebAssembly. Text is never made into code.
  "script-src 'self' 'wasm-unsafe-eval'",
  "worker-src 'self'",
  "style-src 'self' 'nonce-wordreach'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

const root = fileURLToPath(new URL('.', import.meta.url)).replace(/[\\/]$/, '');
/** Folders of the packages whose code was bundled. */
const bundled = new Set<string>();
/** The reader of pictures of text: files of packages that are copied unchanged into `picture-reader`. */
const READER = [
  'tesseract.js/dist/worker.min.js',
  // Lists the authors of other software that the worker includes.
  'tesseract.js/dist/worker.min.js.LICENSE.txt',
  'tesseract.js-core/tesseract-core-simd-lstm.js',
  'tesseract.js-core/tesseract-core-simd-lstm.wasm',
  '@tesseract.js-data/eng/4.0.0_best_int/eng.traineddata.gz',
];
/** Files of `pdfjs-dist` that unpack the pictures of scanned PDF files. They are copied into `pdf-reader`. */
const PDF_READER = ['jbig2.wasm', 'openjpeg.wasm'];

export default defineConfig({
  srcDir: '.',
  entrypointsDir: 'entrypoints',
  outDir: process.env.OUTPUT ?? '.output',
  publicDir: 'public',
  imports: false,
  vite: () => ({
    plugins: [
      openUmdHeads(),
      gatherPackages(root, bundled),
      makePatternsLate(join(root, 'src')),
      writeInAscii(),
    ],
    worker: { format: 'es', plugins: () => [gatherPackages(root, bundled)] },
  }),
  zip: {
    // The build makes these files again. The remaining files are those that a reviewer of a store needs to build the
    // extension: `npm ci && npm run zip`.
    excludeSources: ['public/data/**', '.output-*/**', '**/*.log'],
    includeSources: ['.gitignore'],
  },
  hooks: {
    // Scripts that go into pages use the bare interface in place of the library, which is too large for these scripts.
    'vite:build:extendConfig': (entrypoints, config) => {
      if (!entrypoints.every(({ type }) => type === 'unlisted-script')) return;
      const bare = join(root, 'src/host/bare-browser.ts');
      config.plugins = [
        config.plugins,
        {
          name: 'bare-browser',
          enforce: 'pre',
          resolveId: (id) => (id === 'webextension-polyfill' ? bare : null),
        },
      ];
    },
    'build:publicAssets': (_wxt, files) => {
      for (const [language, texts] of Object.entries(languages)) {
        const contents = JSON.stringify(listMessages(language, texts));
        files.push({ relativeDest: `_locales/${language}/messages.json`, contents });
      }
      for (const file of PDF_READER) {
        const absoluteSrc = join(root, 'node_modules/pdfjs-dist/wasm', file);
        files.push({ absoluteSrc, relativeDest: `pdf-reader/${file}` });
      }
      for (const file of READER) {
        const absoluteSrc = join(root, 'node_modules', file);
        files.push({ absoluteSrc, relativeDest: `picture-reader/${basename(file)}` });
        for (const folder of foldersOf(absoluteSrc, root)) bundled.add(folder);
      }
    },
    'build:done': ({ config }) => writeFileSync(join(config.outDir, 'NOTICE.txt'), noticeOf(root, bundled)),
    'zip:extension:done': (_wxt, path) => settleZip(path),
    'zip:sources:done': (_wxt, path) => settleZip(path),
  },
  manifest: ({ browser, manifestVersion }) => ({
    name: 'Wordreach',
    default_locale: 'en',
    content_security_policy: manifestVersion === 2 ? POLICY : { extension_pages: POLICY },
    permissions: ['activeTab', 'contextMenus', 'scripting', 'storage'],
    // The frame of the card. In Chromium, the frame has another address each time the browser starts. Pages cannot know
    // this address.
    web_accessible_resources:
      manifestVersion === 2
        ? ['card.html']
        : [{ resources: ['card.html'], matches: ['<all_urls>'], use_dynamic_url: true }],
    options_ui: { page: 'groups.html', open_in_tab: true },
    description: '__MSG_manifest_description__',
    action: { default_title: '__MSG_manifest_button__' },
    commands: {
      [manifestVersion === 2 ? '_execute_browser_action' : '_execute_action']: {
        suggested_key: { default: 'Alt+Shift+R' },
      },
      'next-word': {
        suggested_key: { default: 'Alt+Shift+N' },
        description: '__MSG_manifest_nextWord__',
      },
      'previous-word': { description: '__MSG_manifest_previousWord__' },
      'open-desk': { description: '__MSG_manifest_openDesk__' },
    },
    ...(browser === 'firefox'
      ? {
          browser_specific_settings: {
            gecko: {
              id: 'wordreach@wordreach.example',
              strict_min_version: '140.0',
              data_collection_permissions: { required: ['none'] },
            },
          },
        }
      : { storage: { managed_schema: 'school-preset.json' } }),
  }),
});
