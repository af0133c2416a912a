import { describe, expect, it, test } from 'vitest'
import { newAsker } from '../asker.ts'
import { strainedSloes } from '../commands-jar/begun-jars.ts'
import { jarDesk } from '../commands-jar/desk.ts'
import { testDesk } from '../test-desk.ts'
import { WIDTHS } from '../voice/first-screens.ts'

type Desk = ReturnType<typeof jarDesk>

/** The code that a plan's answer offers to shop with. */
const codeOf = async (line: string, desk: Desk): Promise<string> => {
  const shopping = (await desk.replyOf(line)).actions.find(({ call }) => call.command === 'shopping')
  return shopping!.call.values.plans!.typed
}

const PLANS = [
  '/plan of:10 lemons spirit:1 l strength:95%',
  '/plan of:6 oranges + 1 stick ceylon cinnamon spirit:1.4 l 40%',
  '/plan of:700 g raspberries spirit:700 ml 40% sugar:honey',
  '/plan of:cracked coffee + 1 vanilla pod spirit:500 ml 75.5% + 500 ml 40%',
] as const

const codes = async (desk: Desk, lines: readonly string[] = PLANS): Promise<string> => {
  const all: string[] = []
  for (const line of lines) all.push(await codeOf(line, desk))
  return all.join(' + ')
}

interface Figures {
  readonly plants: readonly { readonly id: string; readonly buyCount: number | null; readonly buyG: number }[]
  readonly spirits: readonly { readonly abvPercent: number; readonly volumeMl: number; readonly count: number }[]
  readonly sweeteners: readonly { readonly material: string; readonly massG: number }[]
  readonly bottles: readonly { readonly volumeMl: number; readonly buyCount: number }[]
}

const figures = async (desk: Desk, line: string): Promise<Figures> => (await desk.ask(line)).data as unknown as Figures

it('lists what four plans take, each thing once', async () => {
  const desk = jarDesk()
  const text = await desk.textOf(`/shopping plans:${await codes(desk)}`)
  for (const line of [
    'Buy 14 things for lemon, orange, raspberries and cracked coffee.',
    /10 +unwaxed lemons\n/,
    /1 +Ceylon cinnamon stick\n/,
    /700 g +raspberries\n/,
    /4 × 700 ml +40 % spirit \(it takes 2\.6 l\)\n/,
    /2 × 1 kg +sugar \(it takes 1\.19 kg\)\n/,
    /16 × 500 ml +bottles\n/,
    /4 +jars: 2 × 2 l, 2 × 1\.5 l\n/,
    /Also +a straining cloth and paper filters\n/,
    'I counted 500 ml bottles to fill, spirit in 700 ml or 1 l and sugar in 1 kg bags.',
  ]) {
    expect(text).toMatch(line)
  }
})

it('takes of each as much as the plans said one by one', async () => {
  const desk = jarDesk()
  let [sugarG, honeyG] = [0, 0]
  for (const line of PLANS) {
    const { data } = await desk.ask(line)
    if (data.sweetener === 'honey') honeyG += data.sugarG as number
    else sugarG += data.sugarG as number
  }
  const { sweeteners } = await figures(desk, `/shopping plans:${await codes(desk)}`)
  const of = (material: string) => sweeteners.find((each) => each.material === material)!.massG
  // A code keeps strength to 0.01 % vol and sweetness to 0.1 g/L, of about 10 litres.
  expect(Math.abs(of('white_sugar') - sugarG)).toBeLessThan(2)
  expect(Math.abs(of('honey') - honeyG)).toBeLessThan(2)
})

it.each(WIDTHS)('takes a line for each thing, and three or four more, at %i columns', async (columns) => {
  const desk = jarDesk()
  const all = await codes(desk)
  const printed = (await testDesk({ nowMs: Date.UTC(2026, 8, 1, 9), width: columns }).firstOf(`/shopping plans:${all}`))
    .split('\n')
    .filter((line) => line.trim() !== '')
  expect(printed.length).toBeLessThanOrEqual(columns === 80 ? 4 + 14 : 4 + 2 * 14)
})

it('counts bottles, and spirit, as they are said or as the country sells them', async () => {
  const desk = jarDesk()
  const code = await codeOf(PLANS[0], desk)
  const small = await figures(desk, `/shopping plans:${code} bottles:200 ml spirit-size:500 ml`)
  expect(small.bottles).toEqual([{ volumeMl: 200, count: 15, buyCount: 15 }])
  expect(small.spirits[0]).toMatchObject({ count: 2, sizeMl: 500 })
  await desk.ask('/settings country:US')
  expect((await figures(desk, `/shopping plans:${code}`)).spirits[0]).toMatchObject({ count: 1, sizeMl: 1000 })
})

it('keeps the bottles that the plan was for', async () => {
  const desk = jarDesk()
  const { actions } = await desk.replyOf('/plan of:10 lemons bottles:6 x 200 ml strength:95%')
  const { call } = actions.find((each) => each.call.command === 'shopping')!
  expect(call.values.bottles!.typed).toBe('6 x 200 ml')
})

it('goes on to what one plan costs, and follows a batch that is made again', async () => {
  const desk = jarDesk('2026-10-01')
  const code = await codeOf(PLANS[0], desk)
  expect(await desk.textOf(`/shopping plans:${code}`)).toContain(`/cost plan:${code}`)
  await desk.ask('/jar start lemon of:10 lemons spirit:1 l 95%')
  expect(await desk.textOf('/again lemon')).toMatch(/\/shopping plans:[0-9A-Z]+/)
})

it('offers no list of what no code can tell', async () => {
  const desk = jarDesk()
  const line = '/plan of:30 g jaboticaba + 8 lemons spirit:0.7 l 95% unknown-ok:yes days:10'
  expect((await desk.replyOf(line)).actions.map(({ call }) => call.command)).not.toContain('shopping')
})

describe('jars', () => {
  const begun = async () => {
    const desk = jarDesk('2026-10-01')
    await desk.ask('/jar start lemon of:10 lemons spirit:1 l 95%')
    await desk.ask('/jar start ginger of:200 g ginger + 2 fresh chillies spirit:700 ml 40% bottles:6 x 200 ml')
    return desk
  }

  it('are all that run where none is named, with what goes in later', async () => {
    const desk = await begun()
    const list = await figures(desk, '/shopping')
    expect(list.plants.map(({ id, buyCount }) => [id, buyCount])).toEqual([['chilli_fresh', 2]])
    expect(list.bottles).toEqual([
      { volumeMl: 500, count: 6, buyCount: 6 },
      { volumeMl: 200, count: 6, buyCount: 6 },
    ])
    expect(list.spirits).toEqual([])
  })

  it('take the sugar that was planned while they steep, and what their syrup comes to once they are strained', async () => {
    const desk = await begun()
    const planned = (await desk.ask('/plan of:10 lemons spirit:1 l 95%')).data.sugarG as number
    expect((await figures(desk, '/shopping lemon')).sweeteners[0]!.massG).toBeCloseTo(planned, 3)
    desk.at('2026-10-25')
    const strained = (await desk.ask('/jar strain lemon measured:930 ml')).data
    const { sugarG } = strained.syrup as { readonly sugarG: number }
    expect((await figures(desk, '/shopping lemon')).sweeteners[0]!.massG).toBeCloseTo(sugarG, 6)
    await desk.ask('/jar sweeten lemon sugar:500 g water:1.5 l')
    const sweet = await figures(desk, '/shopping lemon')
    expect(sweet.sweeteners).toEqual([])
    expect(sweet.bottles[0]).toMatchObject({ buyCount: 6 })
    await desk.ask('/jar bottle lemon bottles:4 x 500 ml')
    expect((await figures(desk, '/shopping lemon')).bottles[0]).toMatchObject({ buyCount: 2 })
    await desk.ask('/jar empty lemon')
    expect(await desk.textOf('/shopping lemon')).toMatch(/^Nothing to buy\.\n\n• Lemon is done/)
  })

  it('go with plans', async () => {
    const desk = await begun()
    const list = await figures(desk, `/shopping jars:lemon plans:${await codeOf(PLANS[0], desk)} have:1 l 96%`)
    expect(list.spirits.map(({ count }) => count)).toEqual([0])
    expect(list.sweeteners[0]!.massG).toBeGreaterThan(1000)
  })

  it('are somebody’s own', async () => {
    await begun()
    const other = jarDesk('2026-10-01', newAsker())
    expect(await other.textOf('/shopping')).toContain('You’ve no jar going')
    expect((await other.refused('/shopping jars:lemon')).code).toBe('not_found')
  })
})

test.each([
  ['/shopping plans:11M4', /isn’t a batch’s code/],
  ['/shopping plans:11M4QTHJ0001MYJ0JNHC00VV9QPCBAHF5DGB80V4', /damaged/],
  ['/shopping plans:11NCHSTJ8P501JQH0JNHC00VV9QPCFH0HFWJ262TYX have:1 l vodka', /ow strong\?/],
  ['/shopping plans:11NCHSTJ8P501JQH0JNHC00VV9QPCFH0HFWJ262TYX have:500 g', /500 g/],
])('%s asks one thing', async (line, said) => {
  const { message } = await jarDesk().refused(line)
  expect(message).toMatch(said)
})

it.each(['measured:620 ml', ''])(
  'counts what the plants of a second steep bring, as once it is strained (%s)',
  async (measured) => {
    const desk = await strainedSloes(measured)
    await desk.ask('/jar start two second-of:sloe spirit:350 ml 50%')
    const sugarG = async () => (await figures(desk, '/shopping two')).sweeteners.map(({ massG }) => massG)
    const before = await sugarG()
    desk.at('2027-02-20')
    await desk.ask('/jar strain two')
    expect(before).toHaveLength(1)
    expect(before).toEqual(await sugarG())
  },
)
