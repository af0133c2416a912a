import { dayFromIso } from '../../../../core/quantity/time/calendar-day.ts'
import type { ShareProblems } from '../../../../core/recipe/code/share-problems.ts'
import type { Format } from '../../format.ts'
import { listed, timesText } from '../phrases.ts'

/** What is said of a batch that is shared no more, or was not found. */
export const shareProblems = {
  too_many_shares: ({ most }) =>
    `You share ${most} batches, which is as many as I keep; withdraw one first, /share lists them.`,
  no_such_share: ({ typed }) => `You share nothing by the name or id “${typed}”; /share lists what you do.`,
  several_shares: ({ name, shares }, format) => {
    const said = shares.map(({ id, day }) => (day === null ? id : `${id} of ${format.day(dayFromIso(day))}`))
    return `You share ${name} ${timesText(shares.length)}: ${listed(said)}. Name one by its id: /share withdraw:${shares[0]?.id}.`
  },
  share_discarded: ({ jar }) =>
    `The ${jar} jar was thrown away, so I do not hold it out to others. If that was a slip, /jar undo takes it back.`,
  bad_share: ({ typed }) =>
    `“${typed}” names no batch that was shared; press its button, or ask its maker for the batch’s code.`,
  share_withdrawn: () => 'Whoever made this batch shares it no longer, so I keep its recipe to myself.',
  share_gone: () => 'This batch is shared no longer: whoever made it has nothing here by that name any more.',
} satisfies { readonly [Key in keyof ShareProblems]: (values: ShareProblems[Key], format: Format) => string }
