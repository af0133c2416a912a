import { ofTexts } from '../../../core/once.ts'
import { POISONED } from './drowsing.ts'
import { isClothesOnFire, isSpiritFire } from './flames.ts'
import type { HarmId } from './harm.ts'
import { isMouthful } from './hot-taste.ts'
import { isAskedOfThing } from './jar-deeds.ts'
import { type SaidOfHarm, saidIn, type WordClass, type WordSpan } from './said.ts'
import { GRAVE, hasSign, isAlarmed, isApart, isDenied, isOnlyAsked, SIGNS, signsIn, signsOf } from './signs.ts'
import { isAdult, isChild, isPet, isPlant } from './swallowing.ts'
import { isMethanol, isSpoiledDrunk } from './undrinkable-had.ts'
import { names, OTHERS, PEOPLE, victimOf } from './victim.ts'

/** `Will I go blind from homemade limoncello?`: of a drink that nobody has had, and nobody is ill. */
const WILL_IT =
  /(?:^| )(?:(?:will|can|could|would|does|do|might|may) (?:i|we|you|one|it|this|that|people|they|\w+)(?: (?:make|makes|me|you|us|people|really|actually|go|get))*|(?:puo|possono|si puo|potrebbe|fa)(?: (?:mi|ci|si|far|fare|diventare|davvero))*) $/

/** `My mother says it makes methanol and you go blind, is it true?`: heard of any drink, and asked. */
const HEARSAY =
  /(?:^| )(?:says?|said|saying|heard|read|claims?|tells?|told|thinks?|dice|dicono|sentito|letto) (?:\S+ )*(?:i|you|one|we|people|si|uno) (?:(?:can|could|will|might|may|go|going|get|become|diventa|resta) )*$/
const IS_TRUE = /\b(?:is|its|e) (?:(?:it|that|this|he|she) )?(?:really )?(?:true|right|vero)\b/

const isTaken = (said: SaidOfHarm): boolean => said.spans('swallowed').length + said.spans('partaken').length > 0

const isHeardOf = (said: SaidOfHarm, { from }: WordSpan): boolean =>
  HEARSAY.test(`${said.between(0, from)} `) && IS_TRUE.test(said.text) && !isTaken(said)

const isAskedOfDrink = (said: SaidOfHarm, span: WordSpan): boolean =>
  isHeardOf(said, span) || (WILL_IT.test(`${said.between(0, span.from)} `) && !isTaken(said))

/** All that is told of anybody is what is heard of any drink. */
const isOnlyHeardOf = (said: SaidOfHarm): boolean =>
  hasSign(said, ['sightless']) && SIGNS.every((name) => signsOf(said, name).every((span) => isHeardOf(said, span)))

const isBlind = (said: SaidOfHarm): boolean =>
  signsOf(said, 'sightless').some((span) => !isDenied(said, span) && !isAskedOfDrink(said, span))

const isSenseless = (said: SaidOfHarm): boolean =>
  GRAVE.some((name) => signsOf(said, name).length > 0) ||
  signsIn(said, OTHERS, ['limp', 'dying']).length > 0 ||
  (signsIn(said, PEOPLE, ['slack', 'dying', 'limp']).length > 0 &&
    (said.spans('swallowed').length > 0 || isAlarmed(said))) ||
  // `È caduto a terra e non si muove`: Italian leaves out who.
  isApart(signsIn(said, OTHERS, ['slack'])) ||
  isApart(
    (['limp', 'slack'] as const).flatMap((name) => signsOf(said, name).filter((span) => victimOf(said, span) === null)),
  )

const isGlassInEye = (said: SaidOfHarm): boolean =>
  said.spans('glassy').some((span) => said.near('intoEye', span, 6, 6))

const isGlassSwallowed = (said: SaidOfHarm): boolean =>
  said.spans('swallowed').some((span) => said.near('glass', span, 2, 6) && !isDenied(said, span))

const isSwelling = (said: SaidOfHarm): boolean => said.spans('swelling').some((span) => !isOnlyAsked(said, span))

/** An allergic reaction that is only asked about is none; a pen that is asked for is for somebody. */
const isShock = (said: SaidOfHarm): boolean =>
  said
    .spans('shock')
    .some((span) => !isDenied(said, span) && (!isOnlyAsked(said, span) || PEN.test(said.between(span.from, span.to))))

const PEN = /pen|inject|iniett/

/** `HELP!!!` is no command. */
const SHOUT = /^[^\p{L}/]*(?:he+lp+|aiu+to+)[^\p{L}]*![^\p{L}]*!\s*$/iu

/** Said of what has happened, not asked of what may. */
const isTold = (said: SaidOfHarm, name: WordClass): boolean =>
  said.spans(name).some((span) => !isOnlyAsked(said, span) && !isDenied(said, span))

const isEye = (said: SaidOfHarm): boolean =>
  isTold(said, 'intoFace') ||
  said.spans('intoEye').some((span) => !isOnlyAsked(said, span)) ||
  said.spans('eye').some((span) => said.near('splash', span, 9, 7))

const isBurnt = (said: SaidOfHarm): boolean =>
  said
    .spans('burnt')
    .some(
      (span) =>
        !said.near('smarting', span, 0, 0) &&
        !isDenied(said, span) &&
        !isOnlyAsked(said, span) &&
        !isMouthful(said, span),
    ) || signsIn(said, PEOPLE, ['scalded']).length > 0

const isMaybe = (said: SaidOfHarm, span: WordSpan): boolean => isOnlyAsked(said, span) || isAskedOfThing(said, span)

const isBurst = (said: SaidOfHarm): boolean =>
  said.spans('burst').some((span) => said.near('vessel', span, 4, 4) && !isMaybe(said, span)) ||
  said
    .spans('burstOpen')
    .some((span) => said.near('vessel', span, 6, 0) && !said.near('soft', span, 3, 0) && !isMaybe(said, span)) ||
  said.spans('wound').some((span) => !isDenied(said, span)) ||
  said.spans('blood').some((span) => said.near('broken', span, 8, 8))

/** One word in fear, and no more; `help` alone is a command. */
const CRY =
  /^ (?:(?:help|please|quick|its|an|aiuto|ho|ha|[.,]) )*(?:explosion|esplosione|intossicazione|aiuto|aiutoo|aiutatemi|aiutateci|sta male|sta malissimo|emergency|emergenza|poison(?:ed|ing)|avvelenat[oaie]|avvelenamento)(?: (?:help|please|aiuto|[.,]))* $/

/** `Help my grandson!`: so few words that nothing else is asked. */
const CRY_FOR =
  /^ (?:(?:help|please|quick|aiuto|aiutate|[.,]) )+(?:my |our |the |mio |mia |il |la )?(?:\w+ )?(?:[.,] )*$/

const isHurt = (said: SaidOfHarm): boolean =>
  CRY.test(said.text) ||
  (CRY_FOR.test(said.text) && /\b(?:my|our|mio|mia|nostr[oa])\b/.test(said.text) && names(said, TENDER)) ||
  (['collapse', 'pills', 'blast'] as const).some((name) => isTold(said, name)) ||
  said.spans('rescue').length > 0 ||
  said.spans('inhaled').some((span) => !isOnlyAsked(said, span)) ||
  said.spans('struck').some((span) => !isDenied(said, span) && !isOnlyAsked(said, span)) ||
  said
    .spans('hurt')
    .some(
      (span) =>
        !said.near('denied', { from: span.from, to: span.from }, 5, 0) && (names(said, PEOPLE) || isAlarmed(said)),
    )

/** Who is cried for. */
const TENDER = ['young', 'grown', 'adult', 'animal'] as const

/** What is worst first; the first that holds is the answer. */
const RULES: readonly (readonly [harm: HarmId, is: (said: SaidOfHarm) => boolean])[] = [
  ['clothes_on_fire', isClothesOnFire],
  ['spirit_fire', isSpiritFire],
  ['pet', isPet],
  ['methanol', (said) => isBlind(said) || (isMethanol(said) && !isOnlyHeardOf(said))],
  ['self_harm', (said) => said.spans('selfHarm').length > 0],
  ['unconscious_after_drinking', isSenseless],
  ['glass_burst', isGlassInEye],
  ['someone_hurt', (said) => isGlassSwallowed(said) || isSwelling(said) || isShock(said)],
  ['spirit_in_eye', isEye],
  ['burn', isBurnt],
  ['glass_burst', isBurst],
  ['swallowed_plant', isPlant],
  ['swallowed_undrinkable', isSpoiledDrunk],
  ['swallowed_spirit_child', isChild],
  ['swallowed_spirit_adult', isAdult],
  ['someone_hurt', isHurt],
]

/** What harm a text tells of, or null. Never throws. */
export const findHarm = ofTexts((text): HarmId | null => {
  const said = saidIn(text)
  if (SHOUT.test(text)) return 'someone_hurt'
  return RULES.find(([, is]) => is(said))?.[0] ?? null
})

/** What somebody had who is out of their senses, where that stays a danger once they wake up; or null. Never throws. */
export function poisonBehind(text: string): HarmId | null {
  const said = saidIn(text)
  return RULES.find(([harm, is]) => POISONED.includes(harm) && is(said))?.[0] ?? null
}
