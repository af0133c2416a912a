import { describe, expect, it, test } from 'vitest'
import { botanicalById, catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { askedPrice } from '../../../core/cost/asked-price.ts'
import { pricesRead, withPrices } from '../../../core/cost/keep-prices.ts'
import { MOST_PRICES, type Price } from '../../../core/cost/price.ts'
import { parsePrices, readPrice, writePriceTyped } from '../../../core/cost/read-price.ts'
import { materialIds } from '../../../core/quantity/materials.ts'

const LEMON = { kind: 'plant', id: 'lemon_peel', isDried: false, isPeel: false }

describe('a price', () => {
  test.each([
    ['lemons 4/kg', LEMON, { unit: 'g', amount: 1000 }],
    ['the lemons were 4 euro a kilo', LEMON, { unit: 'g', amount: 1000 }],
    ['limoni 4,00 € al chilo', LEMON, { unit: 'g', amount: 1000 }],
    ['lemons 30 cents each', LEMON, { unit: 'piece', amount: 1 }],
    ['10 lemons 40p each', LEMON, { unit: 'piece', amount: 1 }],
    ['lemons 3.50 for 6', LEMON, { unit: 'piece', amount: 6 }],
    ['10 lemons 4', LEMON, { unit: 'piece', amount: 10 }],
    ['lemon peel 30/kg', { ...LEMON, isPeel: true }, { unit: 'g', amount: 1000 }],
    [
      'vanilla 1,50 € a pod',
      { kind: 'plant', id: 'vanilla', isDried: false, isPeel: false },
      { unit: 'piece', amount: 1 },
    ],
    ['sugar 1.20/kg', { kind: 'sweetener', material: 'white_sugar' }, { unit: 'g', amount: 1000 }],
    ['1 kg sugar 1.20', { kind: 'sweetener', material: 'white_sugar' }, { unit: 'g', amount: 1000 }],
    ['honey 6 for 500 g', { kind: 'sweetener', material: 'honey' }, { unit: 'g', amount: 500 }],
    [
      'spirit 95% 18/l',
      { kind: 'spirit', abvPercent: expect.closeTo(95, 9), drink: null },
      { unit: 'ml', amount: 1000 },
    ],
    [
      'gin 40% £22 for 700 ml',
      { kind: 'spirit', abvPercent: expect.closeTo(40, 9), drink: 'gin' },
      { unit: 'ml', amount: 700 },
    ],
    ['vodka $25 a bottle', { kind: 'spirit', abvPercent: null, drink: 'vodka' }, { unit: 'ml', amount: 750 }],
    ['rum 22 bucks/bottle', { kind: 'spirit', abvPercent: null, drink: 'rum' }, { unit: 'ml', amount: 750 }],
    ['gin was $18 for a fifth', { kind: 'spirit', abvPercent: null, drink: 'gin' }, { unit: 'ml', amount: 750 }],
    ['empty bottles $2', { kind: 'bottle', volumeMl: null }, { unit: 'piece', amount: 1 }],
    ['alcohol 24 a litre', { kind: 'spirit', abvPercent: null, drink: null }, { unit: 'ml', amount: 1000 }],
    ['bottles 0.80 each', { kind: 'bottle', volumeMl: null }, { unit: 'piece', amount: 1 }],
    ['500 ml bottles 0.80', { kind: 'bottle', volumeMl: 500 }, { unit: 'piece', amount: 1 }],
    ['jaboticaba 9/kg', { kind: 'food', name: 'JABOTICABA' }, { unit: 'g', amount: 1000 }],
  ])('%s', (text, priced, per) => {
    expect(parsePrices(text)).toEqual([expect.objectContaining({ kind: 'given', priced, per })])
  })

  test.each([
    ['Bay leaf, dried 4/kg', ['bay_leaf']],
    ['Bay leaf, dried none', ['bay_leaf']],
    [
      'lemons 4/kg, Bay leaf, dried 4/kg, cinnamon, Ceylon 30/kg and limes 3/kg',
      ['lemon_peel', 'bay_leaf', 'cinnamon_ceylon', 'lime_peel'],
    ],
    ['Coffee beans, whole 20/kg + Cinnamon,  cassia ? per kg', ['coffee_whole', 'cinnamon_cassia']],
  ])('is of a plant whose name has a comma: %s', (text, ids) => {
    expect(parsePrices(text).map(({ priced }) => priced.kind === 'plant' && priced.id)).toEqual(ids)
  })

  it('is asked for where a comma parts two things and only the second has one', () => {
    expect(() => parsePrices('lemons, sugar 1.20/kg')).toThrow('price_not_read')
    expect(() => parsePrices('lemons, limes 3/kg')).toThrow('price_not_read')
    expect(() => parsePrices('lemons & limes 3/kg')).toThrow('price_not_read')
  })

  it('comes with others, joined as people join them', () => {
    expect(parsePrices('lemons 4/kg + sugar 1,20/kg; honey 9/kg, spirit 95% 18/l and bottles 0.80 each')).toHaveLength(
      5,
    )
  })

  test.each([
    ['lemons 4', 'price_per_what'],
    ['lemons 4 a bag', 'price_per_what'],
    ['lemons 4 per dozen boxes', 'price_per_what'],
    ['spirit 95% 18 each', 'price_per_what'],
    ['sugar 1.20/l', 'price_per_what'],
    ['lemons', 'price_not_read'],
    ['lemons 1.234/kg', 'price_not_read'],
    ['lemons -4/kg', 'price_not_read'],
    ['lemons 4/kg + + sugar 1/kg', 'dangling_plus'],
    ['zorble 4/kg', 'unknown_botanical'],
    ['methylated spirits 4/l', 'refused_botanical'],
    ['deadly nightshade 4/kg', 'refused_botanical'],
  ])('“%s” is refused with %s', (text, problem) => {
    expect(() => parsePrices(text)).toThrow(problem)
  })

  it('is kept in its maker’s words, and read as it was', () => {
    for (const typed of parsePrices('lemons 4,50 €/kg + gin 40% £22 for 700 ml + bottles 80p each + 10 limes 3')) {
      if (typed.kind !== 'given') throw new Error(typed.kind)
      const { kind: _, ...read } = typed
      expect(readPrice(typed.price)).toEqual(read)
      expect(parsePrices(writePriceTyped(typed))).toEqual([typed])
    }
    expect(readPrice({ of: 'zorble', amount: '4', per: 'kg' })).toBeNull()
  })
})

describe('the prices kept', () => {
  const keep = (kept: readonly Price[], text: string) => withPrices(kept, parsePrices(text))
  const texts = (kept: readonly Price[]) => kept.map(({ of, amount, per }) => `${of} ${amount} ${per}`)

  it('have one of each thing, the last', () => {
    const kept = keep(keep([], 'lemons 4/kg + sugar 1.20/kg'), 'limoni 5/kg + spirit 95% 18/l')
    expect(texts(kept)).toEqual(['sugar 1.20 kg', 'limoni 5 kg', 'spirit 95% 18 l'])
    expect(texts(keep(kept, 'sugar none + gin 40% 22/700 ml'))).toEqual([
      'limoni 5 kg',
      'spirit 95% 18 l',
      'gin 40% 22 700 ml',
    ])
  })

  it('ask where a question mark stands, and are no more than can be kept', () => {
    expect(() => keep([], 'lemons ?/kg')).toThrow('price_asked')
    const many = catalogue.slice(0, MOST_PRICES + 1).map(({ names }) => ({ of: names.title, amount: '1', per: 'kg' }))
    expect(() => keep(many.slice(0, MOST_PRICES), 'sugar 1/kg')).toThrow('too_many_prices')
  })

  it('stay where nobody can read them any more, and count for nothing', () => {
    const kept = [{ of: 'zorble', amount: '4', per: 'kg' }]
    expect(texts(keep(kept, 'sugar 1/kg'))).toEqual(['zorble 4 kg', 'sugar 1 kg'])
    expect(pricesRead(kept)).toEqual([])
  })
})

it('is asked for in words that are read as the thing: every plant, fresh and dried, and all that sweetens', () => {
  const plants = catalogue.flatMap(({ id, names }) => {
    const forms = botanicalById(id).driedPerFresh === null ? [false] : [false, true]
    return forms.map((isDried) => ({ id, name: names.title, isDried }))
  })
  const mute = plants.flatMap(({ id, name, isDried }) => {
    const plant = { id, name, isDried, massG: 500, count: null, unit: null, ofZest: false }
    const asked = askedPrice({ kind: 'plant', plant })
    const read = asked === null ? null : parsePrices(writePriceTyped(asked))[0]!.priced
    return read !== null && read.kind === 'plant' && read.id === id && read.isDried === isDried
      ? []
      : [`${id} ${isDried}`]
  })
  expect(mute).toEqual([])
  const food = { id: null, name: 'jaboticaba', isDried: false, massG: 30, count: null, unit: null, ofZest: false }
  expect(askedPrice({ kind: 'plant', plant: food })).toMatchObject({ of: 'jaboticaba', per: 'kg' })
  // Of a file edited by hand, or of a food that was known once.
  expect(askedPrice({ kind: 'plant', plant: { ...food, name: 'zorble' } })).toBeNull()
  const spice = { id: 'fennel_seed', name: 'fennel', isDried: false, count: null, unit: null, ofZest: false }
  const pers = [90, 110].map((massG) => askedPrice({ kind: 'plant', plant: { ...spice, massG } })?.per)
  expect(pers).toEqual(['100 g', 'kg'])
  for (const material of materialIds) {
    const asked = askedPrice({ kind: 'sweetener', sweetener: { material, massG: 500 } })!
    expect(parsePrices(writePriceTyped(asked))).toEqual([asked])
  }
})
