import { defineConfig } from 'wxt';

export default defineConfig({
  srcDir: '.',
  entrypointsDir: 'entrypoints',
  outDir: '.output',
  publicDir: 'public',
  imports: false,
  manifest: ({ browser }) => ({
    name: 'Wordreach',
    permissions: ['activeTab', 'scripting', 'storage'],
    options_ui: { page: 'groups.html', open_in_tab: true },
    action: { default_title: 'Check this page for your group' },
    commands: { _execute_action: { suggested_key: { default: 'Alt+Shift+R' } } },
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
