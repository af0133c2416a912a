import { describe, expect, it } from 'vitest'
import type { Shelf } from '../shelves.ts'
import { talkerFor } from './told.ts'

type Talk = readonly [shelf: Shelf | null, before: string, text: string, read: string]

const STRAINED = '/jar strain lemon measured:930 ml strength:87%'
const PLAN = '/plan of:10 lemons spirit:1 l 95%'
const TWO = '/plan of:10 lemons + 50 g ginger spirit:1 l 95%'
const SLOES = '/plan of:800 g sloes spirit:1 l gin 40%'
const THINNED = '/dilute spirit:750 ml strength:95% to-strength:70%'
const SYRUP = '/syrup infusion:920 ml strength:82% to-strength:30% to-sweetness:190 g/L'

/** What is said after something else, and the line that it comes to. */
const TALKS: readonly Talk[] = [
  ['lemon', STRAINED, 'looked again and it’s 940', '/jar correct lemon measured:940 ml'],
  ['lemon', STRAINED, 'I said 930 but it’s 950', '/jar correct lemon measured:950 ml'],
  ['lemon', STRAINED, 'non 930, 940', '/jar correct lemon measured:940 ml'],
  ['lemon', STRAINED, 'mi sono sbagliato, 84 gradi', '/jar correct lemon strength:84%'],
  ['lemon', STRAINED, 'make it 28', '/syrup jar:lemon to-strength:28%'],
  ['lemon', STRAINED, 'I used 550 sugar and 1.6 water', '/jar sweeten lemon sugar:550 g water:1.6 l'],
  [null, PLAN, 'give it more of a kick', '/plan of:10 lemons spirit:1 l 95% to-strength:35%'],
  [null, PLAN, 'not quite so boozy', '/plan of:10 lemons spirit:1 l 95% to-strength:25%'],
  [null, PLAN, 'bring the sugar down', '/plan of:10 lemons spirit:1 l 95% to-sweetness:120 g/L'],
  [null, PLAN, 'I started it three weeks ago', '/jar start of:10 lemons spirit:1 l 95% when:3 weeks ago'],
  // As sweet as that share of the usual 190 g/L, which its plan aims for.
  [null, PLAN, '10% less sugar', '/plan of:10 lemons spirit:1 l 95% to-sweetness:171 g/L'],
  [null, PLAN, 'cut the sugar by 20 per cent', '/plan of:10 lemons spirit:1 l 95% to-sweetness:152 g/L'],
  [
    null,
    `${PLAN} sugar:200 g`,
    '10% more sugar please',
    '/plan of:10 lemons spirit:1 l 95% sugar:220 g to-sweetness:209 g/L',
  ],
  ['lemon', '/again lemon to-sweetness:250 g/L', '10% less sugar', '/again lemon to-sweetness:225 g/L'],
  [null, PLAN, 'could it be limes', '/plan of:10 limes spirit:1 l 95%'],
  [null, PLAN, 'I’ve only limes', '/plan of:10 limes spirit:1 l 95%'],
  [null, PLAN, 'con le arance invece dei limoni', '/plan of:10 arance spirit:1 l 95%'],
  [null, PLAN, 'a third of that', '/plan of:3 lemons spirit:0.33 l 95%'],
  [null, PLAN, 'un quarto di questo', '/plan of:2.5 lemons spirit:0.25 l 95%'],
  [null, PLAN, 'for two litres of alcohol then', '/plan of:10 lemons spirit:2 litres 95%'],
  [null, PLAN, 'how many bottles is that', '/plan of:10 lemons spirit:1 l 95%'],
  [null, PLAN, 'right, I’m starting it', '/jar start of:10 lemons spirit:1 l 95%'],
  ['lemon', STRAINED, 'sorry, 900', '/jar correct lemon measured:900 ml'],
  ['lemon', STRAINED, 'oops it was 390 not 930', '/jar correct lemon entry:2 measured:390 ml'],
  ['lemon', STRAINED, 'scusa volevo dire 910', '/jar correct lemon measured:910 ml'],
  ['lemon', STRAINED, 'correction: 950 ml at 86', '/jar correct lemon measured:950 ml strength:86%'],
  ['lemon_strained', '/jar sweeten lemon sugar:500 g water:1.5 l', 'sorry 550 g', '/jar correct lemon sugar:550 g'],
  [
    'lemon_sweetened',
    '/jar bottle lemon bottles:5 x 500 ml',
    'no, it was four bottles',
    '/jar correct lemon bottles:4 x 500 ml',
  ],
  ['lemon', '/jar taste lemon rating:3', 'make it a 4', '/jar correct lemon rating:4'],
  ['lemon_ginger', 'strained, 600 ml', 'the lemon one', '/jar strain lemon measured:600 ml'],
  ['lemon_ginger', 'ho filtrato, 600 ml', 'quello allo zenzero', '/jar strain ginger measured:600 ml'],
  ['lemon_ginger', 'ho filtrato, 600 ml', 'il secondo', '/jar strain ginger measured:600 ml'],
  ['lemon_sweetened', 'bottled the lemon', '5 x 500', '/jar bottle lemon bottles:5 x 500 ml'],
  ['lemon_sweetened', 'bottled the lemon', 'five half litres', '/jar bottle lemon bottles:5 x 0.5 litres'],
  ['fair', 'gave away some raspberry', 'two', '/bottles raspberry given:2'],
  ['lemon_strained', 'split the lemon', '300 ml', '/jar split lemon into:lemon 2 amount:300 ml'],
  [null, 'how much water brings my 95 down to 60', '750', '/dilute spirit:750 ml strength:95% to-strength:60%'],
  [null, '10 lemons', 'a litre of 95', '/plan of:10 lemons spirit:1 litre 95%'],
  [null, PLAN, 'its all in the jar now, call it sunny', '/jar start sunny of:10 lemons spirit:1 l 95%'],
  [null, PLAN, 'call it sunny and start it', '/jar start sunny of:10 lemons spirit:1 l 95%'],
  [
    null,
    PLAN,
    'name it best of lemons and then start it please',
    '/jar start best of lemons of:10 lemons spirit:1 l 95%',
  ],
  [null, PLAN, 'ok lo faccio', '/jar start of:10 lemons spirit:1 l 95%'],
  [null, PLAN, 'go easy with the sugar', '/plan of:10 lemons spirit:1 l 95% to-sweetness:120 g/L'],
  [null, TWO, 'keep the ginger out', '/plan of:10 lemons spirit:1 l 95%'],
  [null, PLAN, 'toss some basil in as well, 15 leaves', '/plan of:10 lemons + 15 leaves of basil spirit:1 l 95%'],
  [null, THINNED, 'and down to 65?', '/dilute spirit:750 ml strength:95% to-strength:65%'],
  [null, SLOES, 'it’s a whole kilo actually', '/plan of:1 kilo sloes spirit:1 l gin 40%'],
  [null, SLOES, 'weve 1.2 kg in fact', '/plan of:1.2 kg sloes spirit:1 l gin 40%'],
  [null, PLAN, 'swap lemons for oranges', '/plan of:10 oranges spirit:1 l 95%'],
  [null, PLAN, 'limes instead of lemons', '/plan of:10 limes spirit:1 l 95%'],
  [null, SYRUP, '28 rather than 30', '/syrup infusion:920 ml strength:82% to-strength:28% to-sweetness:190 g/L'],
  [null, SYRUP, 'i only got 870', '/syrup infusion:870 ml strength:82% to-strength:30% to-sweetness:190 g/L'],
]

it.each(TALKS)('%s, %s: %s', async (shelf, before, text, read) => {
  const one = await talkerFor({ after: null, ...(shelf !== null && { shelf }) })
  await one.say(before)
  expect(await one.say(text)).toMatchObject({ read, code: null, erased: false })
})

it('asks again which jar where somebody says yes', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  await one.say('strained, 600 ml')
  expect(await one.say('yes')).toMatchObject({ code: 'question', recorded: 0 })
  expect(await one.say('ginger')).toMatchObject({ read: '/jar strain ginger measured:600 ml', recorded: 1 })
})

it('takes what was offered where it is told as done', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon' })
  await one.say(STRAINED)
  const told = await one.say('all stirred in')
  expect(told).toMatchObject({ command: 'jar sweeten', code: null, recorded: 1 })
  expect(told.call?.options).toMatchObject({ water: expect.any(String), sugar: expect.any(String) })
})

describe('what was recorded last is not changed', () => {
  it.each(['what was i supposed to do today', 'was the lemon 930?', 'should it be 900 ml'])('by %s', async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon' })
    await one.say(STRAINED)
    expect(await one.say(text)).toMatchObject({ recorded: 0 })
  })
})

/** Reminders and settings, and the line that sets them. */
const SET: readonly (readonly [text: string, read: string])[] = [
  ['no more nagging about shaking', '/reminders shake:off'],
  ['basta promemoria per scuotere', '/reminders shake:off'],
  ['remind me at half past eight in the evening', '/reminders time:20:30'],
  ['remind me at ten to eight in the morning', '/reminders time:07:50'],
  ['remind me at twenty five past seven in the evening', '/reminders time:19:25'],
  ['remind me at 5 to 9 in the morning', '/reminders time:08:55'],
  ['remind me at twelve at night', '/reminders time:00:00'],
  ['remind me at 12 at night', '/reminders time:12 am'],
  ['remind me at 9 at night', '/reminders time:9 pm'],
  ['ricordami alle due di notte', '/reminders time:02:00'],
  ['promemoria alle sette e mezza di sera', '/reminders time:19:30'],
  ['on holiday for two weeks', '/reminders pause-until:in 2 weeks'],
  ['gone for a fortnight', '/reminders pause-until:in 2 weeks'],
  ['leave me alone till tuesday, will you', '/reminders pause-until:tuesday'],
  ['let us be, and leave us be until thursday', '/reminders pause-until:thursday'],
  ['sono via per dieci giorni', '/reminders pause-until:in 10 giorni'],
  ['questa settimana niente promemoria', '/reminders pause-until:next Monday'],
  ['im back, start reminding me again', '/reminders pause-until:none'],
  ['at what time do i get reminded', '/reminders'],
  ['a che ora mi ricordi', '/reminders'],
  ['nudge me about the ginger in three days', '/jar later ginger until:in 3 days'],
  ['we live in lisbon', '/settings zone:lisbon'],
  ['my time zone is paris', '/settings zone:paris'],
  ['im in new zealand', '/settings country:new zealand'],
]

it.each(SET)('%s', async (text, read) => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  expect(await one.say(text)).toMatchObject({ read, code: null, erased: false })
})

it.each([
  ['remind me at ten to eight', '07:50', '19:50'],
  ['remind me at 5 to 9', '08:55', '20:55'],
])('asks which half of the day: %s', async (text, morning, evening) => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  expect(await one.say(text)).toMatchObject({
    code: 'question',
    choices: [`/reminders time:${morning}`, `/reminders time:${evening}`],
  })
})

it.each([
  ['send the reminders to this channel', '/reminders place:here'],
  ['cancellate tutti i miei dati', '/forget confirm:yes'],
  ['dimentica tutto di me', '/forget confirm:yes'],
])('%s: it answers with the line to type', async (text, line) => {
  const one = await talkerFor({ after: null, shelf: 'lemon' })
  expect(await one.say(text)).toMatchObject({ code: 'question', choices: [line], recorded: 0, erased: false })
})

it.each([
  ['will shake it tomorrow'],
  ['thinking of straining the lemon at the weekend'],
  ['i havent shaken the lemon yet'],
])('%s: the jar is shown, and nothing is written down', async (text) => {
  const one = await talkerFor({ after: null, shelf: 'lemon' })
  expect(await one.say(text)).toMatchObject({ command: 'jar show', code: null, recorded: 0 })
})

it('asks whether what is done tomorrow is to be called to mind', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon' })
  const choices = [expect.stringContaining('/jar later lemon until:'), '/jar show lemon']
  expect(await one.say('domani filtro il limone')).toMatchObject({ code: 'question', choices, recorded: 0 })
})

it.each(['no wait i didnt', 'oops, i didnt actually'])('%s: takes back what was written down', async (text) => {
  const one = await talkerFor({ after: null, shelf: 'lemon' })
  await one.say(STRAINED)
  expect(await one.say(text)).toMatchObject({ command: 'jar undo', code: null })
})

it.each(['that’s grand, cheers', 'sound, thanks', 'cheers mate', 'va benissimo grazie', 'thanks, that’ll do'])(
  '%s: is only thanks',
  async (text) => {
    const one = await talkerFor({ after: null })
    await one.say(PLAN)
    expect(await one.say(text)).toMatchObject({ command: 'talk', code: null, recorded: 0 })
  },
)
