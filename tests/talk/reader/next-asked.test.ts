import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

describe('what is to be done next', () => {
  it.each([
    'what should I do now',
    'ok what do I do now?',
    'now what',
    'what now',
    'what’s the next step',
    'which one needs me',
    'e ora cosa faccio',
  ])('of all jars: %s', async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    expect(await one.say(text)).toMatchObject({ read: '/jar list', code: null, recorded: 0 })
  })

  it.each([
    ['what do I do with the ginger now', '/jar show ginger'],
    ['so what comes next with the lemon', '/jar show lemon'],
    ['what’s up next for the ginger', '/jar show ginger'],
    ['cosa faccio con lo zenzero adesso', '/jar show ginger'],
  ])('of the one that is named: %s', async (text, read) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    expect(await one.say(text)).toMatchObject({ read, code: null, recorded: 0 })
  })

  it.each(['what do I do with 10 lemons now', 'what goes with ginger'])('is not asked: %s', async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    expect((await one.say(text)).read ?? '').not.toMatch(/jar (?:show|list)/)
  })
})
