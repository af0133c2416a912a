import { type Allergen, allergens } from '../../../../core/label/allergens.ts'
import type { ForGuests } from '../../../../core/label/for-guests.ts'
import type { GuestAdvice } from '../../../../core/label/guest-advice.ts'
import { listed } from '../phrases.ts'
import { unknownName } from '../plan/plan-words.ts'
import { allergenNames } from './allergen-names.ts'

/** Short, for they stand on a bottle; the first words of liquorice are those of Regulation (EU) 1169/2011, Annex III. */
const ADVICE: Readonly<Record<GuestAdvice, string>> = {
  medicines: 'Can change how medicines work: if you take any, ask a pharmacist first.',
  warfarin: 'Cranberry: if you take warfarin, ask a doctor first.',
  thujone: 'Contains thujone: not with epilepsy.',
  liquorice: 'Contains liquorice: people with high blood pressure should avoid excessive consumption.',
  quinine: 'Contains quinine: not with a heart rhythm disorder.',
  liver: 'Turmeric: not with liver disease.',
  gallstones: 'Not with gallstones.',
  caffeine: 'Contains caffeine.',
}

const sentence = (begins: string, of: readonly Allergen[]): readonly string[] =>
  of.length === 0 ? [] : [`${begins} ${listed(of.map((each) => allergenNames[each]))}.`]

/** `Contains hazelnut (a nut). May contain sulphites (from dried fruit).`; empty where there is none. */
export const allergenWords = (found: readonly Allergen[]): string =>
  [
    ...sentence(
      'Contains',
      found.filter((each) => allergens[each].is === 'certain'),
    ),
    ...sentence(
      'May contain',
      found.filter((each) => allergens[each].is === 'possible'),
    ),
  ].join(' ')

/** Of which plants nobody knows the allergens; empty where of none. */
export const strangerWords = (unknown: readonly string[]): string =>
  unknown.length === 0 ? '' : `Allergens of ${listed(unknown.map(unknownName))} not known.`

const joined = (...sentences: readonly string[]): string => sentences.filter((said) => said !== '').join(' ')

/** The allergens, and of which plants nobody knows theirs. */
export const allAllergenWords = ({ allergens, unknown }: Pick<ForGuests, 'allergens' | 'unknown'>): string =>
  joined(allergenWords(allergens), strangerWords(unknown))

/** A sentence for each, worst first; empty where there is none. */
export const adviceWords = (advice: readonly GuestAdvice[]): string => advice.map((each) => ADVICE[each]).join(' ')

/** All that this drink has to say to a guest; empty where that is nothing. */
export const guestWords = (of: ForGuests): string => joined(allAllergenWords(of), adviceWords(of.advice))

/** What every bottle with alcohol says. */
export const keepAwayWords = (): string => 'Not in pregnancy. Keep from children.'

/** The advice, and what every bottle with alcohol says. */
export const adviceAndKeepAway = ({ advice }: Pick<ForGuests, 'advice'>): string =>
  joined(adviceWords(advice), keepAwayWords())
