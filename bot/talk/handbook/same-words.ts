import { stemOf } from './stem.ts'

/** Words that mean the same in a question of this kind; both spellings of English and Italian names of a thing among them. */
const SAME =
  'child children kid kids toddler teenager; ' +
  'fridge refrigerator refrigerated frigo frigorifero; freezer freeze freezing frozen congelatore; jar kilner mason; ' +
  'colour color; litre liter; flavour flavor; sterilise sterilize sanitise sanitize; licence license permit; gift present regalo; ' +
  'peel zest rind; pan pot saucepan; cloth muslin cheesecloth; leftover spent; hob stove cooker; squeeze press wring; ' +
  'cupboard pantry larder; medicine medication tablets pills antibiotics farmaci; windowsill window; grey gray; mould mold; fibre fiber; ' +
  'odour odor; aluminium aluminum; colouring coloring; chilli chili chile; caster castor; whisky whiskey; ' +
  'barattolo vaso; bambino bimbo figlio; scorza buccia; torbido opaco; stall market mercatino'

const firstOf: ReadonlyMap<string, string> = new Map(
  SAME.split('; ').flatMap((group) => {
    const stems = group.split(' ').map(stemOf)
    return stems.map((stem) => [stem, stems[0]!] as const)
  }),
)

/** The term that stands for all that mean the same. */
export const sameTerm = (term: string): string => firstOf.get(term) ?? term
