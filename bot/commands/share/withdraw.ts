import { DomainError } from '../../../core/domain-error.ts'
import { shown } from '../../../core/quantity/typed-text.ts'
import type { Person, Share } from '../../../store/person.ts'
import type { Context } from '../../chat/command.ts'
import type { Reply } from '../../chat/reply.ts'
import { change } from '../jar/change-jar.ts'
import { kitchenOf } from '../typed-in.ts'
import { withShare } from './new-share.ts'
import { sharedName } from './share-list.ts'

function withdrawn(person: Person, typed: string): { readonly person: Person | null; readonly made: Share } {
  const key = typed.trim().replace(/^#/, '').toLowerCase()
  const share = person.shares.find(({ id }) => id === key)
  if (share === undefined) throw new DomainError('not_found', 'no_such_share', { typed: shown(typed) })
  return { person: share.withdrawn ? null : withShare(person, { ...share, withdrawn: true }), made: share }
}

/** Nobody can make it any more by its button, and its message says so where that can be reached. */
export async function withdraw(typed: string, context: Context): Promise<Reply> {
  const { store, userId, withdrawPost } = context
  const { id, postedIn, ...share } = await change(context, (person) => withdrawn(person, typed))
  const post = postedIn === null || withdrawPost === undefined ? null : await withdrawPost(postedIn)
  const name = sharedName({ id, postedIn, ...share }, (await store.read(userId)).jars)
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
