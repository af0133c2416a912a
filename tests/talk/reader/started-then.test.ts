import { expect, it } from 'vitest'
import { talkerFor } from './told.ts'

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
