/** A litre of finished drink may hold half of what a litre of steeping spirit may: most is diluted at least so far. */
export const FINISHED_PER_SPIRIT = 0.5
