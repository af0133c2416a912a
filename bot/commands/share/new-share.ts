import { DomainError } from '../../../core/domain-error.ts'
import { newJarId } from '../../../core/jar/entry/new-jar-id.ts'
import type { Person, Share } from '../../../store/person.ts'

export const MOST_SHARES = 100

const ID_CHARACTERS = 8

/** Long enough that no two people have the same. */
function newShareId(seed: string, taken: readonly string[]): string {
  for (let attempt = 0; ; attempt++) {
    const [first, second] = [newJarId(`share ${attempt} ${seed}`, []), newJarId(`${seed} ${attempt} share`, [])]
    const id = `${first}${second}`.slice(0, ID_CHARACTERS)
    if (!taken.includes(id)) return id
  }
}

/** With room for one more: of those withdrawn the oldest goes first. Throws `too_many_shares`. */
function withRoom(shares: readonly Share[]): readonly Share[] {
  if (shares.length < MOST_SHARES) return shares
  const oldest = shares.findIndex(({ withdrawn }) => withdrawn)
  if (oldest === -1) throw new DomainError('limit', 'too_many_shares', { most: MOST_SHARES })
  return shares.toSpliced(oldest, 1)
}

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
  return { person: { ...person, shares: [...withRoom(shares), made] }, made }
}

export const withShare = (person: Person, share: Share): Person => ({
  ...person,
  shares: person.shares.map((each) => (each.id === share.id ? share : each)),
})
