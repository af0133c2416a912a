import { describe, expect, it } from 'vitest'
import { eachIsRecorded, eachIsShown } from './by-shelf.ts'
import { talker, talkerFor } from './told.ts'

// A bottle that was taken to somebody, whatever way it went.
eachIsRecorded({
  fair: [
    ['ran one of the raspberries down to the vicar', '/bottles raspberry given:1'],
    ['carried one of the raspberry bottles up to the schoolteacher', '/bottles raspberry given:1'],
    ['popped a bottle of the raspberry round to next door', '/bottles raspberry given:1'],
    ['dropped one of the raspberry bottles in to the postman', '/bottles raspberry given:1'],
    ['walked a raspberry bottle across to the neighbours', '/bottles raspberry given:1'],
  ],
  // Bottles by their size alone, whatever verb fills them.
  lemon_sweetened: [
    ['poured the lemon in four 500s', '/jar bottle lemon bottles:4 x 500 ml'],
    ['lemon went into six 330s', '/jar bottle lemon bottles:6 x 330 ml'],
    ['the lemon’s in five 500s', '/jar bottle lemon bottles:5 x 500 ml'],
  ],
  lemon: [['shook it yesterday arvo before brekkie', '/jar shake lemon when:yesterday']],
})

it.each([
  ['put the lemon up in four 500s and gave one to the neighbor', '/bottles lemon given:1'],
  ['lemon’s in five 500s now, two gone to the choir already', '/bottles lemon given:2'],
])('takes apart what was filled and what went: %s', async (text, given) => {
  const told = await (await talkerFor({ after: null, shelf: 'lemon_sweetened' })).say(text)
  expect(told.command).toBe('jar bottle')
  expect(told.also.map(({ read }) => read)).toEqual([given])
})

it.each([
  'took one of the raspberry bottles down to the cellar',
  'took the raspberry bottle to the window to look at the colour',
])('writes down no bottle that is only moved: %s', async (text) => {
  expect((await (await talkerFor({ after: null, shelf: 'fair' })).say(text)).recorded).toBe(0)
})

// Whoever had enough of being told.
eachIsShown({
  lemon: [
    ['stop chasing me to shake the thing', '/reminders shake:off'],
    ['give over telling me to shake', '/reminders shake:off'],
    ['pack in the shake messages', '/reminders shake:off'],
    ['no need to keep on at me to shake it', '/reminders shake:off'],
    ['enough harping on about shaking it', '/reminders shake:off'],
    ['smettila di assillarmi con lo scuotere', '/reminders shake:off'],
  ],
})

it('takes a shake that is only asked for as none that was done', async () => {
  const told = await (await talkerFor({ after: null, shelf: 'lemon' })).say('give me a shout to shake it')
  expect(told).toMatchObject({ command: 'reminders', recorded: 0 })
})

it.each([
  ['the sloe’s ruined, take it off as thrown away', '/jar discard sloe'],
  ['the lemon’s a write-off', '/jar discard lemon'],
  ['the lemon jar got trashed', '/jar discard lemon'],
])('asks before a jar is gone: %s', async (text, read) => {
  const told = await (await talkerFor({ after: null, shelf: 'fair' })).say(text)
  expect(told).toMatchObject({ read, code: 'question', recorded: 0 })
})

it.each([
  'what’s this bot do',
  'what’s it do, this',
  'what am i meant to type',
  'what do i say to it',
  'che fa sto bot',
])('says what it does: %s', async (text) => {
  expect((await talker().say(text)).command).toBe('help')
})

describe.each([
  ['what fruit ready in june', '/botanical month:june'],
  ['what picking in October', '/botanical month:october'],
  ['which fruits ripe in August', '/botanical month:august'],
])('without its verb: %s', (text, read) => {
  it(`is ${read}`, async () => expect((await talker().say(text)).read).toBe(read))
})

describe.each([
  ['what ripe fruit makes the best liqueur', 'ripe_fruit'],
  ['which berries in gin', 'brown_spirit'],
])('of no season: %s', (text, entry) => {
  it(`is ${entry}`, async () => expect((await talker().say(text)).data.entry).toBe(entry))
})

describe('behind a plan', () => {
  const after = '/plan of:10 lemons spirit:1 l vodka 40%'

  it.each(['leave it, this is my floor', 'leave it, my lift has come'])('is let be: %s', async (text) => {
    expect((await (await talkerFor({ after })).say(text)).data.said).toBe('talk_let_be')
  })

  it.each([
    ['make it a handle instead', 'spirit:1 handle vodka 40%'],
    ['make that a fifth', 'spirit:1 fifth vodka 40%'],
    ['make it two handles', 'spirit:2 handles vodka 40%'],
    // A share, no bottle.
    ['make it a fifth sweeter', 'spirit:1 l vodka 40% to-sweetness:270 g/L'],
  ])('%s', async (text, spirit) => {
    expect((await (await talkerFor({ after })).say(text)).read).toBe(`/plan of:10 lemons ${spirit}`)
  })
})

describe.each([
  ['un litro al 20 e mezzo litro al 95, quanto viene?', '/blend parts:1 litro 20% + 0.5 litro 95%'],
  ['700 ml al 28 più 300 ml al 40 quanto fanno?', '/blend parts:700 ml 28% + 300 ml 40%'],
  ['10 limoni e un litro al 95 pronto per il 25', '/plan of:10 limoni spirit:1 litro 95% ready-by:2026-12-25'],
])('how strong, or which day: %s', (text, read) => {
  it(`is ${read}`, async () => expect((await talker().say(text)).read).toBe(read))
})

describe.each([
  // How many readings there are is heard from each of them.
  ['Two instruments, one glass: 30.5 Brix and 1.045.', '/measure brix:30.5 hydrometer:1.045'],
  ['due letture: 25 brix e 1.03 al densimetro', '/measure brix:25 hydrometer:1.03'],
  // At the temperature of every label.
  [
    'infusion 700 ml, 82% @ 20C, target 28% 250 g/L',
    '/syrup infusion:700 ml strength:82% to-strength:28% to-sweetness:250 g/L',
  ],
  ['have we still time to do a raspberry one for christmas', '/plan of:raspberry spirit:1 l 40% ready-by:25 December'],
  ['the chilli in this takes your head off', '/trouble too spicy'],
  ['too much kick from the chilli', '/trouble too spicy'],
  ['ho 2 litri al 25 e voglio arrivare al 20', '/dilute spirit:2 litri strength:25% to-strength:20%'],
])('with nothing left to ask: %s', (text, read) => {
  it(`is ${read}`, async () => expect(await talker().say(text)).toMatchObject({ read, code: null }))
})

it('asks what another temperature is for', async () => {
  const told = await talker().say('infusion 700 ml reads 82% at 15 C, to 30% and 200 g/L')
  expect(told.code).toBe('question')
})

it.each([
  'what would it set us back if the alcohol is 15 a litre',
  'so what am i looking at all in, spirit 22 a litre',
])('says what a plan comes to: %s', async (text) => {
  const told = await (await talkerFor({ after: '/plan of:10 lemons spirit:1 l 95%' })).say(text)
  expect(told).toMatchObject({ command: 'cost', code: null })
  expect(told.read).toMatch(/^\/cost plan:\S+ prices:/)
})

eachIsRecorded({
  lemon_ginger: [
    ['il limone rimandalo a giovedì, oggi non ce la faccio', '/jar later lemon until:giovedi'],
    ['rinvia lo zenzero a domenica', '/jar later ginger until:domenica'],
  ],
})

it.each(['aspetta, era lo zenzero', 'aspe, intendevo lo zenzero', 'no no, lo zenzero'])(
  'asks whether the other jar was meant: %s',
  async (text) => {
    const told = await (await talkerFor({ after: '/jar shake lemon', shelf: 'lemon_ginger' })).say(text)
    expect(told).toMatchObject({ read: '/jar undo lemon', code: 'question' })
  },
)
