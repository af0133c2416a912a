import { PassThrough } from 'node:stream'
import { describe, expect, it } from 'vitest'
import { chat } from '../../../bot/terminal/chat/chat.ts'
import { complete } from '../../../bot/terminal/chat/complete.ts'
import { fakeCommands } from '../chat/fakes.ts'
import { testDesk } from '../test-desk.ts'
import { fakeDesk } from './fakes.ts'

const GOOD = '/mix spirit:1000 ml strength:95%'

const run = async (input: string | string[]) => {
  const { desk, printed } = fakeDesk(input)
  await chat(desk)
  return printed
}

describe('chat', () => {
  it('asks what is being made, with a line that is a plan', async () => {
    const { out } = await run('')
    const [question, example, ...rest] = out.trimEnd().split('\n')
    expect(question).toMatch(/\?/)
    expect((await testDesk().run(example!)).ok).toBe(true)
    expect(rest).toEqual([expect.stringContaining('/help')])
  })

  it('answers every piped line, the last without its end too', async () => {
    const { out } = await run([`${GOOD}\n\n/mxi\n`, '/nan\n', `/help mix\n${GOOD}`])
    const answers = out.split('\n\n').slice(1)
    expect(answers[0]).toBe('fake')
    expect(answers[1]).toMatch(/Did you mean \/mix/)
    expect(answers[2]).toMatch(/^Sorry/)
    expect(answers.at(-2)).toBe('fake')
  })

  it.each(['/quit', 'quit', ' /QUIT ', '/exit'])('leaves at %s', async (quit) => {
    const { out } = await run(`${quit}\n${GOOD}\n`)
    expect(out).not.toContain('fake')
  })

  it('prompts where somebody sits at a terminal', async () => {
    const terminal = new PassThrough()
    const { desk, printed } = fakeDesk(`${GOOD}\n`, { terminal })
    await chat(desk)
    expect(String(terminal.read())).toContain('larderbell> ')
    expect(printed.out).toMatch(/fake\n\n\nGoodbye\.\n$/)
  })
})

it.each<[line: string, hits: string[], part: string]>([
  ['/sy', ['/syrup '], '/sy'],
  ['sy', ['syrup '], 'sy'],
  ['/SY', ['/syrup '], '/SY'],
  ['/jar', ['/jar start ', '/jar list '], '/jar'],
  ['/jar s', ['/jar start '], '/jar s'],
  ['/he', ['/help '], '/he'],
  ['/q', ['/quit '], '/q'],
  ['/syrup to-', ['to-strength:'], 'to-'],
  ['/syrup infusion:1 l s', ['strength:'], 's'],
  ['/syrup 1 l strength:94% ', ['infusion:', 'to-strength:', 'ratio:'], ''],
  ['/syrup 1 l strength:94% strength', [], 'strength'],
  ['/syrup strength:', [], 'strength:'],
  ['/help sy', ['syrup'], 'sy'],
  ['/nothing to-', [], '/nothing to-'],
])('completes %s', (line, hits, part) => {
  expect(complete(line, fakeCommands)).toEqual([hits, part])
})
