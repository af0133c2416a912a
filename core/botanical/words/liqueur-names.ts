import { singular } from '../../spelling/normalise-name.ts'

/** Ids of the catalogue. */
export type LiqueurPlant = 'lemon_peel' | 'orange_peel' | 'mandarin_peel' | 'green_walnut'

/** Liqueurs that are named in place of what they are made of: generic names of the trade. Common practice, no source. */
const NAMES: { readonly [Id in LiqueurPlant]: string } = {
  lemon_peel: 'limoncello, limoncelli, limoncino, limoncini',
  orange_peel: 'arancello, arancelli, arancino, arancini',
  mandarin_peel: 'mandarinetto, mandarinetti, mandarinello, mandarinelli',
  green_walnut: 'nocino, nocini',
}

const byName: ReadonlyMap<string, LiqueurPlant> = new Map(
  Object.entries(NAMES).flatMap(([id, names]) =>
    names.split(', ').map((name) => [singular(name), id as LiqueurPlant] as const),
  ),
)

/** What the liqueur is made of that is among these words of a name; null where there is none. */
export const liqueurPlant = (words: readonly string[]): LiqueurPlant | null => {
  const word = words.find((each) => byName.has(each))
  return word === undefined ? null : byName.get(word)!
}
