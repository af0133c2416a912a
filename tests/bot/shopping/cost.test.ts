import { describe, expect, it } from 'vitest'
import { notebookTexts } from '../../../bot/commands/notebook-file/json-file.ts'
import { isPersonal } from '../../../bot/discord/answer/heard-messages.ts'
import { oneOf } from '../../../bot/text/en/phrases.ts'
import { newAsker } from '../asker.ts'
import { jarDesk } from '../commands-jar/desk.ts'
import { commands } from '../test-desk.ts'
import { lemonDesk } from './lemon-desk.ts'

const PRICES = '/cost prices:lemons 4 €/kg + sugar 1.20/kg + spirit 95% 18/l + bottles 0.80 each'

type Desk = Awaited<ReturnType<typeof lemonDesk>>

interface CostData {
  readonly total: readonly { readonly amount: string; readonly currency: string }[]
  readonly perBottle: readonly { readonly volumeMl: number; readonly cost: readonly { readonly amount: string }[] }[]
  readonly per100Ml: readonly { readonly amount: string }[]
  readonly volumeMl: number
  readonly items: readonly { readonly kind: string; readonly cost: { readonly amount: string } | null }[]
  readonly missing: readonly string[]
  readonly pouredFrom: readonly string[]
}

const costOf = async (desk: Desk, line: string): Promise<CostData> => (await desk.ask(line)).data as unknown as CostData

const hundredths = (amount: string): number => Number(amount.replace('.', ''))

it('has no price of its own', async () => {
  const desk = await lemonDesk()
  const { total, items, missing } = await costOf(desk, '/cost lemon')
  expect([total, items.map(({ cost }) => cost)]).toEqual([[], [null, null, null, null]])
  expect(missing).toEqual(['lemons', 'spirit 95%', 'sugar', 'bottles'])
  const text = await desk.textOf('/cost lemon')
  expect(text).toMatch(/^I’ve no prices yet for what’s in lemon\./)
  expect(text).toContain('/cost lemon prices:lemons ? each + spirit 95% ? per l + sugar ? per kg + bottles ? each')
})

it('asks where a question mark stands, and keeps nothing', async () => {
  const desk = await lemonDesk()
  const { code, message } = await desk.refused('/cost lemon prices:lemons ? each + sugar 1.20/kg')
  expect([code, message]).toEqual([
    'missing_option',
    'What do you pay for lemons? Put it in the place of the question mark.',
  ])
  expect((await desk.person()).settings.prices).toBeUndefined()
})

/** 10 lemons of 117.5 g (85 to 150 g, as the catalogue has it) at 4 a kilo; the rest is as the plan says. By hand. */
it('adds up what went in and what is to come, thing by thing', async () => {
  const desk = await lemonDesk()
  await desk.ask(PRICES)
  const { items, total, perBottle, volumeMl, per100Ml } = await costOf(desk, '/cost lemon')
  expect(items.map(({ cost }) => cost!.amount)).toEqual(['4.70', '18.00', '0.65', '4.80'])
  expect(total).toEqual([{ amount: '28.15', currency: '€' }])
  const liquid = 4.7 + 18 + 0.65
  expect(hundredths(perBottle[0]!.cost[0]!.amount)).toBe(Math.round((liquid * 500 * 100) / volumeMl + 80))
  expect(hundredths(per100Ml[0]!.amount)).toBe(Math.round((liquid * 100 * 100) / volumeMl))
  const text = await desk.textOf('/cost lemon')
  expect(text).toMatch(/^Making lemon costs 28\.15 €\.\nAbout 4\.86 € a 500 ml bottle and 0\.81 € for 100 ml\.\n/)
  expect(text).toContain('I counted a lemon as about 120 g.')
  expect(text).toMatch(/Lemons +10 at 4 €\/kg: 4\.70 €/)
})

it('counts one fruit by its name as it is said', async () => {
  const desk = await lemonDesk()
  await desk.ask('/jar start name:sunny of:5 oranges spirit:500 ml 95%')
  await desk.ask('/cost prices:oranges 3/kg')
  expect(await desk.textOf('/cost sunny')).toContain('I counted an orange as about ')
  expect([oneOf('lemon'), oneOf('orange')]).toEqual(['a lemon', 'an orange'])
})

it('names what has no price, with the line that gives it', async () => {
  const desk = await lemonDesk()
  await desk.ask('/cost prices:spirit 95% £18/l')
  const text = await desk.textOf('/cost lemon')
  expect(text).toMatch(
    /^Making lemon costs £18\.00, not counting the lemons, sugar and 500 ml bottles\.\nSo far about £/,
  )
  expect(text).toContain('/cost lemon prices:lemons ? each + sugar ? per kg + bottles ? each')
  await desk.ask('/cost jar:lemon prices:lemons 0.40 each + sugar 1.20/kg + bottles 0.80 each')
  expect((await costOf(desk, '/cost lemon')).total).toEqual([{ amount: '27.45', currency: '£' }])
})

it('goes by what really went in', async () => {
  const desk = await lemonDesk()
  await desk.ask(PRICES)
  desk.at('2026-10-25')
  await desk.ask('/jar strain lemon measured:930 ml')
  await desk.ask('/jar sweeten lemon sugar:1 kg water:1.5 l')
  await desk.ask('/jar add lemon spirit:100 ml 95%')
  desk.at('2026-11-01')
  await desk.ask('/jar bottle lemon bottles:4 x 500 ml')
  const { items } = await costOf(desk, '/cost lemon')
  expect(items.map(({ kind, cost }) => [kind, cost!.amount])).toEqual([
    ['plant', '4.70'],
    ['spirit', '19.80'],
    ['sweetener', '1.20'],
    ['bottles', '3.20'],
  ])
  await desk.ask('/jar undo lemon')
  await desk.ask('/jar undo lemon')
  expect((await costOf(desk, '/cost lemon')).items.find(({ kind }) => kind === 'spirit')!.cost!.amount).toBe('18.00')
})

it('is parted with the liquid: two halves cost what the whole did', async () => {
  const desk = await lemonDesk()
  await desk.ask('/cost prices:lemons 4/kg + sugar 1.20/kg + spirit 95% 18/l')
  desk.at('2026-10-25')
  await desk.ask('/jar strain lemon measured:930 ml')
  await desk.ask('/jar sweeten lemon sugar:1 kg water:1.5 l')
  const sum = async (name: string) => hundredths((await costOf(desk, `/cost ${name}`)).total[0]!.amount)
  const whole = await sum('lemon')
  await desk.ask('/jar split lemon amount:1 l into:half')
  const [rest, half] = [await sum('lemon'), await sum('half')]
  // Each of three things is rounded once in either part.
  expect(Math.abs(rest + half - whole)).toBeLessThanOrEqual(3)
  expect(half).toBeGreaterThan(0)
})

it('says that what another jar brought is not in it', async () => {
  const desk = await lemonDesk()
  await desk.ask('/jar start orange of:6 oranges spirit:1 l 95%')
  await desk.ask(PRICES)
  desk.at('2026-10-25')
  await desk.ask('/jar strain lemon measured:930 ml')
  await desk.ask('/jar strain orange measured:930 ml')
  await desk.ask('/jar combine lemon with:orange')
  expect((await costOf(desk, '/cost lemon')).pouredFrom).toEqual(['orange'])
  expect(await desk.textOf('/cost lemon')).toContain('What came from orange isn’t in it.')
})

describe('the prices', () => {
  it('are kept, shown, changed and taken away', async () => {
    const desk = await lemonDesk()
    expect(await desk.textOf('/cost')).toMatch(/^You’ve given me no prices yet\. What do you pay\?/)
    expect(await desk.textOf(PRICES)).toMatch(
      /^Got it: lemons 4 €\/kg, sugar 1\.20\/kg, spirit 95% 18\/l and bottles 0\.80 each\./,
    )
    expect(await desk.textOf('/cost')).toMatch(/^You’ve given me 4 prices\.\n\n +Lemons +4 €\/kg\n/)
    expect(await desk.textOf('/cost prices:damsons 0/kg')).toMatch(/^Got it: damsons free\./)
    await desk.ask('/cost prices:damsons none')
    await desk.ask('/cost prices:limoni 5 €/kg + sugar none')
    expect((await desk.person()).settings.prices!.map(({ of, amount }) => `${of} ${amount}`)).toEqual([
      'spirit 95% 18',
      'bottles 0.80',
      'limoni 5 €',
    ])
  })

  it('go with the notebook, and are forgotten', async () => {
    const desk = await lemonDesk()
    await desk.ask(PRICES)
    const [file] = notebookTexts(await desk.person(), Date.UTC(2026, 9, 1))
    const bytes = new TextEncoder().encode(file!)
    const openFile = async () => ({ name: 'given.json', bytes })
    const other = jarDesk('2026-10-02', { ...newAsker(), openFile })
    await other.ask('/notebook import:file')
    expect((await other.person()).settings.prices).toEqual((await desk.person()).settings.prices)
    await desk.ask('/forget confirm:yes')
    expect((await desk.person()).settings.prices).toBeUndefined()
    expect(await desk.textOf('/cost')).toMatch(/^You’ve given me no prices yet/)
  })

  it('are shown to nobody else, shared with nothing, and answered in private', async () => {
    const desk = await lemonDesk()
    await desk.ask(PRICES)
    for (const line of ['/share lemon', '/jar label lemon', '/jar tag lemon', '/jar show lemon', '/notebook']) {
      expect(await desk.textOf(line)).not.toMatch(/0\.80|€/)
    }
    expect((await desk.replyOf('/cost lemon')).visibility).toBe('confidential')
    expect(isPersonal({ path: 'cost', options: { prices: 'lemons 4/kg' } }, commands)).toBe(true)
    expect(isPersonal({ path: 'shopping', options: {} }, commands)).toBe(true)
    // Nobody has to remember it for a command that is still to come.
    expect(isPersonal({ path: 'whatever comes', options: {} }, commands)).toBe(true)
    expect(isPersonal({ path: 'plan', options: { of: '10 lemons' } }, commands)).toBe(false)
  })
})

it('keeps the prices of two lines that come at once', async () => {
  const desk = await lemonDesk()
  await Promise.all([desk.ask('/cost prices:sugar 1.20/kg'), desk.ask('/cost prices:bottles 0.80 each')])
  expect((await desk.person()).settings.prices?.map(({ of }) => of).toSorted()).toEqual(['bottles', 'sugar'])
})

it('says which prices without a currency it counted to the one there is', async () => {
  const desk = await lemonDesk()
  await desk.ask('/cost prices:lemons £4/kg + sugar 1.20/kg')
  expect(await desk.textOf('/cost lemon')).toContain('I’ve read your price for sugar as £ too.')
  await desk.ask('/cost prices:sugar £1.20/kg')
  expect(await desk.textOf('/cost lemon')).not.toContain('I’ve taken')
})
