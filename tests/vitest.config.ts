import { availableParallelism } from 'node:os'
import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

/** Tests that start processes, which wait more than they work. */
const PROCESSES = 'tests/**/*.process.test.ts'
/** Whoever names files or tests wants each of their cases; those that start processes are few. */
const areNamed = process.argv.some((argument) =>
  /(?:^|\/)tests\/(?!vitest\.config)|^(?:-t$|--testNamePattern)/.test(argument),
)
const inProcesses = process.env.LARDERBELL_PROCESSES !== undefined

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    // The tests share nothing that one could spoil for another, so each worker loads the sources once.
    isolate: false,
    // One more than the machine has cores: some tests wait. The default leaves one idle, which of two is half.
    maxWorkers: availableParallelism() + 1,
    // Most of what a test makes lives for a moment: with more room for it less is collected. Measured: 7 % less processor time.
    execArgv: ['--max-semi-space-size=64'],
    include: [inProcesses ? PROCESSES : 'tests/**/*.test.ts'],
    exclude: inProcesses ? [] : [PROCESSES],
    runner: './tests/sampling-runner.ts',
    env: areNamed || inProcesses ? { LARDERBELL_WHOLE: '1' } : {},
    globalSetup: ['tests/print-seed.ts'],
    // What a source becomes is kept in node_modules, by its text.
    experimental: { fsModuleCache: true },
    testTimeout: process.env.LARDERBELL_LONG ? 600_000 : 30_000,
  },
})
