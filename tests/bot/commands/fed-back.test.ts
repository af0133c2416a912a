import fc from 'fast-check'
import { describe, expect, test, vi } from 'vitest'
import { runs, SEED } from '../../runs.ts'
import { ask, askAny, type Json, number, typed } from './desk.ts'

vi.setConfig({ testTimeout: runs(20_000, 600_000) })

const parameters = { seed: SEED, numRuns: runs(20, 2000) }
const steps = (low: number, high: number, step: number) =>
  fc
    .integer({ min: Math.ceil(low / step), max: Math.floor(high / step) })
    .map((count) => Number((count * step).toFixed(3)))

const near = (json: Json, name: string, target: number) =>
  expect(Math.abs(number(json, name) - target), name).toBeLessThanOrEqual(1e-6 * Math.max(1, target))

/** The amounts a recipe names, as an option each; nothing may be added by typing nothing. */
const option = (name: string, amount: number, unit: string) =>
  amount > 1e-2 ? ` ${name}:${typed(amount)} ${unit}` : ''

const infusion = fc.record({
  ml: steps(100, 3000, 10),
  own: steps(40, 96, 0.5),
  to: steps(15, 35, 0.5),
  sweet: steps(50, 300, 5),
})

const mixOf = async (spirit: string, { waterMl, waterG, sugarG }: Record<string, number>, by: 'ml' | 'g') =>
  await ask(
    `/mix spirit:${spirit}${by === 'ml' ? option('water', waterMl!, 'ml') : option('water', waterG!, 'g')}${option('sugar', sugarG ?? 0, 'g')}`,
  )

describe('doubles typed back in /mix return what was wished for', () => {
  test('/syrup by strength and sweetness, by strength and ratio, by sweetness and ratio', async () => {
    await fc.assert(
      fc.asyncProperty(infusion, fc.constantFrom<'ml' | 'g'>('ml', 'g'), async ({ ml, own, to, sweet }, by) => {
        fc.pre(own * 0.75 > to)
        const start = `/syrup infusion:${ml} ml strength:${own}%`
        const first = await ask(`${start} to-strength:${to}% to-sweetness:${sweet} g/L`)
        const ratio = number(first, 'sugarG') / number(first, 'waterG')
        const others = [
          `${start} to-strength:${to}% ratio:${typed(ratio)}`,
          `${start} to-sweetness:${sweet} g/L ratio:${typed(ratio)}:1`,
        ]
        for (const solved of [first, ...(ratio >= 0.01 && ratio <= 20 ? await Promise.all(others.map(ask)) : [])]) {
          const mixed = await mixOf(`${ml} ml ${own}%`, solved.data as Record<string, number>, by)
          near(mixed, 'abvPercent', to)
          near(mixed, 'sugarGPerL', sweet)
          near(mixed, 'volumeMl', number(solved, 'volumeMl'))
          near(mixed, 'massG', number(solved, 'massG'))
        }
      }),
      parameters,
    )
  })

  test('/syrup with at-most', async () => {
    await fc.assert(
      fc.asyncProperty(infusion, steps(50, 900, 1), async ({ ml, own, to, sweet }, atMostMl) => {
        fc.pre(own * 0.75 > to)
        const wish = `to-strength:${to}% to-sweetness:${sweet} at-most:${atMostMl} ml`
        const solved = await ask(`/syrup infusion:${ml} ml strength:${own}% ${wish}`)
        const used = number(solved, 'infusionMl')
        const mixed = await mixOf(`${typed(used)} ml ${own}%`, solved.data as Record<string, number>, 'ml')
        near(mixed, 'abvPercent', to)
        near(mixed, 'sugarGPerL', sweet)
        expect(number(mixed, 'volumeMl')).toBeLessThanOrEqual(atMostMl * (1 + 1e-6))
        if (used < ml * 0.999) near(mixed, 'volumeMl', atMostMl)
      }),
      parameters,
    )
  })

  test('/dilute, also of two spirits and down by a hair', async () => {
    await fc.assert(
      fc.asyncProperty(steps(40, 96, 0.1), steps(40, 96, 0.1), steps(5, 39, 0.1), async (one, other, to) => {
        const spirits = `750 ml ${one}% + 300 ml ${other}%`
        const solved = await ask(`/dilute spirit:${spirits} to-strength:${to}%`)
        near(await mixOf(spirits, solved.data as Record<string, number>, 'ml'), 'abvPercent', to)
        near(await mixOf(spirits, solved.data as Record<string, number>, 'g'), 'abvPercent', to)
      }),
      parameters,
    )
  })

  test('/dilute a hydrometer reading and a volume that were taken warm', async () => {
    const solved = await ask('/dilute spirit:930 ml at 28 C strength:90.6% at 28 C to-strength:60%')
    near(await mixOf('930 ml at 28 C 90.6% at 28 C', solved.data as Record<string, number>, 'ml'), 'abvPercent', 60)
  })

  test('/adjust: the amounts blended with the liqueur, and the sugar it takes', async () => {
    await fc.assert(
      fc.asyncProperty(
        steps(20, 35, 0.5),
        steps(50, 300, 5),
        steps(20, 35, 0.5),
        steps(50, 300, 5),
        async (own, gPerL, to, toGPerL) => {
          const json = await askAny(
            `/adjust liqueur:1.8 l strength:${own}% sweetness:${gPerL} to-strength:${to}% to-sweetness:${toGPerL} spirit-strength:95%`,
          )
          expect(json.error).toBeUndefined()
          const [spiritMl, waterMl, sugarG] = [
            number(json, 'spiritMl'),
            number(json, 'waterMl'),
            number(json, 'sugarG'),
          ]
          // A blend takes no dry sugar: the rest of it must hold what is missing, gram for gram.
          const parts = [
            `1.8 l ${own}% ${gPerL} g/L`,
            ...(spiritMl > 0.1 ? [`${typed(spiritMl)} ml 95%`] : []),
            ...(waterMl > 0.1 ? [`${typed(waterMl)} ml`] : []),
          ]
          const blended = await ask(`/blend parts:${parts.join(' + ')}`)
          const lostG = (spiritMl > 0.1 ? 0 : spiritMl) + (waterMl > 0.1 ? 0 : waterMl)
          expect(Math.abs(number(blended, 'massG') + sugarG - number(json, 'massG'))).toBeLessThanOrEqual(1e-5 + lostG)
          expect(Math.abs(number(blended, 'ethanolG') - number(json, 'ethanolG'))).toBeLessThanOrEqual(1e-5 + lostG)
          near(json, 'abvPercent', to)
          near(json, 'sugarGPerL', toGPerL)
        },
      ),
      parameters,
    )
  })
})

test('/blend of one part is that part', async () => {
  const json = await ask('/blend parts:600 ml 47% 250 g/L')
  near(json, 'volumeMl', 600)
  near(json, 'abvPercent', 47)
  near(json, 'sugarGPerL', 250)
})

test('a weighed infusion states less ± than a measured one', async () => {
  const measured = await ask('/syrup 920 ml strength:90% to-strength:30% to-sweetness:250')
  const weighed = await ask('/syrup 765 g strength:90% to-strength:30% to-sweetness:250')
  expect(number(weighed, 'volumeMlPlusMinus')).toBeLessThan(number(measured, 'volumeMlPlusMinus'))
})
