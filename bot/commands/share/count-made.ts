import { encodeBatch } from '../../../core/recipe/code/batch-code.ts'
import type { Jar } from '../../../store/person.ts'
import { StorageError } from '../../../store/storage-error.ts'
import type { Context } from '../../chat/command.ts'
import { isFrom, type SharedRecipe } from './share-ref.ts'

/** Whether one of these jars was begun from a share, even where that was taken back. */
export const hasMade = (jars: readonly Jar[], shareId: string): boolean =>
  jars.some(({ entries }) => entries.some(({ kind, typed }) => kind === 'started' && isFrom(typed, shareId)))

/**
 * Tells its owner, in a number alone, that one more person has begun a jar from what they share. To be called where
 * `hasMade` was false before; the jars themselves tell it again.
 */
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
