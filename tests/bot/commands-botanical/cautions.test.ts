import { expect, test } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { refusedNames } from '../../../core/botanical/refuse/refused-names.ts'
import { cautionKeys, faults, json, noteKeys, printed, reply } from '../commands-label/desk.ts'
import { flat } from '../flat.ts'

const MAKING = [
  'making_food_spirit',
  'making_no_flame',
  'making_not_for',
  'making_other_alcohol',
  'making_vapour',
  'law_and_doctor',
  'making_children',
  'making_spent_plants',
  'making_no_distilling',
  'making_no_lead',
  'making_no_dairy_egg',
  'cool_first',
]

test('says everything about the plants and the making, worst first', async () => {
  expect(await printed('/cautions of:8 lemons + 30 g ginger')).toMatchInlineSnapshot(`
    "1 caution for lemon peel and ginger, and 12 for any jar.

    • Some of what I warn of for lemon peel is from memory, not from a source I’ve
      read.
    • What I say about metal is from memory. The 40 % is worked out, not measured.

    ! Lemon peel: buy unwaxed. Scrubbing takes off only some of the wax.
    ! Use only spirit sold for drinking: any other alcohol can blind or kill.
    ! Keep spirit and strained plants away from flames, sparks and hot plates. Never
      heat it, and cool the syrup first.
    ! Label it, and lock it away from children and pets: a little can poison a
      child.
    ! Not in pregnancy, not for children, not before driving.
    ! Industrial, denatured, rubbing or fuel alcohol is poison, and nothing done at
      home makes it safe.
    ! From about 40 % its vapour can catch fire in a warm room, and hot syrup drives
      it off.
    ! Not if you’re pregnant or trying for a baby, under age, or about to drive,
      swim or use machines. On medicines, with liver disease or a past dependence?
      Ask a doctor or pharmacist. Your local law comes first.
    ! Strained plants still burn and intoxicate. Keep them from flames, hot ovens,
      children and pets.
    ! Don’t distil. It’s illegal without a licence almost everywhere, and the vapour
      can explode.
    ! Use glass with a tight lid. Spirit draws metal out of leaded crystal, old
      glazed pottery, copper, brass and galvanised metal.
    ! I don’t plan cream, milk or egg liqueurs: they spoil within days, and alcohol
      doesn’t make them safe.
    ! Cool the syrup completely first."
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
  const text = flat(await printed('/cautions wormwood + sage'))
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
