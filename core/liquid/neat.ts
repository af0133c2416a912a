/** Up to this strength a liqueur is drunk as it is, % vol; beyond, it burns mouth and throat. Common practice, no source. */
export const MOST_NEAT_PERCENT = 60

/** Whether a drink of this strength, % vol, known or estimated, is to be diluted before anybody drinks it. */
export const isTooStrongNeat = (abvPercent: number): boolean => abvPercent > MOST_NEAT_PERCENT

/** Whether a glass of this strength, % vol, is one of spirit to dilute: here the line itself counts. */
export const isGlassToDilute = (abvPercent: number): boolean => abvPercent >= MOST_NEAT_PERCENT

/** From this strength on, % vol, fresh plants are likely to have weakened an infusion more than its maker thinks. Common practice, no source. */
export const DOUBTFUL_INFUSION_PERCENT = 85

/** Whether the strength given for a strained infusion, % vol, is rather that of the spirit that was poured in. */
export const isDoubtfulInfusion = (abvPercent: number): boolean => abvPercent >= DOUBTFUL_INFUSION_PERCENT
