import type { RunnerTask, RunnerTestFile, RunnerTestSuite } from 'vitest'
import { TestRunner } from 'vitest'
import { SEED } from './runs.ts'

/** Of a table so long or longer only some cases are run at once. */
const LONG_TABLE = 5
const ONE_OF = 12

/** What somebody may be hurt by is tried whole each time, and so is what sees to the house. */
const WHOLE = /\/tests\/(?:safety\/|talk\/emergency|[^/]+$)/

type Part = 'few' | 'rest' | 'all'

export const partOf = ({ LARDERBELL_LONG, LARDERBELL_WHOLE, LARDERBELL_REST }: NodeJS.ProcessEnv): Part =>
  LARDERBELL_LONG !== undefined || LARDERBELL_WHOLE !== undefined
    ? 'all'
    : LARDERBELL_REST !== undefined
      ? 'rest'
      : 'few'

function sample({ tasks }: RunnerTestSuite, part: 'few' | 'rest', isWhole: boolean): void {
  const cases = tasks.filter(({ type, mode }: RunnerTask) => type === 'test' && mode === 'run')
  const isLong = cases.length >= LONG_TABLE && !isWhole
  cases.forEach((task, at) => {
    const isOfFew = !isLong || at % ONE_OF === SEED % Math.min(ONE_OF, cases.length)
    if (isOfFew !== (part === 'few')) task.mode = 'skip'
  })
  for (const task of tasks) if (task.type === 'suite') sample(task, part, isWhole)
}

/** Skips the cases of a file that are not of this part: of each long table one of every few is run at once, the same ones each time. */
export function sampleFile(file: RunnerTestFile, part: Part): void {
  if (part !== 'all') sample(file, part, WHOLE.test(file.filepath))
}

/** Runs some cases of each long table; the rest of them under `LARDERBELL_REST=1`, all at once under `npm run test:long` and of files that are named. */
export default class SamplingRunner extends TestRunner {
  onCollected(files: RunnerTestFile[]): void {
    for (const file of files) sampleFile(file, partOf(process.env))
  }
}
