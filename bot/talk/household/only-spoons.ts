import { CUP_ML } from '../../../core/quantity/customary.ts'
import { POURED_SUGAR_G_PER_ML } from '../../../core/quantity/materials.ts'
import type { TalkReading } from '../frames/reading.ts'
import type { Remembered } from '../memory/remembered.ts'
import { WORKED_OUT } from '../memory/rule.ts'

const KINDS = '(?:(?:table|tea)[ -]?)?spoons?|cups?|mugs?|cucchiai(?:n[oi]|o)?|tazz[ae]'
const SMALL = '(?:a |an |my |the |some |old |few |kitchen |wooden )*'
/** `I only have spoons`, `all I’ve got is a mug`, `non ho la bilancia, solo un cucchiaio`. */
const ONLY = new RegExp(
  `^(?:(?:i|we)(?:['’]ve)? (?:only|just) (?:have|got|own|use) |(?:i|we)(?:['’]ve)? (?:have|got) (?:only|just|nothing but) |(?:i['’]ve )?only got |only |just |all (?:i|we)(?:['’]ve)? (?:have|got)(?: here)? (?:is|are) |(?:ho |abbiamo )?(?:solo|soltanto) |(?:ho |abbiamo )(?:solo|soltanto) )(?:un |il |dei |i )?${SMALL}(?:${KINDS})(?:(?: (?:and|or|e|,) )${SMALL}(?:${KINDS}))*(?: (?:here|to measure(?: with)?|for measuring|per misurare|at home|in casa|no scales?|no scale))*[.!]?$`,
  'iu',
)
/** `How many spoons of sugar is that`, `in tablespoons`, `quanti cucchiai sono`. */
const ASKED = new RegExp(
  `^(?:(?:and )?(?:how (?:many|much)|what) (?:is (?:that|it|the sugar) in )?(?:level |heaped )?(?<many>${KINDS})(?: of sugar)?(?: (?:is|are|would|does|do|s)(?: (?:that|it|this|i need|i use|be))*| do i need)?|(?:what(?:['’]?s| is) |how much is )(?:that|it|the sugar) in (?<what>${KINDS})|(?:and )?in (?<in>${KINDS})(?: please)?|quanti (?<quanti>cucchiai(?:ni)?)(?: di zucchero)?(?: sono| è| servono)?)[?.!]*$`,
  'iu',
)

type Unit = 'tsp' | 'tbsp' | 'cup'

/** Three teaspoons to a tablespoon, sixteen of these to a cup, ml: NIST Handbook 44. */
const SPOON_ML: Readonly<Record<Unit, number>> = { tsp: CUP_ML / 48, tbsp: CUP_ML / 16, cup: CUP_ML }

/** The unit that such a measure is told in; a mug is none. */
const unitOf = (word: string): Unit | null =>
  /mug|^tazz/i.test(word) ? null : /tea|cucchiain/i.test(word) ? 'tsp' : /cup/i.test(word) ? 'cup' : 'tbsp'

/** The sugar of what was worked out last, by spoons or cups. */
function sugarIn(unit: Unit, said: Remembered | undefined): TalkReading | null {
  const massG = said?.worked?.drink?.sugarG ?? 0
  if (massG === 0) return null
  const volumeMl = massG / POURED_SUGAR_G_PER_ML
  const known = { material: 'white_sugar' as const, massG, volumeMl, assumed: [] }
  return {
    kind: 'converted',
    said: { ...known, typed: `${Number(massG.toPrecision(2))} g`, unit, count: volumeMl / SPOON_ML[unit] },
  }
}

/** Whoever has nothing but spoons is told the sugar of the plan by them, and without a plan how much a spoon takes. */
export function onlySpoons(text: string, said: Remembered | undefined): TalkReading | null {
  const line = text.trim()
  const asked = ASKED.exec(line)?.groups
  const word = asked?.many ?? asked?.what ?? asked?.in ?? asked?.quanti
  if (word !== undefined) {
    const unit = unitOf(word)
    // `In cups please`: all of the recipe, and not its sugar alone.
    if (unit === 'cup' && asked?.in !== undefined && WORKED_OUT.test(said?.call?.command ?? '')) return null
    return unit === null ? null : sugarIn(unit, said)
  }
  if (!ONLY.test(line)) return null
  const [first] = /\b(?:tea)?spoons?|cucchiai\w*|cups?/i.exec(line) ?? ['mug']
  const unit = unitOf(first)
  return (unit === null ? null : sugarIn(unit, said)) ?? { kind: 'topic', entry: 'no_scales', more: [] }
}
