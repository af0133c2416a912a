import { REST } from 'discord.js'
import nock from 'nock'
import { expect, it } from 'vitest'
import { commands as listed } from '../../../bot/commands/index.ts'
import { register, registerCommands, registerIfChanged } from '../../../bot/discord/connect/register.ts'
import { type RegisteredCommand, registrationOf } from '../../../bot/discord/connect/registration.ts'
import { en } from '../../../bot/text/en/index.ts'
import { checkPayload } from './fake/check-payload.ts'
import { startFake } from './fake/fake-discord.ts'
import { fetchRequest } from './fake/fetch-request.ts'
import { withoutNetwork } from './no-network.ts'

const HOST = 'https://discord.com'
const APPLICATION = '123456789012345678'
const GUILD = '223456789012345678'
const GLOBAL = `/applications/${APPLICATION}/commands`
const IN_GUILD = `/applications/${APPLICATION}/guilds/${GUILD}/commands`
const TOKEN = 'MTIz.not-a-token.of-anybody'
withoutNetwork()

const sending = { makeRequest: fetchRequest, timeout: 400, retries: 0, offset: 1 }
const sent = { api: null, language: en, rest: sending }
const rest = (): REST => new REST(sending).setToken(TOKEN)
const commands = registrationOf(listed, en)
const target = { applicationId: APPLICATION, guildId: null, commands }

/** As Discord gives back what was registered: with ids, and with what it takes for granted written out. */
const asDiscordHas = (all: readonly RegisteredCommand[]): unknown[] =>
  all.map((command, index) => ({
    ...command,
    id: `32345678901234567${index % 10}`,
    application_id: APPLICATION,
    version: '423456789012345678',
    type: 1,
    default_member_permissions: null,
    dm_permission: true,
    nsfw: false,
    name_localizations: null,
    description_localizations: null,
    contexts: [2, 1, 0],
    options: (command.options ?? []).map((option) => {
      const { required, ...rest } = option as { readonly required?: boolean }
      return { ...rest, ...(required && { required }), name_localizations: null, description_localizations: null }
    }),
  }))

const known = (body: unknown): nock.Interceptor | nock.Scope =>
  nock(HOST)
    .get(`/api/v10${GLOBAL}`)
    .query({ with_localizations: 'true' })
    .reply(200, body as nock.Body)

/** Takes a list, checks it and remembers it. */
const takes = (path: string): unknown[] => {
  const taken: unknown[] = []
  nock(HOST)
    .put(`/api/v10${path}`, (body) => {
      expect(checkPayload('PUT', path, body)).toEqual([])
      taken.push(body)
      return true
    })
    .matchHeader('authorization', `Bot ${TOKEN}`)
    .reply(200, [])
  return taken
}

it('registers everywhere, or in one server', async () => {
  const everywhere = takes(GLOBAL)
  await register(rest(), target)
  expect(everywhere).toEqual([commands])
  const inGuild = takes(IN_GUILD)
  await register(rest(), { ...target, guildId: GUILD })
  const [body] = inGuild as [RegisteredCommand[]]
  expect(body.map(({ name }) => name)).toEqual(commands.map(({ name }) => name))
  // Only for commands that are registered everywhere, by Discord's documentation ("Application Command Object").
  expect(JSON.stringify(body)).not.toMatch(/integration_types|contexts/)
})

it('registers at a start only what has changed', async () => {
  known([...asDiscordHas(commands)].reverse())
  expect((await registerIfChanged(rest(), target)).isChanged).toBe(false)
  expect(nock.isDone()).toBe(true)

  known(asDiscordHas(commands).slice(1))
  const taken = takes(GLOBAL)
  expect((await registerIfChanged(rest(), target)).isChanged).toBe(true)
  expect(taken).toHaveLength(1)
})

const first = commands[0]!
const changed: readonly (readonly [string, unknown])[] = [
  ['another description', { description: 'Something else' }],
  ['an option less', { options: first.options!.slice(1) }],
  ['another limit', { options: [{ ...first.options![0]!, max_length: 7 }, ...first.options!.slice(1)] }],
  ['no completion', { options: [{ ...first.options![0]!, autocomplete: false }, ...first.options!.slice(1)] }],
  ['another place', { contexts: [0] }],
  ['another language', { description_localizations: { it: 'Pianifica' } }],
  ['a right that it asks for', { default_member_permissions: '8' }],
]

it.each(changed)('sees %s', async (_, change) => {
  const all = asDiscordHas(commands)
  known([{ ...(all[0] as object), ...(change as object) }, ...all.slice(1)])
  const taken = takes(GLOBAL)
  expect((await registerIfChanged(rest(), target)).isChanged).toBe(true)
  expect(taken).toEqual([commands])
})

it('sees nothing new in what the fake Discord was told', async () => {
  nock.enableNetConnect('127.0.0.1')
  const fake = await startFake()
  try {
    const there = new REST({ api: fake.api }).setToken(fake.token)
    for (const guildId of [null, fake.guild.id]) {
      const own = { applicationId: fake.applicationId, guildId, commands }
      expect((await registerIfChanged(there, own)).isChanged).toBe(true)
      expect((await registerIfChanged(there, own)).isChanged).toBe(false)
      expect(fake.commands(guildId ?? '').map(({ name }) => name)).toEqual(commands.map(({ name }) => name))
    }
    expect(fake.faults()).toEqual([])
  } finally {
    await fake.stop()
    nock.disableNetConnect()
  }
})

const run = async (token = TOKEN, guildId: string | null = null) => {
  const lines: string[] = []
  const code = await registerCommands({ token, guildId, log: (text) => lines.push(text), ...sent })
  expect(lines.join('\n')).not.toContain(token.trim())
  return { code, lines }
}

const isThis = () => nock(HOST).get('/api/v10/applications/@me').reply(200, { id: APPLICATION })

it('says in one sentence that it has registered', async () => {
  isThis()
  takes(GLOBAL)
  expect(await run()).toEqual({
    code: 0,
    lines: [en.registration.registered({ count: commands.length, guildId: null })],
  })
  isThis()
  takes(IN_GUILD)
  expect((await run(TOKEN, GUILD)).lines[0]).toContain(`in the server ${GUILD}`)
})

const { faults } = en.registration

it('says what is wrong with the token, and never the token', async () => {
  nock(HOST).get('/api/v10/applications/@me').reply(401, { code: 0, message: '401: Unauthorized' })
  expect(await run()).toEqual({ code: 1, lines: [faults.wrong_token()] })
  for (const token of ['', 'two words', 'of two\nlines', 'naïve']) {
    const lines: string[] = []
    expect(await registerCommands({ token, guildId: null, log: (text) => lines.push(text), ...sent })).toBe(1)
    expect(lines).toEqual([faults.wrong_token()])
  }
})

it('says that the network is down, a server is not ours, or Discord is ill', async () => {
  expect(await run()).toEqual({ code: 1, lines: [faults.no_network()] })

  nock(HOST).get('/api/v10/applications/@me').delay(2000).reply(200, { id: APPLICATION })
  expect(await run()).toEqual({ code: 1, lines: [faults.no_network()] })
  nock.abortPendingRequests()
  nock.cleanAll()

  isThis()
  nock(HOST).put(`/api/v10${IN_GUILD}`).reply(403, { code: 50001, message: 'Missing Access' })
  expect(await run(TOKEN, GUILD)).toEqual({ code: 1, lines: [faults.no_rights({ guildId: GUILD })] })

  isThis()
  nock(HOST).put(`/api/v10${GLOBAL}`).reply(502)
  expect(await run()).toEqual({ code: 1, lines: [faults.server_fault()] })
})

it('shows where Discord found fault with the list', async () => {
  isThis()
  const errors = { 0: { description: { _errors: [{ code: 'BASE_TYPE_BAD_LENGTH', message: 'Too long' }] } } }
  nock(HOST).put(`/api/v10${GLOBAL}`).reply(400, { code: 50035, message: 'Invalid Form Body', errors })
  const { code, lines } = await run()
  expect(code).toBe(1)
  expect(lines[0]).toContain('BASE_TYPE_BAD_LENGTH')
  expect(lines[1]).toBe(faults.not_taken())
})

it('lets nothing leave the machine that nock does not know', async () => {
  const refused = await register(rest(), target).catch((error: unknown) => error)
  expect(refused).toMatchObject({ code: 'ENETUNREACH' })
})
