import { abvPercent, volumeMl } from '../../core/liquid/liquid.ts'
import type { Measured } from '../../core/quantity/measured.ts'
import type { Mass, Strength, Volume } from '../../core/quantity/quantities.ts'
import { liquidOf, type Portion } from '../../core/recipe/portion.ts'
import { propagate, valuesOf } from '../../core/recipe/propagate.ts'
import type { Style } from '../../core/recipe/styles.ts'
import type { Syrup } from '../../core/recipe/syrup.ts'
import type { Action, Reply } from '../chat/reply.ts'
import type { Message } from '../text/words.ts'
import type { Given } from './fields.ts'
import {
  caution,
  freezerState,
  made,
  measuredData,
  note,
  outcomeCautions,
  outcomeData,
  outcomeRows,
  row,
  sureOf,
  sweetnessNotes,
} from './outcome-reply.ts'
import { assumptionNotes, kitchenOf } from './typed-in.ts'

/** What the reply needs of the input: how the infusion was typed. */
interface Typed {
  readonly infusion: Given<Volume | Mass>
  readonly strength?: Given<Strength> | undefined
  /** What went into the jar, where the strength is expected of it. */
  readonly of?: Given<unknown> | undefined
  readonly spirit?: Given<unknown> | undefined
  readonly 'at-most'?: Given<Volume> | undefined
}

/** From this strength on a strained infusion of fresh plants is likely weaker than its maker thinks. */
const NEAT_PERCENT = 85

/** Whoever read a hydrometer at a temperature has measured the strained liquid and need not be told to. */
const strengthNotes = (input: Typed, infusion: Portion): readonly Message<'notes'>[] => {
  if (input.strength === undefined) {
    return [{ group: 'notes', key: 'strength_expected', values: { abvPercent: infusion.abvPercent } }]
  }
  return infusion.abvAtC !== null
    ? []
    : [note(infusion.abvPercent.value >= NEAT_PERCENT ? 'fresh_plants' : 'strained_strength')]
}

export const syrupData = (syrup: Syrup) => {
  const { infusionMl, waterMl, waterG, sugarG, syrupMl, syrupG } = syrup
  return {
    ...outcomeData(syrup.outcome),
    ...measuredData({ waterMl, waterG, sugarG, syrupMl, syrupG, infusionMl }),
  }
}

/** Whether the water dissolves the sugar, so that a syrup can be made of them first. */
const isSyrup = ({ sugarG, waterG, dissolvesG }: Syrup): boolean =>
  sugarG.value > 0 && waterG.value > 0 && dissolvesG === null

function syrupCautions(syrup: Syrup, infusion: Portion): readonly Message<'cautions'>[] {
  const { sugarG, waterG, dissolvesG } = syrup
  return [
    ...outcomeCautions(syrup.outcome, syrup.sugarStays, [liquidOf(valuesOf(infusion))], isSyrup(syrup)),
    ...(waterG.value === 0 && sugarG.value > 0 ? [caution('sugar_alone')] : []),
    ...(waterG.value > 0 && dissolvesG !== null
      ? [{ group: 'cautions', key: 'syrup_too_thick', values: { dissolvesG } } as const]
      : []),
  ]
}

/** The reply to a wish that fixes one liqueur. */
export function syrupReply(input: Typed, infusion: Portion, syrup: Syrup): Reply {
  const { outcome, infusionMl, waterMl, waterG, sugarG, syrupMl, syrupG } = syrup
  const boils = isSyrup(syrup)
  return {
    headline: {
      group: 'headlines',
      key: 'syrup',
      values: {
        ...made(outcome),
        sugarG,
        waterMl,
        syrupG: boils ? syrupG : null,
        infusionMl: syrup.leftMl > 0 ? infusionMl : null,
      },
    },
    table: [
      ...(syrup.leftMl > 0 ? [row('infusion', { group: 'cells', key: 'pour', values: { volumeMl: infusionMl } })] : []),
      row('sugar', { group: 'cells', key: 'weigh', values: { massG: sugarG } }),
      row('water', { group: 'cells', key: 'water', values: { waterMl, waterG } }),
      ...(boils ? [row('syrup', { group: 'cells', key: 'syrup', values: { syrupMl, syrupG } })] : []),
      ...outcomeRows(outcome),
    ],
    sure: sureOf(outcome, infusion.by === 'volume'),
    notes: [
      ...assumptionNotes(input),
      ...(syrup.leftMl > 0 ? [{ group: 'notes', key: 'bounded', values: { leftMl: syrup.leftMl } } as const] : []),
      ...(boils ? [{ group: 'notes', key: 'syrup_by_weight', values: { syrupG } } as const] : []),
      ...strengthNotes(input, infusion),
      ...(sugarG.value > 0 || waterG.value > 0 ? [note('settle')] : []),
      ...sweetnessNotes(outcome),
    ],
    cautions: syrupCautions(syrup, infusion),
    actions: [],
    data: syrupData(syrup),
    kitchen: kitchenOf(input),
  }
}

/** A target as it can be typed back: enough digits to come out the same, none that is noise. */
const typed = (value: number): string => String(Number(value.toPrecision(12)))

const wished = (wish: Style['wish']): string =>
  ('abvPercent' in wish ? ` to-strength:${typed(wish.abvPercent)}%` : '') +
  ('sugarGPerL' in wish ? ` to-sweetness:${typed(wish.sugarGPerL)} g/L` : '') +
  ('sugarPerWater' in wish ? ` ratio:${typed(wish.sugarPerWater)}:1` : '')

const strengthLine = ({ strength, of, spirit }: Typed): string =>
  strength === undefined ? ` of:${of?.typed ?? ''} spirit:${spirit?.typed ?? ''}` : ` strength:${strength.typed}`

function lineOf(input: Typed, { wish }: Style): string {
  const atMost = input['at-most'] ? ` at-most:${input['at-most'].typed}` : ''
  return `/syrup infusion:${input.infusion.typed}${strengthLine(input)}${wished(wish)}${atMost}`
}

const targetsOf = ({ syrup: { outcome } }: Style) => ({
  abvPercent: outcome.abvPercent.value,
  sugarGPerL: outcome.sugarGPerL.value,
})

/** What any of the styles needs said, once each, worst first. */
function cautionsOfAll(styles: readonly Style[], infusion: Portion): readonly Message<'cautions'>[] {
  const handled = [liquidOf(valuesOf(infusion))]
  const all = styles.flatMap(({ syrup: { outcome, sugarStays } }) => outcomeCautions(outcome, sugarStays, handled))
  const first = new Map(all.map((each) => [each.key, all.find(({ key }) => key === each.key)!]))
  return CAUTION_ORDER.flatMap((key) => first.get(key) ?? [])
}

const CAUTION_ORDER = [
  'flame',
  'sugar_limit_not_known',
  'may_crystallise',
  'weak_keeps_badly',
  'bottle_bursts',
] as const

/** The reply where too little was said: worked styles, each as a ready command. */
export function stylesReply(input: Typed, infusion: Portion, styles: readonly Style[]): Reply {
  const central: { readonly volumeMl: Measured; readonly abvPercent: Measured } = propagate({ infusion }, (values) => {
    const liquid = liquidOf(values.infusion)
    return { volumeMl: volumeMl(liquid), abvPercent: abvPercent(liquid) }
  })
  const actions = styles.map(
    (style): Action => ({
      label: { group: 'actions', key: 'style', values: targetsOf(style) },
      line: lineOf(input, style),
    }),
  )
  return {
    headline: {
      group: 'headlines',
      key: 'styles',
      values: { infusionMl: central.volumeMl, abvPercent: central.abvPercent, count: styles.length },
    },
    table: styles.map(({ key, syrup }) =>
      row(key, {
        group: 'cells',
        key: 'style',
        values: {
          sugarG: syrup.sugarG,
          waterMl: syrup.waterMl,
          infusionMl: syrup.leftMl > 0 ? syrup.infusionMl : null,
          volumeMl: syrup.outcome.volumeMl,
          abvPercent: syrup.outcome.abvPercent,
          sugarGPerL: syrup.outcome.sugarGPerL,
          freezer: freezerState(syrup.outcome),
        },
      }),
    ),
    sure: [],
    notes: [...assumptionNotes(input), ...strengthNotes(input, infusion)],
    cautions: cautionsOfAll(styles, infusion),
    actions,
    data: {
      styles: styles.map((style) => ({ key: style.key, line: lineOf(input, style), ...syrupData(style.syrup) })),
    },
    kitchen: kitchenOf(input),
  }
}
