import { describe, expect, it } from 'vitest'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { newAsker } from '../../bot/asker.ts'
import { jarDesk } from '../../bot/commands-jar/desk.ts'

async function sloeDesk() {
  const desk = jarDesk('2026-10-01', { ...newAsker(), talk: newTalkMemory() })
  await desk.ask('/jar start sloe of:500 g sloes spirit:70 cl gin 40%')
  return desk
}

const readAs = (text: string): string => text.split('\n')[0]!

describe('a small piece that went into a jar', () => {
  it.each([
    ['put a strip of orange peel in the sloe', '1 strip of orange peel'],
    ['popped a couple of thin slices of ginger in the sloe jar', '2 thin slices of ginger'],
    ['added 3 strips of lemon zest to the sloe', '3 strips of lemon zest'],
    ['added a sprig of rosemary', '1 sprig of rosemary'],
    ['ho messo una striscia di scorza di limone nello sloe', '1 striscia di scorza di limone'],
  ])('%s', async (said, of) => {
    expect(readAs(await (await sloeDesk()).textOf(said))).toBe(`read as /jar add sloe of:${of}`)
  })

  it.each([
    ['added a bit of ginger', '12 g', '12 g ginger'],
    ['added a handful of basil to it', '25 grams', '25 grams basil'],
    ['put a small chunk of turmeric in the sloe', 'about 8g', '8 g turmeric'],
    ['added a knob of ginger', '20 g', '20 g ginger'],
  ])('%s is asked for: %s', async (said, answer, of) => {
    const desk = await sloeDesk()
    expect(await desk.textOf(said)).toMatch(/weighs\. Can you weigh it\?[\s\S]*For example:\s+\/jar add sloe of:/)
    expect(readAs(await desk.textOf(answer))).toBe(`read as /jar add sloe of:${of}`)
  })
})

describe('in a plan', () => {
  it.each([
    ['a strip of orange peel and 300 g sloes in 70 cl gin', '1 strip of orange peel + 300 g sloes'],
    ['70cl gin with a twist of lemon peel and 300 g plums', '1 twist of lemon peel + 300 g plums'],
    ['8 lemons, two small sprigs of thyme, a litre of 95%', '8 lemons + 2 small sprigs of thyme'],
  ])('%s', async (said, of) => {
    expect(await jarDesk('2026-10-01').textOf(said)).toContain(`read as /plan of:${of} spirit:`)
  })

  it('asks what a bit is, and goes on with its weight', async () => {
    const desk = jarDesk('2026-10-01', { ...newAsker(), talk: newTalkMemory() })
    expect(await desk.textOf('600 g quinces, a bit of ginger, a litre of brandy')).toContain('Can you weigh it?')
    expect(readAs(await desk.textOf('30 g'))).toContain('of:600 g quinces + 30 g ginger spirit:1 litre brandy')
  })
})
