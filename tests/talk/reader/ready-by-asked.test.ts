import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

describe('whether a jar is ready by a day', () => {
  it.each([
    ['will it be ready by Christmas?', '25 December'],
    ['will it be ready for my birthday on the 20th', '2026-12-20'],
    ['ready by new year?', '1 January'],
    ['can I serve it on Boxing Day', '26 December'],
    ['will it be drinkable in a month', 'in a month'],
    ['am I going to have it for Christmas', '25 December'],
    ['will it be ready for mum’s 70th on 3 January', '3 january'],
    ['sarà pronto per Natale?', '25 December'],
    ['si può bere a Capodanno?', '1 January'],
  ])('%s', async (text, day) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    expect(await one.say(text)).toMatchObject({ read: `/jar show lemon ready-by:${day}`, code: null, recorded: 0 })
  })

  it.each(['will it be ready by Christmas?', 'sarà pronto per Natale?', 'will I be able to drink it by January'])(
    'leaves out no word of %s',
    async (text) => {
      const { outcome } = await (await talkerFor({ after: null, shelf: 'lemon' })).hear(text)
      const notes = outcome.ok && 'reply' in outcome ? outcome.reply.notes : []
      expect(notes.filter(({ key }) => key === 'left_out')).toEqual([])
    },
  )

  it.each([
    ['the 20th', '2026-12-20'],
    ['12 December', '12 december'],
  ])('asks when a day is that only its maker knows: %s', async (answer, day) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    expect(await one.say('will it be ready in time for the fair')).toMatchObject({ code: 'question', recorded: 0 })
    expect((await one.say(answer)).read).toBe(`/jar show lemon ready-by:${day}`)
  })

  it.each(['will they be ready by Christmas?', 'which will be ready for Christmas?'])(
    'is told of all by their list: %s',
    async (text) => {
      const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
      expect(await one.say(text)).toMatchObject({ read: '/jar list', code: null })
    },
  )

  it('means the jar that was spoken of, or asks', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    await one.say('shook the lemon')
    expect((await one.say('will it be ready by Christmas')).read).toBe('/jar show lemon ready-by:25 December')
    one.wait(40)
    expect((await one.say('will it be ready by Christmas')).choices).toEqual([
      '/jar show lemon ready-by:25 December',
      '/jar show ginger ready-by:25 December',
    ])
  })

  it('is of the plan that is open', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    await one.say('/plan of:4 oranges spirit:1 l 40%')
    await one.say('will it be ready in time for the fair')
    expect((await one.say('1 March')).read).toBe('/plan of:4 oranges spirit:1 l 40% ready-by:1 march')
  })
})
