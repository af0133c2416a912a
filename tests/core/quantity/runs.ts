/** Fixed, so that a failure can be repeated; ten times as many with LARDERBELL_LONG. */
export const runs = { seed: 20261125, numRuns: process.env.LARDERBELL_LONG === undefined ? 500 : 10_000 } as const
