import { describe, expect, it } from 'vitest'
import { english } from '../../../bot/talk/lexicon/english.ts'
import { respelt } from '../../../bot/talk/lexicon/respell.ts'
import { saidText } from '../../../core/quantity/said/said-text.ts'
import { eachIsRecorded, eachIsShown } from './by-shelf.ts'
import { talkerFor } from './told.ts'

// The sentences are ours; no source.
eachIsRecorded({
  fair: [
    ['took another taste of the sloe, 3', '/jar taste sloe rating:3'],
    ['crafty sip of the orange, a 4', '/jar taste orange rating:4'],
    ['ho preso un goccino di arancia, 3', '/jar taste orange rating:3'],
    ['orange all done in 4 x 500 ml', '/jar bottle orange bottles:4 x 500 ml'],
    ['arancia finita in 6 x 35 cl', '/jar bottle orange bottles:6 x 35 cl'],
    ['orange botled, 4 x 500 ml', '/jar bottle orange bottles:4 x 500 ml'],
    ['strained the gin one, 640 ml', '/jar strain sloe measured:640 ml'],
    ['from now on the sloe batch is called dusk', '/jar rename sloe to:dusk'],
    ['the orange is called old gold from today', '/jar rename orange to:old gold'],
    ['da oggi il limone è chiamato sole', '/jar rename lemon to:sole'],
    ['our lad walked off with two of the raspberry bottles', '/bottles raspberry given:2'],
    ['took the sloes off the gin, 640 ml', '/jar strain sloe measured:640 ml'],
  ],
  lemon_ginger: [
    ['ginger straind, 620 ml', '/jar strain ginger measured:620 ml'],
    ['ho filtratto il limone, 900 ml', '/jar strain lemon measured:900 ml'],
    ['limone filtrato, 900 ml a 86%, quanto zucchero vuole', '/jar strain lemon measured:900 ml strength:86%'],
    ['ginger shakn', '/jar shake ginger'],
    ['lemon strainned, 900 ml at 86%, how much sugar will it take', '/jar strain lemon measured:900 ml strength:86%'],
    ['dammi un colpetto sabato per lo zenzero', '/jar later ginger until:sabato'],
    ['forgot to mention I shook the lemon yesterday', '/jar shake lemon when:yesterday'],
    ["ginger's up in the loft now, pantry was too warm", '/jar note ginger where:loft'],
    ['not this evening for the ginger, wednesday', '/jar later ginger until:wednesday'],
    ['non stasera per il limone, sabato', '/jar later lemon until:sabato'],
  ],
})

eachIsShown({
  fair: [
    ['how’s the one in the gin getting on', '/jar show sloe'],
    ['come va quello con il gin', '/jar show sloe'],
    ['what all have we got on the go', '/jar list'],
    ['what am I making at the moment', '/jar list'],
    ['cosa c’è in preparazione', '/jar list'],
    ['is there any of the raspberry left?', '/bottles raspberry'],
    ['the raspberry went off', '/trouble mould jar:raspberry'],
    ['the colour’s gone from the orange', '/trouble lost its colour jar:orange'],
  ],
})

it('strains each of two jars that are told with what came out', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  const { read, also } = await one.say('ginger 640ml 58%, lemon 910 at 86, strained both')
  expect([read, ...also.map((each) => each.read)]).toEqual([
    '/jar strain ginger measured:640 ml strength:58%',
    '/jar strain lemon measured:910 ml strength:86%',
  ])
})

it('bottles what is done, and prints its labels', async () => {
  const one = await talkerFor({ after: null, shelf: 'fair' })
  const { read, also } = await one.say('orange done in 4 x 500 ml, could you do me the labels')
  expect([read, ...also.map((each) => each.read)]).toEqual([
    '/jar bottle orange bottles:4 x 500 ml',
    '/jar label orange',
  ])
})

it('calls a jar by no empty name', async () => {
  const one = await talkerFor({ after: null, shelf: 'fair' })
  expect(await one.say('from now on the sloe is called')).toMatchObject({ code: 'question', recorded: 0 })
})

describe('a slip in the name of a day', () => {
  it.each([
    ['yesteday I started 10 lemons in 1 l of 95%', '/jar start of:10 lemons spirit:1 l 95% when:yesterday'],
    ['started 10 lemons in 1 l of 95% last saterday', '/jar start of:10 lemons spirit:1 l 95% when:last saturday'],
  ])('%s', async (text, read) => {
    expect((await (await talkerFor({ after: null })).say(text)).read).toBe(read)
  })
})

describe('thanks measure nothing', () => {
  it.each(['cheers a mil', 'thx a mil', 'thanks a bunch'])('%s', async (text) => {
    const one = await talkerFor({ after: '/syrup infusion:800 ml strength:80% to-strength:28%' })
    expect(await one.say(text)).toMatchObject({ read: null, command: 'talk', code: null })
  })
})

describe('what was named before is left out', () => {
  it.each([
    ['lo zenzero non ce l’ho, lascialo fuori', '/plan of:9 limes spirit:1 l gin 40%'],
    ['the ginger I haven’t got, leave it out', '/plan of:9 limes spirit:1 l gin 40%'],
  ])('%s', async (text, read) => {
    const one = await talkerFor({ after: '/plan of:9 limes + 40 g ginger spirit:1 l gin 40%' })
    expect((await one.say(text)).read).toBe(read)
  })
})

it.each([
  ['sugar crystals growing on the neck of the bottle', 'crystals'],
  ['white fur growing at the bottom of the jar', 'mould'],
])('%s', async (text, symptom) => {
  expect(await (await talkerFor({ after: null })).say(text)).toMatchObject({ data: { symptom } })
})

it.each(['should it be in the dark while it steeps?', 'i limoni in infusione vanno tenuti al buio mentre macerano?'])(
  '%s',
  async (text) => {
    expect(await (await talkerFor({ after: null })).say(text)).toMatchObject({ data: { entry: 'steep_light' } })
  },
)

it.each([
  ['what does proof vs percent mean', 'proof'],
  ['would our bees’ honey do for the sugar', 'honey'],
  ['is worse liqueur made with cheap vodka', 'cheap_vodka'],
  ['posso spedire una bottiglia per posta a mia zia?', 'posting'],
])('%s', async (text, entry) => {
  expect(await (await talkerFor({ after: null })).say(text)).toMatchObject({ data: { entry } })
})

it.each(['enough of the shake it messages', 'stop the shake it reminders'])('%s', async (text) => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  expect((await one.say(text)).read).toBe('/reminders shake:off')
})

it('says when what steeps comes off', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  expect(await one.say('when does the lemon come off?')).toMatchObject({ read: '/jar show lemon', recorded: 0 })
})

describe('a word that is whole is none that it is near to', () => {
  it.each(['the sheet', 'prizes', 'the brides', 'it stained the table', 'two naked oranges'])('%s', (text) => {
    const { tokens } = saidText(text)
    expect(respelt(tokens, english, new Set()).map((token) => token.text)).toEqual(tokens.map((token) => token.text))
  })

  it('and one that is none is mended still', () => {
    expect(respelt(saidText('straned').tokens, english, new Set())[0]!.text).toBe('strained')
  })
})

// Two slips of the pen in a long word, none of them in its first letter.
describe('a long name with two slips', () => {
  it.each([
    ['500 g rasberies and 70 cl gin', '/plan of:500 g raspberry spirit:70 cl gin 40%'],
    ['1 kg blackburies and a litre of gin', '/plan of:1 kg blackberry spirit:1 litre gin 40%'],
    ['500 g strawbarys and 70 cl gin', '/plan of:500 g strawberry spirit:70 cl gin 40%'],
    ['500 g crambarries and 70 cl gin', '/plan of:500 g cranberry spirit:70 cl gin 40%'],
    ['how much rasberies per litre', '/botanical of:raspberry'],
  ])('is that plant: %s', async (text, read) => {
    expect(await (await talkerFor({ after: null })).say(text)).toMatchObject({ read, code: null })
  })

  it.each(['10 g wolfsbain and 70cl gin', '300 g elderberys in 70 cl vodka', '10 g monkshod and 70cl gin'])(
    'is never one where something refused is as near: %s',
    async (text) => {
      for (const after of [null, '10 lemons and a litre of vodka']) {
        const told = await (await talkerFor({ after })).say(text)
        expect(told.code, `${after}`).toMatch(/^(?:refused|ambiguous)$/)
      }
    },
  )

  it('is no other batch’s spirit', async () => {
    const told = await (await talkerFor({ after: '500 g raspberries and a litre of vodka' })).say(
      '1 kg blackburies and a litre of gin',
    )
    expect(told.read).toBe('/plan of:1 kg blackberry spirit:1 litre gin 40%')
  })
})

describe('a name with its kind behind it', () => {
  it.each([
    ['how much tea, black, per litre', '/botanical of:black tea'],
    ['500 g cherries, the sour kind, and 1 l of vodka', '/plan of:500 g sour cherries spirit:1 l vodka 40%'],
    ['6 oranges (bitter) in a litre of 95%', '/plan of:6 bitter oranges spirit:1 litre 95%'],
    ['how much cinnamon, the ceylon sort, per litre', '/botanical of:ceylon cinnamon'],
    ['10 lemons, oranges and a litre of vodka', '/plan of:10 lemons + oranges spirit:1 litre vodka 40%'],
    [
      '500 g cherries, black peppercorns 5 g and 1 l vodka',
      '/plan of:500 g cherries + 5 g black peppercorns spirit:1 l vodka 40%',
    ],
  ])('%s', async (text, read) => {
    expect(await (await talkerFor({ after: null })).say(text)).toMatchObject({ read, code: null })
  })
})
