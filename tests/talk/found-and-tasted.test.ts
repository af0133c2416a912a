import { describe, expect, it } from 'vitest'
import type { DangerSaid } from '../../bot/talk/emergency/danger-said.ts'
import { findHarm } from '../../bot/talk/emergency/find-harm.ts'
import { findHarmAfter } from '../../bot/talk/emergency/harm-after.ts'
import { dangerAsked } from '../../bot/talk/reader/danger-asked.ts'
import { testDesk } from '../bot/test-desk.ts'

describe('a plant that nobody knows, tasted', () => {
  it.each([
    'I tried some of the wild berries and feel dizzy',
    'we tasted a few of those hedgerow leaves, now I feel queasy',
    'tasted a few unknown berries and my stomach cramps',
    'ho assaggiato delle bacche selvatiche e ho la nausea',
  ])('is the plant’s: %s', (text) => {
    expect(findHarm(text)).toBe('swallowed_plant')
  })

  it.each([
    'tried some of the sloe gin from the hedge berries jar and feel dizzy',
    'tasted a few of the hedge berries, very sour',
    'tasted some of the coffee beans and feel dizzy',
  ])('is not, where it was a drink or nobody is ill: %s', (text) => {
    expect(findHarm(text)).not.toBe('swallowed_plant')
  })
})

it('says to keep the plant, and to say how many and when', async () => {
  const text = (await testDesk({ width: 80 }).textOf('I tried some of the wild berries and feel dizzy')).replace(
    /\s+/g,
    ' ',
  )
  expect(text).toMatch(/poison centre.*Keep a piece of the plant.*how many and when/)
})

describe('a bottle that nobody knows', () => {
  it.each([
    'there was an unlabelled bottle in the garage, smells of alcohol',
    'my uncle left a bottle of clear liquid, the label has come off. can I use it?',
    'found an unmarked bottle that smells strong',
    'ho trovato in soffitta una bottiglia senza etichetta che puzza di alcol',
  ])('is not to be drunk or used: %s', async (text) => {
    expect(findHarm(text)).toBeNull()
    expect(dangerAsked(text)).toBe('no_label')
    expect(await testDesk({ width: 80 }).textOf(text)).toMatch(/^Don’t drink it, and don’t use it/)
  })

  it.each([
    'found my own limoncello without a label, smells of alcohol',
    'bottles with no label yet',
    'my jar smells of alcohol',
  ])('is none of one’s own: %s', (text) => {
    expect(dangerAsked(text)).not.toBe('no_label')
  })

  it('harms nobody by its smell, whatever was refused before', () => {
    const refused: DangerSaid = { of: 'drink', harm: 'methanol', isBeyondDoubt: true, answersSince: 0 }
    const text = 'I found a bottle in the shed, smells like spirit'
    expect(findHarmAfter(text, refused)).toBeNull()
    expect(findHarmAfter('I drank it, smells like spirit', refused)).toBe('methanol')
    expect(findHarm('found an unlabelled bottle, smells like spirit, what should I do')).toBeNull()
  })
})
