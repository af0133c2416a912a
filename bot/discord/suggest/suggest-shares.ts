import { nameKey } from '../../../core/jar/entry/jar-name.ts'
import type { Person } from '../../../store/person.ts'
import { sharedName } from '../../commands/share/share-list.ts'
import { sharedOn } from '../../commands/share/shared-on.ts'
import type { SuggestionText } from '../../text/discord-forms-text.ts'
import type { Offer } from './offer.ts'
import { ranked, rankOf } from './rank.ts'

/** What a person shares, the latest first; what is sent is its id. */
export const suggestShares = (
  typed: string,
  { shares, jars, settings }: Pick<Person, 'shares' | 'jars' | 'settings'>,
  assumedZone: string,
  text: SuggestionText,
): readonly Offer[] => {
  const zone = settings.zone ?? assumedZone
  const open = shares.flatMap((share) =>
    share.withdrawn ? [] : [{ id: share.id, name: sharedName(share, jars), day: sharedOn(share, zone) }],
  )
  const key = nameKey(typed.trim())
  return ranked(open.toReversed(), ({ id, name }) => rankOf(nameKey(name ?? ''), key) ?? rankOf(nameKey(id), key)).map(
    (share) => ({ name: text.share(share), value: share.id }),
  )
}
