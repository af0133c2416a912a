import { en } from '../../bot/text/en/index.ts'
import type { Happening } from '../../core/jar/entry/entry.ts'

const format = en.format('metric')
const { headlines } = en.sentences

const literal = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')

const [volumeMl, abvPercent] = [1000, 40].map((value) => ({ value, plusMinus: 1 })) as [Value, Value]
type Value = { readonly value: number; readonly plusMinus: number }
const made = {
  volumeMl,
  abvPercent,
  sugarGPerL: { value: 0, plusMinus: 0 },
  freezer: { state: 'pours', freezerC: -18 },
}

/** How the answer of `/mix` begins, before its first number; bold in Discord. */
export const MADE = new RegExp(
  `^(?:\\*\\*)?${literal(headlines.makes(made as Parameters<typeof headlines.makes>[0], format).split(/\d/)[0]!)}`,
)

/** That what was done to a jar today is taken back; without the end of its sentence. */
export const takenBack = (name: string, kind: 'shaken' | 'strained'): string =>
  headlines.jar_undone({ name, day: null, happening: { kind } as Happening }, format).replace(/\.$/, '')
