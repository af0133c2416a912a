import { DiscordAPIError, REST, Routes } from 'discord.js'
import nock from 'nock'
import { expect, it } from 'vitest'
import { fetchRequest } from './fake/fetch-request.ts'
import { withoutNetwork } from './no-network.ts'

withoutNetwork()

const rest = (): REST => new REST({ makeRequest: fetchRequest, timeout: 400, retries: 1, offset: 1 }).setToken('token')
const path = Routes.channelMessages('123456789012345678')

it('reaches nock and not the network', async () => {
  nock('https://discord.com')
    .post(`/api/v10${path}`, { content: 'x' })
    .matchHeader('authorization', 'Bot token')
    .reply(200, { id: '1' })
  expect(await rest().post(path, { body: { content: 'x' } })).toEqual({ id: '1' })
})

it('tries a 429 and a 500 again, and not a 403', async () => {
  const scope = nock('https://discord.com')
  scope.post(`/api/v10${path}`).reply(429, { retry_after: 0.02 }, { 'retry-after': '0.02' })
  scope.post(`/api/v10${path}`).reply(500)
  scope.post(`/api/v10${path}`).reply(403, { code: 50013, message: 'Missing Permissions' })
  await expect(rest().post(path, { body: {} })).rejects.toBeInstanceOf(DiscordAPIError)
  expect(nock.isDone()).toBe(true)
})

it('lets nothing leave the machine that nock does not know', async () => {
  const refused = await rest()
    .get('/gateway/bot')
    .catch((error: unknown) => error)
  expect(refused).toMatchObject({ code: 'ENETUNREACH' })
})
