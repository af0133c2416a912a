import type { JarState } from '../../../core/jar/state/jar-state.ts'
import type { ReadInfusion } from '../../../core/jar/state/read-infusion.ts'
import type { StrainedJar } from '../../../core/jar/state/strained-jar.ts'
import { isDoubtfulInfusion } from '../../../core/liquid/neat.ts'
import { type MaterialId, USUAL_MATERIAL } from '../../../core/quantity/materials.ts'
import type { Mass, Ratio, Strength, Volume } from '../../../core/quantity/quantities.ts'
import { percentVol } from '../../../core/quantity/write/made-amounts.ts'
import { fillBottles } from '../../../core/recipe/plan/fill-bottles.ts'
import { plannedFill } from '../../../core/recipe/plan/planned-fill.ts'
import { liquidOf, type Portion } from '../../../core/recipe/portion.ts'
import { valuesOf } from '../../../core/recipe/propagate.ts'
import { isSyrup, type Syrup } from '../../../core/recipe/solve/syrup.ts'
import { withoutTrace } from '../../../core/recipe/solve/without-trace.ts'
import type { Call } from '../../calls/call.ts'
import type { Given } from '../../calls/option.ts'
import type { InputOf } from '../../calls/signatures.ts'
import { type Deep, inMore } from '../../chat/depth.ts'
import type { Reply, Row } from '../../chat/reply.ts'
import type { Kitchen } from '../../text/messages/kitchen.ts'
import type { Message } from '../../text/words.ts'
import { assumptionNotes, kitchenOf } from '../options/input-units.ts'
import { usualBottleIn } from '../options/usual-bottles.ts'
import { cautionsByDepth, notesByDepth } from './first-screen.ts'
import { lowAcidOf } from './low-acid-cautions.ts'
import { flashNotes, made, measuredData, note, outcomeData, outcomeRows, row, sureOf } from './outcome-reply.ts'
import { sweetenerData, sweetenerNotes } from './sweetener-notes.ts'
import { syrupCautions } from './syrup-cautions.ts'

/** What the reply needs of the input: how the infusion was typed. */
export interface Typed {
  readonly infusion?: Given<Volume | Mass> | undefined
  /** The jar it is, where it is one of the person's. */
  readonly held: StrainedJar | null
  /** What is known of it where it was said what went in. */
  readonly known: ReadInfusion | null
  readonly strength?: Given<Strength> | undefined
  /** What went into the jar, where the strength is expected of it. */
  readonly of?: InputOf<'syrup'>['of']
  readonly spirit?: InputOf<'syrup'>['spirit']
  readonly 'at-most'?: Given<Volume> | undefined
  /** The same with a strength that was read. */
  readonly again: (strength: Strength) => Call
  /** In whose measures it is told. */
  readonly kitchen: Kitchen
  /** False where the person has chosen units for everything. */
  readonly isAsTyped: boolean
  readonly sugar?: Given<MaterialId> | undefined
  readonly ratio?: Given<Ratio> | undefined
  readonly water?: Given<MaterialId> | undefined
}

const heldNote = ({ name, contents }: StrainedJar): Message<'notes'> => {
  const { outcome, volume, strength } = contents
  const { volumeMl, abvPercent, sugarGPerL } = outcome
  return { group: 'notes', key: 'jar_held', values: { name, volumeMl, abvPercent, sugarGPerL, volume, strength } }
}

/** What of a strength that was read is taken, and why. */
export function readingNotes(read: Pick<ReadInfusion, 'corrected' | 'hidden'>): readonly Message<'notes'>[] {
  const { corrected, hidden } = read
  if (hidden !== null) return [{ group: 'notes', key: 'jar_reading_hidden', values: hidden }]
  return corrected === null ? [] : [{ group: 'notes', key: 'jar_reading', values: corrected }]
}

/** Of a strength that was only said: whose it is, and what its ± takes for granted. */
const saidNotes = ({ abvPercent, abvAtC }: Portion): readonly (Message<'notes'> & Deep)[] => [
  // Whoever read a hydrometer at a temperature has measured the strained liquid and need not be told to.
  ...(abvAtC !== null
    ? []
    : isDoubtfulInfusion(abvPercent.value)
      ? [note('fresh_plants'), note('fresh_plants_why')]
      : [note('strained_strength')]),
  ...inMore([note('nothing_dissolved')]),
]

/** What the strength is taken from. */
export function strengthNotes(
  { held, known, strength, again }: Typed,
  infusion: Portion,
): readonly (Message<'notes'> & Deep)[] {
  if (held !== null) return [heldNote(held)]
  if (known === null) return saidNotes(infusion)
  if (strength === undefined) {
    return [
      {
        group: 'notes',
        key: 'strength_expected',
        values: { abvPercent: infusion.abvPercent, line: again(percentVol(Math.round(infusion.abvPercent.value))) },
      },
    ]
  }
  const { surprising } = known
  return [
    ...readingNotes(known),
    ...(surprising === null
      ? []
      : [{ group: 'notes', key: 'strength_surprising', values: { abvPercent: surprising } } as const]),
  ]
}

export const syrupData = (syrup: Syrup) => {
  const { infusionMl, waterMl, waterG, sweetener, sugarG, syrupMl, syrupG } = syrup
  return {
    ...outcomeData(syrup.outcome),
    ...measuredData({ waterMl, waterG, sugarG, syrupMl, syrupG, infusionMl }),
    ...sweetenerData(sweetener, sugarG),
    filler: syrup.filler ?? 'water',
  }
}

/** What has to be said of the syrup that a jar is to have. */
export const jarSyrupCautions = (story: JarState, syrup: Syrup, infusion: Portion): readonly Message<'cautions'>[] => [
  ...lowAcidOf(story, [syrup.outcome]),
  ...syrupCautions(syrup, infusion, null),
]

/** What a headline says of a syrup. */
function syrupSaid(whole: Syrup, freezerC: number, { kitchen, held }: Pick<Typed, 'kitchen' | 'held'>) {
  const syrup = withoutTrace(whole)
  const usual = [{ count: null, volumeMl: usualBottleIn(kitchen) }]
  return {
    ...made(syrup.outcome, freezerC),
    bottles: fillBottles(syrup.outcome.volumeMl.value, usual).bottles,
    short: held === null ? null : plannedFill(syrup.outcome.volumeMl.value, held.story.started.bottles),
    filler: syrup.filler,
    sweetener: syrup.sweetener,
    sugarG: syrup.sugarG,
    waterMl: syrup.waterMl,
    syrupG: isSyrup(syrup) ? syrup.syrupG : null,
    infusionMl: syrup.leftMl > 0 ? syrup.infusionMl : null,
  }
}

/** What to weigh out, and what it makes. */
export function syrupRows(syrup: Syrup, freezerC: number): readonly Row[] {
  const { infusionMl, waterMl, waterG, sweetener, sugarG, syrupMl, syrupG } = syrup
  return [
    ...(syrup.leftMl > 0 ? [row('infusion', { group: 'cells', key: 'pour', values: { volumeMl: infusionMl } })] : []),
    ...(sugarG.value > 0 ? [row('sugar', { group: 'cells', key: 'weigh', values: { massG: sugarG, sweetener } })] : []),
    ...(waterMl.value > 0
      ? [row('water', { group: 'cells', key: 'water', values: { filler: syrup.filler, waterMl, waterG } })]
      : []),
    ...(isSyrup(syrup) ? [row('syrup', { group: 'cells', key: 'syrup', values: { syrupMl, syrupG } })] : []),
    ...outcomeRows(syrup.outcome, freezerC),
  ]
}

/** All of the infusion, as it was typed. */
export const infusionTyped = ({ infusion, isAsTyped }: Typed): string | undefined =>
  infusion === undefined || !isAsTyped ? undefined : infusion.typed.trim()

/** The reply to a wish that fixes one liqueur. */
export function syrupReply(input: Typed, infusion: Portion, whole: Syrup, freezerC: number): Reply {
  const syrup = withoutTrace(whole)
  const { outcome, waterG, sweetener, sugarG, syrupG } = syrup
  const said = { ...syrupSaid(syrup, freezerC, input), typed: infusionTyped(input) }
  return {
    headline: { group: 'headlines', key: 'syrup', values: said },
    under: [{ group: 'headlines', key: 'makes', values: said }],
    table: inMore(syrupRows(syrup, freezerC)),
    sure: sureOf(outcome, infusion.by === 'volume'),
    notes: notesByDepth([
      ...assumptionNotes(input),
      ...(syrup.leftMl > 0 ? [{ group: 'notes', key: 'bounded', values: { leftMl: syrup.leftMl } } as const] : []),
      ...(isSyrup(syrup) && syrup.filler === null
        ? [{ group: 'notes', key: 'syrup_by_weight', values: { syrupG } } as const]
        : []),
      ...strengthNotes(input, infusion),
      ...(sugarG.value > 0 || waterG.value > 0 ? [note('settle')] : []),
      ...(input.ratio !== undefined && sweetener !== USUAL_MATERIAL
        ? [{ group: 'notes', key: 'ratio_as_weighed', values: { material: sweetener } } as const]
        : []),
      ...sweetenerNotes([sweetener, ...(syrup.filler === null ? [] : [syrup.filler])], sweetener),
      ...flashNotes([liquidOf(valuesOf(infusion))]),
    ]),
    cautions: cautionsByDepth(syrupCautions(syrup, infusion, freezerC)),
    actions: [],
    data: syrupData(whole),
    kitchen: kitchenOf(input),
  }
}
