import { kitchenRounded, kitchenSweetness } from '../../../core/recipe/tool-precision.ts'

const METRIC = /(?<![\d.,:–-])(\d[\d ]*(?:\.\d+)?) (ml|l|kg|g)\b(?!\/)/g
const SWEET = /(\d+(?:\.\d+)?) g\/L/g
const PERCENT = /(\d+\.\d+) %/g

const squeezed = (text: string): string => text.replaceAll(/\s/g, '')

/** The numbers of a text that a kitchen's tools cannot tell, in what stands around them; what was `typed` may be said again. */
export function oddDigits(text: string, typed: string): readonly string[] {
  const said = squeezed(typed)
  const bare = text.replaceAll('\u00a0', ' ').replaceAll(/(^|\s)\/[a-z][^\n]*/g, '')
  const around = (at: number): string => bare.slice(Math.max(0, at - 40), at + 30).replaceAll('\n', ' ')
  const unlessTyped = (found: readonly RegExpMatchArray[]) =>
    found.filter(([whole]) => !said.includes(squeezed(whole))).map(({ index }) => around(index!))
  const metric = [...bare.matchAll(METRIC)].filter(([, digits, unit]) => {
    const value = Number(squeezed(digits!)) * (unit === 'l' || unit === 'kg' ? 1000 : 1)
    return Math.abs(kitchenRounded(value).value - value) > 1e-9 * value || /\.\d*0$/.test(digits!)
  })
  const sweet = [...bare.matchAll(SWEET)].filter(([, digits]) => kitchenSweetness(Number(digits)) !== Number(digits))
  return [
    ...unlessTyped(metric),
    ...unlessTyped(sweet),
    ...unlessTyped([...bare.matchAll(PERCENT)]),
    ...[...bare.matchAll(/±/g)].map(({ index }) => around(index)),
  ]
}
