import { expect, it } from 'vitest'
import type { Context } from '../../bot/chat/command.ts'
import { execute } from '../../bot/chat/run/execute.ts'
import { ask } from '../../bot/terminal/ask/ask.ts'
import { consoleSurface } from '../../bot/terminal/chat/terminal-delivery.ts'
import { terminalLanguage } from '../../bot/terminal/show/language-for-terminal.ts'
import { memoryStore } from '../../store/memory/memory-store.ts'
import { NOBODY } from '../../store/person.ts'
import { newAsker } from './asker.ts'
import { keep, messagesIn, reminding } from './discord/reminding.ts'
import { bot, fake, onStage, restart } from './discord/stage.ts'
import { MARK, other, spokenByCountry } from './second-language.ts'
import { fakeDesk } from './terminal/fakes.ts'
import { commands } from './test-desk.ts'

onStage()

/** Two people who have chosen their countries. */
const storeOf = async (countries: Readonly<Record<string, string>>) => {
  const store = memoryStore('UTC')
  for (const [userId, country] of Object.entries(countries)) {
    await store.update(userId, (person) => ({ ...person, settings: { ...person.settings, country } }))
  }
  return store
}

it('tells a command the language of who called it', async () => {
  const store = await storeOf({ '10000000000000001': 'IT', '10000000000000002': 'GB' })
  const seen: Context['language'][] = []
  const probe = commands.map((command) => ({
    ...command,
    run: (input: never, context: Context) => {
      seen.push(context.language)
      return command.run(input, context)
    },
  }))
  for (const userId of ['10000000000000001', '10000000000000002', '10000000000000003']) {
    await execute('/mix 1 l strength:40%', {
      ...newAsker(),
      ...spokenByCountry,
      userId,
      store,
      commands: probe,
      nowMs: 0,
      log: () => {},
    })
  }
  expect(seen).toEqual([other, spokenByCountry.language, spokenByCountry.language])
})

it.each([
  ['IT', true],
  ['GB', false],
])('answers at the terminal in the language of %s: jars, plans, pictures and problems', async (country, isOther) => {
  const store = await storeOf({ local: country })
  for (const line of [
    '/plan 10 lemons spirit:1 l 95%',
    '/jar list',
    '/jar start lemon of:10 lemons spirit:1 l 95%',
    '/mixx',
  ]) {
    const { desk, printed } = fakeDesk('', { commands, speechIn: terminalLanguage })
    await ask([line], { ...desk, asker: { ...newAsker(), ...spokenByCountry, store } })
    expect(`${printed.out}${printed.err}`.startsWith(MARK)).toBe(isOther)
  }
})

it('reminds at the terminal in the language of the person', async () => {
  const said: string[] = []
  const surface = consoleSurface({
    userId: 'local',
    ...spokenByCountry,
    screen: { width: 80, colour: false },
    say: (text) => said.push(text),
    isHeard: () => true,
  })
  const outcome = await execute('/mix 1 l strength:40%', { ...newAsker(), commands, nowMs: 0, log: () => {} })
  if (!outcome.ok) throw new Error('no reply')
  for (const country of ['IT', 'GB']) {
    const settings = { ...NOBODY.settings, country }
    const sought = { nudgeId: country, userId: 'local', place: { kind: 'console' } as const, madeMs: 0 }
    await surface.send({ ...sought, reply: outcome.reply, settings, mayHaveBeenSeen: false, attempt: 1 })
  }
  expect(said.map((text) => text.startsWith(MARK))).toEqual([true, false])
})

it.each([
  ['IT', true],
  ['GB', false],
])('answers and reminds in Discord in the language of %s', async (country, isOther) => {
  await restart({ languageOf: spokenByCountry.languageOf })
  await bot.store.update(fake.user.id, (person) => ({ ...person, settings: { ...person.settings, country } }))
  const { message } = await fake.slash('plan', { of: '10 lemons', spirit: '1 l 95%' })
  expect(JSON.stringify(message?.json).includes(MARK)).toBe(isOther)
  const here = reminding(fake, { languageOf: spokenByCountry.languageOf })
  await keep(here.store, fake, { settings: { country } })
  await here.tick()
  const [nudge] = messagesIn(fake.dm(fake.user))
  expect(JSON.stringify(nudge?.json).includes(MARK)).toBe(isOther)
})
