import type { Botanical } from '../../../core/botanical/botanical.ts'
import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import { OPENED_MONTHS, type ShelfLife, shelfLife } from '../../../core/botanical/limits/shelf-life.ts'
import { plantIdsIn } from '../../../core/jar/state/batch-facts.ts'
import { isCatalogued } from '../../../core/jar/state/liquid-steps.ts'
import type { JarView } from '../../../core/jar/tasks/jar-view.ts'
import { delleUnits, type Keeping, keepingOf, surelyDissolvedGPerL } from '../../../core/liquid/keeping.ts'
import { exactly, type Measured } from '../../../core/quantity/measured/measured.ts'
import { abvPercent, sugarGPerL } from '../../../core/quantity/measured/precision.ts'
import { addMonths, dayFromIso, type IsoDay, isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { type InputOf, signature } from '../../calls/signatures.ts'
import { ChatError } from '../../chat/chat-error.ts'
import { type Context, defineCommand } from '../../chat/command.ts'
import { inMore } from '../../chat/depth.ts'
import type { Reply } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'
import { dangerActions, dangerCautions } from '../jar/known/jar-dangers.ts'
import { jarBrief } from '../jar/known/jar-data.ts'
import { jarNamed } from '../jar/known/jar-named.ts'
import { assumptionNotes, kitchenOf } from '../options/input-units.ts'
import { measuredData, note } from '../reply/outcome-reply.ts'

type Input = InputOf<'keeping'>

/** What is asked about. */
interface Kept {
  readonly plants: readonly Botanical[]
  readonly abvPercent: Measured | null
  readonly sugarGPerL: Measured
  /** From when on its months count; null where nobody knows. */
  readonly from: IsoDay | null
}

function ofJar({ story, contents }: JarView): Kept {
  const { outcome, isEmpty } = contents
  const plants = plantIdsIn(story).filter(isCatalogued).map(botanicalById)
  const from = story.bottled?.day ?? story.sweetened?.day ?? story.strained?.day ?? null
  return { plants, abvPercent: isEmpty ? null : outcome.abvPercent, sugarGPerL: outcome.sugarGPerL, from }
}

const ofLine = ({ of, strength, sweetness }: Input): Kept => ({
  plants: (of?.is ?? []).flatMap((each) => ('botanical' in each ? [each.botanical] : [])),
  abvPercent: strength === undefined ? null : abvPercent(strength.is, 'hydrometer'),
  sugarGPerL: sweetness === undefined ? exactly(0) : sugarGPerL(sweetness.is),
  from: null,
})

function headlineOf(kept: Kept, keeping: Keeping | null, life: ShelfLife | null): Reply['headline'] {
  const { abvPercent: strength, from } = kept
  if (strength !== null && keeping === 'ferments') {
    return { group: 'headlines', key: 'keeping_not', values: { abvPercent: strength } }
  }
  if (strength !== null && keeping === 'undecided') {
    return { group: 'headlines', key: 'keeping_fridge', values: { abvPercent: strength } }
  }
  const months = life?.months ?? null
  if (months === null) return { group: 'headlines', key: 'keeping_not_known', values: { abvPercent: strength } }
  const until = from === null ? null : isoDay(addMonths(dayFromIso(from), months))
  return { group: 'headlines', key: 'keeping_best', values: { months, until } }
}

const RED: readonly ShelfLife['kind'][] = ['strawberry', 'browning', 'fruit']

function firstNotes(kept: Kept, keeping: Keeping | null, life: ShelfLife | null): readonly Message<'notes'>[] {
  const { plants, abvPercent: strength } = kept
  if (keeping !== null && keeping !== 'keeps') return []
  const decides = plants.find((plant) => shelfLife([plant])?.kind === life?.kind)
  const [fromMonths, toMonths] = OPENED_MONTHS
  return [
    { group: 'notes', key: 'keeping_opened', values: { fromMonths, toMonths } },
    ...(plants.length > 1 && decides !== undefined && life?.months != null
      ? [{ group: 'notes', key: 'keeping_decides', values: { id: decides.id } } as const]
      : []),
    ...(strength !== null && life?.months != null
      ? [{ group: 'notes', key: 'keeping_safe', values: { abvPercent: strength } } as const]
      : []),
    ...(life !== null && RED.includes(life.kind) ? [note('keeping_red')] : []),
    ...(strength === null && life?.months != null ? [note('keeping_say_more')] : []),
  ]
}

function deeperNotes(kept: Kept, life: ShelfLife | null): readonly Message<'notes'>[] {
  const { abvPercent: strength, sugarGPerL: sweetness } = kept
  const units =
    strength === null
      ? null
      : delleUnits(strength.value, surelyDissolvedGPerL({ abvPercent: strength, sugarGPerL: sweetness }))
  return [
    ...(life === null
      ? []
      : [{ group: 'notes', key: 'keeping_evidence', values: { trust: life.trust, source: life.source } } as const]),
    ...(units === null || strength === null
      ? []
      : [
          {
            group: 'notes',
            key: 'keeping_units',
            values: { units, abvPercent: strength, sugarGPerL: sweetness },
          } as const,
        ]),
    note('keeping_cream'),
  ]
}

function keepingReply(input: Input, kept: Kept, held: JarView | null, context: Context): Reply {
  const { plants, abvPercent: strength, sugarGPerL: sweetness, from } = kept
  const keeping = strength === null ? null : keepingOf({ abvPercent: strength, sugarGPerL: sweetness })
  const life = shelfLife(plants)
  const isLowAcid = plants.some(({ kind }) => kind === 'vegetable')
  const months = life?.months ?? null
  return {
    headline: headlineOf(kept, keeping, life),
    table: [],
    sure: [],
    notes: [...firstNotes(kept, keeping, life), ...inMore([...deeperNotes(kept, life), ...assumptionNotes(input)])],
    cautions: [
      ...(isLowAcid ? [{ group: 'cautions', key: 'keeping_low_acid', values: undefined } as const] : []),
      ...(held === null ? [] : inMore(dangerCautions([held.story]))),
    ],
    actions: held === null ? [] : dangerActions(held, context),
    data: {
      ...(held === null ? {} : { jar: jarBrief(held) }),
      keeping,
      ...(strength === null ? { abvPercent: null, abvPercentPlusMinus: null } : measuredData({ abvPercent: strength })),
      kind: life?.kind ?? null,
      bestMonths: months,
      bestUntil: from === null || months === null ? null : isoDay(addMonths(dayFromIso(from), months)),
      openedMonths: OPENED_MONTHS,
      trust: life?.trust ?? null,
    },
    kitchen: kitchenOf(input),
  }
}

export const keepingCommand = defineCommand({
  ...signature('keeping'),
  async run(input, context) {
    const { jar, of, strength } = input
    const held = jar === undefined ? null : await jarNamed(jar.is, context)
    if (held === null && of === undefined && strength === undefined) {
      throw new ChatError('missing_option', 'keeping_of_what', {}, { option: 'of' })
    }
    return keepingReply(input, held === null ? ofLine(input) : ofJar(held), held, context)
  },
})
