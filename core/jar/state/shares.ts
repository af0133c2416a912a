import { DomainError } from '../../domain-error.ts'
import { newJarId } from '../entry/new-jar-id.ts'

/** Shares that a person may have. */
export const MOST_SHARES = 100

const ID_CHARACTERS = 8

/** A batch that was shared, as far as it is known here. */
interface SharedBatch {
  readonly jarId: string
  readonly withdrawn: boolean
  /** Jars that others have begun from it. */
  readonly made: number
}

/** A share's id, the same for the same seed: long enough that no two people have the same. */
export function newShareId(seed: string, taken: readonly string[]): string {
  for (let attempt = 0; ; attempt++) {
    const [first, second] = [newJarId(`share ${attempt} ${seed}`, []), newJarId(`${seed} ${attempt} share`, [])]
    const id = `${first}${second}`.slice(0, ID_CHARACTERS)
    if (!taken.includes(id)) return id
  }
}

/** With room for one more: of those withdrawn the oldest goes first. Throws `too_many_shares`. */
export function withRoomForShare<Share extends SharedBatch>(shares: readonly Share[]): readonly Share[] {
  if (shares.length < MOST_SHARES) return shares
  const oldest = shares.findIndex(({ withdrawn }) => withdrawn)
  if (oldest === -1) throw new DomainError('limit', 'too_many_shares', { most: MOST_SHARES })
  return shares.toSpliced(oldest, 1)
}

/** Jars that others began from any share of a batch, withdrawn ones too; its owner's own are not among them. */
export const madeOf = (jarId: string, shares: readonly SharedBatch[]): number =>
  shares.reduce((sum, share) => sum + (share.jarId === jarId ? share.made : 0), 0)
