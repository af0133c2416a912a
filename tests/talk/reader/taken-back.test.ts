import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

// The sentences are ours; no source.
describe('a step that is told as not so', () => {
  it.each([
    'that never happened',
    'take back please',
    'no that didn’t happen, get rid of it',
    'I never shook it, strike it',
    'I spoke too soon, didn’t shake it',
    'you shouldn’t have written that down',
    'rub that out',
    'erase the last entry',
    'un-shake it lol',
    'hang on that’s not true, I didn’t',
    'toglila, non è vero',
    'non dovevi scriverlo',
    'no aspetta, non l’ho scosso',
    'scherzavo, non l’ho agitato',
  ])('is taken back: %s', async (text) => {
    const one = await talkerFor({ after: '/jar shake lemon', shelf: 'lemon' })
    expect(await one.say(text)).toMatchObject({ command: 'jar undo', code: null, recorded: 1 })
  })

  it.each([
    'I didn’t taste it yet',
    'I never strained it',
    'is that not true?',
    'that never happened to me before',
    'I didn’t shake the ginger',
    'delete the lemon jar',
    'get rid of it',
  ])('is taken back by nothing else: %s', async (text) => {
    const one = await talkerFor({ after: '/jar shake lemon', shelf: 'lemon_ginger' })
    const { command, code } = await one.say(text)
    expect([command, code]).not.toEqual(['jar undo', null])
  })

  it('is asked about where other answers came since', async () => {
    const one = await talkerFor({ after: '/jar shake lemon', shelf: 'lemon' })
    await one.say('/botanical quince')
    expect(await one.say('that never happened')).toMatchObject({ code: 'question', choices: ['/jar undo lemon'] })
  })
})
