import { describe, expect, it } from 'vitest'
import { talker } from './told.ts'

describe('a plan for a feast', () => {
  it.each([
    ['limoncello a natale', '25 December'],
    ['limoncello per san martino', '11 November'],
    ['coffee liqueur for st patrick’s day', '17 March'],
    ['coffee liqueur for twelfth night', '5 January'],
    ['quince liqueur for Burns Night', '25 January'],
    ['coffee liqueur for good friday', '2027-03-26'],
  ])('is ready by its day: %s', async (text, day) => {
    const told = await talker().say(text)
    expect(told).toMatchObject({ command: 'plan', call: { options: { 'ready-by': day } } })
    expect(told.notes).not.toContain('left_out')
    expect(told.notes).not.toContain('day_open')
  })
})

describe('a plan for a day that only its maker knows', () => {
  it.each([
    'cherry liqueur for mother’s day',
    'for thanksgiving a quince liqueur',
    'limoncello per la festa della mamma',
    'coffee liqueur for my sister’s wedding',
    'coffee liqueur for the allotment fair',
    'coffee liqueur ready by next summer',
  ])('asks for it, and is made for the day that is said: %s', async (text) => {
    const one = talker()
    const told = await one.say(text)
    expect(told).toMatchObject({ command: 'plan', code: null, notes: expect.arrayContaining(['day_open']) })
    expect(told.notes).not.toContain('left_out')
    const dated = await one.say('ready by 14 June')
    expect(dated).toMatchObject({ command: 'plan', code: null, call: { options: { 'ready-by': '14 june' } } })
    expect(dated.notes).not.toContain('day_open')
  })

  it.each([
    'rose liqueur for the wedding in june',
    'cherry liqueur for my mother',
    'a fair bit of coffee in a litre of vodka',
  ])('asks nothing where it is said, or where it is no day: %s', async (text) => {
    expect((await talker().say(text)).notes).not.toContain('day_open')
  })
})
