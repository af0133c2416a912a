/** Fixed, so that a failure can be repeated; fifty times as many with LARDERBELL_LONG. */
export const runs = { seed: 20261125, numRuns: process.env.LARDERBELL_LONG === undefined ? 200 : 10_000 } as const
