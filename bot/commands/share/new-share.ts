import { newShareId, withRoomForShare } from '../../../core/jar/state/shares.ts'
import type { Person, Share } from '../../../store/person.ts'

/** A batch shared; the same one as before where that was posted nowhere yet. */
export function shared(
  person: Person,
  { jarId, code, seed }: { readonly jarId: string; readonly code: string; readonly seed: string },
): { readonly person: Person | null; readonly made: Share } {
  const { shares } = person
  const unposted = shares.find(
    (share) => share.jarId === jarId && share.code === code && share.postedIn === null && !share.withdrawn,
  )
  if (unposted !== undefined) return { person: null, made: unposted }
  const taken = shares.map(({ id }) => id)
  const made = { id: newShareId(seed, taken), jarId, code, postedIn: null, withdrawn: false, made: 0 }
  return { person: { ...person, shares: [...withRoomForShare(shares), made] }, made }
}

export const withShare = (person: Person, share: Share): Person => ({
  ...person,
  shares: person.shares.map((each) => (each.id === share.id ? share : each)),
})
