import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import { askedWhich } from '../../../core/botanical/find/asked-which.ts'
import type { KindTaken } from '../frames/reading.ts'
import { plantAnswered } from './plant-answered.ts'

/** Somebody who cannot tell, or to whom it is all one. */
const UNSURE =
  /\b(?:(?:don['’]?t|do not|can['’]?t|cannot|couldn['’]?t) (?:really )?(?:know|tell|say|mind|care)|no idea|not sure|unsure|dunno|no clue|haven['’]?t a clue|whichever|whatever|any(?: kind| sort| one| of them)?|either(?: one)?|(?:doesn['’]?t|does not|didn['’]?t) say|non (?:lo )?(?:so|saprei|dice|c['’]è scritto)|boh|una qualsiasi|quella che (?:c['’]è|capita)|fa lo stesso)(?!\p{L})/iu
/** What anybody has in the kitchen. */
const USUAL =
  /\b(?:supermarket|supermercato|shops?|shop-bought|store-bought|store|grocer(?:y|s|['’]s)?|corner shop|ordinary|normal[ei]?|usual|regular|standard|common|comune|basic|plain|everyday|just|only|solo|semplice(?:mente)?|e basta|classic[oa]?|solit[oa])(?!\p{L})/iu

/** What may stand beside it and says nothing more. */
const BESIDE =
  /^(?:i|im|we|it|its|it[’']s|is|that|thats|that[’']s|they|they[’']re|are|the|a|an|my|ours?|some|of|from|at|in|on|which|what|one|ones|kind|sort|type|stuff|thing|sorry|please|well|hm+|oh|really|only|just|to|be|honest|honestly|got|bought|have|has|had|you|get|can|packet|label|jar|tin|jarred|me|all|same|è|e|il|la|lo|le|del|dello|della|dal|di|al|che|tipo|quell[oa]|un[oa]?|ho|scusa|si|vende|vendono|trova|tutti|everybody|everyone|people|most|sells?|sold|pacchetto|sul|etichetta|stick|sticks|ground|stecc[ah]e?|local|whole)$/iu

const MOST_WORDS = 12

/** Whether somebody says that it is what everybody has, or that there is no telling; nothing else is said. */
function isUnsure(text: string, name: string): boolean {
  if (text.includes('?') || !(UNSURE.test(text) || USUAL.test(text))) return false
  const words =
    text
      .replace(UNSURE, ' ')
      .replace(new RegExp(USUAL.source, 'giu'), ' ')
      .match(/[\p{L}’']+/gu) ?? []
  const own = new Set(name.toLowerCase().match(/\p{L}+/gu))
  return words.length <= MOST_WORDS && words.every((word) => BESIDE.test(word) || own.has(word.toLowerCase()))
}

/**
 * `The supermarket one`, `I don’t know`, `just cinnamon`: the plants of a call with what shops sell in place of the one that was asked
 * about; `kind` null where no kind of it is the usual one. Null where something else is said.
 */
export function usualKind(
  of: string,
  said: string,
  isRead: (text: string) => boolean,
): { readonly of: string; readonly kind: KindTaken } | 'unsure' | null {
  const open = of.split(/\s*\+\s*/).find((item) => !isRead(item))
  if (open === undefined || !isUnsure(said, open)) return null
  const ask = askedWhich(open)
  if (ask?.usual === undefined) return UNSURE.test(said) ? 'unsure' : null
  const [name = ''] = botanicalById(ask.usual).names.en
  const answered = plantAnswered(of, [name], isRead)
  return answered === null ? null : { of: answered, kind: { ask: ask.id, id: ask.usual } }
}
