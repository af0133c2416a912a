import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

describe('nobody shakes any more', () => {
  it.each([
    'no more shaking',
    'that’s enough shaking now',
    'stop the shaking please',
    'we don’t want to shake the jars any longer',
    'basta con lo scuotere',
    'non voglio più agitare i vasi',
  ])('%s: no reminder asks for it', async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    expect(await one.say(text)).toMatchObject({ read: '/reminders shake:off', data: { shake: 'off' } })
  })

  it.each(['is there no need for shaking?', 'I gave it no shake', 'we shook it, no more than that'])(
    '%s: nothing is switched',
    async (text) => {
      const one = await talkerFor({ after: null, shelf: 'lemon' })
      expect((await one.say(text)).read ?? '').not.toContain('shake:off')
    },
  )

  it.each([
    'remind me on Thursday, and no more shaking',
    'no more shaking, and remind me about it on Thursday',
    'basta scuotere e ricordamelo giovedì',
  ])('%s: the day is kept too', async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    const told = await one.say(text)
    expect(told.read).toBe('/reminders shake:off')
    expect(told.also.map(({ read }) => read)).toEqual([
      expect.stringMatching(/^\/jar later lemon until:(?:thursday|giovedi)$/),
    ])
  })
})

describe('reminders that are to come again, or at another hour', () => {
  it.each(['ok start reminding me again', 'right, begin nudging me again', 'you may go back to messaging me'])(
    '%s: behind a plan no jar is started',
    async (text) => {
      const one = await talkerFor({ after: '10 lemons and a litre of 95%' })
      expect(await one.say(text)).toMatchObject({ read: '/reminders pause-until:none', recorded: 0 })
    },
  )

  it('whoever wants none of it is not reminded again', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    expect((await one.say('please don’t start reminding me')).read ?? '').not.toContain('none')
  })

  it.each([
    ['can you remind me in the evening, around seven', '19:00'],
    ['could you remind me about six in the evening', '18:00'],
    ['could the reminders come towards 8 in the morning', '8 am'],
    ['ricordamelo la sera verso le nove', '21:00'],
  ])('%s: %s', async (text, time) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    expect((await one.say(text)).read).toBe(`/reminders time:${time}`)
  })

  it('about a number of jars is no hour', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    expect((await one.say('remind me about one jar on Friday')).read ?? '').not.toContain('time:')
  })

  it.each(['enough reminders', 'I’m fed up with the notifications', 'I’ve had enough of your nudges'])(
    '%s: until when is asked',
    async (text) => {
      const one = await talkerFor({ after: null, shelf: 'lemon' })
      expect(await one.say(text)).toMatchObject({ read: '/reminders', code: 'question' })
    },
  )
})
