import { expect, it } from 'vitest'
import { likelyZones, MOST_ZONES } from '../../../bot/discord/suggest/likely-zones.ts'
import { readZoneChoice } from '../../../bot/discord/suggest/zone-choice.ts'
import { en } from '../../../bot/text/en/index.ts'
import { parseZone } from '../../../core/quantity/time/parse-zone.ts'
import { selectsOf } from './fake/shown-text.ts'
import { bot, fake, onStage, restart } from './stage.ts'

onStage()

const LEMON = { name: 'lemon', of: '10 lemons', spirit: '1 l 95%', 'to-strength': '30%', 'to-sweetness': '250 g/L' }
const zoneKept = async () => (await bot.store.read(fake.user.id)).settings.zone

it('is offered with the first reply that schedules something, and taken', async () => {
  const started = await fake.slash('jar start', LEMON)
  const [select] = selectsOf(started.message!.json)
  expect(started.text).toContain('I’m using UTC time')
  expect(select).toMatchObject({ placeholder: en.discord.chooseZone() })
  expect(select!.options![0]).toMatchObject({ value: 'Europe/London', description: 'It’s 09:00 there now' })
  const chosen = await fake.choose(started.message, select!.custom_id!, ['Europe/Rome'])
  expect(chosen).toMatchObject({ isPrivate: true })
  expect(chosen.text).toContain('Europe/Rome')
  expect(await zoneKept()).toBe('Europe/Rome')
  const next = await fake.slash('jar start', { ...LEMON, name: 'second' })
  expect(selectsOf(next.message!.json)).toEqual([])
})

it('works after a restart, and is its owner’s alone', async () => {
  const started = await fake.slash('jar start', LEMON)
  const id = selectsOf(started.message!.json)[0]!.custom_id!
  await restart()
  await fake.choose(started.message, id, ['Asia/Tokyo'])
  expect(await zoneKept()).toBe('Asia/Tokyo')
  expect(readZoneChoice(id, ['Europe/Rome'], fake.newUser('finch').id)).toBeNull()
  expect(readZoneChoice(id, [], fake.user.id)).toBeNull()
  expect(readZoneChoice('other', ['Europe/Rome'], fake.user.id)).toBeNull()
})

it('shows no such choice where nothing was assumed', async () => {
  const mixed = await fake.slash('mix', { spirit: '1 l', strength: '95%', water: '750 ml' })
  expect(selectsOf(mixed.message!.json)).toEqual([])
})

it('offers zones that exist, each once, those of the language first', () => {
  const locales = ['en-GB', 'en-US', 'it', 'de', 'fr', 'es-419', 'pt-BR', 'ru', 'uk', 'zh-TW', 'xx']
  for (const locale of locales) {
    const zones = likelyZones(locale)
    expect(zones.length).toBeLessThanOrEqual(MOST_ZONES)
    expect(new Set(zones).size).toBe(zones.length)
    for (const zone of zones) expect(parseZone(zone)).toBeTruthy()
  }
  expect(likelyZones('it')[0]).toBe('Europe/Rome')
  expect(likelyZones('en-US')[0]).toBe('America/New_York')
})
