import { isLowAcid } from '../../../core/botanical/limits/low-acid.ts'
import { openedMonths, type ShelfLife, type ShelfPlant, shelfLife } from '../../../core/botanical/limits/shelf-life.ts'
import { bestUntil, shelfPlantsIn } from '../../../core/jar/state/best-until.ts'
import type { JarView } from '../../../core/jar/tasks/jar-view.ts'
import { delleUnits, type Keeping, keepingOf, surelyDissolvedGPerL } from '../../../core/liquid/keeping.ts'
import { exactly, type Measured } from '../../../core/quantity/measured/measured.ts'
import { abvPercent, sugarGPerL } from '../../../core/quantity/measured/precision.ts'
import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import { percentVol } from '../../../core/quantity/write/made-amounts.ts'
import { type Call, call } from '../../calls/call.ts'
import { type InputOf, signature } from '../../calls/signatures.ts'
import { ChatError } from '../../chat/chat-error.ts'
import { type Context, defineCommand } from '../../chat/command.ts'
import { inMore } from '../../chat/depth.ts'
import type { Reply } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'
import { dangerActions, dangerCautions } from '../jar/known/jar-dangers.ts'
import { jarBrief } from '../jar/known/jar-data.ts'
import { kitchenOfJar } from '../jar/known/jar-kitchen.ts'
import { jarNamed } from '../jar/known/jar-named.ts'
import { heldFirst } from '../jar/known/told-trouble.ts'
import { assumptionNotes } from '../options/input-units.ts'
import { measuredData, note } from '../reply/outcome-reply.ts'

type Input = InputOf<'keeping'>

/** What is asked about. */
interface Kept {
  readonly plants: readonly ShelfPlant[]
  readonly abvPercent: Measured | null
  readonly sugarGPerL: Measured
  /** Null where nobody knows from when on its months count. */
  readonly until: IsoDay | null
}

function ofJar({ story, contents }: JarView): Kept {
  const { outcome, isEmpty } = contents
  return {
    plants: shelfPlantsIn(story),
    abvPercent: isEmpty ? null : outcome.abvPercent,
    sugarGPerL: outcome.sugarGPerL,
    until: bestUntil(story),
  }
}

const ofLine = ({ of, strength, sweetness }: Input): Kept => ({
  plants: (of?.is ?? []).flatMap((each) => ('botanical' in each ? [each.botanical] : [])),
  abvPercent: strength === undefined ? null : abvPercent(strength.is, 'hydrometer'),
  sugarGPerL: sweetness === undefined ? exactly(0) : sugarGPerL(sweetness.is),
  until: null,
})

/** The same question with a strength, as an example. */
const withStrength = (input: Input): Call => call('keeping', { ...input, strength: percentVol(30) })

function headlineOf(input: Input, kept: Kept, keeping: Keeping | null, life: ShelfLife | null): Reply['headline'] {
  const { abvPercent: strength, until } = kept
  if (strength !== null && keeping === 'ferments') {
    return { group: 'headlines', key: 'keeping_not', values: { abvPercent: strength } }
  }
  if (strength !== null && keeping === 'undecided') {
    return { group: 'headlines', key: 'keeping_fridge', values: { abvPercent: strength } }
  }
  const months = life?.months ?? null
  if (months === null)
    return { group: 'headlines', key: 'keeping_not_known', values: { abvPercent: strength, line: withStrength(input) } }
  return { group: 'headlines', key: 'keeping_best', values: { months, until } }
}

const RED: readonly ShelfLife['kind'][] = ['strawberry', 'browning', 'fruit']

function firstNotes(
  input: Input,
  kept: Kept,
  keeping: Keeping | null,
  life: ShelfLife | null,
): readonly Message<'notes'>[] {
  const { plants, abvPercent: strength } = kept
  if (keeping !== null && keeping !== 'keeps') return []
  const decides = plants.find((plant) => shelfLife([plant], null)?.kind === life?.kind)
  const [fromMonths, toMonths] = openedMonths(life?.months ?? null)
  return [
    { group: 'notes', key: 'keeping_opened', values: { fromMonths, toMonths } },
    ...(life?.isWeak === true && life.months !== null ? [note('keeping_weak')] : []),
    ...(new Set(plants.map(({ id }) => id)).size > 1 && decides?.id != null && life?.months != null && !life.isWeak
      ? [{ group: 'notes', key: 'keeping_decides', values: { id: decides.id } } as const]
      : []),
    ...(strength !== null && life?.months != null
      ? [{ group: 'notes', key: 'keeping_safe', values: { abvPercent: strength } } as const]
      : []),
    ...(life !== null && RED.includes(life.kind) ? [note('keeping_red')] : []),
    ...(strength === null && life?.months != null
      ? [{ group: 'notes', key: 'keeping_say_more', values: { line: withStrength(input) } } as const]
      : []),
  ]
}

function deeperNotes(kept: Kept, life: ShelfLife | null): readonly Message<'notes'>[] {
  const { abvPercent: strength, sugarGPerL: sweetness } = kept
  const units =
    strength === null
      ? null
      : delleUnits(strength.value, surelyDissolvedGPerL({ abvPercent: strength, sugarGPerL: sweetness }))
  return [
    ...(life !== null && RED.includes(life.kind) ? [note('keeping_sugar')] : []),
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
  const { plants, abvPercent: strength, sugarGPerL: sweetness, until } = kept
  const keeping = strength === null ? null : keepingOf({ abvPercent: strength, sugarGPerL: sweetness })
  const life = shelfLife(plants, strength === null || keeping === null ? null : { abvPercent: strength.value, keeping })
  const hasLowAcid = plants.some(isLowAcid)
  const months = life?.months ?? null
  return {
    headline: headlineOf(input, kept, keeping, life),
    table: [],
    sure: [],
    notes: [
      ...firstNotes(input, kept, keeping, life),
      ...inMore([...deeperNotes(kept, life), ...assumptionNotes(input)]),
    ],
    cautions: [
      ...(hasLowAcid ? [{ group: 'cautions', key: 'keeping_low_acid', values: undefined } as const] : []),
      ...(held === null ? [] : inMore(dangerCautions([held.story]))),
    ],
    actions: held === null ? [] : dangerActions(held, context),
    data: {
      ...(held === null ? {} : { jar: jarBrief(held) }),
      keeping,
      ...(strength === null ? { abvPercent: null, abvPercentPlusMinus: null } : measuredData({ abvPercent: strength })),
      kind: life?.kind ?? null,
      bestMonths: months,
      bestUntil: until,
      openedMonths: openedMonths(months),
      trust: life?.trust ?? null,
    },
    kitchen: kitchenOfJar(input, held?.story ?? null),
  }
}

export const keepingCommand = defineCommand({
  ...signature('keeping'),
  topic: 'planning',
  isOfLineAlone: true,
  async run(input, context) {
    const { jar, of, strength } = input
    const held = jar === undefined ? null : await jarNamed(jar.is, context)
    if (held === null && of === undefined && strength === undefined) {
      throw new ChatError('missing_option', 'keeping_of_what', {}, { option: 'of' })
    }
    const reply = keepingReply(input, held === null ? ofLine(input) : ofJar(held), held, context)
    return held === null ? reply : heldFirst(reply, [held.story])
  },
})
