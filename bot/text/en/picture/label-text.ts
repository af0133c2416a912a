import type { DangerKind } from '../../../../core/jar/limits/judge-jar.ts'
import type { Source } from '../../../../core/jar/state/contents.ts'
import type { ForGuests } from '../../../../core/label/for-guests.ts'
import type { Measured } from '../../../../core/quantity/measured/measured.ts'
import { dayFromIso, type IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import type { Format } from '../../format.ts'
import { dayText } from '../day-text.ts'
import { printedDangers } from '../jar/danger-sentences.ts'
import { adviceWords, allAllergenWords, allergenWords, keepAwayWords, strangerWords } from '../label/guest-words.ts'
import { plantName, unknownName, vesselText } from '../plan/plan-words.ts'
import { altText } from './alt-text.ts'

interface Bottle extends ForGuests {
  readonly name: string
  readonly abvPercent: Measured
  readonly strength: Source | 'planned'
  readonly volumeMl: number | null
  readonly bottled: IsoDay | null
  readonly bestBefore: IsoDay | null
  readonly plants: readonly { readonly id: string | null; readonly name: string }[]
  readonly hasWater: boolean
  readonly hasSugar: boolean
  readonly isFlammable: boolean
  readonly isTooStrong: boolean
  readonly danger: DangerKind | null
}

const rough = ({ value, plusMinus }: Measured): Measured => ({ value, plusMinus: Math.max(1, plusMinus) })

const strength = ({ abvPercent, strength }: Bottle, format: Format): string =>
  abvPercent.value === 0 ? 'no alcohol' : `about ${format.strength(rough(abvPercent))} (${strength})`

const volume = ({ volumeMl }: Bottle, format: Format): string => (volumeMl === null ? '' : vesselText(volumeMl, format))

const day = (iso: IsoDay): string => dayText(dayFromIso(iso))

const bottled = ({ bottled }: Bottle): string =>
  bottled === null ? 'Bottled: ____________' : `Bottled ${day(bottled)}`

const bestBefore = ({ bestBefore }: Bottle): string =>
  bestBefore === null ? '' : `Best before about ${day(bestBefore)}`

/** `coffee beans (whole)`: a comma would make two of it in a list. */
const itemName = (id: string): string => plantName(id).replace(/, (.+)$/, ' ($1)')

const plants = ({ plants }: Bottle): readonly string[] => [
  ...new Set(plants.map(({ id, name }) => (id === null ? unknownName(name) : itemName(id)))),
]

const inIt = (bottle: Bottle): string =>
  `Spirit${bottle.hasWater ? ', water' : ''}${bottle.hasSugar ? ', sugar' : ''}${plants(bottle)
    .map((name) => `, ${name}`)
    .join('')}`

const advice = ({ advice }: Pick<Bottle, 'advice'>): string => adviceWords(advice)

const neat = ({ isTooStrong }: Bottle): string => (isTooStrong ? 'Do not drink neat.' : '')

const warning = ({ danger }: Pick<Bottle, 'danger'>): string => (danger === null ? '' : printedDangers[danger])

const sentence = (text: string): string => (text === '' ? '' : `${text}.`)

/** What stands on a bottle. */
export const labelText = {
  strength,
  volume,
  bottled,
  bestBefore,
  inIt,
  /** Empty where nothing is known to be in it. */
  allergens: allAllergenWords,
  advice,
  warning,
  neat,
  keepAway: keepAwayWords,
  alt: (bottle: Bottle, format: Format) =>
    altText([
      `Bottle label: ${bottle.name}.`,
      sentence(warning(bottle)),
      sentence(strength(bottle, format).replace(/^./, (letter) => letter.toUpperCase())),
      sentence(volume(bottle, format)),
      bottle.bottled === null ? 'Room to write when it was bottled.' : sentence(bottled(bottle)),
      sentence(bestBefore(bottle)),
      // What warns first: where there is too much to say, the end is cut.
      allergenWords(bottle.allergens),
      advice(bottle),
      bottle.isFlammable ? 'Flammable.' : '',
      neat(bottle),
      keepAwayWords(),
      strangerWords(bottle.unknown),
      sentence(inIt(bottle)),
    ]),
}
