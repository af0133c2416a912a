/** The seed of every law, so that a failure can be run again. */
export const SEED = 20261125

/** How often a law is tried: `long` times under `npm run test:long`. */
export const runs = (short: number, long: number): number => (process.env.LARDERBELL_LONG ? long : short)
