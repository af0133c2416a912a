import type { ShareProblems } from '../../../../core/jar/share-problems.ts'

/** What is said of a batch that is shared no more, or was not found. */
export const shareProblems = {
  too_many_shares: ({ most }) =>
    `You share ${most} batches, which is as many as I keep; withdraw one first, /share lists them.`,
  no_such_share: ({ typed }) => `You share nothing with the id “${typed}”; /share lists what you do.`,
  bad_share: ({ typed }) =>
    `“${typed}” names no batch that was shared; press its button, or type /plan from: and its code.`,
  share_withdrawn: () => 'Whoever made this batch shares it no longer, so I keep its recipe to myself.',
  share_gone: () => 'This batch is shared no longer: whoever made it has nothing here by that name any more.',
} satisfies { readonly [Key in keyof ShareProblems]: (values: ShareProblems[Key]) => string }
