import { type DensityAt, sugarOfBoiledGPerL } from '../../../core/liquid/measure/gauge.ts'
import { densityFromStemKgPerM3 } from '../../../core/liquid/measure/stem.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import { sugarGPerL } from '../../../core/quantity/measured/precision.ts'
import type { StemScale, Sweetness } from '../../../core/quantity/quantities.ts'
import type { HydrometerRead, RefractometerRead } from '../../../core/quantity/read/parse-reading.ts'
import type { Gauging } from '../../../core/recipe/solve/gauged.ts'
import { exampleAfter, exampleBefore, exampleSugarGPerL } from '../../../core/recipe/solve/gauging-example.ts'
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

/** As it is typed; a stem in % vol shows nothing once the alcohol is gone, another hydrometer does. */
function stemText(value: number, scale: StemScale): string {
  switch (scale) {
    case 'brix':
      return `${value.toFixed(1)} Brix`
    case 'baume':
      return `${value.toFixed(1)} Baumé`
    case 'g_per_ml':
      return `${value.toFixed(3)} g/ml`
    case 'sg_60f':
      return `${value.toFixed(3)} 60/60`
    default:
      return value.toFixed(3)
  }
}

const sugarScale = (scale: StemScale): StemScale => (scale === 'percent' ? 'sg' : scale)

const densityRead = (read: HydrometerRead): DensityAt => {
  const [tempC, { scale, value }] = [read.atC ?? 20, read]
  return { densityKgPerM3: densityFromStemKgPerM3({ value: value.value, scale, tempC }), tempC }
}

/** What a hydrometer may show once the alcohol is gone, so that the line of an example runs. */
export const afterText = (before: HydrometerRead): string => {
  const scale = sugarScale(before.scale)
  return stemText(exampleAfter(densityRead(before), scale), scale)
}

/** What it may have shown before. */
const beforeText = (after: HydrometerRead): string =>
  stemText(exampleBefore(sugarOfBoiledGPerL(densityRead(after)), sugarScale(after.scale)), sugarScale(after.scale))

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
    if (before === undefined) throw more(jar, readings, 'after', { before: beforeText(after!.is) })
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
  if (sugar === null) {
    const sweetness = `${exampleSugarGPerL(densityRead(hydrometer.is))} g/L`
    throw more(jar, readings, 'hydrometer', { sweetness })
  }
  return { method: 'known_sugar', hydrometer: stemOf(hydrometer), sugarGPerL: sugar }
}

const oneWay = (example: string) => new ChatError('too_many_options', 'measure_one_way', { example })

const readOf = ({ is: { value, atC } }: Given<RefractometerRead>) => ({ value, atC })
const stemOf = ({ is: { value, scale, atC } }: Given<HydrometerRead>) => ({ value, scale, atC })
