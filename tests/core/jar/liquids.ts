import fc from 'fast-check'
import { expect } from 'vitest'
import type { JarEntry } from '../../../core/jar/entry/entry.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { liquidAfter } from '../../../core/jar/state/liquid-after.ts'
import { stepsOf } from '../../../core/jar/state/liquid-steps.ts'
import { dissolvedIn, ethanolG, extractG, type Liquid, sugarG, waterG } from '../../../core/liquid/liquid.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { valuesOf } from '../../../core/recipe/propagate.ts'
import { spirit } from '../recipe-plan/wishes.ts'
import { ml, plant, started, strained } from './jars.ts'

/** What the entries of a jar leave, in the jar and in its fruit. */
export const liquidsIn = (entries: readonly JarEntry[]) =>
  liquidAfter(valuesOf(stepsOf(jarStateOf(entries)!.happened).map(({ step }) => step)))

/** Sucrose that freezes as all that is dissolved does: other kinds of sugar have more of it. */
const asSucroseG = (liquid: Liquid): number =>
  (sugarG(liquid) + extractG(liquid)) * (dissolvedIn(liquid).sucroseEquivalentShare ?? 1)

/** All that is in a liquid. */
export const gramsOf = (liquid: Liquid): readonly number[] =>
  [ethanolG, waterG, sugarG, extractG, asSucroseG].map((part) => part(liquid))

export const expectSameGrams = (one: readonly number[], other: readonly number[]): void => {
  for (const [index, grams] of one.entries()) {
    expect(Math.abs(grams - other[index]!)).toBeLessThanOrEqual(1e-9 * Math.max(1, grams))
  }
}

export const SLOES = started({ name: 'sloe', spirits: [spirit(700, 40)], plants: [plant('sloe', 500)] })

/** Of those sloes: not measured, measured, or rinsed. */
export const straining = fc.oneof(
  fc.constant(strained()),
  fc.integer({ min: 300, max: 700 }).map((value) => strained({ measured: ml(value) })),
  fc.integer({ min: 1, max: 200 }).map((value) => strained({ rinseWaterG: exactly(value) })),
)
