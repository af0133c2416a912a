import { DomainError } from '../../../core/domain-error.ts'
import { madeOf } from '../../../core/jar/state/shares.ts'
import type { Share } from '../../../store/person.ts'
import { StorageError } from '../../../store/storage-error.ts'
import type { Store } from '../../../store/store.ts'
import type { ShareRef } from '../../calls/share-ref.ts'

/** Of somebody else's file nothing is said but that the share is not there. */
async function sharesOf(owner: string, store: Pick<Store, 'read'>): Promise<readonly Share[]> {
  try {
    return (await store.read(owner)).shares
  } catch (error) {
    if (error instanceof StorageError && error.problem !== 'closed') return []
    throw error
  }
}

/** What somebody shares, for whoever asks; `made` and all its shares' ids of the whole batch. Throws `share_gone` and `share_withdrawn`. */
export async function findShare(
  { owner, shareId }: ShareRef,
  store: Pick<Store, 'read'>,
): Promise<Pick<Share, 'code' | 'made'> & { readonly ids: readonly string[] }> {
  const shares = await sharesOf(owner, store)
  const share = shares.find(({ id }) => id === shareId)
  if (share === undefined) throw new DomainError('not_found', 'share_gone', {})
  if (share.withdrawn) throw new DomainError('not_found', 'share_withdrawn', {})
  const ids = shares.flatMap(({ id, jarId }) => (jarId === share.jarId ? [id] : []))
  return { code: share.code, made: madeOf(share.jarId, shares), ids }
}
