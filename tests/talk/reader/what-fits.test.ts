import { describe, expect, it } from 'vitest'
import { hear } from '../../../bot/chat/hear/hear.ts'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { en } from '../../../bot/text/en/index.ts'
import { newAsker } from '../../bot/asker.ts'
import { commands } from '../../bot/test-desk.ts'
import { NOW_MS, talkerFor } from './told.ts'

const OFF_TOPIC = ['who won the match', 'what is the capital of France', 'will it rain on Sunday']

const START = '/jar start lemon of:10 lemons spirit:1 l 95% when:12 days ago'
const SAID = en.help.said().map(({ said }) => said)

describe('what is offered where a sentence is not understood', () => {
  it.each(OFF_TOPIC)('%s: anything, where nobody has begun', async (text) => {
    const one = await talkerFor({ after: null })
    expect((await one.say(text)).choices).toEqual(SAID)
  })

  it.each(OFF_TOPIC)('%s: the plan that lies open, until it is begun', async (text) => {
    const one = await talkerFor({ after: null })
    await one.say('10 lemons and a litre of 95%')
    const { choices } = await one.say(text)
    expect(choices[0]).toBe('/jar start of:10 lemons spirit:1 litre 95%')
    expect(choices).toHaveLength(3)
    await one.say('start it')
    expect((await one.say(text)).choices[0]).toBe('/jar show lemon')
  })

  it('what a jar asks for today', async () => {
    const one = await talkerFor({ after: null })
    await one.say(START)
    const { choices } = await one.say('who won the match')
    expect(choices[0]).toBe('/jar shake lemon')
    expect(choices).toContain('what’s on?')
  })

  it('and every one of them runs', async () => {
    const one = await talkerFor({ after: null })
    await one.say(START)
    await one.say('10 oranges and a litre of 95%')
    const { choices } = await one.say('who won the match')
    for (const line of choices) expect((await one.say(line)).code).toBeNull()
  })

  it('nothing of somebody’s jars where others read along', async () => {
    const one = await talkerFor({ after: null })
    await one.say(START)
    const place = { kind: 'channel', channelId: '1', guildId: null } as never
    const dispatch = { ...newAsker(), store: one.store, language: en, commands, nowMs: NOW_MS, log: () => {} }
    const { choices } = await hear('who won the match', { ...dispatch, talk: newTalkMemory(), place })
    expect(choices).toEqual(SAID)
  })
})
