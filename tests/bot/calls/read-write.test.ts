import fc from 'fast-check'
import { expect, test } from 'vitest'
import { z } from 'zod'
import { costOptions } from '../../../bot/calls/cost-options.ts'
import { jarOptions } from '../../../bot/calls/jar-options.ts'
import { type Given, givenFor, type option } from '../../../bot/calls/option.ts'
import { personOptions } from '../../../bot/calls/person-options.ts'
import { planOptions } from '../../../bot/calls/plan-options.ts'
import { quantityOptions } from '../../../bot/calls/quantity-options.ts'
import { shoppingOptions } from '../../../bot/calls/shopping-options.ts'
import { signatures } from '../../../bot/calls/signatures.ts'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { countryCodes } from '../../../core/label/parse-country-code.ts'
import { runs, SEED } from '../../runs.ts'
import {
  coolVolume,
  decimal,
  drink,
  hydrometer,
  joined,
  juiceName,
  liqueur,
  mass,
  number,
  part,
  percent,
  pouredWater,
  several,
  spread,
  strength,
  sweetenerName,
  sweetening,
  sweetness,
  type Texts,
  volume,
  warm,
} from './quantity-texts.ts'
import { haveText, priceTexts } from './shopping-texts.ts'
import { troubleTexts } from './trouble-texts.ts'

const plantNames = catalogue.map(({ names }) => names.en[0]!)
const plant = (amounts: readonly string[]): Texts => joined(fc.constantFrom(...amounts), fc.constantFrom(...plantNames))
const plants = (amounts: readonly string[]): Texts => several(plant(amounts), 3)
const amounts = ['', '30 g ', '2 ', '1.5 kg ', '1 lb ', '1 oz of ']

const days = fc.constantFrom('yesterday', 'today', '24 December', '2026-11-29', '3/4', 'last friday', '2 days ago')
const ahead = fc.constantFrom('tomorrow', '24 December', '2027-01-29', '3/4', 'in 2 weeks', 'next friday')
const word: Texts = fc.stringMatching(/^[\p{L}][\p{L}\p{N} '.-]{0,20}[\p{L}\p{N}]$/u)
const yesNo = fc.constantFrom('yes', 'no', 'sì', 'Si')
const zones = fc.constantFrom(...Intl.supportedValuesOf('timeZone'), 'UTC', 'rome', 'none')

const CODE = '11M4QTHJ0001MYJ0JNHC00VV9QPCBAHF5DGB80V3'
const code = joined(fc.constant(CODE), fc.constantFrom('', '@3m8qv0zt', '@3w5e11264sn.3m8qv0zt'))

/** Texts that each option may read; what it does not is left out. */
const TEXTS: ReadonlyMap<unknown, Texts> = new Map<unknown, Texts>([
  [quantityOptions.amount, fc.oneof(volume, mass)],
  [jarOptions.pouredOff, fc.oneof(volume, mass, part)],
  [quantityOptions.volume, volume],
  [quantityOptions.wishedVolume, coolVolume],
  [quantityOptions.sugar, several(sweetening, 3)],
  [
    quantityOptions.sugarOrKind,
    fc.oneof(several(sweetening, 2), sweetenerName, joined(sweetening, fc.constant(' + '), sweetenerName)),
  ],
  [quantityOptions.sweetener, sweetenerName],
  [quantityOptions.filler, juiceName],
  [quantityOptions.waters, several(pouredWater, 3)],
  [quantityOptions.waterOrKind, fc.oneof(juiceName, several(pouredWater, 2))],
  [quantityOptions.strength, strength],
  [quantityOptions.spiritStrength, percent],
  [quantityOptions.wishedStrength, percent],
  [quantityOptions.sweetness, sweetness],
  [quantityOptions.hydrometer, hydrometer],
  [quantityOptions.brix, joined(decimal(80), spread, fc.constantFrom('', ' Brix', ' °Bx'), warm)],
  [costOptions.prices, priceTexts],
  [shoppingOptions.codes, several(code, 3)],
  [shoppingOptions.have, several(haveText, 3)],
  [quantityOptions.ratio, fc.oneof(joined(decimal(9), fc.constantFrom(':', '/', ' to '), decimal(9)), number(9))],
  [quantityOptions.spirits, several(drink, 3)],
  [quantityOptions.parts, several(liqueur, 3)],
  [quantityOptions.country, fc.oneof(fc.constantFrom('Italy', 'U.S.A.', 'the Netherlands'), word)],
  [quantityOptions.month, fc.constantFrom('now', 'May', 'july', 'Dicembre', '3')],
  [quantityOptions.region, fc.constantFrom('EU', 'uk', 'USA', 'Italy', 'scozia')],
  [quantityOptions.botanical, plant(['', '30 g ', '2 '])],
  [quantityOptions.botanicals, plants(['', '30 g ', '2 ', '1 stick of '])],
  [quantityOptions.labelPlants, plants(['', '30 g ', '2 ', '1 stick of '])],
  [planOptions.plants, plants(amounts)],
  [
    planOptions.anyPlants,
    fc.oneof(
      plants(amounts),
      fc.constantFrom('300 g medlars', '10 lemons + 300 g medlars + 5 g ginger', '4', 'lemon and ginger'),
    ),
  ],
  [planOptions.code, code],
  [
    planOptions.bottles,
    several(fc.oneof(joined(fc.constantFrom('4 x ', '12 bottles of ', ''), coolVolume), fc.constantFrom('4', '12')), 3),
  ],
  [planOptions.yesNo, yesNo],
  [planOptions.days, joined(number(20), fc.constantFrom('', ' days', ' weeks', ' months', ' hours', ' settimane'))],
  [planOptions.start, ahead],
  [planOptions.readyBy, ahead],
  [jarOptions.name, word],
  [jarOptions.jar, word],
  [jarOptions.jarOrAll, word],
  [jarOptions.jars, joined(word, fc.constant(' + '), word)],
  [jarOptions.when, days],
  [jarOptions.until, fc.oneof(ahead, fc.constantFrom('later today', '18:00', 'in 3 hours', '6 pm'))],
  [jarOptions.rating, fc.constantFrom('1', '2', '3 stars', '4/5', '★★★★★')],
  [jarOptions.note, fc.string()],
  [jarOptions.place, fc.string({ maxLength: 40 })],
  [jarOptions.maker, fc.string({ maxLength: 40 })],
  [jarOptions.plantsIn, fc.string({ maxLength: 40 })],
  [jarOptions.addedAs, fc.constantFrom('layer', 'a layer', 'top up', 'Top-up', 'topping up')],
  [jarOptions.enzyme, fc.string({ maxLength: 40 })],
  [jarOptions.fining, fc.constantFrom('egg white', 'Egg', 'isinglass', 'casein', 'bentonite', 'agar agar', 'gelatin')],
  [jarOptions.drawn, fc.oneof(fc.constantFrom('yes', 'sì'), fc.oneof(volume, mass))],
  [jarOptions.entry, fc.integer({ min: 1, max: 999_999 }).map((seq) => `#${seq}`)],
  [
    jarOptions.entries,
    fc.array(fc.integer({ min: 1, max: 999 }), { minLength: 1, maxLength: 5 }).map((all) => all.join(' ')),
  ],
  [personOptions.units, fc.constantFrom('metric', 'US', 'imp', 'as typed', 'none')],
  [personOptions.country, fc.constantFrom(...countryCodes, 'Italy', 'none')],
  [personOptions.zone, zones],
  [personOptions.freezer, fc.constantFrom('-22', '-22 C', '0 F', '−18,5', '-8 °F', 'none', '-10.5 C')],
  [personOptions.reminderZone, zones],
  [personOptions.place, fc.constantFrom('here', 'private', 'Console')],
  [personOptions.time, fc.constantFrom('9', '18.30', '6 pm', 'noon', '00:01')],
  [personOptions.shake, fc.constantFrom('daily', 'every second day', 'mai')],
  [personOptions.pauseUntil, fc.oneof(ahead, fc.constantFrom('off', 'for good'))],
  [personOptions.confirm, joined(yesNo, fc.constantFrom('', ' 2/7/1'))],
  [personOptions.exportFormat, fc.constantFrom('json', 'CSV')],
  [personOptions.file, word],
  [personOptions.share, word],
  ...troubleTexts,
  [personOptions.shareToMake, fc.constant('3w5e11264sn.3m8qv0zt')],
])

const innerOf = (schema: unknown): z.ZodType =>
  (schema instanceof z.ZodOptional ? schema.unwrap() : schema) as z.ZodType

const options = [
  ...new Map(
    Object.entries(signatures).flatMap(([path, { shape }]) =>
      Object.entries(shape).map(([name, schema]) => [innerOf(schema), `${path} ${name}:`] as const),
    ),
  ),
]

/** How a day is read is told by its text. */
const told = (value: unknown): unknown => JSON.parse(JSON.stringify(value))

test.each(options.map(([schema, name]) => [name, schema] as const))(
  '%s writes every value as a text that it reads as the same',
  (_, schema) => {
    let read = 0
    fc.assert(
      fc.property(TEXTS.get(schema)!, (text) => {
        const found = schema.safeParse(text)
        if (!found.success) return
        read++
        const { is } = found.data as Given<unknown>
        const { typed } = givenFor(schema, is)
        const again = schema.safeParse(typed)
        expect(again.success ? told((again.data as Given<unknown>).is) : typed).toEqual(told(is))
      }),
      { numRuns: runs(25, 2000), seed: SEED },
    )
    expect(read).toBeGreaterThan(8)
  },
)

test('takes a value that was read before as it is', () => {
  const given = { typed: 'two cups', is: 'anything' }
  expect(quantityOptions.amount.parse(given)).toBe(given)
  expect(quantityOptions.amount.safeParse({ typed: 'two cups' }).success).toBe(false)
})

test('compiles no option that cannot write what it reads', () => {
  // @ts-expect-error without `write`
  const lacking: Parameters<typeof option<string>>[0] = { read: (text: string) => text }
  expect(Object.keys(lacking)).toEqual(['read'])
})
