import { expect, test } from 'vitest'
import { allRefusedNames } from '../../../core/botanical/refuse/all-refused.ts'
import { flat } from '../flat.ts'
import { json, noteKeys, printed } from './desk.ts'

const labelOf = (of: string, region = 'EU'): string => `/label strength:30% sweetness:200 g/L of:${of} region:${region}`

const said = async (line: string): Promise<string> => flat(await printed(line))

test.each([
  ['celery', 'Contains celery.'],
  ['mustard seed', 'Contains mustard.'],
  ['pistachio', 'Contains pistachio (a nut).'],
  ['peanuts', 'Contains peanut.'],
  ['sesame', 'Contains sesame.'],
  ['cashews', 'Contains cashew (a nut).'],
  ['barley malt', 'Contains barley (gluten).'],
  ['walnuts', 'Contains walnut (a nut).'],
  ['dried apricots', 'May contain sulphites (from dried fruit).'],
  ['dried figs', 'May contain sulphites (from dried fruit).'],
  ['almonds + dried figs', 'Contains almond (a nut). May contain sulphites (from dried fruit).'],
])('a label of %s is to say “%s”', async (of, words) => {
  const text = await said(labelOf(of))
  expect(text).toContain(`Write on every bottle: “${words}” Steeping doesn’t take allergens out.`)
  expect(text).not.toContain('allergens included')
})

test.each([
  ['unsulphured dried apricots', 'sulphite'],
  ['unsulphured raisins', 'sulphite'],
  ['lemon', 'allergens out'],
])('a label of %s says nothing of %s', async (of, word) => {
  const text = await said(labelOf(of))
  expect(text).not.toContain(word)
  expect(text).not.toContain('allergens included')
})

test.each([
  ['liquorice', 'Contains liquorice: people with high blood pressure should avoid excessive consumption.'],
  ['grapefruit', 'Can change how medicines work: if you take any, ask a pharmacist first.'],
  ['bitter orange peel', 'Can change how medicines work: if you take any, ask a pharmacist first.'],
  ['coffee', 'Contains caffeine.'],
  ['black tea', 'Contains caffeine.'],
  ['wormwood', 'Contains thujone: not with epilepsy.'],
  ['sage', 'Contains thujone: not with epilepsy.'],
  ['cranberry', 'Cranberry: if you take warfarin, ask a doctor first.'],
  ['turmeric', 'Turmeric: not with liver disease. Not with gallstones.'],
  ['tonic water', 'Contains quinine: not with a heart rhythm disorder.'],
])('a label of %s is to say “%s”', async (of, words) => {
  expect(await said(labelOf(of))).toMatch(
    new RegExp(
      `Write on every bottle(?: too)?: “${words.replaceAll('.', '\\.')} Not in pregnancy\\. Keep out of reach of children\\.”`,
    ),
  )
})

test('every label is to say: not in pregnancy, and not for children', async () => {
  expect(await said('/label strength:30% sweetness:200 g/L')).toContain(
    'Write on every bottle: “Not in pregnancy. Keep out of reach of children.”',
  )
})

test('tells from how much on the law asks for the words, where that law holds', async () => {
  const of = 'liquorice + coffee + raisins'
  const keys = ['law_liquorice', 'law_caffeine', 'law_sulphites']
  expect(await noteKeys(labelOf(of))).toEqual(expect.arrayContaining(keys))
  expect(await noteKeys(labelOf(of, 'UK'))).toEqual(expect.arrayContaining(keys))
  expect((await noteKeys(labelOf(of, 'US'))).filter((key) => keys.includes(key))).toEqual([])
  const text = await said(labelOf(of))
  expect(text).toContain('from 300 mg of glycyrrhizinic acid in a litre')
  expect(text).toContain('with 2.1 g a litre')
  expect(text).toContain('above 150 mg in a litre')
  expect(text).toContain('from 10 mg in a litre')
})

test('tells apart a plant of which it knows the allergen, and one of which it knows nothing', async () => {
  expect(await noteKeys(labelOf('barley malt'))).toContain('allergen_known')
  expect(await noteKeys(labelOf('barley malt'))).not.toContain('unknown_plant')
  expect(await noteKeys(labelOf('dragonwort'))).toContain('unknown_plant')
  expect(await said(labelOf('barley malt with dragonwort'))).toMatch(
    /I don’t know “barley malt with dragonwort”.*Contains barley/,
  )
})

test('lists what is to be said', async () => {
  expect(await json(labelOf('hazelnuts + coffee + dragonwort'))).toMatchObject({
    data: { allergens: ['hazelnut'], advice: ['caffeine'], unknown: ['dragonwort'] },
  })
})

test('labels nothing that is never planned', async () => {
  const names = allRefusedNames.filter((_, index) => index % 11 === 0).map(({ name }) => name)
  expect(names.length).toBeGreaterThan(50)
  for (const name of names) {
    expect([name, await json(labelOf(name))]).toMatchObject([
      name,
      { error: { code: expect.stringMatching(/refused|ambiguous/), option: 'of' } },
    ])
  }
})

test.each(['zakkum', 'pestki moreli', 'oleander', 'apricot kernels'])(
  'labels %s as little as it plans it',
  async (of) => {
    const codeOf = async (line: string) => ((await json(line)) as { error?: { code: string } }).error?.code ?? null
    const planned = await codeOf(`/plan of:20 g ${of} spirit:1 l 50% unknown-ok:yes days:14`)
    expect(await codeOf(labelOf(of))).toBe(planned)
  },
)
