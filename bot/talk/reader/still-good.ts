import { type SymptomId, symptoms } from '../../../core/trouble/symptoms.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { plainWords } from '../lexicon/plain-text.ts'

/** `Is it safe to drink?`, `can I still have it?`, `do I bin it?`: of what went wrong, whether it has to go. */
const STILL_GOOD =
  /\b(?:is (?:it|this|that|he|she) (?:still |all )?(?:safe|ok|okay|fine|right|alright|good|drinkable|usable|poisonous|toxic|dangerous|harmful|bad|ruined|spoiled|spoilt)|(?:safe|ok|okay|fine|dangerous) to (?:drink|eat|taste|keep|use|serve|give)|(?:can|may|could|should|do|dare) (?:i|we|you) (?:still |even |safely )?(?:drink|eat|taste|have|use|keep|save|serve|give|bin|throw|chuck)|(?:still|is it|safely) drinkable|(?:si puo|posso|possiamo) (?:ancora )?(?:ber\p{L}*|usar\p{L}*|tener\p{L}*|salvar\p{L}*)|(?:e|è) (?:ancora )?(?:sicur[oa]|buon[oa]|bevibile|pericolos[oa]|tossic[oa]|da buttare)|(?:devo|lo|la) butt\p{L}*)(?!\p{L})/u

export const isStillGoodAsked = (text: string): boolean => STILL_GOOD.test(plainWords(text))

const SMELLS_ODD =
  /\b(?:smells?|smelling|smelt|tastes?|tasting) (?:a bit |a little |really |very |so |kind of )?(?:odd|funny|strange|weird|wrong|bad|off|queer|peculiar|iffy|dodgy)\b|\b(?:odd|funny|strange|weird|bad|off) smell\b|\b(?:odore|sapore|gusto) (?:stran[oa]|cattiv[oa]|brutt[oa])\b|\b(?:puzza|ha un odore strano|sa di strano)\b(?! di)/

/** What an odd smell may be, the most dangerous first. */
const SMELLS: readonly SymptomId[] = ['solvent', 'rotten_egg', 'vinegar']

/** `It smells odd, is it safe?`: nobody can judge that before the smell has a name. */
export function oddSmell(text: string): TalkReading | null {
  if (!SMELLS_ODD.test(plainWords(text)) || !isStillGoodAsked(text)) return null
  const choices = SMELLS.map((id): CallRead => ({ command: 'trouble', options: { symptom: symptoms[id].en[0]! } }))
  return { kind: 'question', call: choices[0]!, about: { kind: 'which_reading' }, choices, leftOut: [] }
}
