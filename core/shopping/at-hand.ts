import type { Have } from './have.ts'

type HaveOf<Kind extends Have['kind']> = Extract<Have, { kind: Kind }>

/** Something at hand, and how much of it nothing has taken yet. */
export interface Pot<Kind extends Have['kind']> {
  readonly have: HaveOf<Kind>
  left: number
  isUsed: boolean
}

/** What is at hand of one kind; without an amount it is as much as it takes. */
export const potsOf = <Kind extends Have['kind']>(
  have: readonly Have[],
  kind: Kind,
  amount: (have: HaveOf<Kind>) => number | null,
): readonly Pot<Kind>[] =>
  have
    .filter((each): each is HaveOf<Kind> => each.kind === kind)
    .map((each) => ({ have: each, left: amount(each) ?? Number.POSITIVE_INFINITY, isUsed: false }))

/** Those that fit, which are needed then. */
export function using<Kind extends Have['kind']>(
  pots: readonly Pot<Kind>[],
  fits: (have: HaveOf<Kind>) => boolean,
): readonly Pot<Kind>[] {
  const fitting = pots.filter(({ have }) => fits(have))
  for (const pot of fitting) pot.isUsed = true
  return fitting
}

/** Takes of what is at hand, the first first, and says how much is left to buy. */
export function less(needed: number, pots: readonly { left: number }[]): number {
  return pots.reduce((wanted, pot) => {
    const taken = Math.min(wanted, pot.left)
    pot.left -= taken
    return wanted - taken
  }, needed)
}
