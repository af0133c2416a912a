import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

/** A jar that is to be tasted and shaken today: what its list asks for. */
async function listed() {
  const one = await talkerFor({ after: null, shelf: 'lemon' })
  await one.say('what’s on?')
  return one
}

describe('both jobs of a jar', () => {
  it.each([['done', 'both'], ['done', 'both of them'], ['done', 'yes, both'], ['did both']])(
    'are done, and how it tastes is asked: %s, %s',
    async (...said) => {
      const one = await listed()
      let told = await one.say(said[0])
      for (const more of said.slice(1)) told = await one.say(more!)
      expect([told.command, ...told.also.map(({ command }) => command)]).toEqual(['jar shake', 'jar taste'])
      expect(told).toMatchObject({ recorded: 1 })
      expect(told.also[0]?.code).toBe('question')
      expect(await one.say('lovely')).toMatchObject({ read: '/jar taste lemon note:lovely', recorded: 1 })
    },
  )

  it('are not both where one is denied', async () => {
    const one = await listed()
    await one.say('done')
    expect((await one.say('not both')).recorded).toBe(0)
  })
})

it('a taste that is chosen is asked for, and no mark is made up', async () => {
  const one = await listed()
  expect((await one.say('done')).code).toBe('question')
  expect(await one.say('tasted')).toMatchObject({ code: 'question', command: 'jar taste', recorded: 0 })
  expect(await one.say('3')).toMatchObject({ read: '/jar taste lemon rating:3', recorded: 1 })
})

describe('a plant that soon gives too much', () => {
  const chilli = '/jar start fire of:10 g dried chilli spirit:1 l vodka 40% when:yesterday'
  const firstUnder = async (lines: readonly string[]) => {
    const one = await talkerFor({ after: null })
    for (const line of lines.slice(0, -1)) await one.say(line)
    const { outcome } = await one.hear(lines.at(-1)!)
    return outcome.ok && 'reply' in outcome ? (outcome.reply.under ?? []).map(({ key }) => key) : []
  }

  it.each([
    'tasted it again, just right now',
    'tasted it, just right',
    'tasted it again, perfect',
    'tasted it, spot on',
    'tasted it, hot enough',
    'tasted it, couldn’t be better',
    'assaggiato, perfetto',
  ])('comes out now, where it was found right: %s', async (text) => {
    expect(await firstUnder([chilli, text])).toContain('jar_out_now')
  })

  it.each(['tasted it, not hot enough', 'tasted it, almost perfect', 'tasted it, a bit dull', 'tasted it, 5 out of 5'])(
    'stays in, where it was not: %s',
    async (text) => {
      expect(await firstUnder([chilli, text])).not.toContain('jar_out_now')
    },
  )

  it('is no peel, which is in no hurry', async () => {
    const lemon = '/jar start lemon of:10 lemons spirit:1 l 95% when:9 days ago'
    expect(await firstUnder([lemon, 'tasted it, just right now'])).not.toContain('jar_out_now')
  })
})
