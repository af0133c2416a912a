import { DomainError } from '../../../core/domain-error.ts'
import { nameKey } from '../../../core/jar/entry/jar-name.ts'
import { nameIn } from '../../../core/jar/entry/name-in.ts'
import { shown } from '../../../core/quantity/read/tokens.ts'
import type { Person, Share } from '../../../store/person.ts'
import type { Context } from '../../chat/command.ts'
import type { Reply } from '../../chat/reply.ts'
import { change } from '../jar/step/record-step.ts'
import { kitchenOf } from '../options/input-units.ts'
import { withShare } from './new-share.ts'
import { sharedName } from './share-list.ts'
import { sharedOn } from './shared-on.ts'

/** Also of a jar whose start was taken back: as it was called last. */
const lastName = (share: Share, jars: Person['jars']): string | null =>
  sharedName(share, jars) ?? nameIn(jars.find(({ id }) => id === share.jarId)?.entries ?? [])

/** By its id, or by the name of its batch where only one of what is still shared is called so. */
function shareNamed(typed: string, { shares, jars }: Person, zone: string): Share {
  const key = typed.trim()
  const byId = shares.find(({ id }) => id === key.replace(/^#/, '').toLowerCase())
  if (byId !== undefined) return byId
  const isCalled = (name: string | null): boolean => name !== null && nameKey(name) === nameKey(key)
  const called = shares.filter((share) => isCalled(lastName(share, jars)))
  const open = called.filter((share) => !share.withdrawn)
  const found = open.at(-1) ?? called.at(-1)
  if (found === undefined) throw new DomainError('not_found', 'no_such_share', { typed: shown(typed) })
  if (open.length < 2) return found
  throw new DomainError('ambiguous', 'several_shares', {
    name: lastName(found, jars) ?? key,
    shares: open.toReversed().map((share) => ({ id: share.id, day: sharedOn(share, zone) })),
  })
}

function withdrawn(person: Person, typed: string, zone: string) {
  const share = shareNamed(typed, person, zone)
  return { person: share.withdrawn ? null : withShare(person, { ...share, withdrawn: true }), made: share }
}

/** Nobody can make it any more by its button, and its message says so where that can be reached. */
export async function withdraw(typed: string, context: Context): Promise<Reply> {
  const { store, userId, withdrawPost, zone } = context
  const { id, postedIn, ...share } = await change(context, (person) => withdrawn(person, typed, zone))
  const post = postedIn === null || withdrawPost === undefined ? null : await withdrawPost(postedIn)
  const name = lastName({ id, postedIn, ...share }, (await store.read(userId)).jars)
  return {
    headline: { group: 'headlines', key: 'share_withdrawn', values: { name, post, isAgain: share.withdrawn } },
    table: [],
    sure: [],
    notes: [],
    cautions: [],
    actions: [],
    data: { share: id, jar: share.jarId, withdrawn: true, post },
    kitchen: kitchenOf({}),
  }
}
