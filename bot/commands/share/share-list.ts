import { storyOf } from '../../../core/jar/story.ts'
import type { Jar, Person, Share } from '../../../store/person.ts'
import type { Context } from '../../chat/command.ts'
import type { Reply } from '../../chat/reply.ts'
import { kitchenOf } from '../typed-in.ts'

/** As its owner calls it now; null where its start was taken back. */
export const sharedName = ({ jarId }: Share, jars: readonly Jar[]): string | null => {
  const jar = jars.find(({ id }) => id === jarId)
  return jar === undefined ? null : (storyOf(jar.entries)?.name ?? null)
}

/** What somebody shares, the latest first. */
export function shareList({ shares, jars }: Person, { place }: Context): Reply {
  const isPosting = place.kind !== 'console'
  const listed = shares.toReversed().map((share) => ({ ...share, name: sharedName(share, jars) }))
  const open = listed.filter(({ withdrawn }) => !withdrawn)
  return {
    headline: { group: 'headlines', key: 'shares', values: { count: open.length } },
    table: listed.map(({ id, name, made, withdrawn, postedIn }) => ({
      label: { group: 'rows', key: 'share', values: { id } },
      cell: {
        group: 'cells',
        key: 'share',
        values: { name, made, withdrawn, isUnposted: isPosting && postedIn === null },
      },
    })),
    sure: [],
    notes: open.length === 0 ? [] : [{ group: 'notes', key: 'share_withdraw', values: undefined }],
    cautions: [],
    actions: [],
    data: {
      shares: listed.map(({ id, jarId, name, code, made, withdrawn, postedIn }) => {
        return { share: id, jar: jarId, name, code, made, withdrawn, posted: postedIn !== null }
      }),
    },
    kitchen: kitchenOf({}),
  }
}
