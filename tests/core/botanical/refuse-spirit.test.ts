import { expect, test } from 'vitest'
import { expectDrinkable } from '../../../core/botanical/refuse-spirit.ts'
import { refusal } from '../quantity/refusal.ts'

test.each([
  'denatured alcohol',
  'industrial alcohol',
  'rubbing alcohol',
  'isopropyl',
  'methylated spirit',
  'surgical spirit',
  'fuel ethanol',
  'bio-ethanol',
  'bioetanolo',
  'hand sanitiser',
  'hand sanitizer gel',
  'alcool denaturato',
  'alcol etilico denaturato rosa',
  'alcool rosa',
  'ALCOOL ROSA',
  'spirito denaturato',
  'moonshine',
  'home-distilled spirit',
  'lab ethanol',
  "perfumer's alcohol",
  'fireplace alcohol',
  'white spirit',
  'alcool per pulizie',
  'metanolo',
  'gel igienizzante',
  'Brennspiritus',
  'vergällter Alkohol',
  'Isopropylalkohol',
  'alcool à brûler',
  'alcool ménager',
  'alcool dénaturé',
  'alcohol de quemar',
  'alcohol desnaturalizado',
  'alcohol sanitario',
])('%s is no spirit to drink', (words) => {
  expect(refusal(() => expectDrinkable(words))).toBe('refused refused_spirit')
})

test.each(['denaturd', 'methylted', 'isopropil', 'denaturat0'])('%s is asked back', (words) => {
  expect(refusal(() => expectDrinkable(words))).toBe('ambiguous near_refused_spirit')
})

test.each([
  '',
  'vodka',
  'grappa',
  'alcol puro',
  'alcool buongusto',
  'neutral grain spirit',
  'ethanol',
  'pink gin',
  'gin rosa',
  'rum bianco',
  'alcool non denaturato',
  'undenatured',
  'Polish rectified spirit',
  'brandy',
  'absolutely plain vodka',
  'Weingeist',
  'Neutralalkohol',
  'reiner Alkohol',
  'alcool neutre surfin',
  'alcohol rectificado',
  'aguardiente',
  'tequila',
])('“%s” is fine', (words) => {
  expectDrinkable(words)
})
