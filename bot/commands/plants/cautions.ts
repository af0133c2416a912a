import { signature } from '../../calls/signatures.ts'
import { defineCommand } from '../../chat/command.ts'
import { inMore } from '../../chat/depth.ts'
import type { Message } from '../../text/words.ts'
import { kitchenOf } from '../options/input-units.ts'
import { caution, note } from '../reply/outcome-reply.ts'
import { hazardsOf, isOfLook, memoryNotes, rankOf, SEVERITY_RANK } from './botanical-hazards.ts'

interface Ranked {
  readonly rank: number
  readonly message: Message<'cautions'>
}

const { critical, high, medium } = SEVERITY_RANK

/** What holds for any jar; the plants' own of the same rank stand before them. */
const MAKING: readonly Ranked[] = [
  { rank: critical, message: caution('making_food_spirit') },
  { rank: critical, message: caution('making_no_flame') },
  { rank: critical, message: caution('law_and_doctor') },
  { rank: critical, message: caution('making_children') },
  { rank: high, message: caution('making_spent_plants') },
  { rank: high, message: caution('making_no_distilling') },
  { rank: high, message: caution('making_no_lead') },
  { rank: high, message: caution('making_no_dairy_egg') },
  { rank: medium, message: caution('cool_first') },
]

export const cautionsCommand = defineCommand({
  ...signature('cautions'),
  topic: 'planning',
  isOfLineAlone: true,
  run(input) {
    const found = input.of.is.flatMap((each) => ('botanical' in each ? each : []))
    const sweeteners = input.of.is.flatMap((each) => ('material' in each ? each.material : []))
    const plants = found.map(({ botanical }) => botanical)
    const ids = plants.map(({ id }) => id)
    const all = hazardsOf(plants)
    const own = all.filter((each) => !isOfLook(each))
    const corrected = found.filter((each) => each.corrected).map(({ botanical }) => botanical.id)
    const ranked: readonly Ranked[] = [
      ...own.map(
        (values): Ranked => ({
          rank: rankOf(values),
          message: { group: 'cautions', key: 'botanical_hazard', values },
        }),
      ),
      ...(sweeteners.includes('honey') ? [{ rank: critical, message: caution('honey_infant') }] : []),
      ...MAKING,
    ]
    return {
      headline: {
        group: 'headlines',
        key: 'cautions_of',
        values: { ids, sweeteners, ofPlants: ranked.length - MAKING.length, ofMaking: MAKING.length },
      },
      table: [],
      sure: [],
      notes: [
        ...(corrected.length === 0
          ? []
          : [{ group: 'notes', key: 'botanical_corrected', values: { ids: corrected } } as const]),
        ...all.filter(isOfLook).map((values): Message<'notes'> => ({ group: 'notes', key: 'botanical_look', values })),
        ...inMore([...memoryNotes(own), note('making_trust')]),
      ],
      cautions: ranked.toSorted((one, other) => one.rank - other.rank).map(({ message }) => message),
      actions: [],
      data: { ids, sweeteners, hazards: all.map(({ hazard }) => hazard) },
      kitchen: kitchenOf(input),
    }
  },
})
