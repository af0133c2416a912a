import type { Path } from '../../calls/signatures.ts'
import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'
import type { Remembered } from '../memory/remembered.ts'
import { behindDanger } from './behind-danger.ts'
import { boiledSample } from './boiled-sample.ts'
import { cleanedWith } from './cleaned-with.ts'
import { dangerAsked, isOfMethanol, isTakenBySomebody } from './danger-asked.ts'
import { topic } from './read-otherwise.ts'
import { isOfGarden } from './small-talk.ts'
import { refusedOf } from './stones-left.ts'
import { troubleNotUndone } from './trouble-not-undone.ts'
import { verdictAsked } from './verdict-asked.ts'

interface Knows {
  readonly command?: Path
  readonly said?: Remembered
}

/**
 * What is refused wherever it stands in a sentence, what is asked behind a danger that was told, and what stands of a jar: before
 * anything else is read. Null where it is none of that.
 */
export function dangerFirst(sentence: Sentence, text: string, knows: Knows): TalkReading | null {
  const danger = refusedOf(text)
  if (danger?.id === 'denatured' && isOfMethanol(text)) return topic({ id: 'methanol', others: [] })
  const cleaned = cleanedWith(text, danger)
  if (cleaned !== null) return topic({ id: cleaned, others: [] })
  const isTyped = knows.command !== undefined
  const boiled = isTyped ? null : boiledSample(sentence, danger)
  if (boiled !== null) return boiled
  const isTaken = danger !== undefined && isTakenBySomebody(text, danger)
  if (danger !== undefined && !isTaken && (danger.id === 'drugs' || !isOfGarden(sentence)))
    return { kind: 'refused', problem: danger.problem }
  if (isTyped) return null
  // `The oven’s on next to it, is that ok?`: of the fire, whatever stands of the jar.
  const verdict = dangerAsked(text) === 'flame' ? null : verdictAsked(sentence, knows)
  return behindDanger(sentence, knows.said) ?? verdict ?? troubleNotUndone(sentence, knows)
}
