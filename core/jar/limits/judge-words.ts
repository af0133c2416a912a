import { dangersNoted } from '../../botanical/drink/named-danger.ts'
import { findFood } from '../../botanical/foods/find-food.ts'
import { expectNotRefused } from '../../botanical/refuse/refusal.ts'
import { expectDrinkable } from '../../botanical/refuse/refuse-spirit.ts'
import { domainErrorOf } from '../../domain-error.ts'
import { ofTexts } from '../../once.ts'
import { shown } from '../../quantity/read/tokens.ts'
import { expectDistilledPercent } from '../../recipe/distilled.ts'

/** A text that is merely asked about isn't forbidden. */
const isForbidden = (work: () => unknown): boolean => domainErrorOf(work)?.code === 'refused'

/** What is refused among plants that were typed, fit to be shown; null where nothing is. */
export const refusedPlantIn = ofTexts((text): string | null =>
  isForbidden(() => expectNotRefused(text)) ? shown(text) : null,
)

/** A poison named in what goes in beside plants, by full names only: `vodka with oleander`; null where there is none. */
export const poisonNamedIn = ofTexts((text): string | null =>
  refusedSpiritIn(text) === null && dangersNoted(text).length > 0 ? shown(text) : null,
)

/** What is refused as a spirit, fit to be shown; null where nothing is. */
export const refusedSpiritIn = ofTexts((text): string | null =>
  isForbidden(() => expectDrinkable(text)) ? shown(text) : null,
)

/** A strength, % vol at 20 °C, that only drying makes; null where distilling does. */
export const driedSpirit = (abvPercent: number): string | null =>
  isForbidden(() => expectDistilledPercent(abvPercent)) ? `${Number(abvPercent.toFixed(1))} % vol` : null

/** A plant outside the catalogue, as an entry names it, that is on no list of foods; null where it is on one. */
export const unknownIn = (name: string): string | null => (findFood(name) === null ? shown(name) : null)
