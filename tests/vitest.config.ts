import { defineConfig } from 'vitest/config';

const shared = { environment: 'node', testTimeout: 120_000, hookTimeout: 300_000 } as const;

// Two projects, so that only the tests of the built site pay for building it and for a browser.
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    maxWorkers: 2,
    projects: [
      {
        extends: true,
        test: {
          ...shared,
          name: 'unit',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/browser/**'],
        },
      },
      {
        extends: true,
        test: {
          ...shared,
          name: 'site',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['tests/browser/global-setup.ts'],
        },
      },
    ],
  },
});
