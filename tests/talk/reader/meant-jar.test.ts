import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

describe('what has gone wrong', () => {
  it.each([
    ['cloudy', '/trouble cloudy jar:lemon'],
    ['it’s gone bitter', '/trouble bitter jar:lemon'],
    ['è torbido', '/trouble cloudy jar:lemon'],
  ])('is of the one jar: %s', async (text, read) => {
    expect(await (await talkerFor({ after: null, shelf: 'lemon' })).say(text)).toMatchObject({ read, recorded: 0 })
  })

  it('is of the jar that was spoken of', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    await one.say('shook the ginger')
    expect((await one.say('it’s cloudy')).read).toBe('/trouble cloudy jar:ginger')
  })

  it('is of neither of two until one is named', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    one.wait(40)
    expect((await one.say('it’s cloudy')).read).toBe('/trouble cloudy')
    expect((await one.say('the lemon')).read).toBe('/trouble cloudy jar:lemon')
  })

  it.each(['a friend’s is cloudy', 'cloudy, 25%', 'the one I bought is cloudy'])(
    'is of no jar here: %s',
    async (text) => {
      const { read } = await (await talkerFor({ after: null, shelf: 'lemon' })).say(text)
      expect(read).not.toContain('jar:')
    },
  )
})

describe('a question behind a deed of a jar that is asked for', () => {
  it.each([
    ['shook it, when is it ready', 'lemon_ginger', 'the ginger', ['/jar shake ginger', '/jar show ginger']],
    ['scosso, quanto manca?', 'lemon_ginger', 'il limone', ['/jar shake lemon', '/jar show lemon']],
    [
      'tasted it 4 stars, and print the label',
      'lemon_ginger',
      'lemon',
      ['/jar taste lemon rating:4', '/jar label lemon'],
    ],
  ] as const)('%s: is answered once it is named', async (text, shelf, answer, reads) => {
    const one = await talkerFor({ after: null, shelf })
    expect(await one.say(text)).toMatchObject({ code: 'question', recorded: 0 })
    const told = await one.say(answer)
    expect([told, ...told.also].map(({ read }) => read)).toEqual(reads)
    expect(told.recorded).toBe(1)
    // Once.
    expect((await one.say(answer)).also).toEqual([])
  })

  it('waits for what the deed lacks, too', async () => {
    const one = await talkerFor({ after: null, shelf: 'fair' })
    await one.say('bottled it, how long now')
    await one.say('the orange')
    const told = await one.say('4 x 500 ml')
    expect([told, ...told.also].map(({ read }) => read)).toEqual([
      '/jar bottle orange bottles:4 x 500 ml',
      '/jar show orange',
    ])
  })

  it('of all jars is answered at once', async () => {
    const told = await (await talkerFor({ after: null, shelf: 'lemon_ginger' })).say('shook it, what’s due')
    expect([told, ...told.also].map(({ command }) => command)).toEqual(['jar list', 'jar shake'])
  })
})
