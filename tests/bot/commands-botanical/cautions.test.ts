import { expect, test } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { refusedNames } from '../../../core/botanical/refuse/refused-names.ts'
import { cautionKeys, faults, json, noteKeys, printed, reply } from '../commands-label/desk.ts'

const MAKING = [
  'making_food_spirit',
  'making_no_flame',
  'law_and_doctor',
  'making_children',
  'making_spent_plants',
  'making_no_distilling',
  'making_no_lead',
  'making_no_dairy_egg',
  'cool_first',
]
const oneLine = (text: string): string => text.replace(/\s+/g, ' ')

test('says everything about the plants and the making, worst first', async () => {
  expect(await printed('/cautions of:8 lemons + 30 g ginger')).toMatchInlineSnapshot(`
    "1 caution for lemon peel and ginger and 9 for the making, worst first.

    ! Only bought, taxed food spirit: industrial, denatured, rubbing or fuel alcohol
      blinds and kills, and nothing done at home makes it safe.
    ! Strong spirit burns, and from about 40 % vol on its vapour can catch fire in a
      warm room (derived): no flame, spark or hot plate near it, and never heat it.
    ! None in pregnancy or when trying for a baby, none before driving, swimming or
      working with machines, none for anybody under age; with medicines, liver
      disease or a past dependence ask a doctor or pharmacist. The law where you are
      comes before anything said here.
    ! Jars and bottles look and smell like sweets: label them and lock them away
      from children and animals. A little can poison a child (from memory, please
      check).
    ! Spent plants burn and intoxicate: no flame or hot oven, no children, no
      animals.
    ! Nothing here is distilling: that needs a licence nearly everywhere, and the
      vapour explodes.
    ! No leaded crystal, old glazed pottery, copper, brass or galvanised metal:
      spirit draws metal out (from memory, please check). Glass with a tight lid.
    ! I plan no milk, cream or egg: they spoil, and alcohol does not make them safe.
    ! Lemon peel (zest): buy untreated fruit; hot water and scrubbing take off some
      of the wax and fungicide of others, not all.
    ! Let the syrup cool to room temperature before it meets the spirit: hot syrup
      drives off flammable vapour."
  `)
  expect((await json('/cautions of:8 lemons + 30 g ginger')).data).toEqual({
    sweeteners: [],
    ids: ['lemon_peel', 'ginger'],
    hazards: ['citrus_postharvest'],
  })
})

test('has no limit of three', async () => {
  const line = '/cautions grapefruit + wormwood + liquorice + green walnut + sage'
  const keys = await cautionKeys(line)
  for (const key of MAKING) expect(keys).toContain(key)
  expect(keys.length).toBe(MAKING.length + 8)
  expect(keys[0]).toBe('botanical_hazard')
})

test('says a hazard of several plants once, with their names', async () => {
  const text = oneLine(await printed('/cautions wormwood + sage'))
  expect(text.match(/thujone acts/g)).toHaveLength(1)
  expect(text).toContain('Wormwood and sage leaves: keep to the amount. Never with epilepsy')
})

test('takes amounts, pieces and the same plant twice', async () => {
  expect((await json('/cautions lemon + 2 lemons + 1 cinnamon stick + gingr')).error.code).toBe('ambiguous')
  expect((await json('/cautions lemon + 2 lemons + 1 tsp black tea + gingr')).data.ids).toEqual([
    'lemon_peel',
    'tea_black',
    'ginger',
  ])
  expect(await noteKeys('/cautions gingr')).toContain('botanical_corrected')
  expect(await noteKeys('/cautions basil')).toContain('botanical_look')
})

test('answers for every plant', async () => {
  for (const { id, names, hazards } of catalogue) {
    const text = await printed(`/cautions ${names.en[0]}`)
    expect(text).not.toMatch(/NaN|undefined|null|\[object/)
    const { data } = await reply(`/cautions ${names.en[0]}`)
    expect(data.ids).toEqual([id])
    expect([...(data.hazards as readonly string[])].sort()).toEqual([...hazards].sort())
  }
})

test('refuses what is refused, wherever it stands', async () => {
  for (const { names } of refusedNames) {
    const [name] = names.split(', ')
    expect((await json(`/cautions of:"lemon + ${name} + ginger"`)).error.code).toBe('refused')
  }
})

test('needs a plant it knows', async () => {
  expect((await json('/cautions')).error).toMatchObject({ code: 'missing_option', option: 'of' })
  expect((await json('/cautions mint')).error.code).toBe('ambiguous')
  expect((await json('/cautions moon dust')).error.code).toBe('not_found')
})

test.each(['+', 'lemon +', '+ lemon', '30 g', '1 l moon dust', '__proto__', '🍋', '1e999 g ginger', '"'])(
  'keeps its feet at %j',
  async (typed) => {
    expect((await json(`/cautions of:${typed}`)).error.code).not.toBe('internal')
    expect(faults()).toEqual([])
  },
)
