import type { Open, RolesAround } from './attach.ts'

/** No spirit to steep in is weaker, % vol; common practice, no source. */
export const MOST_OF_LIQUEUR = 35

/** `How many lemons for three litres of the stuff at 30%`: no spirit is sold so weak, it is what is to come out. */
export function isAskedFor({ spans, typed }: RolesAround, bits: readonly Open[], at: number): boolean {
  const isAsked = spans.some(
    ({ concept, to }) =>
      concept === 'how_much' &&
      bits.some(({ kind, from, with: place }) => kind === 'plant' && from === to && place === undefined),
  )
  const isFor = typed.tokens.slice(bits[at - 1]?.to ?? 0, bits[at]!.from).some(({ text }) => /^(?:for|per)$/.test(text))
  const said = bits.filter(({ kind }) => kind === 'strength' || kind === 'spirit')
  const isWeak = said.length === 1 && said[0]!.kind === 'strength' && said[0]!.value <= MOST_OF_LIQUEUR
  return isAsked && isFor && isWeak
}
