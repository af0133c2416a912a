import type { Measured } from '../../quantity/measured/measured.ts'

/** Stronger than this it burns mouth and throat, and little of it is too much. Common practice, no source. */
const MOST_NEAT_PERCENT = 60

/** Whether a drink of this strength, known or estimated, is to be diluted before anybody drinks it. */
export const isTooStrongNeat = ({ value }: Measured): boolean => value > MOST_NEAT_PERCENT
