import { expect, test } from 'vitest'
import { lineOf } from '../../../bot/calls/write-line.ts'
import { countries } from '../../../core/label/countries.ts'
import { linesOf } from '../call-typed.ts'
import { flat } from '../flat.ts'
import { cautionKeys, faults, json, noteKeys, printed, reply } from './desk.ts'

test('counts grams and drinks, and says where the size and the guidance are from', async () => {
  expect(await printed('/serving pour:30 ml strength:30% country:Italy')).toMatchInlineSnapshot(`
    "30 ml at 30 % has about 7 g of alcohol, 0.6 of a standard drink in Italy.

      Alcohol         7.10 g ± 0.19 g
      Standard drink  12 g of alcohol in Italy (a table of standard drinks by
                      country)
      Drinks          0.592 ± 0.016

    • Adults in Italy are told: at most 24 g a day for men and 12 g a day for women,
      the over-65s and those of 18 to 21 (a table of standard drinks by country,
      read second-hand).

    ! Not if you’re pregnant or trying for a baby, under age, or about to drive,
      swim or use machines. On medicines, with liver disease or a past dependence?
      Ask a doctor or pharmacist. Your local law comes first."
  `)
})

test.each([
  ['/serving pour:30 ml strength:30% country:Italy', 7.1, 12, 0.59],
  ['/serving pour:25 ml strength:40% country:regno unito', 7.89, 8, 1],
  ['/serving 1.5 fl oz strength:80 proof country:USA', 14, 14, 1],
])('%s: %d g of alcohol, a drink of %d g, %d drinks', async (line, ethanolG, drinkG, drinks) => {
  const { data } = await reply(line)
  expect(data.ethanolG).toBeCloseTo(ethanolG, 1)
  expect(data.drinkGPerServing).toBe(drinkG)
  expect(data.drinks).toBeCloseTo(drinks, 2)
  expect(data.ethanolGPlusMinus).toBeGreaterThan(0)
  expect(data.drinksPlusMinus).toBeGreaterThan(0)
})

test.each([
  ['/serving pour:30 ml strength:30%', 'name_a_country'],
  ['/serving pour:30 ml strength:30% country:Mordor', 'unknown_country'],
  ['/serving pour:30 ml strength:30% country:Belgium', 'no_drink_size'],
])('%s gives grams only', async (line, key) => {
  expect((await reply(line)).data).toMatchObject({ drinkGPerServing: null, drinks: null, drinksPlusMinus: null })
  expect((await reply(line)).data.ethanolG).toBeCloseTo(7.1, 1)
  expect(await noteKeys(line)).toContain(key)
})

test('offers the country that was nearly typed, as a line that runs', async () => {
  const { actions } = await reply('/serving pour:30 ml strength:30% country:Itly')
  expect(linesOf(actions)).toEqual(['/serving pour:30 ml strength:30% country:italy'])
  expect((await reply(lineOf(actions[0]!.call))).data.drinkGPerServing).toBe(12)
  expect(await printed('/serving pour:30 ml strength:30% country:Mordor')).toContain('“Mordor”')
  expect((await reply('/serving pour:30 ml strength:30% country:xx')).actions).toEqual([])
})

test('says kindly what is from memory', async () => {
  expect(flat(await printed('/serving pour:30 ml strength:30% country:Sweden'))).toContain(
    'Adults in Sweden are told: at most 10 drinks a week (from memory).',
  )
})

test('defers to the law and a doctor, and warns of spirit served neat', async () => {
  expect(await cautionKeys('/serving pour:30 ml strength:30%')).toEqual(['law_and_doctor'])
  expect(await cautionKeys('/serving pour:30 ml strength:95%')).toEqual(['neat_spirit', 'law_and_doctor'])
})

// 60 g of alcohol are 76.02 ml of it, 80 g are 101.36 ml (0.78924 g/ml, OIML R 22).
test.each([
  ['190 ml', 'none', ['law_and_doctor']],
  ['190.1 ml', 'heavy', ['heavy_glass', 'law_and_doctor']],
  ['253.4 ml', 'heavy', ['heavy_glass', 'law_and_doctor']],
  ['253.5 ml', 'dangerous', ['dangerous_glass', 'law_and_doctor']],
  ['500 ml', 'dangerous', ['dangerous_glass', 'law_and_doctor']],
])('%s of 40 percent in one glass: %s', async (pour, oneGlass, cautions) => {
  const line = `/serving pour:${pour} strength:40%`
  expect((await reply(line)).data).toMatchObject({ oneGlass })
  expect(await cautionKeys(line)).toEqual(cautions)
  expect((await noteKeys(line)).includes('one_glass')).toBe(oneGlass !== 'none')
})

test('says that a glass can kill, first of all, and what to do when it was drunk', async () => {
  const text = flat(await printed('/serving pour:500 ml strength:40%'))
  expect(text).toContain(
    '! Never drink that in one go: it can kill, and far less can kill a child.' +
      ' If anyone’s had some, call a poison centre or the emergency number now.' +
      ' Don’t leave them to sleep it off.',
  )
  expect(text.indexOf('it can kill')).toBeLessThan(text.indexOf('Not if you'))
  expect(text).toContain('60 g of alcohol or more is heavy drinking')
  expect(text).toContain('About 80 g brings an adult of 50 kg near 3.1 g in a litre of blood')
  expect(await cautionKeys('/serving pour:500 ml strength:95%')).toEqual([
    'dangerous_glass',
    'neat_spirit',
    'law_and_doctor',
  ])
})

test('needs the pour and the strength', async () => {
  expect(await json('/serving pour:30 ml')).toMatchObject({ error: { code: 'missing_option', option: 'strength' } })
  expect(await json('/serving strength:30%')).toMatchObject({ error: { code: 'missing_option', option: 'pour' } })
})

test('answers for every country in words', async () => {
  for (const { names } of countries) {
    for (const name of names) {
      const text = await printed(`/serving pour:40 ml strength:28% country:${name}`)
      expect(text).toContain('about 9 g of alcohol')
      expect(text).not.toMatch(/NaN|undefined|null|\[object/)
    }
  }
  expect(faults()).toEqual([])
})
