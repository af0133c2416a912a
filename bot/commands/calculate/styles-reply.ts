import { abvPercent, volumeMl } from '../../../core/liquid/liquid.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import { gramsPerLitre, percentVol, sugarToWater } from '../../../core/quantity/write/made-amounts.ts'
import { liquidOf, type Portion } from '../../../core/recipe/portion.ts'
import { propagate, valuesOf } from '../../../core/recipe/propagate.ts'
import type { Style } from '../../../core/recipe/solve/styles.ts'
import type { Syrup } from '../../../core/recipe/solve/syrup.ts'
import { withoutTrace } from '../../../core/recipe/solve/without-trace.ts'
import type { Call } from '../../calls/call.ts'
import { call } from '../../calls/call.ts'
import { lineOf } from '../../calls/write-line.ts'
import { inMore } from '../../chat/depth.ts'
import type { Action, Reply } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'
import { assumptionNotes, kitchenOf } from '../options/input-units.ts'
import { byDepth, notesByDepth } from '../reply/first-screen.ts'
import { flashNotes, freezerSaid, neatAnd, row } from '../reply/outcome-reply.ts'
import { sweetenerNotes } from '../reply/sweetener-notes.ts'
import { infusionTyped, strengthNotes, syrupData, type Typed } from '../reply/syrup-reply.ts'

/** A target as it can be typed back: enough digits to come out the same, none that is noise. */
const target = (value: number): number => Number(value.toPrecision(12))

const wished = (wish: Style['wish']) => ({
  ...('abvPercent' in wish && { 'to-strength': percentVol(target(wish.abvPercent)) }),
  ...('sugarGPerL' in wish && { 'to-sweetness': gramsPerLitre(target(wish.sugarGPerL)) }),
  ...('sugarPerWater' in wish && { ratio: sugarToWater(target(wish.sugarPerWater)) }),
})

/** What was typed, with what is wished for. */
function callOf(
  { held, infusion, strength, of, spirit, 'at-most': atMost, sugar, water }: Typed,
  { wish }: Style,
): Call {
  const known = strength === undefined ? { of, spirit } : { strength }
  const liquid = held === null ? { infusion, ...known } : { jar: held.name }
  return call('syrup', { ...liquid, ...wished(wish), 'at-most': atMost, sugar, water })
}

const targetsOf = ({ syrup: { outcome } }: Style) => ({
  abvPercent: outcome.abvPercent.value,
  sugarGPerL: outcome.sugarGPerL.value,
})

/** What any of the styles needs said, once each, worst first. */
function cautionsOfAll(styles: readonly Style[], infusion: Portion, freezerC: number): readonly Message<'cautions'>[] {
  const handled = [liquidOf(valuesOf(infusion))]
  const all = styles.flatMap(({ syrup: { outcome, sugarStays } }) =>
    neatAnd(outcome, sugarStays, handled, { freezerC }),
  )
  const first = new Map(all.map((each) => [each.key, all.find(({ key }) => key === each.key)!]))
  return CAUTION_ORDER.flatMap((key) => first.get(key) ?? [])
}

const CAUTION_ORDER = [
  'not_neat',
  'flame',
  'can_ferment',
  'keeps_undecided',
  'sugar_limit_not_known',
  'may_crystallise',
  'bottle_bursts',
] as const

function styleSaid(whole: Syrup) {
  const syrup = withoutTrace(whole)
  const { volumeMl, abvPercent } = syrup.outcome
  return {
    filler: syrup.filler,
    sweetener: syrup.sweetener,
    sugarG: syrup.sugarG,
    waterMl: syrup.waterMl,
    infusionMl: syrup.leftMl > 0 ? syrup.infusionMl : null,
    volumeMl,
    abvPercent,
  }
}

/** The reply where too little was said: worked styles, each as a ready command. */
export function stylesReply(input: Typed, infusion: Portion, styles: readonly Style[], freezerC: number): Reply {
  const central: { readonly volumeMl: Measured; readonly abvPercent: Measured } = propagate({ infusion }, (values) => {
    const liquid = liquidOf(values.infusion)
    return { volumeMl: volumeMl(liquid), abvPercent: abvPercent(liquid) }
  })
  const actions = styles.map(
    (style): Action => ({
      label: { group: 'actions', key: 'style', values: targetsOf(style) },
      call: callOf(input, style),
    }),
  )
  // One line to type is enough for a screen; each has its button.
  const typed = Math.min(1, styles.length - 1)
  const others = actions.filter((_, index) => index !== typed)
  return {
    headline: {
      group: 'headlines',
      key: 'styles',
      values: {
        infusionMl: central.volumeMl,
        abvPercent: central.abvPercent,
        count: styles.length,
        typed: infusionTyped(input) ?? null,
      },
    },
    table: [
      ...styles.map(({ key, syrup }) => row(key, { group: 'cells', key: 'style_short', values: styleSaid(syrup) })),
      ...inMore(
        styles.map(({ key, syrup }) =>
          row(key, {
            group: 'cells',
            key: 'style',
            values: {
              ...styleSaid(syrup),
              sugarGPerL: syrup.outcome.sugarGPerL,
              freezer: freezerSaid(syrup.outcome, freezerC),
            },
          }),
        ),
      ),
    ],
    sure: [],
    notes: notesByDepth([
      ...assumptionNotes(input),
      ...strengthNotes(input, infusion),
      ...styles
        .slice(0, 1)
        .flatMap(({ syrup: { sweetener, filler } }) =>
          sweetenerNotes([sweetener, ...(filler === null ? [] : [filler])], sweetener),
        ),
      ...flashNotes([liquidOf(valuesOf(infusion))]),
    ]),
    // Nothing is poured yet: the way that is chosen says what to keep away from it.
    cautions: byDepth(
      cautionsOfAll(styles, infusion, freezerC),
      ({ key }) => key !== 'flame' && key !== 'bottle_bursts',
    ),
    actions: [
      ...actions.map((action, index): Action => (index === typed ? action : { ...action, isButtonOnly: true })),
      ...inMore(others),
    ],
    data: {
      styles: styles.map((style) => ({
        key: style.key,
        line: lineOf(callOf(input, style)),
        ...syrupData(style.syrup),
      })),
    },
    kitchen: kitchenOf(input),
  }
}
