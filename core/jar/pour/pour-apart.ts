import { DomainError } from '../../domain-error.ts'
import type { Measured } from '../../quantity/measured/measured.ts'
import type { HappeningEntry, JarEntry, Moment } from '../entry/entry.ts'
import { effective } from '../entry/standing-entries.ts'
import { type Entered, type RecordedEntry, record } from '../record/record.ts'
import { jarStateOf, type KeptJar } from '../state/jar-state.ts'

/** A share of a jar that gets a jar of its own. */
export interface PouredOut {
  /** 0 to 1. */
  readonly share: Measured
  /** What that jar is called. */
  readonly into: string
}

/** The two jars that one became, each with all that happened before. */
export interface PouredApart {
  readonly rest: RecordedEntry
  readonly portion: RecordedEntry
}

/** What happened to the whole, as the story of a jar with another name; what was taken back or put right stands as it is now. */
function storyUnder(name: string, entries: readonly JarEntry[]): readonly HappeningEntry[] {
  return effective(entries)
    .filter(({ kind }) => kind !== 'renamed')
    .toSorted((one, other) => one.seq - other.seq)
    .map((entry, index): HappeningEntry => {
      const { attempt: _, ...told } = entry
      const renumbered = { ...told, seq: index + 1 } as HappeningEntry
      if (renumbered.kind === 'started') return { ...renumbered, name }
      return renumbered.kind === 'poured_in' ? { ...renumbered, into: null } : renumbered
    })
}

/**
 * A jar in two: the share goes into a new one, the rest stays. Grams add up to what there was. Throws `split_all` where
 * nothing would stay, and what `record` throws.
 */
export function pourApart(
  { entries }: Pick<KeptJar, 'entries'>,
  { share, into }: PouredOut,
  moment: Moment,
  entered: Entered,
): PouredApart {
  const name = jarStateOf(entries)?.name ?? ''
  if (share.value >= 1) throw new DomainError('bad_value', 'split_all', { jar: name })
  const kept = { value: 1 - share.value, plusMinus: share.plusMinus }
  return {
    rest: record(entries, { kind: 'parted', kept, other: into, isNew: false }, moment, entered),
    portion: record(
      storyUnder(into, entries),
      { kind: 'parted', kept: share, other: name, isNew: true },
      moment,
      entered,
    ),
  }
}
