import { describe, expect, it } from 'vitest'
import { call } from '../../../bot/calls/call.ts'
import type { Reply } from '../../../bot/chat/reply.ts'
import { help } from '../../../bot/chat/run/help.ts'
import { HELP } from '../../../bot/chat/run/help-page.ts'
import { sentenceMessage, toMessages } from '../../../bot/discord/show/to-messages.ts'
import { en } from '../../../bot/text/en/index.ts'
import { deskWith, jarOf, NOW_MS, startedAs } from '../commands-jar-views/jars.ts'
import { commands, testDesk } from '../test-desk.ts'
import { HOSTILE } from './hostile-texts.ts'
import { meanings, shownOf } from './markdown.ts'
import {
  expectValid,
  hasRows,
  labelsOf,
  messagesOf,
  messagesOfReply,
  OWNER,
  rendering,
  speech,
  textsOf,
} from './rendering.ts'

const examples = Object.entries(en.commands).flatMap(([path, { examples }]) =>
  examples.map((line) => [path, line] as const),
)

const planned = { strainFrom: '2026-12-01', strainBy: '2026-12-10' }
const lemonJar = jarOf('k7f2a', [{ ...startedAs('lemon', {}, planned), on: '2026-11-10' }])
const walnutJar = jarOf('b2c3d', [{ ...startedAs('walnut'), on: '2026-09-10' }])

it.each(examples)('/%s: %s', async (_path, line) => {
  for (const jars of [[], [lemonJar, walnutJar]]) {
    const desk = await deskWith({ jars })
    const outcome = await desk.run(line)
    const messages = await messagesOf(outcome)
    expectValid(messages)
    expectValid(await messagesOf(outcome, { isPrivate: false, pings: true }))
    expect(messages.flatMap(textsOf).join()).not.toMatch(/undefined|null|NaN|\[object|[\ufdd0\ufdd1]/)
    expect(messages).toHaveLength(1)
  }
})

const mix = async (): Promise<Reply> => {
  const outcome = await testDesk().run('/mix spirit:1 l strength:95% water:750 ml sugar:500 g')
  if (!outcome.ok) throw new TypeError('the example fails')
  return outcome.reply
}

describe('a reply', () => {
  it('gives the answer first, then cautions, the table and the rest', async () => {
    const desk = testDesk({ nowMs: NOW_MS })
    const [message] = await messagesOf(await desk.run('/plan of:10 lemons spirit:1 l strength:95%'))
    const texts = textsOf(message!)
    expect(texts[0]).toMatch(/^\*\*Buy\s10\sunwaxed\slemons,\s1\sl\sof\s95\s%\sspirit.*\*\*$/m)
    expect(texts[1]).toMatch(/^\*\*⚠ .*flame/)
    expect(texts[1]?.split('\n').every((line) => /^\*\*⚠ .*\*\*$/.test(line))).toBe(true)
    expect(texts[2]?.split('\n').every((line) => /^\*\*[^*]+:\*\* ./.test(line))).toBe(true)
    expect(labelsOf(message!).at(-1)).toBe('Show everybody')
  })

  it('shows days by the clocks of whoever reads, as noon of its owner', async () => {
    const desk = testDesk({ nowMs: NOW_MS })
    const [message] = await messagesOf(await desk.run('/plan of:10 lemons spirit:1 l strength:95%'))
    const noon = Date.parse('2026-12-04T11:00:00Z') / 1000
    expect(textsOf(message!).join('\n')).toContain(`<t:${noon}:D> to <t:`)
    const said = await desk.textOf('/plan of:10 lemons spirit:1 l strength:95%')
    expect(said).toMatch(/\b4 (?:to \d+ )?Dec/)
    expect(textsOf(message!).join('\n')).not.toContain('December 2026')
    expect(textsOf(message!).join('\n')).toMatch(/Ready <t:\d+:D>\./)
    expect(said).toMatch(/Ready in (?:early|mid|late)?[- ]?\w+\./)
  })

  it('is private or public, and pings only its owner and only where asked', async () => {
    const reply = await mix()
    const [own] = await messagesOfReply(reply)
    expect(own).toMatchObject({ flags: (1 << 15) | (1 << 6), allowed_mentions: { parse: [] } })
    const [nudge] = await messagesOfReply(reply, { isPrivate: false, pings: true })
    expect(nudge).toMatchObject({ flags: 1 << 15, allowed_mentions: { parse: [], users: [OWNER] } })
    expect(textsOf(nudge!)[0]).toBe(`<@${OWNER}>`)
    expect(labelsOf(nudge!)).not.toContain('Show everybody')
  })

  it('that is nobody else’s business has no button that shows it', async () => {
    const reply: Reply = { ...(await mix()), visibility: 'confidential' }
    const [own] = await messagesOfReply(reply)
    expectValid([own!])
    expect(labelsOf(own!)).not.toContain('Show everybody')
  })

  it('puts at most 23 actions on buttons, each once, and the others in lines to type', async () => {
    const label = { group: 'actions', key: 'nudge_done', values: { duty: 'shake', name: 'lemon '.repeat(40) } } as const
    const actions = Array.from({ length: 40 }, (_, index) => ({
      label,
      call: call('jar shake', { jar: `#a${index % 30}` }),
    }))
    const reply = { ...(await mix()), actions } as Reply
    const messages = await messagesOfReply(reply)
    expectValid(messages)
    expect(labelsOf(messages.at(-1)!)).toHaveLength(24)
    expect(labelsOf(messages.at(-1)!).every((each) => each.length <= 80)).toBe(true)
    expect(labelsOf(messages.at(-1)!)[0]).toMatch(/lemon…$/)
    const typed = textsOf(messages.at(-1)!)
      .join('\n')
      .match(/\/jar shake jar:#a\d+/g)
    expect(new Set(typed)).toEqual(
      new Set(['23', '24', '25', '26', '27', '28', '29'].map((n) => `/jar shake jar:#a${n}`)),
    )
  })

  it('writes out the lines that have no button', async () => {
    const desk = testDesk({ nowMs: NOW_MS })
    const outcome = await desk.run('/plan of:10 lemons spirit:1 l strength:95%')
    expect(outcome.ok && outcome.reply.actions.length).toBeGreaterThan(0)
    const messages = await messagesOf(outcome, { ids: new Map() })
    expectValid(messages)
    expect(shownOf(textsOf(messages[0]!).join('\n'))).toMatch(/Next you can type:\n.*: \/jar start /)
  })
})

describe('other answers', () => {
  it('says what was wrong, to the one who asked', async () => {
    const messages = await messagesOf(await testDesk().run('/mix spirit:**1 cow** strength:95%'))
    expectValid(messages)
    expect(messages).toHaveLength(1)
    expect(shownOf(textsOf(messages[0]!)[0]!)).toContain('**1 cow**')
    expect(meanings(textsOf(messages[0]!)[0]!)).toEqual([])
    expect(hasRows(messages[0]!)).toBe(false)
  })

  it('helps, with all commands and with each', () => {
    for (const line of ['/help', '/help all', ...Object.keys(en.commands).map((path) => `/help ${path}`)]) {
      const page = help(line, commands, { commands: en.commands, about: en.help.about })!
      expect(page).toMatchObject({ ok: true, path: HELP })
      const messages = toMessages(page, rendering(), speech)
      expectValid(messages)
      if (line !== '/help all') continue
      const all = shownOf(messages.flatMap(textsOf).join('\n'))
      for (const path of Object.keys(en.commands)) expect(all).toContain(`**/${path}** `)
    }
  })

  it('says one sentence', () => {
    const message = sentenceMessage(en.discord.tooOld({ path: 'jar start' }), rendering(), speech)
    expectValid([message])
    expect(textsOf(message)).toEqual([
      'I no longer know what this button was filled in with. Nothing was changed. Type /jar start again.',
    ])
  })
})

describe('a jar with a hostile name or note', () => {
  const named = HOSTILE.map((text) => text.trim().slice(0, 40).trim())

  it.each(HOSTILE)('%s', async (note) => {
    const name = note.trim().slice(0, 40).trim()
    const jar = jarOf('k7f2a', [
      { ...startedAs(name), on: '2026-11-10' },
      { kind: 'tasted', rating: 3, note, on: '2026-11-12' },
    ])
    const desk = await deskWith({ jars: [jar] })
    for (const line of ['/jar list', '/jar show #k7f2a', '/notebook', '/jar shake #k7f2a', '/jar rename #k7f2a to:x']) {
      const outcome = await desk.run(line)
      const messages = await messagesOf(outcome, { isPrivate: false })
      expectValid(messages)
      expect(outcome.ok).toBe(true)
      for (const text of messages.flatMap(textsOf).flatMap((all) => all.split('\n'))) {
        const bare = text.replace(/^-# /, '').replace(/(?<!\\)(\\\\)*\*\*/g, '$1')
        expect(meanings(bare)).toEqual([])
      }
      expect(shownOf(messages.flatMap(textsOf).join('\n'))).toContain(name.replace(/\s+/g, ' '))
    }
  })

  it('is one of many in a list', async () => {
    const jars = Array.from({ length: 100 }, (_, index) =>
      jarOf(`a${String(index).padStart(4, '0')}`, [
        { ...startedAs(`${named[index % named.length]}`.slice(0, 36) + index, {}, planned), on: '2026-11-10' },
      ]),
    )
    const desk = await deskWith({ jars })
    const messages = await messagesOf(await desk.run('/jar list'), { shown: 'whole' })
    expectValid(messages)
    expect(messages.length).toBeGreaterThan(1)
    expect(messages.length).toBeLessThanOrEqual(5)
    const first = await messagesOf(await desk.run('/jar list'), { shown: 'whole', mostMessages: 1 })
    expectValid(first)
    expect(textsOf(first[0]!).at(-1)).toMatch(
      /^\d+ more lines don’t fit here\. For one jar: \/jar show and its name\.$/,
    )
  })
})
