import { DomainError } from '../../domain-error.ts'
import { isJuice, type MaterialId, USUAL_MATERIAL } from '../../quantity/materials.ts'
import { materialNumbers } from './material-numbers.ts'
import { RANGES, type Recipe, type RecipeSweetening } from './recipe.ts'
import { type Reader, several } from './symbols.ts'

const MOST_SWEETENINGS = 64

const numberOf = (material: MaterialId): number => materialNumbers.indexOf(material)

/** What sweetens beside white sugar, as the second version has it. */
export const sugarNumbers = ({ sweetenings = [], sweetener = USUAL_MATERIAL, filler }: Recipe): readonly number[] => [
  sweetenings.length,
  ...sweetenings.flatMap(({ material, massTenthG }) => [numberOf(material), massTenthG]),
  numberOf(sweetener),
  // White sugar stands for no water: its number is that of none.
  filler === undefined ? numberOf(USUAL_MATERIAL) : numberOf(filler),
]

/** Throws `code_newer` of a material that this bot does not know yet. */
function readMaterial(reader: Reader): MaterialId | null {
  const number = reader.next([0, 1e6])
  const material = number === null ? null : materialNumbers[number]
  if (material === undefined) throw new DomainError('bad_value', 'code_newer', {})
  return material
}

function readSweetening(reader: Reader): RecipeSweetening | null {
  const material = readMaterial(reader)
  const massTenthG = reader.next(RANGES.sweeteningTenthG)
  return material === null || massTenthG === null || material === USUAL_MATERIAL ? null : { material, massTenthG }
}

/** What sweetens beside white sugar; null where it cannot be read. */
export function readSugars(reader: Reader): Pick<Recipe, 'sweetenings' | 'sweetener' | 'filler'> | null {
  const sweetenings = several(reader, [0, MOST_SWEETENINGS], readSweetening)
  const sweetener = sweetenings && readMaterial(reader)
  const filler = sweetener && readMaterial(reader)
  if (sweetenings === null || sweetener === null || filler === null) return null
  if (isJuice(sweetener) || (filler !== USUAL_MATERIAL && !isJuice(filler))) return null
  if (new Set(sweetenings.map(({ material }) => material)).size < sweetenings.length) return null
  return {
    ...(sweetenings.length > 0 && { sweetenings }),
    ...(sweetener !== USUAL_MATERIAL && { sweetener }),
    ...(filler !== USUAL_MATERIAL && { filler }),
  }
}
