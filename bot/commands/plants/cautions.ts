import { signature } from '../../calls/signatures.ts'
import { defineCommand } from '../../chat/command.ts'
import { type Deep, inMore } from '../../chat/depth.ts'
import type { Message } from '../../text/words.ts'
import { kitchenOf } from '../options/input-units.ts'
import { caution, note } from '../reply/outcome-reply.ts'
import { hazardsOf, isOfLook, memoryNotes, rankOf, SEVERITY_RANK } from './botanical-hazards.ts'

interface Ranked {
  readonly rank: number
  readonly message: Message<'cautions'>
}

/** What can kill or maim with any jar, in few words; the plants' own stands before it. */
const MAKING: readonly Message<'cautions'>[] = [
  caution('making_food_spirit'),
  caution('making_no_flame'),
  caution('making_children'),
  caution('making_not_for'),
]

/** The rest of it, one question deeper. */
const MAKING_DEEPER: readonly Message<'cautions'>[] = [
  caution('making_other_alcohol'),
  caution('making_vapour'),
  caution('law_and_doctor'),
  caution('making_spent_plants'),
  caution('making_no_distilling'),
  caution('making_no_lead'),
  caution('making_no_dairy_egg'),
  caution('cool_first'),
]

/** Of what is less than grave so many are told first where there is room. */
const MOST_FIRST = 3

/** What plants can do by themselves, the worst first: all that is grave on the first screen, and of the rest what has room. */
function byDepth(own: readonly Ranked[]): readonly (Message<'cautions'> & Deep)[] {
  const grave = own.filter(({ rank }) => rank <= SEVERITY_RANK.high).length
  const first = Math.max(grave, MOST_FIRST)
  const sorted = own.toSorted((one, other) => one.rank - other.rank).map(({ message }) => message)
  return [...sorted.slice(0, first), ...inMore(sorted.slice(first))]
}

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
      ...(sweeteners.includes('honey') ? [{ rank: SEVERITY_RANK.critical, message: caution('honey_infant') }] : []),
    ]
    return {
      headline: {
        group: 'headlines',
        key: 'cautions_of',
        values: { ids, sweeteners, ofPlants: ranked.length, ofMaking: MAKING.length + MAKING_DEEPER.length },
      },
      table: [],
      sure: [],
      notes: [
        ...(corrected.length === 0
          ? []
          : [{ group: 'notes', key: 'botanical_corrected', values: { ids: corrected } } as const]),
        ...inMore([
          ...all
            .filter(isOfLook)
            .map((values): Message<'notes'> => ({ group: 'notes', key: 'botanical_look', values })),
          ...memoryNotes(own),
          note('making_trust'),
        ]),
      ],
      cautions: [...byDepth(ranked), ...MAKING, ...inMore(MAKING_DEEPER)],
      actions: [],
      data: { ids, sweeteners, hazards: all.map(({ hazard }) => hazard) },
      kitchen: kitchenOf(input),
    }
  },
})
