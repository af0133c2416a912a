import { describe, expect, it, test } from 'vitest'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { newAsker } from '../../bot/asker.ts'
import { jarDesk } from '../../bot/commands-jar/desk.ts'

const deskOf = async (...lines: readonly string[]) => {
  const desk = jarDesk('2026-11-30', { ...newAsker(), talk: newTalkMemory() })
  for (const line of lines) await desk.ask(line)
  return desk
}

const PLAN = '/plan of:8 oranges spirit:500 ml 95% to-strength:28%'
const STARTED = '/jar start orange of:8 oranges spirit:500 ml 95%'
/** 470 ml at about 83 %, 800 ml of water and 230 g of sugar: 28 % and 1.39 l; 1 l of it in bottles. */
const BOTTLED = [
  STARTED,
  '/jar strain orange measured:470 ml',
  '/jar sweeten orange sugar:230 g water:800 ml',
  '/jar bottle orange bottles:2 x 500 ml',
]
const PRICES = '/cost prices:spirit 20 per l + oranges 50 cents each + sugar 1 per kg + bottles 1 each'

describe('how strong a glass is', () => {
  const ways = [
    'how strong is a shot of it?',
    'how much alcohol is in a glass of it?',
    'so how many units does a nip of the orange have',
    'how much alcohol does a glass have',
    'quanto alcol c’è in un bicchierino?',
    'quanto è forte un bicchiere?',
  ]
  test.each(ways)('of a plan: %s', async (line) => {
    expect(await (await deskOf(PLAN)).textOf(line)).toMatch(/^read as \/serving pour:40 ml strength:28%\n/)
  })
  test.each(ways)('of the jar, also twice: %s', async (line) => {
    const desk = await deskOf(PLAN, ...BOTTLED)
    expect(await desk.textOf(line)).toMatch(/^read as \/serving pour:40 ml strength:28%\n/)
    expect(await desk.textOf(line)).toMatch(/^read as \/serving pour:40 ml strength:28%\n/)
  })
  it('is of no jar that steeps in strong spirit, nor of one that has to go', async () => {
    expect(await (await deskOf(STARTED)).textOf('how strong is a shot of it?')).toMatch(/Over 60\s%/)
    const held = await deskOf(...BOTTLED, '/trouble mould jar:orange yes:growth')
    expect(await held.textOf('how much alcohol is in a glass of it?')).not.toContain('/serving pour:40 ml strength:28%')
  })
})

describe('how many glasses there are', () => {
  test.each([
    'is it enough for 30 people?',
    'basta per 30 persone?',
    'do I have enough for thirty guests',
    'how many glasses do I need for 30 people?',
    '30 people are coming, how many glasses is that?',
    'will the orange stretch to 30 people?',
  ])('is told of a jar: %s', async (line) => {
    const text = await (await deskOf(...BOTTLED)).textOf(line)
    expect(text).toMatch(/^read as \/jar show orange\n/)
    expect(text.replace(/\s+/g, ' ')).toContain(
      'For 30 people that’s 30 glasses of 40 ml, 1.2 l in all. orange has 1 l in full bottles: 200 ml short.',
    )
  })
  test.each(['is it enough for 20 people?', '20 guests are coming, how many glasses is that?'])(
    'leaves a plan as it is: %s',
    async (line) => {
      const text = await (await deskOf(PLAN)).textOf(line)
      expect(text).toMatch(/^read as \/plan of:8 oranges spirit:500 ml 95% to-strength:28%\n/)
      expect(text.replace(/\s+/g, ' ')).toMatch(/20 glasses of 40 ml, 800 ml in all\. This makes 1\.\d+ l: enough\./)
    },
  )
  it('counts two glasses each, and what a jar will make', async () => {
    const text = await (await deskOf(STARTED)).textOf('is it enough for 20 people, two glasses each?')
    expect(text.replace(/\s+/g, ' ')).toMatch(
      /40 glasses of 40 ml, 1\.6 l in all\. orange will make 1\.\d+ l: \d+ ml short/,
    )
  })
  test.each(['how many glasses does it make?', 'how many shots are in it', 'quanti bicchierini ci vengono?'])(
    'is told where nobody counts people: %s',
    async (line) => {
      expect(await (await deskOf(...BOTTLED)).textOf(line)).toContain(
        'Orange has 1 l in full bottles: 25 glasses of 40 ml.',
      )
    },
  )
  it('plans what goes in for so many, whatever stands there', async () => {
    const text = await (await deskOf(...BOTTLED)).textOf('how many oranges and how much spirit for 30 people')
    expect(text).toMatch(/^read as \/plan of:oranges .*bottles:3 x 500 ml\n/)
  })
})

describe('what a bottle or a glass costs', () => {
  test.each([
    'what does a bottle cost?',
    'quanto costa una bottiglia?',
    'how much is a bottle of it',
    'what’s the price of a bottle?',
    'what does a bottle of the orange cost',
  ])('of the only jar, before and after prices were given: %s', async (line) => {
    expect(await (await deskOf(...BOTTLED)).textOf(line)).toMatch(/^read as \/cost orange\n/)
    const text = await (await deskOf(...BOTTLED, PRICES)).textOf(line)
    expect(text).toMatch(/^read as \/cost orange\n/)
    expect(text).toMatch(/a 500.ml bottle and \d\.\d\d for 100.ml/)
  })
  test.each(['how much does a glass cost?', 'how much is a shot?', 'quanto costa un bicchierino?'])(
    'of a glass: %s',
    async (line) => {
      // 14.23 without the bottles, for 1.36 to 1.4 l: 1.02 to 1.05 for 100 ml.
      const text = await (await deskOf(...BOTTLED, PRICES)).textOf(line)
      expect(text.replace(/\s/g, ' ')).toMatch(/and 0\.4[12] a 40 ml glass\./)
    },
  )
  test.each(['what does a bottle cost?', 'quanto costa una bottiglia?', 'how much does a glass cost?'])(
    'of the plan that was shown: %s',
    async (line) => {
      expect(await (await deskOf(PRICES, PLAN)).textOf(line)).toMatch(/^read as \/cost plan:\w+/)
    },
  )
  it('is of nothing where nothing is there, and of the jar that was spoken of last', async () => {
    expect(await (await deskOf()).textOf('what does a bottle cost?')).not.toContain('/cost')
    const two = await deskOf(STARTED, '/jar start ginger of:100 g ginger spirit:1 l 60%')
    expect(await two.textOf('what does a bottle cost?')).toMatch(/^read as \/cost ginger\n/)
  })
})

describe('whether a jar freezes', () => {
  test.each([
    'will the orange freeze?',
    'will it freeze in my freezer?',
    'si congela?',
    'does it go solid in our freezer',
  ])('is said first of it: %s', async (line) => {
    const text = await (await deskOf(...BOTTLED)).textOf(line)
    expect(text).toMatch(/^read as \/jar show orange\n\nOrange (?:goes slushy in|should pour from) the freezer\./)
  })
})
