import { SEED } from './runs.ts'

/** Random tests draw from one fixed seed, so that a failure can be had again. */
export default function printSeed(): void {
  console.log(`Random tests draw from seed ${SEED}; ${process.env.LARDERBELL_LONG ? 'full' : 'short'} counts.`)
}
