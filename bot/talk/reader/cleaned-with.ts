import type { RefusedSaid } from '../../../core/botanical/refuse/refused-in.ts'
import { plainWords } from '../lexicon/plain-text.ts'

const WARE =
  '(?:jars?|bottles?|lids?|funnels?|kilners?|demijohns?|decanters?|sieves?|strainers?|jugs?|corks?|vas[oi]|vasett[oi]|barattol[oi]|bottigli[ae]|coperchi[oi]?|imbut[oi]|brocc[ah]e?)'
const CLEAN = '(?:clean|rins|wash|wip|swill|degreas|soak|scrub|disinfect|sterili[sz]|saniti[sz])\\p{L}*'
const PULITO = '(?:pul|lav|sciacqu|sgrass|disinfett|sterilizz)\\p{L}+'

/** `Used white spirit to clean the jar`, `the bottles were washed out with acetone`, `ho lavato il vaso con la benzina`. */
const CLEANED = new RegExp(
  `\\b(?:(?:us(?:e|ed|ing) .{0,40}(?:to|for) (?:\\p{L}+ ){0,2}?${CLEAN} .{0,20}${WARE})|(?:(?<!\\b(?:a|an|the|my|in|of|into) )${CLEAN} (?:\\p{L}+ ){0,6}?${WARE} (?:\\p{L}+ ){0,3}?(?:with|in|using))|(?:${WARE} (?:\\p{L}+ )?(?:was|were|been|got|is|are) (?:\\p{L}+ ){0,2}?${CLEAN} (?:\\p{L}+ ){0,2}?(?:with|in|using))|(?:us(?:e|ed|ing) .{0,40}to (?:\\p{L}+ ){0,3}?${WARE} (?:\\p{L}+ )?${CLEAN})|(?:usat[oa] .{0,40}per ${PULITO} .{0,20}${WARE})|(?:${PULITO} (?:\\p{L}+ ){0,3}?${WARE} (?:\\p{L}+ ){0,2}?(?:con|in|nella))|(?:${WARE} (?:\\p{L}+ ){0,2}?${PULITO} con))\\b`,
  'u',
)

/** What cleans a kitchen and is rinsed off glass. */
const OF_KITCHEN =
  '(?:bleach|descaler|descaling \\p{L}+|limescale \\p{L}+|dish ?washer (?:tablets?|tabs?|powder|salt|pods?|capsules?|detergent|liquid|gel)|rinse aid|chlorine|detergent|sanitiser|sanitizer|candeggina|varechina|anticalcare|disincrostante|decalcificante|brillantante|detersivo|(?:pastigli|past|tab|sale)\\p{L}* (?:della|per(?: la)?|da) lavastoviglie)'
const MAY_BE_OF_CLEANER =
  /cleaner|unblocker|caustic|disgorg|sturalav|bleach|descal|limescale|dish ?washer|rinse aid|chlorin|detergent|saniti|candegg|varech|anticalc|disincr|decalc|brillant|detersiv|lavastov|washing.up|soap|sapone|vinegar|aceto|bicarb|baking soda|citric/i
const SAID_OF_KITCHEN = new RegExp(`\\bl?${OF_KITCHEN}(?!\\p{L})`, 'u')

/** `Bleached the jar`, `a dishwasher tablet stood in the jar overnight`: by itself, and before anything else went in. */
const BLEACHED = new RegExp(
  `\\b(?:(?:bleach|descal)(?:ed|ing) (?:out )?(?:\\p{L}+ ){1,3}?${WARE}|${OF_KITCHEN} (?:\\p{L}+ ){0,4}?(?:in|into|inside|through|nel|nella|dentro(?: al| il)?) (?:the |a |my |our )?(?:\\p{L}+ )?${WARE})(?!\\p{L})`,
  'u',
)
/** `Descaler, then plums and vodka`: it went first, and nobody says where. */
const THEN_FILLED = new RegExp(
  `^(?:(?!(?:no|not|without|never|dont|didnt|non|senza|how|what|is|can|che|come)\\b)\\p{L}+ ){0,5}?l?${OF_KITCHEN}(?: (?!and )\\p{L}+){0,3}? (?:(?:and |e )?(?:then|afterwards|after that|poi|dopo)|followed by)(?!\\p{L})`,
  'u',
)
const BEFORE = /\b(?:before|beforehand|first|empty|overnight|rins\p{L}+|prima|vuot[oi]|sciacquat[oi])(?!\p{L})/u

/** What anybody washes with. */
const MILD =
  /\b(?:washing up liquid|(?:in|through|nella|con la) (?:the |la )?(?:dish ?washer|lavastoviglie)|(?:dish )?soap\p{L}*|sapone|detersivo (?:per|dei|da) (?:i )?piatti|vinegar|aceto|bicarb\p{L}*|baking soda|citric acid)(?!\p{L})/u

/** What rinsing does not make safe, told beside a cleaner: `drain cleaner`, `oven cleaner and bleach`. */
const STRONG =
  /\b(?:drain|oven|toilet|pipe|sink) (?:\p{L}+ )?(?:cleaner|unblocker|opener)|caustic|disgorgante|sturalavandini/u
const NOT_RINSED =
  /\b(?:(?:drain|oven|toilet|pipe|sink) (?:\p{L}+ )?(?:cleaner|unblocker|opener)|caustic|disgorgante|sturalavandini|acetone?|petrol|benzina|white spirit|thinner|turp\p{L}*|acquaragia|solvent\p{L}*)/u

/** The entry for a jar that a kitchen’s cleaner or a solvent has cleaned; null where none is told. */
export function cleanedWith(
  text: string,
  danger: RefusedSaid | undefined,
): 'bleach_cleaned' | 'chemical_cleaned' | 'clean_bottles' | null {
  const mayBe = MAY_BE_OF_CLEANER.test(text)
  if (!mayBe && danger === undefined) return null
  const plain = plainWords(text)
  const isCleaned = CLEANED.test(plain)
  if (isCleaned && MILD.test(plain) && !SAID_OF_KITCHEN.test(plain.replace(MILD, '')) && !NOT_RINSED.test(plain))
    return 'clean_bottles'
  const isOfKitchen = mayBe && !NOT_RINSED.test(plain)
  if (isOfKitchen && SAID_OF_KITCHEN.test(plain) && isCleaned) return 'bleach_cleaned'
  if (isOfKitchen && BLEACHED.test(plain) && (isBleached(plain) || BEFORE.test(plain))) return 'bleach_cleaned'
  if (isOfKitchen && THEN_FILLED.test(plain) && !MILD.test(plain)) return 'bleach_cleaned'
  if (isCleaned && mayBe && STRONG.test(plain)) return 'chemical_cleaned'
  return danger !== undefined && isCleaned && OF_PLANTS.every((each) => each !== danger.id) ? 'chemical_cleaned' : null
}

const isBleached = (plain: string): boolean => /\b(?:bleach|descal)(?:ed|ing) /u.test(plain)

const OF_PLANTS: readonly string[] = ['kernels', 'cracked_stones', 'drugs', 'medicines']
