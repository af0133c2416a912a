import { expect, it } from 'vitest'
import { depthOf } from '../../../bot/chat/depth.ts'
import { jarDesk, LEMON } from './desk.ts'

/** A batch from its jar to the last glass: the day, what is typed, and the call for what comes next. */
const STEPS = [
  ['2026-11-01', LEMON, 'jar tag'],
  ['2026-11-03', '/jar shake lemon', 'jar undo'],
  ['2026-11-15', '/jar shake lemon', 'jar strain'],
  ['2026-11-15', '/jar taste lemon rating:4', 'jar strain'],
  ['2026-11-16', '/jar strain lemon measured:930 ml strength:87%', 'jar sweeten'],
  ['2026-11-16', '/jar sweeten lemon sugar:700 g water:1.45 l', 'jar bottle'],
  ['2026-11-20', '/jar bottle lemon bottles:5 x 500 ml', 'jar label'],
  ['2026-12-24', '/jar open lemon', 'jar taste'],
  ['2026-12-24', '/jar taste lemon rating:2', 'trouble'],
  ['2026-12-25', '/jar empty lemon', 'again'],
] as const

// A shake early on has nothing to follow it but a slip of the finger.
it('offers on the first screen of every step the call for what comes next', async () => {
  const desk = jarDesk()
  const offered: [line: string, paths: readonly string[]][] = []
  for (const [day, line] of STEPS) {
    desk.at(day)
    const { actions } = await desk.replyOf(line)
    offered.push([line, actions.filter((action) => depthOf(action) === 'first').map(({ call }) => call.command)])
  }
  for (const [at, [, line, next]] of STEPS.entries())
    expect(offered[at], line).toEqual([line, expect.arrayContaining([next])])
})
