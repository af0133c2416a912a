import type { PostedIn, Share } from '../../../store/person.ts'
import { StorageError } from '../../../store/storage-error.ts'
import type { Context } from '../../chat/command.ts'
import type { Message } from '../../text/words.ts'

/** None where they cannot be read, which must keep nobody from being forgotten. */
export async function sharesOf({ store, userId }: Context): Promise<readonly Share[]> {
  try {
    return (await store.read(userId)).shares
  } catch (error) {
    if (error instanceof StorageError) return []
    throw error
  }
}

/** Where something is still to be seen. */
export const openPosts = (shares: readonly Share[]): readonly PostedIn[] =>
  shares.flatMap(({ withdrawn, postedIn }) => (withdrawn || postedIn === null ? [] : [postedIn]))

/** Posts in which nothing is left to be made, said so where they can be reached. */
export async function withdrawAll(
  shares: readonly Share[],
  { withdrawPost }: Context,
): Promise<readonly Message<'notes'>[]> {
  if (shares.length === 0) return []
  let [changed, left] = [0, 0]
  for (const at of openPosts(shares)) {
    const post = withdrawPost === undefined ? 'out_of_reach' : await withdrawPost(at)
    if (post === 'changed') changed++
    else if (post !== 'gone') left++
  }
  return [{ group: 'notes', key: 'forgot_shares', values: { changed, left } }]
}
