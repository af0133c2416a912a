import type { RefusedSaid } from '../../../core/botanical/refuse/refused-in.ts'
import { plainWords } from '../lexicon/plain-text.ts'

const WARE =
  '(?:jars?|bottles?|lids?|funnels?|kilners?|demijohns?|decanters?|sieves?|strainers?|jugs?|corks?|vas[oi]|barattol[oi]|bottigli[ae]|coperchi[oi]?|imbut[oi]|brocc[ah]e?)'
const CLEAN = '(?:clean|rins|wash|wip|swill|degreas|soak|scrub|disinfect|sterili[sz])\\p{L}*'
const PULITO = '(?:pul|lav|sciacqu|sgrass|disinfett|sterilizz)\\p{L}+'

/** `Used white spirit to clean the jar`, `washed the bottles out with acetone`, `ho lavato il vaso con la benzina`. */
const CLEANED = new RegExp(
  `\\b(?:(?:us(?:e|ed|ing) .{0,40}(?:to|for) (?:\\p{L}+ ){0,2}?${CLEAN} .{0,20}${WARE})|(?:(?<!\\b(?:a|an|the|my|in|of|into) )${CLEAN} (?:\\p{L}+ ){0,6}?${WARE} (?:\\p{L}+ ){0,3}?(?:with|in|using))|(?:usat[oa] .{0,40}per ${PULITO} .{0,20}${WARE})|(?:${PULITO} (?:\\p{L}+ ){0,3}?${WARE} (?:\\p{L}+ ){0,2}?con))\\b`,
  'u',
)

/** Whether what nobody may drink has cleaned what the drink is in: what becomes of that is answered, no spirit is refused. */
export const isCleanedWith = (text: string, { id }: RefusedSaid): boolean =>
  OF_PLANTS.every((each) => each !== id) && CLEANED.test(plainWords(text))

const OF_PLANTS: readonly string[] = ['kernels', 'cracked_stones', 'drugs', 'medicines']
