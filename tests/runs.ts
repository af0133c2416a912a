/** The seed of every law, so that a failure can be run again. */
export const SEED = 20261125

/** How often a law is tried: `long` times under `npm run test:long`. */
export const runs = (short: number, long: number): number => (process.env.LARDERBELL_LONG ? long : short)

/** All of a list under `npm run test:long`, else one of every `step`, the first of them given by `from`. */
export const sampled = <Item>(items: readonly Item[], step: number, from = 0): readonly Item[] =>
  process.env.LARDERBELL_LONG ? items : items.filter((_, at) => at % step === from % step)
