import { plainWords } from '../../../core/spelling/normalise-name.ts'
import { symptomIds, symptoms } from '../../../core/trouble/symptoms.ts'
import type { Offer } from './offer.ts'
import { ranked, rankOf } from './rank.ts'

const plain = (text: string): string => plainWords(text).join(' ')

/** What went wrong, by every name it goes by, each symptom once and the best name of it. */
export function suggestSymptoms(typed: string, locale: string): readonly Offer[] {
  const key = plain(typed)
  const tongue = locale === 'it' ? 'it' : 'en'
  const other = tongue === 'it' ? 'en' : 'it'
  const all = symptomIds.flatMap((id) =>
    [...symptoms[id][tongue], ...(key === '' ? [] : symptoms[id][other])].map((name) => ({ id, name })),
  )
  const fitting = ranked(all, ({ name }) => rankOf(plain(name), key))
  const best = fitting.filter(({ id }, at) => fitting.findIndex((each) => each.id === id) === at)
  return best.map(({ name }) => ({ name, value: name }))
}
