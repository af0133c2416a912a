import { expect, it } from 'vitest'
import { encodeCustomId } from '../../../bot/discord/buttons/custom-id.ts'
import { findNudge } from '../../../bot/discord/nudges/find-nudge.ts'

const BOT = '1575073559347200002'
const OWNER = '1575073559347200001'
const MADE_MS = Date.UTC(2026, 11, 2, 8)
const SOUGHT = { channelId: '1575073559347200003', nudgeId: 'n7', madeMs: MADE_MS, isPrivate: true }

const buttonOf = (nudgeId: string | null) => ({
  type: 2,
  style: 1,
  label: 'Shaken',
  custom_id: encodeCustomId({ owner: OWNER, line: '/jar shake lemon', nudgeId }),
})

const message = (by: string, ...buttons: readonly object[]) => ({
  id: '1575073559347200009',
  author: { id: by },
  timestamp: new Date(MADE_MS).toISOString(),
  components: [{ type: 1, components: [...buttons, { type: 2, style: 5, label: 'Open', url: 'https://example.org' }] }],
})

const foundAmong = (...messages: readonly object[]) => findNudge({ get: async () => messages }, BOT, SOUGHT)

it('is found by its number, which one of its buttons has', async () => {
  expect(await foundAmong(message(OWNER), message(BOT, buttonOf('n6')), message(BOT, buttonOf('n7')))).toBe('there')
})

it.each([
  ['another one', message(BOT, buttonOf('n6'))],
  ['an answer with a button', message(BOT, buttonOf(null))],
  ['a message with a link', message(BOT)],
  ['the same button of somebody else', message(OWNER, buttonOf('n7'))],
])('is not taken for %s', async (_, other) => {
  expect(await foundAmong(other)).toBe('absent')
})
