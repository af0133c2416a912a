import { describe, expect, test } from 'vitest'
import { expectNotRefused } from '../../../core/botanical/refuse/refusal.ts'
import { HOLDS_PIPS, HOLDS_STONES, refusalRules, UNNAMED } from '../../../core/botanical/refuse/refusal-rules.ts'
import { refusal, refusedValues } from '../quantity/refusal.ts'

const phrasings = {
  essential_oils: [
    'lemon essential oil',
    'oil of lemon',
    'peppermint oil',
    '5 drops of lavender',
    'olio di lavanda',
    'essenza di rosa',
  ],
  kernels: [
    'cherry stones',
    'kernels of apricots',
    'the pits of 20 peaches',
    'mandorle di pesca',
    'almonds, bitter',
    'cherries with cracked stones',
    'loquat stones',
    'noccioli di nespola',
    'prune stones',
    'bullace pits',
  ],
  foraged: [
    'foraged berries',
    'herbs I picked in the forest',
    'bacche selvatiche',
    'erbe raccolte nei campi',
    'hedgerow berries',
    'foraged bay leaves',
    'wild jasmine',
    'acacia blossom from the hedgerow',
    'burdock root I dug',
  ],
  unnamed_plant: [
    'some red berries',
    "a plant I don't know",
    'pianta che non conosco',
    'unidentified roots',
    'erbe miste',
    'not sure what it is',
  ],
  wild_garlic: [
    'ramsons',
    'garlic, wild',
    "bear's garlic",
    'aglio degli orsi',
    'foraged garlic',
    'wild chives',
    'Allium ursinum',
  ],
  wild_carrot_family: [
    'foraged fennel',
    'wild parsnips',
    'Queen Annes lace',
    'fennel picked in the wild',
    'angelica found by the river',
    'finocchio raccolto in natura',
  ],
  self_dug_gentian: [
    'gentian I dug in the mountains',
    'wild gentian',
    'foraged gentian root',
    'genziana raccolta in montagna',
    'genziana selvatica',
  ],
  florist_flowers: [
    'roses from the florist',
    'a bouquet',
    'rose del fioraio',
    'supermarket roses',
    'bunch of roses',
    'garden-centre roses',
  ],
  elderberry: [
    'elder berries',
    'dried elderberries',
    'berries of the elder',
    'bacche di sambuco',
    'Sambucus nigra berries',
  ],
  dairy_egg: ['whipping cream', '3 egg yolks', "tuorli d'uovo", 'latte condensato', 'irish cream', '6 uova'],
  stone_fruit_leaves: [
    'leaves of the cherry tree',
    'foglie di pesco',
    'cherry tree leaves',
    'plum-leaves',
    'foglie di mandorlo',
  ],
  medicines: ['aspirin', 'sleeping tablets', '2 pills', 'compresse', 'antibiotics', 'sciroppo per la tosse'],
}

describe.each(Object.entries(phrasings))('the rule %s', (id, texts) => {
  test.each(texts)('holds for “%s”', (text) => {
    expect(refusedValues(() => expectNotRefused(text))).toMatchObject({ id })
    expect(refusedValues(() => expectNotRefused(`ginger + ${text} + 2 lemons`))).toMatchObject({ id })
  })
})

test.each([
  'foraged elderflowers',
  'wild strawberries',
  'mirtilli selvatici',
  'pine buds from the forest',
  'sloes picked from a hedge',
  'violets picked in the woods',
])('%s is asked about: named, but from the wild', (text) => {
  expect(refusal(() => expectNotRefused(text))).toBe('ambiguous foraged_botanical')
})

test('no rule is met by amounts alone, which are not asked about', () => {
  const units = ['mg', 'kg', 'ml', 'cl', 'dl', 'lb', 'oz', 'vol', 'g', 'l', 'c', 'f', 'x']
  const amounts = ['95', '2 x', '1 95', ...units.flatMap((unit) => [unit, `750 ${unit}`, `750${unit}`, `1 l ${unit}`])]
  expect(amounts.filter((text) => refusalRules.some(({ pattern }) => pattern.test(text)))).toEqual([])
  expect(amounts.filter((text) => UNNAMED.test(text) || HOLDS_PIPS.test(text) || HOLDS_STONES.test(text))).toEqual([])
})
