import { unlessRefused } from '../../../core/domain-error.ts'
import { volumeMl, water } from '../../../core/liquid/liquid.ts'
import { materialOf } from '../../../core/quantity/materials.ts'
import { parseSugar } from '../../../core/quantity/read/parse-sugar.ts'
import { wordAt } from '../../../core/quantity/read/tokens.ts'
import { anyUnitAt } from '../../../core/quantity/read/unit-at.ts'
import type { Unit } from '../../../core/quantity/read/units.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import type { ConvertedSaid, TalkReading } from '../frames/reading.ts'

/** What stands before the unit that is asked for: `in grams`, `how many US cups`. */
const TOWARD = /^(?:in|into|to|as|many|much|quant[ie]|per)$/
const OF_UNIT = /^(?:us|uk|american|imperial|metric|the)$/
const ASKED =
  /\b(?:how (?:much|many|heavy|big)|what(?:s| is| are| does| do)?|whats|convert|turn|weighs?|quant[oaie]|pes(?:a|ano)|converti)\b|\b(?:in|into|to) (?:us |fl )?\p{L}+(?: (?:please|pls|per favore))?[\s?.!]*$/iu

const MEASURED: ReadonlySet<Bit['kind']> = new Set(['volume', 'mass'])
const THINGS: ReadonlySet<Bit['kind']> = new Set(['sugar', 'water'])

const isPoured = ({ kind }: Pick<Unit, 'kind'>): boolean => kind === 'volume'

/** The one unit that is asked for, beside the amount that is said; null where none is, or several are. */
function unitAsked({ typed }: Sentence, amount: Bit): Unit | null {
  const found = typed.tokens.flatMap((_, at) => {
    if (at >= amount.from && at < amount.to) return []
    const unit = anyUnitAt(typed, at)?.unit
    if (unit === undefined || (unit.kind !== 'volume' && unit.kind !== 'mass')) return []
    const before = OF_UNIT.test(wordAt(typed, at - 1)) ? wordAt(typed, at - 2) : wordAt(typed, at - 1)
    return TOWARD.test(before) ? [unit] : []
  })
  const [only, ...others] = found
  return only === undefined || others.length > 0 ? null : only
}

type Known = Omit<ConvertedSaid, 'typed' | 'unit' | 'count'>

/** How heavy or how large it is; null where nothing tells that. */
function amountOf(amount: Bit, thing: Bit | undefined): Known | null {
  const [massG, ml] = amount.kind === 'mass' ? [amount.value, null] : [null, amount.value]
  if (thing === undefined) return { material: null, massG, volumeMl: ml, assumed: [] }
  if (thing.kind === 'water') {
    const mlPerG = volumeMl(water(1))
    return { material: 'water', massG: massG ?? ml! / mlPerG, volumeMl: ml ?? massG! * mlPerG, assumed: [] }
  }
  const read = unlessRefused(() => parseSugar(`${amount.text} ${thing.text}`))
  if (read === null) return null
  const { material, assumed } = read
  return { material, massG: read.massG, volumeMl: ml ?? read.massG / materialOf(material).pouredGPerMl, assumed }
}

/** `How much is 2 cups of sugar in grams`, `500 ml in cups`: an amount in another unit; null where none is asked for. */
export function measureAsked(sentence: Sentence): TalkReading | null {
  const { bits, typed } = sentence
  const [amount, second] = bits.filter(({ kind }) => MEASURED.has(kind))
  const [thing, another] = bits.filter(({ kind }) => THINGS.has(kind))
  const isOfOther = bits.some(({ kind }) => !MEASURED.has(kind) && !THINGS.has(kind))
  if (amount === undefined || second !== undefined || another !== undefined || isOfOther) return null
  if (!ASKED.test(typed.text)) return null
  const unit = unitAsked(sentence, amount)
  const known = unit === null ? null : amountOf(amount, thing)
  if (unit === null || known === null) return null
  const value = isPoured(unit) ? known.volumeMl : known.massG
  if (value === null) return null
  return { kind: 'converted', said: { ...known, typed: amount.text, unit: unit.key, count: value / unit.factor } }
}
