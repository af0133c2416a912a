import { encodeBatch } from '../../../core/recipe/code/batch-code.ts'
import type { Person } from '../../../store/person.ts'
import { StorageError } from '../../../store/storage-error.ts'
import type { SharedRecipe } from '../../calls/share-ref.ts'
import type { Context } from '../../chat/command.ts'

/** Jars that somebody has begun from any of these shares, those taken back too: they were counted. */
export const begunFrom = (ids: readonly string[], { jars }: Pick<Person, 'jars'>): number =>
  jars.filter(({ entries }) => {
    const [start] = entries
    const shareId = start?.kind === 'started' ? (start.origin?.shareId ?? null) : null
    return shareId !== null && ids.includes(shareId)
  }).length

/** Tells its owner, in a number alone, that somebody else has begun one more jar from what they share. */
export async function countMade({ recipe, shareId, owner }: SharedRecipe, { store, userId }: Context): Promise<void> {
  if (owner === null || owner === userId) return
  const code = encodeBatch(recipe)
  try {
    await store.update(owner, (person) => {
      const counted = person.shares.map((share) =>
        share.id === shareId && share.code === code ? { ...share, made: share.made + 1 } : share,
      )
      return counted.some((share, index) => share !== person.shares[index]) ? { ...person, shares: counted } : null
    })
  } catch (error) {
    // The jar is begun, whatever becomes of the number.
    if (!(error instanceof StorageError)) throw error
  }
}
