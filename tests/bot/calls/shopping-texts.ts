import fc from 'fast-check'
import { joined, type Texts } from './quantity-texts.ts'

/** One of what is at hand. */
export const haveText: Texts = fc.oneof(
  joined(fc.constantFrom('500 g ', '1.5 kg ', ''), fc.constantFrom('sugar', 'honey', 'demerara')),
  joined(fc.constantFrom('30 g ', '2 ', ''), fc.constantFrom('lemons', 'ginger', 'dried apricots', 'vanilla pods')),
  joined(fc.constantFrom('1 l ', '700 ml gin ', '70 cl vodka '), fc.constantFrom('40%', '95%')),
  fc.constantFrom('4 bottles of 500 ml', 'bottles', 'a 1.5 l jar', '2 jars', 'muslin', 'coffee filters'),
)

export const priceTexts: Texts = fc.oneof(
  fc.constantFrom(
    'lemons 4 a kilo',
    'gin 40% £22 for 700 ml',
    'sugar none',
    '10 limes 3',
    'lemons ? per kg + bottles ? each',
    'honey 6,50 € for 500 g + sugar 1.20/kg',
  ),
  joined(
    fc.constantFrom(
      'lemons ',
      'sugar ',
      'honey ',
      'spirit 95% ',
      'gin 40% ',
      'bottles ',
      '500 ml bottles ',
      '10 limes ',
    ),
    fc.constantFrom('4', '€4.50', '4,50 €', '80p', '30 cents', '?', 'CHF 3.5', '12 kr'),
    fc.constantFrom('/kg', '/l', ' each'),
  ),
)
