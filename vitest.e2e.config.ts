import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/** The built app in a real browser: one server, one browser at a time, since the machine may be small. */
export default defineConfig({
  resolve: { alias: { '@': fileURLToPath(new URL('.', import.meta.url)) } },
  test: {
    include: ['tests/e2e/**/*.test.ts', 'tests/e2e/**/*.test.tsx'],
    globalSetup: ['tests/e2e/serve-app.ts'],
    fileParallelism: false,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
