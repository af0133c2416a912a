import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const said = async (shelf: 'lemon_sweetened' | 'lemon_bottled' | 'lemon_strained' | 'fair', text: string) =>
  (await talkerFor({ after: null, shelf })).say(text)

describe('whether a jar is sweet or strong enough', () => {
  it.each([
    ['is it sweet enough?', '/jar show lemon'],
    ['is the lemon sweet enough now?', '/jar show lemon'],
    ['is it strong enough?', '/jar show lemon'],
    ['è abbastanza dolce?', '/jar show lemon'],
    ['is it strong enough for the freezer?', '/jar show lemon'],
    ['will it be strong enough to go in the freezer', '/jar show lemon'],
    ['il limone è abbastanza forte per il congelatore?', '/jar show lemon'],
    ['is it strong enough to keep?', '/keeping lemon'],
  ])('is answered of the jar: %s', async (text, read) => {
    expect(await said('lemon_bottled', text)).toMatchObject({ read, code: null, recorded: 0 })
  })

  it('is answered with its syrup, where that is not in yet', async () => {
    expect((await said('lemon_strained', 'is it sweet enough?')).read).toBe('/syrup jar:lemon')
  })

  it('is asked of which, where several may be meant', async () => {
    const one = await talkerFor({ after: null, shelf: 'fair' })
    one.wait(40)
    expect((await one.say('is it sweet enough?')).choices.length).toBeGreaterThan(1)
    expect((await one.say('is the orange sweet enough?')).read).toBe('/jar show orange')
  })

  it('is nobody’s jar, where it is asked how to know', async () => {
    expect((await said('lemon_bottled', 'how do I know when it is sweet enough in general')).command).not.toBe(
      'jar show',
    )
  })
})

it('says first what was asked', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_sweetened' })
  const first = async (text: string) => {
    const { outcome } = await one.hear(text)
    return outcome.ok && 'reply' in outcome ? outcome.reply.headline : null
  }
  expect(await first('is it sweet enough?')).toMatchObject({
    key: 'asked_enough',
    values: { name: 'lemon', sugarGPerL: expect.closeTo(190, -1) },
  })
  expect(await first('is it strong enough for the freezer?')).toMatchObject({ key: 'asked_freezer' })
})
