import type { CodeProblems } from '../../../../core/recipe/code/problems.ts'
import type { Format } from '../../format.ts'
import { listed } from '../phrases.ts'
import { plantName, unknownName } from '../plan/plan-words.ts'

const formName = ({ id, state }: CodeProblems['not_in_recipe']['plants'][number]): string =>
  state === 'dried' && !plantName(id).includes('dried') ? `${plantName(id)} (dried)` : plantName(id)

/** Why a batch's code cannot be read, made or followed. */
export const codeProblems = {
  not_a_code: ({ typed }) =>
    `“${typed}” is no batch’s code: that is one line of letters and digits, as it stands under a batch that was shared.`,
  code_damaged: ({ typed }) =>
    `The code “${typed}” is damaged: a letter is missing, wrong or too many. Copy it once more, the whole line of it.`,
  code_extra: ({ extra, line }) =>
    line === null || line === undefined
      ? `What is “${extra}” behind the code? Leave it out.`
      : `What is “${extra}” behind the code? To leave it out, type: ${line}`,
  code_newer: () =>
    'This code was made by a newer version of me, or with a plant that I do not know yet: I cannot read it.',
  recipe_too_long: ({ most }) =>
    `So many plants and spirits do not fit into a code of ${most} characters: this batch cannot be shared.`,
  plant_unshared: ({ name }) =>
    `${unknownName(name)} is a plant that only you answer for: I know no limit for it, so I make no code of this jar for others.`,
  nothing_to_share: () => 'There are no plants and spirit in this jar yet, so there is no recipe to share.',
  not_in_recipe: ({ typed, plants }) =>
    `“${typed}” is not in the batch. Say only how much you have of what is in it (of:), nothing else:` +
    ` ${listed(plants.map(formName))}.`,
  amount_of_which: ({ typed, plants }) =>
    `“${typed}” of which plant? The batch of this code takes ${listed(plants.map(formName))}: write the name after the amount, as in 5 lemons.`,
  plant_without_amount: ({ typed }) => `How much is there of “${typed}”? Say it as in 5 lemons or 30 g ginger.`,
  spirit_too_weak: (values, format) => {
    const { spiritAbvPercent, toAbvPercent, toSugarGPerL, strongestAbvPercent, sweetestGPerL } = values
    const can = [
      ...(strongestAbvPercent === null
        ? []
        : [`to-strength:${format.plain(strongestAbvPercent, 1)}% (the strongest with that sweetness)`]),
      ...(sweetestGPerL === null
        ? []
        : [`to-sweetness:${format.plain(sweetestGPerL, 0)} g/L (the sweetest at that strength)`]),
    ]
    return (
      `With ${format.plain(spiritAbvPercent, 1)} % vol spirit it cannot be the same: that batch has ${format.plain(toAbvPercent, 1)} % vol` +
      ` with ${format.plain(toSugarGPerL, 0)} g/L. ${can.length === 0 ? 'Take stronger spirit.' : `Add ${can.join(', or ')}, or take stronger spirit.`}`
    )
  },
} satisfies { readonly [Key in keyof CodeProblems]: (values: CodeProblems[Key], format: Format) => string }
