import { describe, expect, it } from 'vitest'
import { en } from '../../../bot/text/en/index.ts'
import { buttonsOf, textOf } from './fake/shown-text.ts'
import { edited, here, labels, nudge, onNudgeStage } from './nudge-stage.ts'
import { lemonJar, MINUTE_MS, messagesIn, record, wait } from './reminding.ts'
import { bot, fake, restart } from './stage.ts'

const LATER = 'Later today'
const TOMORROW = 'Tomorrow'
const SHOW = 'Show jar'
const REMINDERS = 'Reminders…'

onNudgeStage()

const kindsOf = async (jar = 0) => (await here.person()).jars[jar]!.entries.map(({ kind }) => kind)

describe('Done', () => {
  it('records it, tells its owner, and says on the nudge who did and when', async () => {
    const message = await nudge()
    bot.pass(90_000)
    const answer = await fake.press(message, 'Shaken')
    expect(answer).toMatchObject({ isPrivate: true })
    expect(answer.text).toContain('Lemon is shaken.')
    await edited(message)
    expect(await kindsOf()).toEqual(['started', 'shaken'])
    const seconds = Math.floor((Date.UTC(2026, 10, 25, 9) + 90_000) / 1000)
    expect(textOf(message.json)).toContain(`✓ Lemon is shaken. <@${fake.user.id}>, <t:${seconds}:f>`)
    expect(textOf(message.json)).toContain('Shake lemon.')
    expect(labels(message)).toEqual([SHOW, REMINDERS])
    const change = fake.requests('edit')[0]!.body as { readonly allowed_mentions: unknown }
    expect(change.allowed_mentions).toEqual({ parse: [] })
  })

  it('pressed twice at once records once, and says so once', async () => {
    const message = await nudge()
    const both = await Promise.all([fake.press(message, 'Shaken'), fake.press(message, 'Shaken')])
    await edited(message)
    expect(await kindsOf()).toEqual(['started', 'shaken'])
    expect(both.filter(({ text }) => text.includes('Lemon is shaken.'))).toHaveLength(1)
    expect(textOf(message.json).match(/✓/g)).toHaveLength(1)
  })

  it('pressed again where the message was not yet drawn anew says it is done already', async () => {
    const message = await nudge()
    const shaken = buttonsOf(message.json)[0]!.customId!
    await fake.press(message, 'Shaken')
    await edited(message)
    const pressAgain = () => {
      bot.pass(10_000)
      return fake.press(message, { customId: shaken })
    }
    let again = await pressAgain()
    // The edit is seen here a moment before the bot knows of it; until then the first press is still being answered.
    while (again.text.startsWith('You pressed that twice')) again = await pressAgain()
    expect(again.text).toContain('Nothing changed')
    expect(await kindsOf()).toEqual(['started', 'shaken'])
    expect([message.edits, textOf(message.json).match(/✓/g)!.length]).toEqual([1, 1])
  })

  it('leaves what is still open', async () => {
    const ginger = lemonJar(fake, 'ginger', { strainFrom: '2026-11-25', strainBy: '2026-11-29' })
    const message = await nudge([lemonJar(fake), ginger])
    expect(labels(message)).toEqual(['ginger strained', 'All shaken', LATER, TOMORROW, 'Show jars', 'Reminders…'])
    await fake.press(message, 'All shaken')
    await edited(message)
    expect(labels(message)).toEqual(['ginger strained', LATER, TOMORROW, 'Show jars', 'Reminders…'])
    await fake.submit(await fake.press(message, 'ginger strained'), {})
    await edited(message, 2)
    expect(labels(message)).toEqual(['Show jars', 'Reminders…'])
    expect(textOf(message.json).match(/✓/g)).toHaveLength(2)
  })

  it('pressed together with another of its buttons loses neither', async () => {
    const message = await nudge()
    await Promise.all([fake.press(message, 'Shaken'), fake.press(message, LATER)])
    await wait(
      () => fake.requests('edit').filter(({ status }) => status === 200).length === 2 || labels(message).length === 2,
    )
    expect(labels(message)).toEqual([SHOW, REMINDERS])
    expect(await kindsOf()).toHaveLength(3)
  })

  it('works after a restart, a day later, and where the jar was renamed meanwhile', async () => {
    const message = await nudge()
    await record(here.store, fake, 'lemon', { kind: 'renamed', name: 'sun' })
    await restart()
    bot.pass(24 * 60 * MINUTE_MS)
    expect((await fake.press(message, 'Shaken')).text).toContain('Sun is shaken.')
    await edited(message)
  })

  it('on a jar that has moved on says why not, and leaves the nudge', async () => {
    const message = await nudge()
    await record(here.store, fake, 'lemon', { kind: 'discarded' })
    const answer = await fake.press(message, 'Shaken')
    expect(answer.isPrivate).toBe(true)
    expect(answer.text).toMatch(/lemon/)
    expect(await kindsOf()).toEqual(['started', 'discarded'])
    expect(message.edits).toBe(0)
  })

  it('is its owner’s alone', async () => {
    const message = await nudge()
    const other = fake.newUser('finch')
    fake.join(fake.guild, other)
    const answer = await fake.press(message, 'Shaken', { user: other })
    expect(answer).toMatchObject({ isPrivate: true, text: en.calls.notYours() })
    expect([await kindsOf(), message.edits]).toEqual([['started'], 0])
  })

  it('is recorded and told also where the nudge cannot be edited any more', async () => {
    for (const outage of [{ status: 500 }, { status: 403, code: 50001 }, { closes: true }]) {
      const message = await nudge()
      const back = fake.outage('edit', outage, { times: 5 })
      expect((await fake.press(message, 'Shaken')).text).toContain('Lemon is shaken.')
      await wait(() => fake.requests('edit').some(({ status }) => status !== 200))
      back()
      fake.channel.messages.clear()
      fake.clock.advance(10 * MINUTE_MS)
      bot.pass(10 * MINUTE_MS)
    }
  })

  it('takes the other answers to the same question away', async () => {
    const message = await nudge([lemonJar(fake, 'lemon', { tasteFrom: '2026-11-25', strainBy: '2026-12-25' })])
    const [shaken, ...rest] = labels(message)
    const verdicts = rest.filter((label) => ![LATER, TOMORROW, SHOW, REMINDERS].includes(label))
    expect([shaken, verdicts.length]).toEqual(['Shaken', 2])
    await fake.press(message, verdicts[1]!)
    await edited(message)
    expect(await kindsOf()).toEqual(['started', 'tasted'])
    expect(labels(message)).toEqual(['Shaken', LATER, TOMORROW, SHOW, REMINDERS])
  })
})

describe('putting off', () => {
  it('to later today comes again that evening, once, with a nudge of its own', async () => {
    const message = await nudge()
    const answer = await fake.press(message, LATER)
    expect(answer.text).toMatch(/about lemon again from <t:\d+:f>/)
    await edited(message)
    expect(labels(message)).toEqual(['Shaken', SHOW, REMINDERS])
    await here.later(9 * 60 - 1)
    expect(messagesIn(fake.channel)).toHaveLength(1)
    await here.later(1)
    expect(messagesIn(fake.channel)).toHaveLength(2)
    for (let minutes = 0; minutes < 10; minutes++) await here.later(60)
    expect(messagesIn(fake.channel)).toHaveLength(2)
    await here.later(5 * 60)
    expect(messagesIn(fake.channel)).toHaveLength(3)
  })

  it('to tomorrow comes the next morning', async () => {
    const message = await nudge()
    await fake.press(message, TOMORROW)
    await edited(message)
    await here.later(23 * 60)
    expect(messagesIn(fake.channel)).toHaveLength(1)
    await here.later(60)
    expect(messagesIn(fake.channel)).toHaveLength(2)
  })
})

it('shows the jar to whoever owns it, and leaves the nudge as it is', async () => {
  const message = await nudge()
  const answer = await fake.press(message, SHOW)
  expect(answer).toMatchObject({ isPrivate: true })
  expect(answer.text).toContain('lemon')
  expect([message.edits, labels(message).length]).toEqual([0, 5])
})
