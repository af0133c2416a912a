import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { runningAmong } from '../bits/jars-of.ts'
import { isSpan } from '../bits/steep-span.ts'
import type { TalkReading } from '../frames/reading.ts'
import { callReading } from '../memory/rule.ts'

const LONG =
  /\b(?:too (?:long|short|much|little)|(?:long )?enough|ok(?:ay)?|fine|all ?right|bad|sensible|harmful|overdoing it|tropp[oaie]|bast(?:a|ano|eranno)|abbastanza|sufficient[ei]|va bene|vanno bene|poc(?:o|hi|he))\b/

const ASKS =
  /^(?:(?:and|so|but|e|ma) )*(?:is|are|was|would|will|wouldnt|isnt|arent|can|could|may|should|do|does|e|sono|bast\p{L}*|va|vanno|posso|possono|un|due|tre|una|\d+|a|an)\b/u

/** Of the freezer, the drink or the bottles something else is asked. */
const OTHER =
  /\b(?:freezer|fridge|rest(?:ing)?|bottled|bottles?|keep|keeps|drink|drinking|old|syrup|congelatore|frigo|bottigli[ae]|riposo|riposare)\b/

/**
 * `Is 2 months on the lemons too long`, `basta una settimana per lo zenzero`: how long that plant is left in, by the catalogue, or the
 * jar as it stands where no plant is named. Null for everything else.
 */
export function steepLongAsked({ bits, typed, jars, has }: Sentence): TalkReading | null {
  const spans = bits.filter(isSpan)
  const [span, another] = spans
  if (span === undefined || another !== undefined || typed.tokens.length > 16) return null
  const words = wordsAlone(typed)
  const isAsked = typed.text.includes('?') || ASKS.test(words)
  if (!isAsked || !LONG.test(words) || OTHER.test(words) || has('strained', 'started', 'wish')) return null
  const others = bits.filter((bit) => bit !== span)
  const plants = others.filter(({ kind, with: place }) => kind === 'plant' && place === undefined)
  if (others.some((bit) => bit.kind !== 'jar' && !plants.includes(bit))) return null
  const [plant, second] = plants
  if (plant !== undefined && second === undefined)
    return callReading({ command: 'botanical', options: { of: plant.text.toLowerCase() } })
  const running = runningAmong(jars).filter(({ stage }) => stage === 'steeping')
  const jar = others.find(({ kind }) => kind === 'jar')?.text ?? (running.length === 1 ? running[0]!.name : undefined)
  return plant !== undefined || jar === undefined ? null : callReading({ command: 'jar show', options: { jar } })
}
