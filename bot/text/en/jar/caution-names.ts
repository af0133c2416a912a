/** What a caution is about, for who has read it in full; one that is not here is always said in full. */
export const cautionNames = {
  flame: 'no flame or heat near it',
  cool_first: 'let the syrup cool first',
  sugar_alone: 'stir the sugar in, without heat',
  may_crystallise: 'the sugar may crystallise',
  sugar_limit_not_known: 'the sugar may not all dissolve',
  bottle_bursts: 'a full bottle can burst in the freezer',
  plan_hazard: 'what its plants can do (/cautions says it)',
} as const
