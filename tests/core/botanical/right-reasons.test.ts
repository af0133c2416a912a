import { describe, expect, test } from 'vitest'
import { expectNotRefused } from '../../../core/botanical/refuse/refusal.ts'
import { refusedValues } from '../quantity/refusal.ts'
import { outcomeOf } from './outcome-of.ts'

// What each of these is and does: from memory.

describe('refused as', () => {
  test.each([
    ['mountain laurel', 'garden_poisons'],
    ['sheep laurel', 'garden_poisons'],
    ['Texas mountain laurel', 'garden_poisons'],
    ['laurowiśnia', 'cherry_laurel'],
    ['lauro rosa', 'oleander'],
    ['rose laurel', 'oleander'],
    ['rose bay', 'oleander'],
    ["devil's berries", 'nightshade'],
    ["devil's cherries", 'nightshade'],
    ['death cherries', 'nightshade'],
    ['meadow crocus', 'colchicum'],
    ['Solanum pseudocapsicum', 'garden_poisons'],
    ['noccioli di nespole', 'kernels'],
    ['Chinese almonds', 'kernels'],
    ['bitter apricot almonds', 'kernels'],
    ['elder stems', 'elder_raw'],
    ['elder twigs', 'elder_raw'],
    ['Juniperus virginiana', 'savin'],
    ['bog rosemary', 'garden_poisons'],
    ['Labrador tea', 'garden_poisons'],
    ['lupine', 'garden_poisons'],
    ['castor oil beans', 'castor'],
    ['castor oil plant', 'castor'],
    ['castor oil', 'castor'],
    ['croton oil', 'castor'],
    ['nicotine oil', 'tobacco'],
    ['hash oil', 'drugs'],
    ['CBD oil', 'drugs'],
    ['motor oil', 'chemicals'],
    ['banewort', 'nightshade'],
    ['kanna', 'drugs'],
    ["viper's bugloss", 'pa_plants'],
    ['poppers', 'drugs'],
    ['death camas', 'colchicum'],
    ['ackee', 'poisonous_raw'],
    ['milk thistle', 'milk_thistle'],
    ['almond butter', 'plant_milk'],
    ['peanut butter', 'plant_milk'],
    ['coconut milk', 'plant_milk'],
    ['mushrooms', 'mushrooms'],
    ['wild lettuce', 'drugs'],
    ['wild cherry bark', 'kernels'],
    ['risin', 'castor'],
    ['poppy seed', 'poppy_seed'],
    ['double cream', 'dairy_egg'],
    ['yellow jasmine', 'gelsemium'],
    ['hedge laurel leaves', 'cherry_laurel'],
    ['tomato stems', 'rhubarb_tomato'],
    ['tomato plant leaves', 'rhubarb_tomato'],
    ['potato sprouts', 'rhubarb_tomato'],
    ['rhubarb with leaves', 'rhubarb_tomato'],
    ['rhubarb tops', 'rhubarb_tomato'],
    ['ergot', 'ergot'],
    ['segale cornuta', 'ergot'],
    ['pasque flower', 'garden_poisons'],
    ['marsh marigold', 'garden_poisons'],
    ['darnel', 'garden_poisons'],
    ['firethorn', 'garden_poisons'],
    ['asparagus berries', 'garden_poisons'],
    ['moth balls', 'chemicals'],
    ['scilla', 'heart_poisons'],
    ['lungwort', 'pa_plants'],
    ['wolf’s bane', 'aconite'],
    ['thorn apple seeds', 'nightshade'],
    ['nespole con i semi', 'kernels'],
    ['albicocche e i loro noccioli', 'kernels'],
    ['blended apples with cores', 'kernels'],
    ['mashed pears with the core left in', 'kernels'],
    ['hammered sloes', 'cracked_stones'],
    ['sloes through the food processor', 'cracked_stones'],
    ['visciole ammaccate', 'cracked_stones'],
    ['prugne frantumate', 'cracked_stones'],
  ])('%s: %s', (name, id) => {
    expect(refusedValues(() => expectNotRefused(name))).toMatchObject({ id })
    expect(outcomeOf(`20 g ${name}`)).toBe('refused refused_botanical')
  })

  test.each([
    'apples with cores',
    'crushed apples',
    'vine tomato',
    'sour cherries with stones',
    'amarene con i noccioli',
    'crushed cherries, stoned',
  ])('%s: not refused', (name) => expect(() => expectNotRefused(name)).not.toThrow())

  test.each([
    ['lemon oil 5 ml', 'lemon oil'],
    ['30% oleander', 'oleander'],
    ['oleander: 5 g', 'oleander'],
    ['20 g mushrooms', 'mushrooms'],
  ])('%s: named without its amount', (typed, name) => {
    expect(refusedValues(() => expectNotRefused(typed))).toMatchObject({ name })
  })

  test.each(['pennyroyal oil', 'mugwort oil', 'neem oil', 'camphor oil', 'wormwood oil', 'nutmeg oil', 'genepi oil'])(
    '%s without “use the plant”',
    (name) => {
      expect(refusedValues(() => expectNotRefused(name))).toMatchObject({ id: 'essential_oils', instead: null })
    },
  )

  test('lavender oil: use lavender', () => {
    expect(refusedValues(() => expectNotRefused('lavender oil'))).toMatchObject({
      id: 'essential_oils',
      instead: 'lavender',
    })
  })

  test.each([
    ['20 g mushrooms', 'mushrooms'],
    ['500 g apricots with cracked stones', 'apricots with cracked stones'],
    ['1.5 kg of crushed sloes', 'crushed sloes'],
  ])('%s, said without its amount', (text, name) => {
    expect(refusedValues(() => expectNotRefused(text))).toMatchObject({ name })
  })
})

describe('no dead end', () => {
  test.each([
    'chokeberries',
    'honeyberries',
    'hop flowers',
    'dewberries',
    'wineberries',
    'curry leaf',
    'Kirschen',
    'Mispeln',
    'sapin',
    'blue berries',
    'black berries',
    'mixed berries',
    'frozen mixed berries',
    'holy basil',
    'butternut',
    'toffee',
    'chives',
    '10 lemons in a pressure cooker',
  ])('%s is not near anything refused', (name) => {
    expect(outcomeOf(`20 g ${name}`)).not.toMatch(/refused|near_refused/)
  })

  test.each(['blue berries', 'black berries'])('%s are planned', (name) => {
    expect(outcomeOf(`500 g ${name}`)).toBe('planned')
  })

  test.each(['mixed berries', 'frutti di bosco', 'garam masala', 'honey', 'toffee', 'vanilla extract', 'woodruff'])(
    '%s is asked about',
    (name) => {
      expect(outcomeOf(`20 g ${name}`)).toMatch(/^ambiguous unclear_botanical|planned/)
    },
  )
})
