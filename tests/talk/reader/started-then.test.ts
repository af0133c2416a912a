import { describe, expect, it } from 'vitest'
import { talker, talkerFor } from './told.ts'

const said = async (plan: string | null, text: string, shelf?: 'lemon') =>
  (await talkerFor({ after: plan, shelf })).say(text)

const LEMONS = '10 lemons and 1 l 95%'
const WALNUTS = '/plan of:20 green walnuts spirit:1 l 95%'

it.each([
  [LEMONS, 'start it three days ago', '/jar start of:10 lemons spirit:1 l 95% when:3 days ago'],
  [LEMONS, 'start it yesterday', '/jar start of:10 lemons spirit:1 l 95% when:yesterday'],
  [
    LEMONS,
    'start it yesterday and call it midwinter',
    '/jar start midwinter of:10 lemons spirit:1 l 95% when:yesterday',
  ],
  [LEMONS, 'inizialo ieri', '/jar start of:10 lemons spirit:1 l 95% when:yesterday'],
  [LEMONS, "l'ho iniziato tre giorni fa", '/jar start of:10 lemons spirit:1 l 95% when:3 giorni fa'],
  [LEMONS, 'start it', '/jar start of:10 lemons spirit:1 l 95%'],
  [LEMONS, 'started it on 20 october', '/jar start of:10 lemons spirit:1 l 95% when:20 october'],
  [LEMONS, 'started on the 20th of october', '/jar start of:10 lemons spirit:1 l 95% when:20th of october'],
  [LEMONS, 'begun on 3 November', '/jar start of:10 lemons spirit:1 l 95% when:3 november'],
  [LEMONS, 'started this three weeks ago', '/jar start of:10 lemons spirit:1 l 95% when:3 weeks ago'],
  [LEMONS, "l'ho iniziato il 20 ottobre", '/jar start of:10 lemons spirit:1 l 95% when:20 ottobre'],
  [LEMONS, 'start it as lemon 2', '/jar start lemon 2 of:10 lemons spirit:1 l 95%'],
  [LEMONS, 'start this as batch 3 please', '/jar start batch 3 of:10 lemons spirit:1 l 95%'],
  [WALNUTS, 'ho iniziato il nocino ieri', '/jar start of:20 green walnuts spirit:1 l 95% when:yesterday'],
  [WALNUTS, 'I started the walnuts 3 days ago', '/jar start of:20 green walnuts spirit:1 l 95% when:3 days ago'],
])('starts what was planned on the day that is told: %s, %s', async (plan, text, line) => {
  expect(await said(plan, text)).toMatchObject({ read: line, code: null, recorded: 1 })
})

it.each([
  ['peeled 10 oranges into 1 l 95% yesterday', 'of:10 oranges'],
  ['ho pelato 10 arance in 1 l 95% ieri', 'of:10 arance'],
  ['sliced 1 kg quinces into 1 l vodka 40% yesterday', 'of:1 kg quinces'],
])('starts a jar on the day that its fruit was put in: %s', async (text, of) => {
  const told = await said(null, text, 'lemon')
  expect(told.read).toMatch(new RegExp(`^/jar start ${of} spirit:.* when:yesterday$`))
  expect(told.recorded).toBe(1)
})

it.each(['did I start it yesterday?', 'I didn’t start it yesterday', 'start it tomorrow', 'non l’ho iniziato ieri'])(
  'starts nothing that is asked, denied or to come: %s',
  async (text) => {
    expect((await said(LEMONS, text)).recorded).toBe(0)
  },
)

it.each([
  [
    'start 450 g damsons in 75 cl gin 40%, three weeks ago',
    '/jar start of:450 g damsons spirit:75 cl gin 40% when:3 weeks ago',
  ],
  [
    'start 200 g ginger and 6 lemons in a litre of vodka 40% 2 weeks ago',
    '/jar start of:200 g ginger + 6 lemons spirit:1 litre vodka 40% when:2 weeks ago',
  ],
  [
    '8 oranges in a litre of 95% and start it last Friday',
    '/jar start of:8 oranges spirit:1 litre 95% when:last friday',
  ],
  [
    'inizia 400 g lamponi in un litro di vodka 40% dieci giorni fa',
    '/jar start of:400 g lamponi spirit:1 litro vodka 40% when:10 giorni fa',
  ],
  [
    'forgot to mention, on friday i put 400 g cranberries in 75 cl vodka',
    '/jar start of:400 g cranberries spirit:75 cl vodka 40% when:friday',
  ],
  [
    'by the way, two weeks ago we put 1 kg plums in 1 l of vodka',
    '/jar start of:1 kg plums spirit:1 l vodka 40% when:2 weeks ago',
  ],
])('starts at once what is told with its amounts and a day that is over: %s', async (text, read) => {
  const told = await said(null, text)
  expect(told.read).toBe(read)
  expect(told.recorded).toBe(1)
})

it.each([
  'start 450 g damsons in 75 cl gin 40%',
  'start 450 g damsons in 75 cl gin 40% tomorrow',
  'could I start 450 g damsons in 75 cl gin 40% three weeks ago?',
])('only plans what is not told as over: %s', async (text) => {
  expect(await said(null, text)).toMatchObject({ command: 'plan', recorded: 0 })
})

it.each([
  ['start it, named citrus, 3 days ago', 'citrus', '3 days ago'],
  ['start it, called citrus row yesterday', 'citrus row', 'yesterday'],
  ['start it 3 days ago and call it citrus', 'citrus', '3 days ago'],
])('takes no day for a part of its name: %s', async (text, name, when) => {
  const { call } = await said(LEMONS, text)
  expect(call?.options).toMatchObject({ name, when })
})

it.each([
  ['started 120 g ginger and 3 chillies in 60 cl vodka 40% yesterday', 'dried', '3 dried chillies', 'yesterday'],
  ['started 7 lemons and a cinnamon stick in a litre of vodka 40% 2 days ago', 'ceylon', '1 ceylon', '2 days ago'],
  ['ho iniziato 120 g di zenzero e 3 peperoncini in 60 cl di vodka 40% ieri', 'secchi', '3 secchi peperoncini', 'ieri'],
])('goes on with a start once a plant was asked back: %s, %s', async (text, answer, plant, when) => {
  const one = await talkerFor({ after: null, shelf: undefined })
  expect(await one.say(text)).toMatchObject({ recorded: 0, command: 'jar start' })
  const told = await one.say(answer)
  expect(told).toMatchObject({ command: 'jar start', recorded: 1 })
  expect(told.call?.options.of).toContain(plant)
  expect(told.call?.options.when).toBe(when === 'ieri' ? 'yesterday' : when)
})

describe('a batch that is told as over by a word that alone starts none', () => {
  it.each([
    ['last night I got 12 limes into 75 cl of vodka', '/jar start of:12 limes spirit:75 cl vodka 40% when:yesterday'],
    [
      'yesterday I squeezed 500 g raspberries into a 70cl bottle of gin',
      '/jar start of:500 g raspberries spirit:70 cl gin 40% when:yesterday',
    ],
    ['got 1 kg of damsons into a litre of gin this morning', '/jar start of:1 kg damsons spirit:1 litre gin 40%'],
  ])('%s', async (text, line) => {
    const one = talker()
    expect(await one.say(text)).toMatchObject({ code: 'question', choices: [line], recorded: 0 })
    expect(await one.say('yes')).toMatchObject({ read: line, recorded: 1 })
  })

  it.each([
    'can I get 12 limes into 75 cl of vodka today',
    'I bought 12 limes and 75 cl of vodka yesterday',
    'I want to get 12 limes into 75 cl of vodka',
  ])('is no start where it is not told so: %s', async (text) => {
    const told = await talker().say(text)
    expect(told).toMatchObject({ command: 'plan', recorded: 0 })
  })
})
