import type { Measured } from '../../../core/quantity/measured/measured.ts'
import { sugarGPerL } from '../../../core/quantity/measured/precision.ts'
import type { Sweetness } from '../../../core/quantity/quantities.ts'
import type { HydrometerRead, RefractometerRead } from '../../../core/quantity/read/parse-reading.ts'
import type { Gauging } from '../../../core/recipe/solve/gauged.ts'
import { type Call, call, callOfTexts } from '../../calls/call.ts'
import type { Given } from '../../calls/option.ts'
import { lineOf } from '../../calls/write-line.ts'
import { ChatError } from '../../chat/chat-error.ts'

/** What instruments showed, as `/measure` takes it. */
export interface Readings {
  readonly brix?: Given<RefractometerRead> | undefined
  readonly hydrometer?: Given<HydrometerRead> | undefined
  readonly before?: Given<HydrometerRead> | undefined
  readonly after?: Given<HydrometerRead> | undefined
  readonly sweetness?: Given<Sweetness> | undefined
}

const OPTIONS = ['brix', 'hydrometer', 'before', 'after', 'sweetness'] as const
type Option = (typeof OPTIONS)[number]

export const hasReadings = (readings: Readings): boolean => OPTIONS.some((option) => readings[option] !== undefined)

/** A call with what was typed and what is lacking. */
export function measureCall(
  jar: string | null,
  readings: Readings,
  kept: readonly Option[],
  more: { readonly [Name in Option]?: string } = {},
): Call {
  const texts = OPTIONS.flatMap((option) => {
    const text = more[option] ?? (kept.includes(option) ? readings[option]?.typed : undefined)
    return text === undefined ? [] : [[option, text] as const]
  })
  return callOfTexts('measure', [...(jar === null ? [] : [['jar', jar] as const]), ...texts]) ?? call('measure')
}

export const measureLine = (...given: Parameters<typeof measureCall>): string => lineOf(measureCall(...given))

/** What a hydrometer may show once the alcohol is gone, so that the line of an example runs. */
export function exampleAfter({ value: { value }, scale }: HydrometerRead): string {
  switch (scale) {
    case 'brix':
      return `${Math.round(value + 20)} Brix`
    case 'baume':
      return `${Math.round(value + 10)} Baumé`
    case 'percent':
      return '1.094'
    case 'g_per_ml':
      return `${(value + 0.07).toFixed(3)} g/ml`
    default:
      return (value + 0.07).toFixed(3)
  }
}

const more = (jar: string | null, readings: Readings, have: Option, lacking: { readonly [Name in Option]?: string }) =>
  new ChatError(
    'missing_option',
    'measure_more',
    { have, example: measureLine(jar, readings, [have], lacking) },
    { option: Object.keys(lacking)[0]! },
  )

/**
 * How it was measured; `known` is the sugar of the jar it stands in, where nothing else tells it. Null where the boiling is
 * still to come. Throws a question where a reading is lacking, or one is too many.
 */
export function gaugingGiven(readings: Readings, jar: string | null, known: Measured | null): Gauging | null {
  const { brix, hydrometer, before, after, sweetness } = readings
  const isBoiled = before !== undefined || after !== undefined
  if (isBoiled && (brix ?? hydrometer ?? sweetness) !== undefined) {
    const kept = before !== undefined && after !== undefined ? (['before', 'after'] as const) : null
    throw oneWay(measureLine(jar, readings, kept ?? ['brix', 'hydrometer', 'sweetness']))
  }
  if (isBoiled) {
    if (before === undefined) throw more(jar, readings, 'after', { before: exampleBefore(after!.is) })
    return after === undefined ? null : { method: 'boiled', before: stemOf(before), after: stemOf(after) }
  }
  if (hydrometer === undefined) {
    throw more(jar, readings, brix === undefined ? 'sweetness' : 'brix', { hydrometer: '1.035' })
  }
  if (brix !== undefined && sweetness !== undefined) {
    throw oneWay(measureLine(jar, readings, ['brix', 'hydrometer']))
  }
  if (brix !== undefined) return { method: 'two_instruments', brix: readOf(brix), hydrometer: stemOf(hydrometer) }
  const sugar = sweetness === undefined ? known : sugarGPerL(sweetness.is)
  if (sugar === null) throw more(jar, readings, 'hydrometer', { sweetness: '250 g/L' })
  return { method: 'known_sugar', hydrometer: stemOf(hydrometer), sugarGPerL: sugar }
}

const oneWay = (example: string) => new ChatError('too_many_options', 'measure_one_way', { example })

const exampleBefore = ({ scale, value: { value } }: HydrometerRead): string =>
  scale === 'sg' ? (value - 0.05).toFixed(3) : '1.021'

const readOf = ({ is: { value, atC } }: Given<RefractometerRead>) => ({ value, atC })
const stemOf = ({ is: { value, scale, atC } }: Given<HydrometerRead>) => ({ value, scale, atC })
