import { availableParallelism } from 'node:os'
import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    // The tests share nothing that one could spoil for another, so each worker loads the sources once.
    isolate: false,
    // As many as the machine has cores; the default leaves one idle, which of two is half.
    maxWorkers: availableParallelism(),
    include: ['tests/**/*.test.ts'],
    globalSetup: ['tests/print-seed.ts'],
    testTimeout: process.env.LARDERBELL_LONG ? 600_000 : 30_000,
  },
})
