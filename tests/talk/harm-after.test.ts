import { expect, it } from 'vitest'
import { hear } from '../../bot/chat/hear/hear.ts'
import type { DangerSaid } from '../../bot/talk/emergency/danger-said.ts'
import { findHarmAfter } from '../../bot/talk/emergency/harm-after.ts'
import { newTalkMemory } from '../../bot/talk/memory/remembered.ts'
import { newAsker } from '../bot/asker.ts'
import { commands } from '../bot/test-desk.ts'

const drink = (harm: DangerSaid['harm'], isBeyondDoubt = true): DangerSaid => ({
  of: 'drink',
  harm,
  isBeyondDoubt,
  answersSince: 0,
})
const MOULDY = drink('swallowed_undrinkable')
const METHANOL = drink('methanol')
const DRUNK: DangerSaid = { of: 'person', harm: 'swallowed_spirit_adult', isBeyondDoubt: true, answersSince: 0 }

it.each([
  'but I already drank some of it',
  'I swallowed a bit of it',
  'oh no, we drank it yesterday',
  'what if I already drank some?',
  'my wife had a glass of it last night',
  'I tasted it',
  'we finished the bottle, drank it all',
  'ne ho già bevuto un po’',
  'l’ho assaggiato ieri',
])('takes it for the drink that was just told to be thrown away: %s', (text) => {
  expect(findHarmAfter(text, MOULDY)).toBe('swallowed_undrinkable')
  expect(findHarmAfter(text, METHANOL)).toBe('methanol')
  expect(findHarmAfter(text, null)).not.toBe('methanol')
})

it.each([
  'I didn’t drink it',
  'nobody drank any of it',
  'can I drink it?',
  'could I have tasted it in time?',
  'threw it away',
  'tasted it, 5 stars',
  '/jar taste lemon rating:4 note:drank it',
])('lets be what was not drunk, or is a rating: %s', (text) => {
  expect(findHarmAfter(text, MOULDY)).toBeNull()
})

it('asks of a taste only where nothing is in doubt, and of a child the poison centre in its own words', () => {
  expect(findHarmAfter('I tasted it', drink('swallowed_undrinkable', false))).toBeNull()
  expect(findHarmAfter('I drank some of it', drink('swallowed_undrinkable', false))).toBe('swallowed_undrinkable')
  expect(findHarmAfter('my son drank it', MOULDY)).toBe('swallowed_spirit_child')
  expect(findHarmAfter('my son drank it', METHANOL)).toBe('methanol')
  expect(findHarmAfter('my sleeve is on fire', METHANOL)).toBe('clothes_on_fire')
})

it.each(['he’s asleep', 'she is snoring', 'he fell asleep on the sofa', 'dorme', 'si è addormentata'])(
  'takes a sleep for no sleep right after somebody who drank too much: %s',
  (text) => {
    expect(findHarmAfter(text, DRUNK)).toBe('unconscious_after_drinking')
    expect(findHarmAfter(text, MOULDY)).toBeNull()
    expect(findHarmAfter(text, { ...DRUNK, harm: 'burn' })).toBeNull()
  },
)

it('lets be who is awake', () => {
  expect(findHarmAfter('he’s not asleep', DRUNK)).toBeNull()
})

/** What is answered last of lines said one after the other. */
async function lastOf(lines: readonly string[]) {
  const asker = { ...newAsker(), talk: newTalkMemory(), commands, log: () => {} }
  let data: unknown = null
  for (const line of lines) {
    const { outcome } = await hear(line, { ...asker, nowMs: Date.UTC(2026, 10, 30) })
    data = 'reply' in outcome ? outcome.reply.data : null
  }
  return data
}

const JAR = '/jar start name:lemon of:10 lemons spirit:1 l 95%'

it.each([
  [[JAR, 'there is fur on top of the lemon', 'but I already drank some of it'], 'swallowed_undrinkable'],
  [[JAR, 'there is fur on top of the lemon', 'thanks', 'I swallowed a bit of it'], 'swallowed_undrinkable'],
  [[JAR, 'I used white spirit by mistake', 'I drank it'], 'methanol'],
  [['we put unknown berries in the gin', 'I already drank some'], 'swallowed_plant'],
  [['I put yew berries in it', 'we already drank some'], 'swallowed_plant'],
  // First they are woken, which the answer asks for (NHS).
  [['my friend drank too much, what do I do', 'he’s asleep'], 'swallowed_spirit_adult'],
  [['my friend drank too much, what do I do', 'he’s asleep', 'he won’t wake up'], 'unconscious_after_drinking'],
  [['my friend drank methylated spirit', 'he’s asleep'], 'unconscious_after_drinking'],
])('answers it in a talk: %j', async (lines, id) => {
  expect(await lastOf(lines)).toMatchObject({ id })
})

it.each(['he’s in Germany', 'Germany', 'she is in germany right now', 'è in Germania'])(
  'shows the numbers of the country that is told of whoever is harmed, and notes nothing: %s',
  async (text) => {
    const lines = ['my friend drank too much, what do I do', text]
    expect(await lastOf(lines)).toMatchObject({ id: 'swallowed_spirit_adult', country: 'DE' })
    expect(await lastOf([...lines, 'he won’t wake up'])).toMatchObject({
      id: 'unconscious_after_drinking',
      country: 'DE',
    })
    expect(await lastOf([...lines, '/settings'])).toMatchObject({ country: null })
    expect(await lastOf([text])).not.toMatchObject({ id: 'swallowed_spirit_adult' })
  },
)

it('takes nothing else for a country, and notes one’s own', async () => {
  const lines = ['my friend drank too much, what do I do']
  for (const text of ['what’s on?', 'more', 'lemon', 'we’re in Austria']) {
    expect(await lastOf([...lines, text]), text).not.toMatchObject({ id: 'swallowed_spirit_adult' })
  }
})

it('forgets it after a while', async () => {
  const between = Array.from({ length: 7 }, () => '/jar list')
  const later = await lastOf([JAR, 'there is fur on top of the lemon', ...between, 'we drank it'])
  expect(later).not.toMatchObject({ id: 'swallowed_undrinkable' })
})
