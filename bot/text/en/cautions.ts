import type { Format } from '../format.ts'

/** What can hurt, or spoil a batch. */
export const cautions = {
  flame: ({ lowC }: { readonly lowC: number }, format: Format) =>
    `Strong spirit: its vapour catches fire from about ${format.temperature({ value: lowC, plusMinus: 1 })}, perhaps a little below. No flame, spark or hot plate near it, and never heat it.`,
  cool_first: () =>
    'Let the syrup cool to room temperature before it meets the spirit: hot syrup drives off flammable vapour.',
  syrup_too_thick: (values: { readonly dissolvesG: number }, format: Format) =>
    `That water dissolves only about ${format.weigh(values.dissolvesG)} of the sugar at room temperature, so make no syrup` +
    ' of it: stir the sugar into the infusion, in a closed jar over some days, without heat.',
  sugar_alone: () => 'Stir the sugar straight in, in a closed jar, a little every day until it is gone, without heat.',
  may_crystallise: () =>
    'So much sugar is near what dissolves at this strength (known to about 10 %): it may crystallise in the cold.',
  sugar_limit_not_known: () =>
    'So much sugar is at or just over what dissolves at this strength (known to about 10 %); nobody has measured it closely, so try a glass of it first.',
  bottle_bursts: () => 'It freezes: leave room in the bottle, for a full one can burst in the freezer.',
}
