import { describe, expect, it, test } from 'vitest'
import { bottleLabel } from '../../../bot/picture/label/bottle-label.ts'
import { bottleLabelData } from '../../../bot/picture/label/bottle-label-data.ts'
import { jarTag } from '../../../bot/picture/tag/jar-tag.ts'
import { jarTagData } from '../../../bot/picture/tag/jar-tag-data.ts'
import { englishFormat } from '../../../bot/text/en/format.ts'
import { labelText } from '../../../bot/text/en/printed.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import { jarOf, startedAs } from '../commands-jar-views/jars.ts'
import { plant, readyBatch, seen, steepingBatch } from './batches.ts'
import { pen } from './pixels.ts'

describe('the label of a bottle', () => {
  it('tells the planned strength until the syrup is in', async () => {
    const view = steepingBatch('walnut')
    expect(view.contents.outcome.abvPercent.value).toBeGreaterThan(60)
    expect(bottleLabelData(view, 500)).toMatchObject({
      abvPercent: { value: 30 },
      strength: 'planned',
      sweeteners: ['white_sugar'],
    })
    expect(bottleLabelData(readyBatch('lemon'), 500)).toMatchObject({ strength: 'computed' })
    const { alt } = bottleLabel(bottleLabelData(view, 500), await pen())
    expect(alt.replace(/\s/g, ' ')).toContain('About 30 % vol (planned)')
    expect(alt).not.toContain('(computed)')
  })

  it('says how strong it is and how much on two lines where one would cut them', async () => {
    const data = { ...bottleLabelData(readyBatch('lemon'), 354.88), strength: 'computed' as const }
    const drawn = async (units: 'us' | 'metric') =>
      [...bottleLabel(data, { ...(await pen()), format: englishFormat(units) }).svg.matchAll(/<text[^>]*>([^<]*)</g)]
        .map(([, text = '']) => text.replace(/\s+/g, ' '))
        .slice(1, 3)
    expect(await drawn('us')).toEqual(['Liqueur · about 42 % vol (84 proof)', '(computed) · 12 fl oz'])
    expect((await drawn('metric'))[0]).toBe('Liqueur · about 42 % vol (computed) · 12 fl oz')
  })

  it('keeps the mark of what burns inside its frame, and all that warns on it', async () => {
    const data = { ...bottleLabelData(readyBatch('lemon'), 500), isFlammable: true }
    const { svg, width } = bottleLabel(data, await pen())
    const word = svg.indexOf('M24 4 C30 16')
    const places = [...svg.slice(0, word).matchAll(/translate\(([\d.-]+) [\d.-]+\) scale/g)].map(([, x]) => Number(x))
    const x = places.at(-2)!
    expect(x).toBeGreaterThan(84)
    expect(x).toBeLessThan(width - 84)
    expect(Math.abs(x - width / 2)).toBeLessThan(width / 5)
  })

  const strained = {
    kind: 'strained',
    measured: { amount: exactly(940), by: 'volume', atC: 20 },
    strength: { abvPercent: exactly(86), abvAtC: null, readsProof: false },
    rinseWaterG: exactly(0),
  } as const
  const bottled = { kind: 'bottled', bottles: [{ count: 1, volumeMl: 500 }] } as const
  const lemon = startedAs('lemon', { plants: [plant('coffee_whole', 'coffee', 80), plant('cinnamon_ceylon', 'x', 5)] })

  it('tells what went in and no more, where its strength comes from, and what is dangerous', async () => {
    const view = seen(
      jarOf(
        'neat',
        [lemon, strained, bottled].map((each) => ({ on: '2026-10-01', ...each })),
      ),
    )
    const data = bottleLabelData(view, 500)
    expect(data).toMatchObject({
      strength: 'measured',
      hasWater: false,
      sweeteners: [],
      isFlammable: true,
      isTooStrong: true,
    })
    const { alt, svg } = bottleLabel(data, await pen())
    expect(alt.replace(/\s/g, ' ')).toMatch(/About 87 % vol \(measured\)\..* Spirit, coffee beans, Ceylon cinnamon\./)
    expect(alt).toContain('Flammable. Don’t drink neat. Not in pregnancy. Keep out of reach of children.')
    expect(svg).toContain('FLAMMABLE')
  })

  it('marks nothing on a liqueur, and tells water, sugar and an estimate as such', async () => {
    const syrup = { kind: 'sweetened', waterG: exactly(1500), sweetenings: whiteSugar(exactly(500)) } as const
    const unread = { ...strained, measured: null, strength: null }
    const view = seen(
      jarOf(
        'mild',
        [lemon, unread, syrup, bottled].map((each) => ({ on: '2026-10-01', ...each })),
      ),
    )
    const data = bottleLabelData(view, 500)
    expect(data).toMatchObject({
      strength: 'estimated',
      hasWater: true,
      sweeteners: ['white_sugar'],
      isFlammable: false,
      isTooStrong: false,
    })
    const { alt, svg } = bottleLabel(data, await pen())
    expect(alt).toMatch(/Spirit, water, sugar, coffee/)
    expect(alt).not.toMatch(/Flammable|neat/)
    expect(svg).not.toContain('FLAMMABLE')
  })

  it('counts water that rinsed the plants, or went in at the start, as water', () => {
    const story = (started: typeof lemon, rinseWaterG: number) =>
      [started, { ...strained, rinseWaterG: exactly(rinseWaterG) }, bottled].map((each) => ({
        on: '2026-10-01',
        ...each,
      }))
    for (const entries of [story(lemon, 50), story({ ...lemon, waterG: exactly(100) }, 0)]) {
      expect(bottleLabelData(seen(jarOf('wet', entries)), 500)).toMatchObject({ hasWater: true, sweeteners: [] })
    }
  })

  it('is refused where nothing was planned', () => {
    const view = seen(jarOf('bare', [{ on: '2026-11-01', ...startedAs('bare', {}, { targets: null }) }]))
    expect(() => bottleLabelData(view, null)).toThrow(expect.objectContaining({ problem: 'label_unplanned' }))
  })
})

describe('the tag of a jar', () => {
  it('tells what it was fined with, and what else some people may not drink', async () => {
    const measured = { measured: null, strength: null, rinseWaterG: exactly(0) }
    const fined = jarOf('nuts', [
      { ...startedAs('nuts'), on: '2026-11-01', plants: [plant('hazelnut', 'hazelnuts', 200)] },
      { on: '2026-11-20', kind: 'strained', ...measured },
      { on: '2026-11-21', kind: 'filtered', measured: null, fining: 'egg_white' },
    ])
    const tag = jarTagData(seen(fined))
    expect(tag.allergens).toEqual(expect.arrayContaining(['hazelnut', 'egg_fined']))
    expect(jarTag(tag, await pen()).alt).toMatch(/Contains hazelnuts?\b.* May contain egg/)
  })

  it('gives proof and percent whole, on two lines where one would cut them', async () => {
    const drawn = async (units: 'us' | 'metric') =>
      [
        ...jarTag(jarTagData(steepingBatch('walnut')), { ...(await pen()), format: englishFormat(units) }).svg.matchAll(
          /<text[^>]*>([^<]*)</g,
        ),
      ]
        .map(([, text = '']) => text.replace(/\s+/g, ' '))
        .filter((text) => /vol|proof/.test(text))
    const [us, metric] = [await drawn('us'), await drawn('metric')]
    expect(us.slice(-2).join(' ')).toMatch(/^about \d+ % vol \(\d+ proof\)$/)
    expect(metric.at(-1)).toMatch(/^about \d+ % vol$/)
  })

  it('plans no straining of what is strained, and marks what is strong', () => {
    expect(jarTagData(steepingBatch('walnut'))).toMatchObject({ strainBy: '2026-12-20', isFlammable: true })
    const ready = jarTagData(readyBatch('lemon'))
    expect(ready.abvPercent!.value).toBeGreaterThan(40)
    expect(ready).toMatchObject({ strainFrom: null, strainBy: null, isFlammable: true })
    const weak = startedAs('weak', {}, { strainFrom: '2026-11-10', strainBy: '2026-11-20' })
    const spirits = weak.spirits.map((each) => ({ ...each, abvPercent: { value: 37.5, plusMinus: 0.3 } }))
    const tag = jarTagData(seen(jarOf('weak', [{ on: '2026-11-01', ...weak, spirits }])))
    expect(tag).toMatchObject({ strainBy: '2026-11-20', isFlammable: true })
    const strained = { kind: 'strained', measured: null, strength: null, rinseWaterG: exactly(0) } as const
    const story = [
      { on: '2026-11-01', ...weak, spirits },
      { on: '2026-11-15', ...strained },
    ]
    expect(jarTagData(seen(jarOf('weak', story))).isFlammable).toBe(false)
  })
})

test.each([
  [29.49, 0.4, 'About 29.5 % vol'],
  [29.5, 0, 'About 29.5 % vol'],
  [29.2, 0.6, 'About 29 % vol'],
  [29.5, 1.4, 'About 30 % vol'],
  [40, 0.3, 'About 40 % vol'],
])('a label tells %d ± %d %% vol as %s', (value, plusMinus, text) => {
  const label = { ...bottleLabelData(readyBatch('lemon'), 500), abvPercent: { value, plusMinus } }
  const said = labelText.strength(label, englishFormat('metric')).replaceAll('\u00a0', ' ')
  expect(said).toContain(`${text.toLowerCase()} (`)
})
