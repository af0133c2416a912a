import { expect, it } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import { MADE } from '../said.ts'
import { type Setting, until } from './connected.ts'
import { shardOf } from './fake/shard-of.ts'
import { anotherFake, fake, onFake, readied } from './stage.ts'

const { connection } = en

onFake()

const once = async (setting: Setting = {}): Promise<void> => {
  expect(await (await readied(setting)).end()).toBe(0)
}

it('are taken away where the commands are registered everywhere, and nobody has any twice', async () => {
  await once({ guildId: fake.guild.id })
  expect(fake.commands(fake.guild.id).length).toBeGreaterThan(10)
  const bot = await readied()
  await until(() => bot.logged.includes(connection.takenAway({ guildId: fake.guild.id })))
  expect(fake.commands(fake.guild.id)).toEqual([])
  expect(fake.commands().length).toBeGreaterThan(10)
  await bot.end()
  await once()
  expect(fake.requests('setGuildCommands')).toHaveLength(2)
})

it('are taken away where they are registered in another server now, and stay in that one', async () => {
  const other = fake.newGuild('another')
  await once({ guildId: other.id })
  const bot = await readied({ guildId: fake.guild.id })
  await until(() => bot.logged.includes(connection.takenAway({ guildId: other.id })))
  expect(fake.commands(other.id)).toEqual([])
  expect(fake.commands(fake.guild.id).length).toBeGreaterThan(10)
  await bot.end()
})

it('stay where the commands could not be registered elsewhere', async () => {
  await once({ guildId: fake.guild.id })
  fake.outage('globalCommands', { status: 403, code: 50001 })
  await once()
  expect(fake.commands(fake.guild.id).length).toBeGreaterThan(10)
  expect(fake.requests('guildCommands').slice(1)).toEqual([])
})

it('are looked for in the next server where one was invited without commands, but not while Discord is ill', async () => {
  const other = fake.newGuild('another')
  await once({ guildId: other.id })
  fake.outage('guildCommands', { status: 403, code: 50001 })
  const bot = await readied()
  await until(() => fake.commands(other.id).length === 0)
  expect(bot.logged).not.toContain(connection.notLookedAt())
  await bot.end()
  fake.outage('guildCommands', { status: 500 }, { times: 9 })
  const ill = await readied()
  await until(() => ill.logged.includes(connection.notLookedAt()))
  expect(ill.logged.join('')).not.toMatch(/\n/)
  expect((await fake.slash('mix', { spirit: '1 l', strength: '95%', water: '1 l' })).text).toMatch(MADE)
  await ill.end()
})

it('are found by each connection once it is there', async () => {
  await anotherFake({ shards: 2 })
  while (shardOf(fake.guild.id, 2) === shardOf(fake.guilds().at(-1)!.id, 2)) {
    fake.clock.advance(1)
    fake.newGuild(`the ${fake.guilds().length}th`)
  }
  const onSecond = fake.guilds().find(({ id }) => shardOf(id, 2) === 1)!
  await once({ guildId: onSecond.id })
  fake.gateway.hold(1)
  const bot = await readied()
  await until(() => fake.requests('guildCommands').length > 1)
  fake.gateway.free()
  await until(() => fake.commands(onSecond.id).length === 0)
  await bot.end()
})
