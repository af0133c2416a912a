import { nameKey } from '../../../core/jar/entry/jar-name.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { madeOf } from '../../../core/jar/state/shares.ts'
import type { Jar, Person, Share } from '../../../store/person.ts'
import { call } from '../../calls/call.ts'
import type { Context } from '../../chat/command.ts'
import type { Action, Reply } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'
import { todayOf } from '../jar/known/view-of.ts'
import { kitchenOf } from '../options/input-units.ts'
import { sharedAt } from './shared-on.ts'

/** Withdrawn at a press; the others by typing. */
const MOST_BUTTONS = 5

/** As its owner calls it now; null where its start was taken back. */
export const sharedName = ({ jarId }: Share, jars: readonly Jar[]): string | null => {
  const jar = jars.find(({ id }) => id === jarId)
  return jar === undefined ? null : (jarStateOf(jar.entries)?.name ?? null)
}

/** That, where no other of what is still shared is called so: then it needs no id. */
export function freeName(share: Share, { shares, jars }: Pick<Person, 'shares' | 'jars'>): string | null {
  const name = sharedName(share, jars)
  const isSame = (other: Share): boolean => {
    const its = sharedName(other, jars)
    return name !== null && its !== null && nameKey(its) === nameKey(name)
  }
  const isAnother = ({ id, withdrawn }: Share): boolean => id !== share.id && !withdrawn
  const isFree = name !== null && !shares.some((other) => isAnother(other) && isSame(other))
  return isFree && !shares.some(({ id }) => id === name.toLowerCase()) ? name : null
}

interface Withdrawn {
  readonly id: string
  readonly name: string | null
  /** Its name, where that is enough. */
  readonly free: string | null
}

/** Typed by its name; pressed by its id, which outlives a new name. */
export const withdrawAction = ({ id, name, free }: Withdrawn, { kind }: Context['place']): Action => ({
  label: { group: 'actions', key: 'share_withdraw', values: { id: free === null ? id : null, name } },
  call: call('share', { withdraw: kind === 'console' ? (free ?? id) : id }),
})

/** Of every batch that was shared, withdrawn or not, the jars that came of it. */
function madeNotes({ shares, jars }: Person): readonly Message<'notes'>[] {
  const batches = new Map(shares.toReversed().map((share) => [share.jarId, sharedName(share, jars)]))
  const made = [...batches].flatMap(([jarId, name]) => {
    const count = madeOf(jarId, shares)
    return count === 0 ? [] : [{ name, count }]
  })
  return shares.length === 0 ? [] : [{ group: 'notes', key: 'shares_made', values: { made } }]
}

/** What somebody shares, the latest first; of what is withdrawn only how much it is. */
export function shareList(person: Person, context: Context): Reply {
  const { shares, jars } = person
  const [today, isPosting] = [todayOf(context), context.place.kind !== 'console']
  const listed = shares.toReversed().map((share) => ({
    ...share,
    name: sharedName(share, jars),
    free: freeName(share, person),
    made: madeOf(share.jarId, shares),
    at: sharedAt(share, context.zone),
  }))
  const open = listed.filter(({ withdrawn }) => !withdrawn)
  const gone = listed.length - open.length
  const batches = new Set(open.map(({ jarId }) => jarId)).size
  return {
    headline: { group: 'headlines', key: 'shares', values: { batches, count: open.length } },
    table: open.map(({ id, name, free, at, postedIn }) => {
      const channelId = postedIn?.channelId ?? null
      return {
        label: { group: 'rows', key: 'share', values: { called: free ?? id } },
        cell: {
          group: 'cells',
          key: 'share',
          values: { name, isCalled: free !== null, at, today, channelId, isUnposted: isPosting && postedIn === null },
        },
      }
    }),
    sure: [],
    notes: [
      ...madeNotes(person),
      ...(gone === 0 ? [] : [{ group: 'notes', key: 'shares_withdrawn', values: { count: gone } } as const]),
      ...(open.length > MOST_BUTTONS ? [{ group: 'notes', key: 'share_withdraw', values: undefined } as const] : []),
    ],
    cautions: [],
    actions: open.slice(0, MOST_BUTTONS).map((share) => withdrawAction(share, context.place)),
    data: {
      shares: listed.map(({ id, jarId, name, code, made, withdrawn, postedIn, at }) => {
        return {
          share: id,
          jar: jarId,
          name,
          code,
          made,
          withdrawn,
          posted: postedIn !== null,
          sharedOn: at?.day ?? null,
        }
      }),
    },
    kitchen: kitchenOf({}),
  }
}
