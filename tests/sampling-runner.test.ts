import type { RunnerTestFile } from 'vitest'
import { describe, expect, it } from 'vitest'
import { partOf, sampleFile } from './sampling-runner.ts'

const cases = (name: string, count: number) =>
  Array.from({ length: count }, (_, at) => ({ type: 'test', mode: 'run', name: `${name} ${at}` }))

/** The cases of a file that are run. */
function ranOf(filepath: string, part: 'few' | 'rest' | 'all'): readonly string[] {
  const [own, table, pair] = [cases('own', 6), cases('table', 35), cases('pair', 2)]
  const suite = { type: 'suite', mode: 'run', tasks: [...table, { type: 'suite', mode: 'run', tasks: pair }] }
  sampleFile({ type: 'suite', filepath, tasks: [...own, suite] } as unknown as RunnerTestFile, part)
  return [...own, ...table, ...pair].filter(({ mode }) => mode === 'run').map(({ name }) => name)
}

const CHAT = '/a/tests/bot/chat/some.test.ts'

describe('which cases of long tables are run', () => {
  it('runs a few of a long table, one of a table that is hardly long, and all of a short one', () => {
    const few = ranOf(CHAT, 'few')
    expect(few.filter((name) => name.startsWith('table'))).toHaveLength(3)
    expect(few.filter((name) => !name.startsWith('table'))).toHaveLength(3)
  })

  it('runs each case once in the few and the rest together', () => {
    const both = [...ranOf(CHAT, 'few'), ...ranOf(CHAT, 'rest')]
    expect(both.toSorted()).toEqual(ranOf(CHAT, 'all').toSorted())
    expect(both).toHaveLength(43)
  })

  it('runs all of what is counted in full or was named', () => {
    expect([{}, { LARDERBELL_REST: '1' }, { LARDERBELL_LONG: '1' }, { LARDERBELL_WHOLE: '1' }].map(partOf)).toEqual([
      'few',
      'rest',
      'all',
      'all',
    ])
  })

  it.each(['/a/tests/safety/some.test.ts', '/a/tests/talk/emergency-reply.test.ts', '/a/tests/rooms.test.ts'])(
    'runs all of %s at once',
    (file) => {
      expect(ranOf(file, 'few')).toHaveLength(43)
      expect(ranOf(file, 'rest')).toEqual([])
    },
  )
})
