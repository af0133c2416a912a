import type { Botanical } from '../../../core/botanical/botanical.ts'
import { isFormAsked } from '../../../core/botanical/find/in-form.ts'
import { usProofFromAbvPercent } from '../../../core/liquid/proof.ts'
import { type MaterialId, materialText } from '../../../core/quantity/materials.ts'
import { writeSweetener } from '../../../core/quantity/write/write-quantity.ts'
import type { NamedPortion, Portion } from '../../../core/recipe/portion.ts'
import type { Sweetening } from '../../../core/recipe/sweetening.ts'
import { weighedG } from '../../../core/recipe/tool-precision.ts'

/** More digits than a cook can weigh out; never three after the point, which might be read as thousands. */
export const written = (value: number): string => (value < 1 ? value.toFixed(4) : String(Number(value.toFixed(2))))

/** The value that `written` tells. */
export const asWritten = (value: number): number => Number(written(value))

/** From so much on a kitchen scale tells it, g. */
const SCALE_G = 10

/** As a cook weighs it out: where it is said to be read only. */
export const weighedText = (massG: number): string =>
  massG < SCALE_G ? String(Number(massG.toPrecision(2))) : String(weighedG(massG))

const at = (tempC: number | null): string => (tempC === null || tempC === 20 ? '' : ` at ${written(tempC)} C`)

/** `700 ml`, as the grammar reads it. */
export const pouredText = ({ amount, by, atC }: Portion): string =>
  by === 'mass' ? `${written(amount.value)} g` : `${written(amount.value)} ml${at(atC)}`

/** `75.5%`, as the grammar reads it. */
export function strengthText({ abvPercent: { value }, abvAtC, readsProof }: Portion): string {
  const strength = readsProof === true ? `${written(usProofFromAbvPercent(value))} proof` : `${written(value)}%`
  return `${strength}${at(abvAtC)}`
}

/** `250 g/L` after a space, as the grammar reads it; empty where there is no sugar in it. */
export const sugarText = ({ sugarGPerL: { value } }: Portion): string => (value === 0 ? '' : ` ${written(value)} g/L`)

/** `700 ml 75.5%`, `700 ml 40% gin`, `500 ml 28% 250 g/L`, as the grammar reads it. */
export const portionText = (portion: NamedPortion): string =>
  `${pouredText(portion)} ${strengthText(portion)}${sugarText(portion)}${portion.drink == null ? '' : ` ${portion.drink}`}`

/** `200 g honey`, as the grammar reads it. */
const sweeteningText = ({ material, massG }: Sweetening): string => `${written(massG.value)} g${materialText(material)}`

/** `200 g honey + maple syrup`: what goes in, and what is taken where the amount is worked out; empty where there is neither. */
export const sugarWritten = (sweetenings: readonly Sweetening[], sweetener: MaterialId | null | undefined): string =>
  [...sweetenings.map(sweeteningText), ...(sweetener == null ? [] : [writeSweetener(sweetener)])].join(' + ')

/** Its name within a line, with its state where a plant is not planned without. */
export const titleOf = (botanical: Botanical): string => {
  const { names, form } = botanical
  const noun = `${names.title.charAt(0).toLowerCase()}${names.title.slice(1)}`
  return isFormAsked(botanical) ? `${form.state} ${noun}` : noun
}
