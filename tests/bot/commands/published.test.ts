import { expect, test } from 'vitest'
import { abvPercent, liquidFrom, mix, volumeMl } from '../../../core/liquid/liquid.ts'
import { ask, number, textOf } from './desk.ts'

// "About" is taken as the digits said: two litres to 0.05, 47 % vol to 0.5, 250 g/L to 5.
test('1 l of 95 %, 750 ml of water and 500 g of sugar make two litres of 47 % vol and 250 g/L (common practice, no source)', async () => {
  const json = await ask('/mix spirit:1 l strength:95% water:750 ml sugar:500 g')
  expect(Math.abs(number(json, 'volumeMl') - 2000)).toBeLessThanOrEqual(50)
  expect(Math.abs(number(json, 'abvPercent') - 47)).toBeLessThanOrEqual(0.5)
  expect(Math.abs(number(json, 'sugarGPerL') - 250)).toBeLessThanOrEqual(5)
})

test('a US drink: 1.5 fl oz of 80 proof hold 14.0 g of ethanol (USDA SR28; check case 4, within 0.1)', async () => {
  expect(Math.abs(number(await ask('/mix spirit:1.5 fl oz strength:80 proof'), 'ethanolG') - 14)).toBeLessThanOrEqual(
    0.1,
  )
})

test('100 l of ethanol and 100 l of water: 192.75 l of 51.8 % vol (wein-plus glossary, within 0.2 l)', () => {
  // No spirit is as strong, so the line that would say it is refused.
  const pure = { volumeMl: 100_000, sugarGPerL: 0 }
  const made = mix(liquidFrom({ ...pure, abvPercent: 100 }), liquidFrom({ ...pure, abvPercent: 0 }))
  expect(Math.abs(volumeMl(made) / 1000 - 192.75)).toBeLessThanOrEqual(0.2)
  expect(Math.abs(abvPercent(made) - 51.8)).toBeLessThanOrEqual(0.05)
})

// 27 CFR 30.66: 12.42 gallons of water to 100; both measured at the same temperature, so also at 20 °C within 0.02.
test('112 proof to 100 proof: 12.42 volumes of water to 100 (27 CFR 30.66, table 6)', async () => {
  const json = await ask('/dilute spirit:100 l strength:112 proof to-strength:100 proof')
  expect(Math.abs(number(json, 'waterMl') / 1000 - 12.42)).toBeLessThanOrEqual(0.03)
})

test('without sugar, ice at −18 °C takes less than 33.75 % vol (engineeringtoolbox.com, in a straight line; 1 K)', async () => {
  const at = number(await ask('/mix spirit:1 l strength:33.75%'), 'freezesAtC')
  expect(Math.abs(at + 18)).toBeLessThanOrEqual(1)
})

test('the reply of the issue: sugar, water, syrup, what it makes, and the freezer, in the first lines', async () => {
  const [first] = (await textOf('/syrup infusion:920 ml strength:90% to-strength:30% to-sweetness:250 g/L')).split(
    '\n\n',
  )
  expect(first?.replaceAll(/\s/g, ' ')).toBe(
    'Dissolve 690 g sugar in 1.47 l water, cool it, stir it into your 920 ml. Makes 2.76 l at 30 %, 250 g/L: five 500 ml bottles. Pours from the freezer.',
  )
})
