import type { CallRead, VesselTaken } from '../frames/reading.ts'
import { fruitG } from './fruit-by-the-jar.ts'
import { type VesselSaid, vesselsIn, written } from './vessel-said.ts'

/** A text whose amounts by vessels stand in it in ml, and what each vessel was taken to hold. */
export interface ToldInMl {
  readonly text: string
  readonly taken: readonly VesselTaken[]
  /** Nobody knows how much came out. */
  readonly isOpen: boolean
}

const STRAINED = /\b(?:strain|sieve|filter|decant|drain|squeez|colat|filtrat|spremut)/i
const BOTTLED = /\b(?:bottled|imbottigli|gave|given|regalat)/i
const INTO = /\b(?:in|into|(?<!\b(?:comes?|came|amounts|amounted|up|near|nearer|close|down) )to|dentro|nel|nella)\s*$/i
/** Said between a straining and how much it came to, or alone right behind one. */
const ALONE =
  /^(?:(?:it|that|they|there|i|we|got|get|came|comes|come|to|out|at|as|fills?|filled|makes|made|gives|gave|is|was|were|s|ve|about|and|ha|ho|riempito|riempie|viene|venut[ao]|circa|e|è|sono|just|say|looks like|of it|in all|altogether|total|measured)\b|['’,.!])*$/i

/** What a straining that nobody measured is told with: `no idea how much`. */
const NO_IDEA =
  /[\s,;.–—-]*(?:\b(?:but|and|ma|e)\s+)?(?:\b(?:i|we)\s*(?:['’]ve|have)?\s*)?(?:\b(?:got|have)\s+)?\b(?:no idea|no clue|not sure|dont know|don['’]t know|dunno|haven['’]t a clue|couldn['’]t say|couldn['’]t tell you|(?:didn['’]t|did not|haven['’]t) measured?|non so|nessuna idea|non saprei)(?:\s+(?:of|di|it))?(?:\s+(?:how much|what it came to|what there is|the amount|quant[oai]|exactly))?(?:\s+(?:it|there|that|of it|i|we|is|was|s|came|out|to|i got|sia|ne|è|e|venut[oa]|in all|exactly|got|have|ho|ce))*(?=\s*[,.;!]|\s*$)/iu
/** Where it stands now, which tells no amount. */
const JUG =
  /\s+(?:in|into|nel|nella|in una|in un)\s+(?:(?:a|an|the|my|our|big|large|clean|old|glass|mixing|una|un)\s+)*(?:jug|bowl|basin|pan|saucepan|brocca|caraffa|ciotola)\b/iu

const OF = /^\s+(?:of|di|d['’])\s*/i
const SWEET_OR_WET =
  /^(?:(?:white|brown|caster|granulated|cane|tap|cold|warm|boiling|the|good|cheap|strong|plain)\s+)*(?:sugar|honey|water|syrup|zucchero|miele|acqua|vodka|gin|rum|brandy|whiske?y|grappa|bourbon|tequila|cognac|spirits?|alcohol|alcol|schnapps|everclear|moonshine)\b/i

const DRUNK_FROM = /mug$|glass$|tumbler$|cup$/
/** An amount of spirit that stands beside fruit by the jar. */
const POURED = /\b(?:bottles?|litres?|liters?|\d+ ?(?:l|ml|cl)|bottigli[ae]|litr[oi])\b/i

/** What was drained or poured from is a measure of what came out, where no other stands there. */
function ofStraining(text: string, all: readonly VesselSaid[], isBehind: boolean): readonly VesselSaid[] {
  const isTold = STRAINED.test(text) && !BOTTLED.test(text)
  return all.filter(({ from, to }) => {
    if (OF.test(text.slice(to)) && SWEET_OR_WET.test(text.slice(to).replace(OF, ''))) return false
    if (isTold) return !INTO.test(text.slice(0, from))
    return isBehind && ALONE.test(text.slice(0, from).trim()) && ALONE.test(text.slice(to).trim())
  })
}

/** A straining that nobody has measured. */
export const isUnmeasured = (step: CallRead | null): boolean =>
  step !== null && step.command === 'jar strain' && step.options.measured === undefined

/**
 * `Strained it, nearly filled a wine bottle`, `two mugs of vodka`, `strained it, no idea how much`: of whoever measures nothing the
 * vessel tells how much. `isBehind`: said right behind a straining that was not measured.
 */
export function toldByVessels(text: string, isUs: boolean, isBehind: boolean): ToldInMl {
  const isStrained = STRAINED.test(text) && !/\d\s?(?:ml|cl|l|litres?|litri|oz|cups?)\b/i.test(text)
  const isOpen = isStrained && NO_IDEA.test(text)
  const said = isOpen ? text.replace(NO_IDEA, '').replace(JUG, '') : text
  const all = vesselsIn(said, isUs)
  const strained = ofStraining(said, all, isBehind)
  const inAmounts = (each: VesselSaid): string | null => {
    if (strained.includes(each)) return written(each.ml)
    const of = OF.exec(said.slice(each.to))
    if (of === null || each.isPlain) return null
    const behind = said.slice(each.to + of[0].length)
    const isJar = /jar$/.test(each.one.name)
    if (!isJar && !DRUNK_FROM.test(each.one.name)) return null
    if (SWEET_OR_WET.test(behind)) return isJar ? null : written(each.ml)
    const weight = !isJar || POURED.test(said) ? fruitG(behind, each.ml) : null
    return weight === null ? null : `${weight} g`
  }
  const used = all.flatMap((each) => {
    const text = inAmounts(each)
    return text === null ? [] : [{ ...each, text }]
  })
  return {
    text: used.reduceRight((whole, each) => `${whole.slice(0, each.from)}${each.text}${whole.slice(each.to)}`, said),
    taken: used.map(({ one }) => one),
    isOpen: isOpen && strained.length === 0,
  }
}
