import { DomainError } from '../../domain-error.ts'
import { textFrom } from '../read/tokens.ts'
import { measureSaid } from './measure-said.ts'
import { saidText } from './said-text.ts'

const NONE: ReadonlySet<string> = new Set()

/** A text whose amounts are said in words, with figures: `a cup and a half + a pint` is `1.5 cup + 1 pint`. */
const withFigures = (text: string): string =>
  text
    .split('+')
    .map((part) => {
      const typed = saidText(part.trim())
      const measure = measureSaid(typed, 0, NONE)
      if (measure === null) return part.trim()
      return [measure.numberText, measure.unitText, textFrom(typed, measure.next)]
        .filter((piece) => piece !== '')
        .join(' ')
    })
    .join(' + ')

/** Reads a quantity as it is typed or, where that fails, as it is said: `three and a half cups`, `a quart less half a cup`. */
export const inFigures =
  <Quantity>(read: (text: string) => Quantity) =>
  (text: string): Quantity => {
    try {
      return read(text)
    } catch (error) {
      const said = error instanceof DomainError && error.code === 'bad_value' ? withFigures(text) : text
      if (said === text) throw error
      try {
        return read(said)
      } catch {
        throw error
      }
    }
  }
