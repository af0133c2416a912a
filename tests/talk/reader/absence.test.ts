import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

async function leftOutOf(text: string) {
  const { outcome } = await (await talkerFor(NO_JARS)).hear(text)
  return outcome.ok && 'reply' in outcome ? outcome.reply.notes.map(({ key }) => key) : null
}

const NO_JARS = { after: null, shelf: undefined }

/** It is Sunday 29 November 2026; the days are counted by hand. */
it.each([
  ['holiday from tomorrow for two weeks, no reminders please', '2026-12-14'],
  ['no reminders for a fortnight from Monday', '2026-12-14'],
  ['away from Saturday for 10 days, no reminders', '2026-12-15'],
  ['no reminders from tomorrow until 20 December', '20 december'],
  ['da domani sono in vacanza per due settimane, niente promemoria', '2026-12-14'],
  ['niente promemoria da sabato per 10 giorni', '2026-12-15'],
])('is silent until an absence is over, not until it begins: %s', async (text, until) => {
  const one = await talkerFor(NO_JARS)
  await one.say('/reminders pause-until:in 3 weeks')
  const told = await one.say(text)
  expect(told.read).toBe(`/reminders pause-until:${until}`)
  expect(await leftOutOf(text)).not.toContain('left_out')
})

it.each(['no reminders from tomorrow', 'niente promemoria da domani'])(
  'ends no silence on the day it is to begin: %s',
  async (text) => {
    expect((await (await talkerFor(NO_JARS)).say(text)).read).toBe('/reminders')
  },
)

it.each([
  ['no reminders until Monday', 'monday'],
  ['remind me again from Monday', 'monday'],
  ['no reminders for two weeks', 'in 2 weeks'],
])('still takes the day that ends it: %s', async (text, until) => {
  expect((await (await talkerFor(NO_JARS)).say(text)).read).toBe(`/reminders pause-until:${until}`)
})

it.each(['remind me at 8 in the evening', 'remind me at 7 in the morning', 'ricordamelo alle 8 di sera'])(
  'leaves out no part of the day that the hour tells: %s',
  async (text) => {
    expect((await (await talkerFor(NO_JARS)).say(text)).read).toMatch(/^\/reminders time:[78] [ap]m$/)
    expect(await leftOutOf(text)).not.toContain('left_out')
  },
)
