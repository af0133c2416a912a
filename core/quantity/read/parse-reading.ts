import { DomainError } from '../../domain-error.ts'
import type { Measured } from '../measured/measured.ts'
import { REFRACTOMETER_PLUS_MINUS_BRIX, stemPlusMinus } from '../measured/precision.ts'
import type { Assumption, StemScale } from '../quantities.ts'
import { type AcceptedRange, isWithin } from './accepted-ranges.ts'
import { atTemperature } from './amount-at.ts'
import { chooseReading, expectNumber } from './measure-at.ts'
import type { Reading } from './read-number.ts'
import { expectEnd, readText, shown, type TypedText, textFrom } from './tokens.ts'

/** What an instrument shows in a liquid. */
export interface InstrumentReading<Scale> {
  readonly kind: 'reading'
  /** As read; the ± is the stated one, else the larger of half the last digit and the instrument's own. */
  readonly value: Measured
  readonly scale: Scale
  /** The liquid's temperature where one was typed, else null: 20 °C. */
  readonly atC: number | null
  readonly assumed: readonly Assumption[]
}

export type HydrometerRead = InstrumentReading<StemScale>
export type RefractometerRead = InstrumentReading<'brix'>

const RANGES: { readonly [Scale in StemScale]: AcceptedRange } = {
  sg: { low: 0.7, high: 1.6 },
  sg_60f: { low: 0.7, high: 1.6 },
  g_per_ml: { low: 0.7, high: 1.6 },
  brix: { low: 0, high: 85 },
  baume: { low: 0, high: 50 },
  percent: { low: 0, high: 100 },
}

interface Scaled {
  readonly scale: StemScale
  /** How many of what was typed make one of the scale's own unit. */
  readonly per: number
}

const BRIX: Scaled = { scale: 'brix', per: 1 }
const scaledBy = (scale: StemScale, per = 1): Scaled => ({ scale, per })

/** In lower case, a space between pieces. */
const PHRASES: ReadonlyMap<string, Scaled> = new Map(
  (
    [
      ['sg|s . g .|s . g|specific gravity|gravity|20 / 20|sg 20 / 20|20 / 20 c|20 / 20 ° c', scaledBy('sg')],
      ['60 / 60|60 / 60 f|60 / 60 ° f|sg 60 / 60|sg 60 / 60 f|60 f / 60 f|60 ° f / 60 ° f', scaledBy('sg_60f')],
      ['g / ml|g / cm³|g / cm 3|g / cc|kg / l', scaledBy('g_per_ml')],
      ['g / l|kg / m³|kg / m 3', scaledBy('g_per_ml', 1000)],
      ['brix|bx|° bx|° brix|degrees brix|gradi brix|plato|° plato|° p', BRIX],
      [
        'baumé|baume|bé|° bé|° be|° baumé|° baume|degrees baumé|degrees baume|gradi baumé|gradi baume',
        scaledBy('baume'),
      ],
      ['%|% vol|% abv|vol|abv|percent|per cent', scaledBy('percent')],
    ] as const
  ).flatMap(([phrases, scaled]) => phrases.split('|').map((phrase) => [phrase, scaled] as const)),
)

const MOST_PIECES = 8

/** The longest scale that begins at piece `at`, or null. */
function scaleAt({ tokens }: TypedText, at: number): { readonly found: Scaled; readonly next: number } | null {
  let best: { found: Scaled; next: number } | null = null
  let phrase = ''
  for (let next = at + 1; next <= Math.min(at + MOST_PIECES, tokens.length); next++) {
    phrase += `${phrase === '' ? '' : ' '}${tokens[next - 1]!.text}`
    const found = PHRASES.get(phrase)
    if (found !== undefined) best = { found, next }
  }
  return best
}

/** `1035`: brewers leave out the point. */
const THOUSANDTHS: AcceptedRange = { low: 700, high: 1600 }

/** A bare number: a specific gravity where it can be one; else it is asked which scale it is of. */
function bareScale(typed: TypedText, readings: readonly Reading[]): Scaled {
  if (readings.some(({ value }) => isWithin(RANGES.sg, value))) return scaledBy('sg')
  if (readings.some(({ value }) => isWithin(THOUSANDTHS, value))) return scaledBy('sg', 1000)
  const number = readings[0]?.text ?? ''
  throw new DomainError('ambiguous', 'which_scale', {
    typed: shown(typed.text),
    choices: [`${number} Brix`, `${number} Baumé`, `${number}%`],
  })
}

function read(
  typed: TypedText,
  scaleFor: (readings: readonly Reading[]) => Scaled,
  toolOf: (scale: StemScale) => number,
): HydrometerRead {
  const before = scaleAt(typed, 0)
  const number = expectNumber(typed, before?.next ?? 0)
  const plusMinus = typed.tokens[number.next]?.text === '±' ? expectNumber(typed, number.next + 1) : null
  const from = plusMinus?.next ?? number.next
  const after = before === null || before.found.scale === 'sg' ? scaleAt(typed, from) : null
  const { scale, per } = after?.found ?? before?.found ?? scaleFor(number.readings)
  const { atC, next } = atTemperature(typed, after?.next ?? from)
  expectEnd(typed, next)
  const isFit = (value: number) => isWithin(RANGES[scale], value / per)
  const chosen = chooseReading(typed, number.readings, isFit, (text) => text)
  const value = chosen.value / per
  const stated = plusMinus?.readings[0]?.value
  if (stated !== undefined && stated / per > value) {
    throw new DomainError('bad_value', 'wide_plus_minus', { typed: shown(typed.text) })
  }
  const halfDigit = Number.isFinite(chosen.halfDigit) ? chosen.halfDigit / per : 0
  return {
    kind: 'reading',
    value: { value, plusMinus: stated === undefined ? Math.max(halfDigit, toolOf(scale)) : stated / per },
    scale,
    atC,
    // `1,035` is one gravity, however its comma is read.
    assumed: scale === 'brix' || scale === 'baume' ? [chosen.assumed].flatMap((each) => each ?? []) : [],
  }
}

/**
 * What a hydrometer shows: `1.035` (specific gravity), `1.035 60/60`, `1035`, `1.035 g/ml`, `8.7 Brix`, `4.9 Baumé`, `23.4%`,
 * each also with `at 24 C` or `±`. A bare number that is no gravity is asked back (`which_scale`).
 */
export function parseHydrometer(text: string): HydrometerRead {
  const typed = readText(text, 'hydrometer')
  return read(
    typed,
    (readings) => bareScale(typed, readings),
    (scale) => stemPlusMinus[scale],
  )
}

/** What a refractometer shows, Brix: `26.5`, `26.5 Brix`, `26.5 % Brix at 24 C`. */
export function parseBrix(text: string): RefractometerRead {
  const typed = readText(text, 'brix')
  const reading = read(
    typed,
    () => BRIX,
    () => REFRACTOMETER_PLUS_MINUS_BRIX,
  )
  const { scale } = reading
  if (scale !== 'brix' && scale !== 'percent') {
    throw new DomainError('bad_value', 'unexpected_text', {
      typed: shown(typed.text),
      extra: shown(textFrom(typed, 1)),
      wanted: 'brix',
    })
  }
  return { ...reading, scale: 'brix' }
}
