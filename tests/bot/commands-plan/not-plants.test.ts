import { describe, expect, test } from 'vitest'
import { flat } from '../flat.ts'
import { ask, askAny, textOf } from './desk.ts'

const messageOf = async (line: string) => (await askAny(line)).error?.message.replaceAll('\u00a0', ' ')

describe('what has an option of its own', () => {
  test.each([
    ['500 g sugar', /^Sugar goes under “sugar”, not with the plants\. For example: \/plan of:10 lemons .*sugar:500 g/],
    [
      '2 cups of white sugar',
      /^Sugar goes under “sugar”, not with the plants\. For example: \/plan of:10 lemons .*sugar:2 cups/,
    ],
    [
      '300 g zucchero',
      /^Sugar goes under “sugar”, not with the plants\. For example: \/plan of:10 lemons .*sugar:300 g/,
    ],
    ['sugar 300 g', /^Sugar goes under “sugar”, not with the plants\. For example: \/plan of:10 lemons .*sugar:300 g/],
    ['sugar', /^Sugar goes under “sugar”, not with the plants\. For example: \/plan of:10 lemons .*sugar:500 g/],
    ['1 l water', /^I work the water out for you, so leave it out\. Type: \/plan of:10 lemons spirit/],
    ['acqua', /^I work the water out for you, so leave it out\. Type: \/plan of:10 lemons spirit/],
    ['1 l vodka', /^Spirit goes under “spirit”, not with the plants\. For example: \/plan of:10 lemons .*1 l 40%/],
    ['1 l vodka 40%', /^Spirit goes under “spirit”, not with the plants\. For example: \/plan of:10 lemons .*1 l 40%/],
    [
      '700 ml Allotment Pride gin 40%',
      /^Spirit goes under “spirit”, not with the plants\. For example: \/plan of:10 lemons .*700 ml Allotment Pride gin 40%/,
    ],
    ['500 ml red wine', /^Spirit goes under “spirit”, not with the plants/],
    [
      '0.7 l rakı 45%',
      /^Spirit goes under “spirit”, not with the plants\. For example: \/plan of:10 lemons .*0.7 l rakı 45%/,
    ],
    [
      '700 ml of 40% rum',
      /^Spirit goes under “spirit”, not with the plants\. For example: \/plan of:10 lemons .*700 ml 40%/,
    ],
  ])('%s among the plants', async (thing, said) => {
    const message = await messageOf(`/plan of:10 lemons + ${thing} spirit:1 l 95% unknown-ok:yes`)
    expect(message).toMatch(said)
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
    ['of:-3 lemons spirit:1 l 95%', '“-3 lemons” is below zero. How much?'],
    ['of:–3 lemons spirit:1 l 95%', 'is below zero'],
    ['of:−3 lemons spirit:1 l 95%', 'is below zero'],
    ['of:lemons -3 spirit:1 l 95%', 'is below zero'],
    ['of:-200 g lemon spirit:1 l 95%', 'is below zero'],
    ['of:10 lemons + -30 g ginger spirit:1 l 95%', '“-30 g ginger” is below zero'],
    ['of:10 lemons spirit:1 l -95%', '“1 l -95%” is below zero. How strong?'],
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
  ['100000 l 95%', '“100000 l 95%” isn’t a volume I can use. Try: /plan of:10 lemons spirit:1 l 95%'],
  ['1 l 0%', '“1 l 0%” isn’t a strength I can use. Try: /plan of:10 lemons spirit:1 l 95%'],
  ['1 l 120%', '“1 l 120%” isn’t a strength I can use. Try: /plan of:10 lemons spirit:1 l 95%'],
  ['2000 kg 40%', '“2000 kg 40%” isn’t a weight I can use. Try: /plan of:10 lemons spirit:1 l 95%'],
])('spirit:%s is no use, and a line is', async (spirit, said) => {
  expect(await messageOf(`/plan of:10 lemons spirit:${spirit}`)).toContain(said)
})

test('too much sugar with the plants: less of it does', async () => {
  const message = await messageOf('/plan of:10 lemons spirit:1 l 95% sugar:10 kg')
  expect(message!.replaceAll('\u00a0', ' ')).toContain('This keeps: /plan of:10 lemons spirit:1 l 95% sugar:1300 g')
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
  const said = flat(await textOf(`${line} sugar:${inJarG.toFixed(2)} g`))
  expect(said).toContain('no more sugar')
  expect(said).toMatch(/Same day Stir in [\d.]+ l water\./)
})
