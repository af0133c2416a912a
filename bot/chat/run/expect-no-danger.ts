import { dangerousName, dangersNoted } from '../../../core/botanical/drink/named-danger.ts'
import { expectNotRefused } from '../../../core/botanical/refuse/refusal.ts'
import { undrinkableIn } from '../../../core/botanical/refuse/refuse-spirit.ts'
import { DomainError } from '../../../core/domain-error.ts'
import { ofTexts } from '../../../core/once.ts'
import { shown } from '../../../core/quantity/read/tokens.ts'
import type { Invocation } from '../../calls/invocation.ts'
import { asOptionProblem, isAmount, optionTextOf } from '../../calls/option.ts'
import type { Message } from '../../text/words.ts'
import type { Command } from '../command.ts'

/** What a jar is to be called. */
const NAMES: ReadonlySet<string> = new Set(['name', 'to', 'into'])

/** What is told of a jar in words of one's own. */
const NOTES: readonly string[] = ['note', 'was']

/** Judge their words themselves, or answer what was asked of a danger; codes and files have none. */
const JUDGED: ReadonlySet<string> = new Set([
  'prices',
  'spirit',
  'parts',
  'from',
  'make',
  'import',
  'export',
  'yes',
  'no',
  'fining',
])

const expectDrinkable = (text: string): void => {
  const found = undrinkableIn(text)
  if (found !== null) {
    throw new DomainError('refused', 'refused_spirit', { typed: shown(text), word: found.word, id: found.id })
  }
}

/** What is refused, not what merely looks like it: nothing but an amount is wanted here anyway. */
const expectHarmless = ofTexts((text): void => {
  expectDrinkable(text)
  try {
    expectNotRefused(text)
  } catch (error) {
    if (!(error instanceof DomainError) || error.code === 'refused') throw error
  }
})

const expectGoodName = (text: string): void => {
  const danger = dangerousName(text)
  if (danger === null) return
  if ('spirit' in danger) expectDrinkable(text)
  else expectNotRefused(danger.plant)
}

/** How an option's text is looked through; nothing where its words name what there is already, or a place. */
const lookerFor = (option: string, schema: unknown): ((text: string) => void) | null => {
  const { suggested, isFile } = optionTextOf(schema)
  if (NOTES.includes(option) || JUDGED.has(option) || isFile === true) return null
  if (NAMES.has(option)) return expectGoodName
  if (suggested === 'botanicals') return expectDrinkable
  return suggested === undefined || isAmount(suggested) ? expectHarmless : null
}

/** Throws where any option names a refused plant or undrinkable alcohol, before anything else is said of the line. */
export function expectNoDanger({ input: { shape } }: Command, { options }: Invocation): void {
  for (const [option, text] of Object.entries(options)) {
    const look = lookerFor(option, (shape as Record<string, unknown>)[option])
    if (look !== null) asOptionProblem(option, () => look(text))
  }
}

/** A note is recorded as it is; what it says was put in is said back as a caution. */
export const notedCautions = ({ options }: Invocation): readonly Message<'cautions'>[] => {
  const names = NOTES.flatMap((option) => (options[option] === undefined ? [] : dangersNoted(options[option])))
  return names.length === 0 ? [] : [{ group: 'cautions', key: 'note_names', values: { names } }]
}
