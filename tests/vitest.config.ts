import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    // The tests share nothing that one could spoil for another, so each worker loads the sources once.
    isolate: false,
    include: ['tests/**/*.test.ts'],
    globalSetup: ['tests/print-seed.ts'],
    testTimeout: process.env.LARDERBELL_LONG ? 600_000 : 30_000,
  },
})
