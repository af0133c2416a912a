import type { SpiritProblems } from '../../../core/botanical/spirit/problems.ts'
import type { UndrinkableId } from '../../../core/botanical/spirit/undrinkable.ts'
import type { Format } from '../format.ts'
import { ifDrunk } from './if-drunk.ts'

/** Why it is not for drinking. */
const reasons: { readonly [Id in UndrinkableId]: string } = {
  denatured: 'It’s poisoned on purpose: it can blind or kill.',
  other_alcohol: 'It’s another alcohol than the one in drinks, and it can kill.',
  disinfectant: 'It’s for skin and surfaces, and what else is in it can poison.',
  laboratory: 'It’s made for a lab or a factory, often dried with poisons such as benzene.',
  fuel: 'It’s for burning. It can have methanol in it, which blinds or kills.',
  solvent: 'It’s for cleaning, thinning or cars. It can have methanol or glycol in it, which blind or kill.',
  cosmetic: 'It’s for the skin, and what else is in it can poison.',
  untaxed:
    'Nobody has checked what’s in it, and methanol can blind or kill. I only plan with spirit that was bought and taxed.',
  added: 'What’s in it can poison, and alcohol makes that worse.',
  heated: 'Hot spirit gives off vapour that catches fire. Steep it cold, in a closed jar, away from the hob.',
}

/** Those that blind or kill. */
const isDeadly = (id: UndrinkableId): boolean => id !== 'heated'

const instead = (id: UndrinkableId): string => {
  if (id === 'heated') return ''
  return id === 'untaxed' ? ` ${ifDrunk()}` : ` Use bought, taxed food spirit. ${ifDrunk()}`
}

const withLine = (ask: string, line: string | null | undefined): string =>
  line === null || line === undefined ? ask.replace(/:$/, '.') : `${ask} ${line}`

/** Why a spirit is not taken as it was said, and what to type instead. */
export const spiritProblems = {
  refused_spirit: ({ word, id }) =>
    isDeadly(id)
      ? `“${word}” isn’t for drinking. ${reasons[id]}${instead(id)}`
      : `I don’t plan with “${word}”. ${reasons[id]}`,
  near_refused_spirit: ({ typed, word }) =>
    `“${typed}” is very near “${word}”, which must not be drunk. What does the bottle’s label say?`,
  unknown_drink: ({ typed, extra, meant, isPlant, line }) => {
    if (isPlant) return withLine(`“${extra}” isn’t a drink. Plants go in of:. Is the rest right?`, line)
    const known = `I don’t know “${extra}” in “${typed}”.`
    if (meant !== null) return withLine(`${known} Did you mean ${meant}?`, line)
    return line === null || line === undefined
      ? `${known} Which taxed drink is it?`
      : `${known} Which taxed drink is it? If the label says so, type: ${line}`
  },
  ethanol_asked: ({ word, line }) =>
    withLine(
      `Is the “${word}” sold for drinking? Some of it is poisoned or dried. If the label says food, type:`,
      line,
    ),
  drink_sweetness: ({ words, line }) =>
    withLine(`How sweet is the ${words}? Its sugar counts, so write it beside it (0 g/L if there’s none):`, line),
  spirit_too_strong: ({ typed, mostAbvPercent, line }, format) =>
    withLine(
      `No still makes “${typed}”. Above ${format.plain(mostAbvPercent, 1)} % it has been dried, often for a lab or as fuel.` +
        ' Did you mean 190 proof (95 %)?',
      line,
    ),
} satisfies { readonly [Key in keyof SpiritProblems]: (values: SpiritProblems[Key], format: Format) => string }
