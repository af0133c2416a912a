import { REST, Routes } from 'discord.js'
import { RatelimitedResponseSchema } from 'discord-api-spec/zod'
import { expect, it } from 'vitest'
import { checkSchema } from './fake/check-schema.ts'
import { startFake } from './fake/fake-discord.ts'
import { showProblem } from './fake/problem.ts'

const nudge = { content: 'Shake the lemon jar', allowed_mentions: { parse: [] } }

it('lets a patient client through its buckets', async () => {
  const strict = await startFake({ rateLimits: { perBucket: 2, bucketMs: 100 } })
  const patient = new REST({ api: strict.api, offset: 1 }).setToken(strict.token)
  const path = Routes.channelMessages(strict.channel.id)
  await Promise.all([1, 2, 3, 4, 5].map(() => patient.post(path, { body: nudge })))
  expect(strict.channel.messages.size).toBe(5)
  expect(strict.rateLimited()).toBe(0)
  await strict.stop()
})

it('refuses what comes too fast for a channel, and for the whole bot', async () => {
  const strict = await startFake({ rateLimits: { perBot: 7, botMs: 60_000 } })
  const post = async (channelId: string): Promise<Response> =>
    fetch(`${strict.api}/v10${Routes.channelMessages(channelId)}`, {
      method: 'POST',
      headers: { authorization: `Bot ${strict.token}`, 'content-type': 'application/json' },
      body: JSON.stringify(nudge),
    })
  const refusals = async (channelId: string, count: number): Promise<readonly Response[]> => {
    const answers = await Promise.all(Array.from({ length: count }, () => post(channelId)))
    return answers.filter(({ status }) => status === 429)
  }
  const [ofChannel, ...others] = await refusals(strict.channel.id, 6)
  expect(others).toEqual([])
  expect(Number(ofChannel!.headers.get('retry-after'))).toBeGreaterThan(0)
  expect(ofChannel!.headers.get('x-ratelimit-scope')).toBe('user')
  expect(checkSchema(RatelimitedResponseSchema, await ofChannel!.json()).map(showProblem)).toEqual([])
  const other = strict.newChannel(strict.guild, 'other')
  const [ofBot] = await refusals(other.id, 4)
  expect(await ofBot!.json()).toMatchObject({ global: true })
  await strict.stop()
  expect(strict.faults()).toEqual([])
})
