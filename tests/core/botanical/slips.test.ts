import { describe, expect, it } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { findBotanical } from '../../../core/botanical/find/find.ts'
import { farRefusedIn, nearRefusedIn } from '../../../core/botanical/refuse/near-said.ts'
import { DomainError } from '../../../core/domain-error.ts'

/** A name with one slip, between its first and its last letter: two swapped, one doubled, one lost. */
const slipsOf = (name: string): readonly string[] =>
  Array.from({ length: Math.max(0, name.length - 2) }, (_, more) => more + 1).flatMap((at) => [
    `${name.slice(0, at)}${name[at + 1]}${name[at]}${name.slice(at + 2)}`,
    `${name.slice(0, at)}${name[at]}${name.slice(at)}`,
    `${name.slice(0, at)}${name.slice(at + 1)}`,
  ])

const said = (name: string): string => `20 g ${name} in a litre of vodka`

const problemOf = (name: string): string | null => {
  try {
    findBotanical(name)
    return null
  } catch (error) {
    if (error instanceof DomainError) return error.problem
    throw error
  }
}

// Plants that have killed people who drank or ate them; common knowledge, no source.
const POISONS =
  'oleander, hemlock, foxglove, monkshood, laburnum, cicuta, mughetto, belladonna, wolfsbane, daffodil, mistletoe, thornapple, henbane, aconito, oleandro, colchico, digitale, stramonio, rhododendron, pennyroyal'.split(
    ', ',
  )

describe('a slip in the name of a poison', () => {
  it.each(POISONS)('%s is named, and never a plant that is planned', (name) => {
    const slips = slipsOf(name).filter((slip) => slip !== name)
    expect(slips.filter((slip) => problemOf(slip) === null)).toEqual([])
    const unnamed = slips.filter(
      (slip) => nearRefusedIn(said(slip)) === null && problemOf(slip) !== 'refused_botanical',
    )
    expect(unnamed).toEqual([])
  })

  it.each(['wolfsbain', 'lilly of the vally', 'penny royale', 'rodedendron', 'bellodona', 'munkshod'])(
    '%s, two slips, is never merely unknown',
    (name) => {
      expect(['near_refused', 'refused_botanical']).toContain(problemOf(name))
    },
  )

  it('is found in a sentence of which nothing is understood', () => {
    expect(farRefusedIn('what about wolfsbain then')?.problem).toBe('near_refused')
    expect(farRefusedIn('no wolfsbain please')).toBeNull()
    expect(farRefusedIn('what about camomille then')).toBeNull()
  })
})

describe('a slip in the name of a plant that is planned', () => {
  const names = [...new Set(catalogue.flatMap(({ names: { en, it } }) => [...en, ...it]))]
  const slips = names.flatMap((name) => slipsOf(name).filter((slip) => slip !== name))

  it('is hardly ever asked about as a poison: of the slips one in five hundred at most', () => {
    const some = slips.filter((_, at) => at % 12 === 0)
    expect(some.length).toBeGreaterThan(3500)
    const asked = some.filter((slip) => nearRefusedIn(said(slip)) !== null)
    expect(asked.length / some.length).toBeLessThan(0.002)
  })

  it('is never refused for a poison two slips away', () => {
    const known = slips.filter((slip, at) => at % 31 === 0 && !slip.includes(' '))
    const refused = known.filter((slip) => farRefusedIn(slip) !== null && nearRefusedIn(slip) === null)
    expect(refused).toEqual([])
  })
})
