import type { Botanical, PlantState } from '../../../../core/botanical/botanical.ts'
import type { Preparation } from '../../../../core/botanical/evidence/preparation.ts'
import type { ProductFile } from '../../../../core/botanical/evidence/product-files.ts'
import type { SteepEvidence } from '../../../../core/botanical/evidence/steep-evidence.ts'
import type { Format } from '../../format.ts'
import { listed } from '../phrases.ts'
import { planNotes } from '../plan/plan-notes.ts'
import { plantName } from '../plan/plan-words.ts'
import { botanicalCells, botanicalRows } from './botanical-rows.ts'
import { spanText, stateWords, titleText, trusted } from './botanical-words.ts'
import { makingCautions } from './caution-words.ts'
import { evidenceWords, productFileWords } from './evidence-words.ts'
import { type HazardOf, hazardSentence } from './hazard-words.ts'
import { preparationWords } from './preparation-words.ts'

interface DoseSaid extends Pick<Botanical, 'dose' | 'timesDays'> {
  readonly id: string
  readonly state: PlantState
}

const counted = (count: number): string => `${count} ${count === 1 ? 'caution' : 'cautions'}`

/** What `/botanical` and `/cautions` say. */
export const botanicalSentences = {
  headlines: {
    botanical: ({ id, state, dose, timesDays }: DoseSaid, format: Format) => {
      const { minGPerL: min, typicalGPerL: typical, maxGPerL: max } = dose
      const [least, most, usual] = [min, max, typical].map((gPerL) => format.plain(gPerL, gPerL < 10 ? 2 : 0))
      const amount = `${least} to ${most} g (usually ${usual})`
      const days = spanText(timesDays.usualMin, timesDays.usualMax, format)
      return `${titleText({ id, state })}: ${amount} in a litre of spirit, ${days}${trusted(dose.trust)}.`
    },
    botanical_kinds: ({ plants, kinds }: { readonly plants: number; readonly kinds: number }) =>
      `I know ${plants} plants, of ${kinds} kinds. Name one for its amount and days.`,
    cautions_of: ({
      ids,
      ofPlants,
      ofMaking,
    }: {
      readonly ids: readonly string[]
      readonly ofPlants: number
      readonly ofMaking: number
    }) => {
      const plants = ofPlants === 0 ? 'I know no caution' : counted(ofPlants)
      return `${plants} for ${listed(ids.map(plantName))} and ${ofMaking} for the making, worst first.`
    },
  },
  rows: botanicalRows,
  cells: botanicalCells,
  notes: {
    botanical_corrected: planNotes.plan_corrected,
    botanical_form_taken: planNotes.plan_form_taken,
    botanical_steps: ({
      steps,
      knownAs,
    }: {
      readonly steps: readonly Preparation[]
      /** The form that the steps are about, where another was asked for. */
      readonly knownAs: PlantState | null
    }) => {
      const said = steps.map((step) => preparationWords[step]).join(' ')
      return knownAs === null
        ? said
        : `I know how to prepare it ${stateWords[knownAs]}; take from that what fits: ${said}`
    },
    botanical_evidence: ({ evidence }: { readonly evidence: SteepEvidence['key'] }) => evidenceWords[evidence],
    botanical_habit: ({
      byAnalogy,
      measured,
      trust,
    }: Pick<Botanical['timesDays'], 'byAnalogy' | 'trust'> & { readonly measured: boolean }) => {
      const days = byAnalogy ? 'The days are habit, taken over from a like plant' : 'The days are habit'
      return measured
        ? `${days}${trusted(trust)}: taste.`
        : `${days}${trusted(trust)}: I know of no measurement of when it is done, so taste.`
    },
    botanical_file: ({ file }: { readonly file: ProductFile }, format: Format) => productFileWords(file, format),
    botanical_look: (values: HazardOf) => hazardSentence(values),
  },
  cautions: {
    botanical_hazard: (values: HazardOf) => hazardSentence(values),
    ...makingCautions,
  },
}
