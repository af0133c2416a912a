import { countries } from '../../../core/label/countries.ts'
import type { Country } from '../../../core/label/country.ts'
import {
  DANGEROUS_GLASS_G,
  glassDanger,
  HEAVY_OCCASION_G,
  LIFE_THREATENING_G_PER_L,
  LIGHT_ADULT_KG,
} from '../../../core/label/one-glass.ts'
import { countryNamed, parseCountry, plainName, type TypedCountry } from '../../../core/label/parse-country.ts'
import { serving } from '../../../core/label/serving.ts'
import { isGlassToDilute } from '../../../core/liquid/neat.ts'
import { call } from '../../calls/call.ts'
import type { InputOf } from '../../calls/signatures.ts'
import { signature } from '../../calls/signatures.ts'
import { defineCommand } from '../../chat/command.ts'
import { inMore } from '../../chat/depth.ts'
import { nearest } from '../../chat/grammar/nearest.ts'
import type { Action } from '../../chat/reply.ts'
import { countryInZone } from '../../talk/emergency/country-of-zone.ts'
import type { Message } from '../../text/words.ts'
import { portionOf } from '../options/input-to-portion.ts'
import { assumptionNotes, kitchenOf } from '../options/input-units.ts'
import { byDepth } from '../reply/first-screen.ts'
import { caution, measuredData, row } from '../reply/outcome-reply.ts'

/** Codes of two or three letters are all near each other. */
const LEAST_LETTERS = 4

const LONG_NAMES = countries.flatMap(({ names }) => names).filter((name) => name.length >= LEAST_LETTERS)

/** The country that a mistyped name is near to. */
const nearestTo = ({ name }: TypedCountry): Country | null => {
  const plain = plainName(name)
  const meant = plain.length < LEAST_LETTERS ? null : nearest(plain, LONG_NAMES)
  return meant === null ? null : countryNamed(meant)
}

/** What is known of a country, and how much of that had to be assumed. */
interface Asked {
  /** What was typed, if anything. */
  readonly typed: TypedCountry | null
  /** Two letters of the person's own, where nothing was typed. */
  readonly ownCode: string | null
  /** Whether that comes of their time zone only. */
  readonly isByZone: boolean
  readonly country: Country | null
}

function askedFor(typed: TypedCountry | null, ownCode: string | null, zone: string): Asked {
  if (typed !== null) return { typed, ownCode: null, isByZone: false, country: typed.country }
  if (ownCode !== null) return { typed, ownCode, isByZone: false, country: countryNamed(ownCode) }
  const code = countryInZone(zone)
  const country = code === null ? null : countryNamed(code)
  return country === null
    ? { typed, ownCode: null, isByZone: false, country }
    : { typed, ownCode: code, isByZone: true, country }
}

const countryNotes = (
  input: InputOf<'serving'>,
  { typed, ownCode, isByZone, country }: Asked,
  meant: Country | null,
): readonly Message<'notes'>[] => {
  if (ownCode !== null && country === null) {
    return [{ group: 'notes', key: 'own_country_unknown', values: { code: ownCode } }]
  }
  if (country === null) {
    if (typed === null)
      return [
        {
          group: 'notes',
          key: 'name_a_country',
          values: { line: call('serving', { ...input, country: parseCountry('Italy') }) },
        },
      ]
    const values = { typed: typed.name, nearest: meant?.id ?? null }
    return [{ group: 'notes', key: 'unknown_country', values }]
  }
  const { id, drink, guidance } = country
  return [
    ...(ownCode === null
      ? []
      : [{ group: 'notes', key: isByZone ? 'zone_country' : 'own_country', values: { code: ownCode } } as const]),
    ...(drink === null ? [{ group: 'notes', key: 'no_drink_size', values: { country: id } } as const] : []),
    guidance === null
      ? { group: 'notes', key: 'no_guidance', values: { country: id } }
      : { group: 'notes', key: 'guidance', values: { country: id, guidance } },
  ]
}

const actionsFor = ({ pour, strength }: InputOf<'serving'>, meant: Country | null): readonly Action[] => {
  if (meant === null) return []
  const country = parseCountry(meant.names[0]!)
  const counted = call('serving', { pour, strength, country })
  return [{ label: { group: 'actions', key: 'count_in', values: { country: meant.id } }, call: counted }]
}

/** Where the limits of one glass are from. */
const glassNote: Message<'notes'> = {
  group: 'notes',
  key: 'one_glass',
  values: {
    heavyG: HEAVY_OCCASION_G,
    dangerousG: DANGEROUS_GLASS_G,
    adultKg: LIGHT_ADULT_KG,
    gPerL: LIFE_THREATENING_G_PER_L,
  },
}

/** Which country it was counted for, or could be. */
const FIRST_NOTES: ReadonlySet<string> = new Set([
  'unknown_country',
  'own_country',
  'zone_country',
  'own_country_unknown',
  'no_drink_size',
])

export const servingCommand = defineCommand({
  ...signature('serving'),
  topic: 'sums',
  isOfLineAlone: true,
  run(input, { settings, assumedZone }) {
    const strength = input.strength.is
    const pour = portionOf(input.pour.is, strength, null, 'label')
    const asked = askedFor(input.country?.is ?? null, settings.country, settings.zone ?? assumedZone)
    const { typed, country } = asked
    const drink = country?.drink ?? null
    const { ethanolG, drinks } = serving(pour, drink)
    const meant = typed && country === null ? nearestTo(typed) : null
    const danger = glassDanger(ethanolG.value)
    const counted = country === null || drinks === null ? null : { drinks, country: country.id }
    return {
      headline: {
        group: 'headlines',
        key: 'serving',
        values: { pourMl: pour.amount, abvPercent: pour.abvPercent, ethanolG, counted },
      },
      table: inMore([
        row('pure_alcohol', { group: 'cells', key: 'alcohol_spread', values: { massG: ethanolG } }),
        ...(country === null || drink === null || drinks === null
          ? []
          : [
              row('standard_drink', { group: 'cells', key: 'standard_drink', values: { country: country.id, drink } }),
              row('drinks', { group: 'cells', key: 'drinks', values: { drinks } }),
            ]),
      ]),
      sure: [],
      notes: byDepth(
        [
          ...assumptionNotes({ pour: input.pour, strength: input.strength }),
          ...countryNotes(input, asked, meant),
          ...(danger === null ? [] : [glassNote]),
        ],
        ({ key }: Message<'notes'>) => FIRST_NOTES.has(key),
      ),
      cautions: [
        ...(danger === null ? [] : [caution(`${danger}_glass`)]),
        ...(isGlassToDilute(strength.abvPercent) ? [caution('neat_spirit')] : []),
        ...inMore([caution('law_and_doctor')]),
      ],
      actions: actionsFor(input, meant),
      data: {
        ...measuredData({ ethanolG }),
        oneGlass: danger ?? 'none',
        drinkGPerServing: drink?.drinkG ?? null,
        ...(drinks === null ? { drinks: null, drinksPlusMinus: null } : measuredData({ drinks })),
      },
      kitchen: kitchenOf({ pour: input.pour, strength: input.strength }),
    }
  },
})
