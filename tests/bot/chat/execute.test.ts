import { describe, expect, it } from 'vitest'
import { execute } from '../../../bot/chat/run/execute.ts'
import { newAsker } from '../asker.ts'
import { fakeCommands } from './fakes.ts'

const run = async (line: Parameters<typeof execute>[0]) => {
  const logged: string[] = []
  const outcome = await execute(line, {
    ...newAsker(),
    commands: fakeCommands,
    nowMs: 0,
    log: (text) => logged.push(text),
  })
  return { outcome, log: logged.join('\n') }
}

describe('execute', () => {
  it('answers a line and an invocation alike', async () => {
    const { outcome } = await run('/mix spirit:1000 ml strength:95% water:500 ml')
    expect(outcome).toMatchObject({ ok: true, path: 'mix', reply: { data: { volumeMl: 1500 } } })
    const options = { spirit: '1000 ml', strength: '95%', water: '500 ml' }
    expect((await run({ path: 'mix', options })).outcome).toEqual(outcome)
  })

  it.each<[line: string, error: object]>([
    ['/mix 1 l', { code: 'missing_option', option: 'strength', values: { command: 'mix', option: 'strength' } }],
    ['/mix', { code: 'missing_option', option: 'spirit' }],
    ['/mix 1 l strength:much', { code: 'bad_value', problem: 'negative_volume', option: 'strength' }],
    ['/mix 1 l strenght:95%', { code: 'unknown_option', nearest: 'strength' }],
    ['/hopeless', { code: 'unreachable', values: { abvPercent: 90, sugarGPerL: 500 } }],
  ])('says what was wrong with %s and logs nothing', async (line, error) => {
    const { outcome, log } = await run(line)
    expect(outcome).toMatchObject({ ok: false, error })
    expect(log).toBe('')
  })

  it('knows an invocation of no command, made elsewhere', async () => {
    expect((await run({ path: 'mxi', options: {} })).outcome).toMatchObject({
      ok: false,
      path: null,
      error: { nearest: 'mix' },
    })
  })

  it.each(['/nan', '/absent', '/endless', '/broken text:my grandmother'])(
    'excuses a fault of ours: %s',
    async (line) => {
      const { outcome, log } = await run(line)
      expect(outcome).toMatchObject({ ok: false, error: { code: 'internal', problem: 'internal', values: {} } })
      expect(log).toMatch(/^\/\w+: \w+Error\n\s+at /)
      expect(log).not.toMatch(/grandmother|secret/)
    },
  )
})
