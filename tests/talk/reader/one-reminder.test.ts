import { describe, expect, it } from 'vitest'
import type { Shelf } from '../shelves.ts'
import { talkerFor } from './told.ts'

const said = async (text: string, shelf: Shelf = 'fair') => {
  const one = await talkerFor({ after: null, shelf })
  const before = await one.store.read('local')
  const told = await one.say(text)
  return { told, isAsBefore: JSON.stringify(before) === JSON.stringify(await one.store.read('local')) }
}

describe('one reminder, which there is none of', () => {
  it.each<[text: string, lines: readonly string[]]>([
    ['remind me tomorrow at 6pm to buy bottles', ['/reminders time:6 pm']],
    ['remind me to order labels', ['/reminders']],
    ['can you remind me to phone the hall next week?', ['/reminders']],
    ['nudge me at noon to fetch the jugs', ['/reminders time:noon']],
    ['remind me in an hour to stir the jam', ['/reminders']],
    ['remind me about the committee on friday', ['/reminders']],
    ['remind me tomorrow at 6pm', ['/reminders time:6 pm']],
    ['remind me on friday at 6pm to bottle the orange', ['/jar later orange until:friday', '/reminders time:6 pm']],
    ['remind me at 6 to shake the sloe', ['/reminders time:6']],
    ['ricordami domani alle 18 di comprare le bottiglie', ['/reminders time:18']],
    ['avvisami domani di chiamare la sala', ['/reminders']],
    ['ricordami venerdì alle 10 di imbottigliare l’arancia', ['/jar later orange until:venerdi', '/reminders time:10']],
  ])('%s', async (text, lines) => {
    const { told, isAsBefore } = await said(text)
    expect(told).toMatchObject({ code: 'question', choices: lines, recorded: 0 })
    expect(isAsBefore).toBe(true)
    for (const line of lines) expect((await said(line)).told.code, line).toBeNull()
  })

  it.each([
    ['remind me on saturday', '/jar later lemon until:saturday'],
    ['remind me come saturday to strain the lemon', '/jar later lemon until:saturday'],
    ['remind me in two hours to shake the lemon', '/jar later lemon until:in 2 hours'],
    ['remind me at 7 in the evening', '/reminders time:7 pm'],
    ['remind me every day at 6pm', '/reminders time:6 pm'],
    ['ricordami sabato il limone', '/jar later lemon until:sabato'],
  ])('is not what this is: %s', async (text, read) => {
    expect((await said(text, 'lemon')).told.read).toBe(read)
  })

  it('takes a jar by its whole name', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    await one.say('/jar start lemon 3 of:10 lemons spirit:1 l 95%')
    expect((await one.say('remind me on 5 december to strain lemon 3')).read).toBe(
      '/jar later lemon 3 until:5 december',
    )
  })
})

it.each(['no reminders until friday at 6pm', 'niente promemoria fino a venerdì alle 18'])(
  'moves no time of day by the end of a pause: %s',
  async (text) => {
    const { told, isAsBefore } = await said(text)
    expect(told.read).toMatch(/pause-until/)
    expect(told.read).not.toMatch(/time:/)
    expect(isAsBefore).toBe(true)
  },
)
