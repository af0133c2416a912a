import { describe, expect, it } from 'vitest'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { newAsker } from '../../bot/asker.ts'
import { jarDesk } from '../../bot/commands-jar/desk.ts'

const deskOf = async (...lines: readonly string[]) => {
  const desk = jarDesk('2026-11-30', { ...newAsker(), talk: newTalkMemory() })
  for (const line of lines) await desk.ask(line)
  return desk
}

const QUINCE = '/jar start quince of:700 g quinces + 5 cloves spirit:1 l vodka 40% sugar:200 g'
const HOT = '/jar start red of:2 dried chillies spirit:0.5 l vodka 40%'
const LEMON = '/jar start lemon of:8 lemons spirit:1 l 95%'

describe('of a jar that stands there is answered', () => {
  it.each([
    'how much will I end up with',
    'roughly how much liqueur does it make?',
    'so how much of it will there be when it’s finished',
    'how many bottles will I fill?',
    'what’s the yield',
    'quanto ne esce alla fine?',
  ])('how much it gives: %s', async (line) => {
    expect(await (await deskOf(QUINCE)).textOf(line)).toMatch(/Quince will make about 1\.\d+ l: two 500 ml bottles/)
  })

  it('in full bottles, what stands in them', async () => {
    const desk = await deskOf(QUINCE, '/jar strain quince measured:1 l', '/jar bottle quince bottles:2 x 450 ml')
    expect(await desk.textOf('how much will I get out of it')).toMatch(/Quince has 900 ml in full bottles/)
  })

  it.each([
    'when should I fish the cloves out?',
    'how long do the cloves stay in there',
    'do we leave the cloves in?',
    'when do the cloves come out',
    'quando tolgo i chiodi di garofano?',
  ])('when it comes out: %s', async (line) => {
    expect(await (await deskOf(QUINCE, LEMON)).textOf(line)).toMatch(
      /Everything in quince stays in until you strain it, from .* to .*\./,
    )
  })

  it.each(['how often must I taste it', 'when do I next try it?', 'ogni quanto lo assaggio?'])(
    'how often it is tasted, by how long it steeps: %s',
    async (line) => {
      expect(await (await deskOf(HOT)).textOf(line)).toMatch(/then twice a day/)
      expect(await (await deskOf(QUINCE)).textOf(line)).toMatch(/Taste quince about once a week from \d+ Dec/)
      expect(await (await deskOf('/jar start basil of:40 g basil spirit:1 l 60%')).textOf(line)).toMatch(
        /Taste basil every day/,
      )
    },
  )

  it('of the jar spoken of last, and of the one that is named', async () => {
    const desk = await deskOf(QUINCE, LEMON)
    expect(await desk.textOf('how often do I taste it?')).toMatch(/Taste lemon/)
    expect(await desk.textOf('how often do I taste the quince?')).toMatch(/Taste quince/)
  })

  it.each(['how much sugar will it make sweet', 'how much ginger do I get in a litre'])(
    'nothing of how much there will be where anything else is asked: %s',
    async (line) => {
      expect(await (await deskOf(QUINCE)).textOf(line)).not.toMatch(/will make about/)
    },
  )

  it('tells nothing of when it comes out once it is strained', async () => {
    const desk = await deskOf(QUINCE, '/jar strain quince measured:1 l')
    expect(await desk.textOf('when do I take the cloves out')).not.toMatch(/stays in until/)
  })
})

describe('of nothing that stands there', () => {
  it.each([
    [
      'how many glasses for 40 guests?',
      /For 40 people that’s 40 glasses of 40 ml, 1\.6 l in all: four 500 ml bottles\./,
    ],
    ['how many bottles do I need for 12 friends', /For 12 people .* 480 ml in all: one 500 ml bottle\./],
    ['quante bottiglie servono per 25 invitati?', /For 25 people .* 1 l in all: two 500 ml bottles\./],
  ])('is told what so many drink: %s', async (line, text) => {
    expect((await (await deskOf()).textOf(line)).replace(/\s+/g, ' ')).toMatch(text)
  })

  it.each(['will the sun speed it up?', 'lo lascio al sole così fa prima?'])('the sun: %s', async (line) => {
    expect(await (await deskOf()).textOf(line)).toMatch(/A dark cupboard is best/)
  })
})
