import { defineConfig } from 'astro/config';

// What every build and `dev` share. The address, the base path and the folders come from the commands.
export default defineConfig({
  output: 'static',
  trailingSlash: 'always',
  compressHTML: true,
  devToolbar: { enabled: false },
  build: {
    format: 'directory',
    // Not `_astro`: some hosts do not serve folders that begin with an underscore.
    assets: 'assets',
    // The pages' content security policy allows no inline style and no inline script.
    inlineStylesheets: 'never',
    concurrency: 8,
  },
  vite: { build: { assetsInlineLimit: 0 } },
});
