import type { VesselTaken } from '../frames/reading.ts'
import { jarSizeWithin } from './jar-filled.ts'
import { roundly, SHARE, shareOf, written } from './vessel-said.ts'

const STRAINED = /\b(?:strain|sieve|filter|drain|squeez|came out|come out|colat|filtrat|spremut|uscit)/i

/** How much of the jar came out: `about two thirds of the jar`, `filled half the jar`, `due terzi del barattolo`. */
const PART = new RegExp(
  `(?<![\\p{L}\\d])(?:(?:fill(?:s|ed)|riempi(?:e|to|va))\\s+)?(?:(?:about|around|roughly|maybe|nearly|almost|just|circa|quasi)\\s+)*(?<share>${SHARE}|met[aà])(?:\\s+(?:of|di|del|dell['’]?|full))?\\s+(?:(?:the|a|that|my|our|il|un|del|same|il mio)\\s+)?(?<jar>(?:(?:\\S+\\s+){0,2}?)(?:jar(?:ful)?|kilner|demijohn|barattolo|vaso|vasetto))(?:\\s+(?:came|come|has come|è uscit[oa]|uscit[oa])(?:\\s+out)?)?(?![\\p{L}])`,
  'iu',
)

/** A part of the jar that came out of it, what the jar holds, null where nobody said, and the text without it. */
export interface ShareCameOut {
  readonly share: number
  readonly jar: VesselTaken | null
  readonly from: number
  readonly to: number
}

/** Told with a straining, or alone right behind one; null where no part of a jar is. */
export function shareCameOut(text: string, isBehind: boolean): ShareCameOut | null {
  if (!/jar|kilner|demijohn|baratt|vas[oe]/i.test(text) || text.includes('?')) return null
  const found = PART.exec(text)
  if (found === null) return null
  const [from, to] = [found.index, found.index + found[0].length]
  const around = `${text.slice(0, from)} ${text.slice(to)}`
  if (/\d\s?(?:ml|cl|g|kg|l|litres?|litri)\b/i.test(around)) return null
  if (!(isBehind && ALONE.test(around)) && !STRAINED.test(text)) return null
  const share = /^met/i.test(found.groups!.share!) ? 0.5 : shareOf(found.groups!.share!)
  return share === null ? null : { share, jar: jarSizeWithin(found.groups!.jar!), from, to }
}

const ALONE =
  /^(?:(?:it|that|i|we|got|get|came|comes|come|to|out|at|only|is|was|s|ve|about|and|so|of it|left|just|say|in all|there|è|e|ne|ho|sono|circa)\b|['’,.!\s])*$/i

/** The same by what the jar holds, ml. */
export const writtenShare = (share: number, jarMl: number): string => written(roundly(share * jarMl))
