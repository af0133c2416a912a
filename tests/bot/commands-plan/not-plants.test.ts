import { describe, expect, test } from 'vitest'
import { ask, askAny, textOf } from './desk.ts'

const messageOf = async (line: string) => (await askAny(line)).error?.message.replaceAll('\u00a0', ' ')

describe('what has an option of its own', () => {
  test.each([
    ['500 g sugar', 'take it out and write sugar:500 g.'],
    ['2 cups of white sugar', 'take it out and write sugar:2 cups.'],
    ['300 g zucchero', 'take it out and write sugar:300 g.'],
    ['sugar 300 g', 'take it out and write sugar:300 g.'],
    ['sugar', 'take it out and write sugar:500 g.'],
    ['1 l water', 'and steep-at: thins the spirit first; /jar add takes water:1 l.'],
    ['acqua', 'and steep-at: thins the spirit first; /jar add takes water:500 ml.'],
    ['1 l vodka', 'take it out and write spirit:1 l and its strength, such as 40%.'],
    ['1 l vodka 40%', 'take it out and write spirit:1 l 40%.'],
    ['700 ml Allotment Pride gin 40%', 'take it out and write spirit:700 ml Allotment Pride gin 40%.'],
    ['500 ml red wine', 'take it out and write spirit:500 ml red wine and its strength'],
    ['0.7 l rakı 45%', 'take it out and write spirit:0.7 l rakı 45%.'],
    ['700 ml of 40% rum', 'take it out and write spirit:700 ml 40%.'],
  ])('%s among the plants', async (thing, said) => {
    const message = await messageOf(`/plan of:10 lemons + ${thing} spirit:1 l 95% unknown-ok:yes`)
    expect(message).toContain(`“${thing}” is no plant: `)
    expect(message).toContain(said)
  })

  test.each(['30 g bought sugar snap peas', '20 g rum cherry flesh', '20 g bought water mint'])(
    '%s is a plant',
    async (thing) => {
      const { data } = await ask(`/plan of:10 lemons + ${thing} spirit:1 l 95% unknown-ok:yes`)
      expect(data.botanicals).toHaveLength(2)
    },
  )
})

describe('below zero', () => {
  test.each([
    ['of:-3 lemons spirit:1 l 95%', '“-3 lemons” is below zero: give plants by weight'],
    ['of:–3 lemons spirit:1 l 95%', 'is below zero'],
    ['of:−3 lemons spirit:1 l 95%', 'is below zero'],
    ['of:lemons -3 spirit:1 l 95%', 'is below zero'],
    ['of:-200 g lemon spirit:1 l 95%', 'is below zero'],
    ['of:10 lemons + -30 g ginger spirit:1 l 95%', '“-30 g ginger” is below zero'],
    ['of:10 lemons spirit:1 l -95%', '“1 l -95%” is below zero: give 0.1 to 97 % vol'],
    ['of:10 lemons spirit:1 l vodka −40%', 'is below zero'],
    ['of:10 lemons spirit:-1 l 95%', 'is below zero'],
  ])('%s', async (options, said) => {
    expect(await messageOf(`/plan ${options}`)).toContain(said)
  })

  test('a dash between words is none', async () => {
    expect((await ask('/plan of:10 lemons spirit:1 l vodka - 40%')).data.spiritMl).toBeCloseTo(1000, 6)
  })
})

test.each([
  ['100000 l 95%', 'is no volume I can take: give a volume of 0.1 ml to 1,000 l'],
  ['1 l 0%', 'is no strength I can take: give 0.1 to 97 % vol'],
  ['1 l 120%', 'is no strength I can take: give 0.1 to 97 % vol'],
  ['2000 kg 40%', 'is no weight I can take: give a weight of 0.01 g to 1,000 kg'],
])('spirit:%s names the limit', async (spirit, said) => {
  expect(await messageOf(`/plan of:10 lemons spirit:${spirit}`)).toContain(said)
})

test('too much sugar with the plants: less of it does', async () => {
  const message = await messageOf('/plan of:10 lemons spirit:1 l 95% sugar:10 kg')
  expect(message!.replaceAll('\u00a0', ' ')).toContain(
    'This would keep: /plan of:10 lemons spirit:1 l 95% sugar:1300 g',
  )
})

test('ounces of sugar are a weight, and the reply says so', async () => {
  const { notes } = await ask('/plan of:10 lemons spirit:1 l 95% sugar:9 oz')
  expect(notes.map(({ key }) => key)).toContain('sugar_ounces')
})

test('a trace of sugar is none', async () => {
  const line = '/plan of:10 lemons spirit:1 l 95% to-strength:30% to-sweetness:200 g/L'
  const lacking = async (inJarG: number) => Number((await ask(`${line} sugar:${inJarG.toFixed(2)} g`)).data.sugarG)
  let inJarG = 300
  for (let step = 0; step < 8; step++) inJarG += (await lacking(inJarG)) - 0.1
  expect(await lacking(inJarG)).toBeCloseTo(0.1, 1)
  const said = (await textOf(`${line} sugar:${inJarG.toFixed(2)} g`)).replaceAll(/\s+/g, ' ')
  expect(said).toContain('no more sugar')
  const bought = /and (\d+) g sugar/.exec(said)?.[1]
  expect(bought).toMatch(/^\d+$/)
  expect(said).toContain(`${bought} g sugar Jar`)
})
