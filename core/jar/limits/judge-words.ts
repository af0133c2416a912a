import { dangersNoted } from '../../botanical/drink/named-danger.ts'
import { findFood } from '../../botanical/foods/find-food.ts'
import { expectNotRefused } from '../../botanical/refuse/refusal.ts'
import { expectDrinkable } from '../../botanical/refuse/refuse-spirit.ts'
import { DomainError } from '../../domain-error.ts'
import { shown } from '../../quantity/read/tokens.ts'
import { expectDistilledPercent } from '../../recipe/distilled.ts'

/** Whether a text is refused now, not merely asked about. */
function isRefused(expect: () => void): boolean {
  try {
    expect()
    return false
  } catch (error) {
    if (!(error instanceof DomainError)) throw error
    return error.code === 'refused'
  }
}

/** What is refused among plants that were typed, fit to be shown; null where nothing is. */
export const refusedPlantIn = (text: string): string | null =>
  isRefused(() => expectNotRefused(text)) ? shown(text) : null

/** The same of what goes in beside plants, by full names only: `vodka with oleander`. */
export const poisonNamedIn = (text: string): string | null =>
  refusedSpiritIn(text) === null && dangersNoted(text).length > 0 ? shown(text) : null

/** The same of spirits. */
export const refusedSpiritIn = (text: string): string | null =>
  isRefused(() => expectDrinkable(text)) ? shown(text) : null

/** Spirit, % vol at 20 °C, so strong that it has been dried; null where distilling makes it. */
export const driedSpirit = (abvPercent: number): string | null =>
  isRefused(() => expectDistilledPercent(abvPercent)) ? `${Number(abvPercent.toFixed(1))} % vol` : null

/** A plant outside the catalogue, as an entry names it, that is on no list of foods; null where it is on one. */
export const unknownIn = (name: string): string | null => (findFood(name) === null ? shown(name) : null)
