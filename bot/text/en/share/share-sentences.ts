import type { Measured } from '../../../../core/quantity/measured.ts'
import type { Format } from '../../format.ts'
import { listed } from '../phrases.ts'
import { cardText } from '../picture/card-text.ts'
import { labelText } from '../picture/label-text.ts'
import { shelfText } from '../picture/shelf-text.ts'
import { tagText } from '../picture/tag-text.ts'
import { plantName } from '../plan/plan-words.ts'

/** What a shared batch is, or is to be. */
export type Becomes =
  | { readonly by: 'made'; readonly abvPercent: Measured; readonly sugarGPerL: Measured }
  | { readonly by: 'plan'; readonly abvPercent: number; readonly sugarGPerL: number }

type PostChange = 'changed' | 'gone' | 'out_of_reach' | 'failed'

const becomesText = (becomes: Becomes, format: Format): string => {
  const { by, abvPercent, sugarGPerL } = becomes
  if (by === 'plan') {
    const sweet = sugarGPerL > 0 ? ` with ${format.plain(sugarGPerL, 0)} g/L of sugar` : ''
    return `to become about ${format.plain(abvPercent, 1)} % vol${sweet}`
  }
  const sweet = sugarGPerL.value > 0 ? ` with ${format.sweetness(sugarGPerL)} of sugar` : ''
  return `about ${format.strength(abvPercent)}${sweet}`
}

const POST: Readonly<Record<PostChange, string>> = {
  changed: ' Its message says so.',
  gone: ' Its message was gone already.',
  out_of_reach:
    ' I may not change its message, because I am not in that place myself; delete it there. Its button makes nothing any more.',
  failed: ' Discord did not let me change its message just now: say it again to try once more.',
}

const jarsText = (count: number): string => (count === 1 ? 'one jar' : `${count} jars`)

const countedPosts = (count: number): string => (count === 1 ? 'One post' : `${count} posts`)

/** What is said of batches that are shared and made too, and of pictures for the printer. */
export const shareSentences = {
  headlines: {
    shared: (
      values: { readonly name: string; readonly ids: readonly string[]; readonly becomes: Becomes | null },
      format: Format,
    ) => {
      const { name, ids, becomes } = values
      const plants = listed([...new Set(ids)].map(plantName))
      return becomes === null
        ? `${name}: ${plants} in spirit, not sweetened yet.`
        : `${name}: a liqueur of ${plants}, ${becomesText(becomes, format)}.`
    },
    shares: ({ count }: { readonly count: number }) =>
      count === 0
        ? 'You share no batch. /share and the name of a jar shows it to everybody.'
        : `You share ${count === 1 ? 'one batch' : `${count} batches`}.`,
    share_withdrawn: (values: {
      readonly name: string | null
      readonly post: PostChange | null
      readonly isAgain: boolean
    }) => {
      const { name, post, isAgain } = values
      const what = name === null ? 'This batch' : name
      const done = `${what} ${isAgain ? 'was shared no longer already' : 'is shared no longer'}.`
      return `${done}${post === null ? '' : POST[post]} Whoever kept its code can still make it.`
    },
    jar_tag: ({ name }: { readonly name: string }) => `A tag for the ${name} jar, to print.`,
    jar_label: ({ name, count }: { readonly name: string; readonly count: number }) =>
      count === 1
        ? `A label for the bottles of ${name}, to print.`
        : `${count} labels for the bottles of ${name}, to print.`,
  },

  rows: {
    share_made: () => 'Made too',
    share_code: () => 'Its code',
    share: ({ id }: { readonly id: string }) => id,
  },

  cells: {
    share_made: ({ count }: { readonly count: number }) => `${jarsText(count)} came of it so far`,
    share_code: ({ code }: { readonly code: string }) => code,
    share: (values: {
      readonly name: string | null
      readonly made: number
      readonly withdrawn: boolean
      readonly isUnposted: boolean
    }) => {
      const { name, made, withdrawn, isUnposted } = values
      const parts = [
        name ?? 'a jar that is gone',
        made === 0 ? 'made by nobody else yet' : `${jarsText(made)} came of it`,
        ...(withdrawn ? ['withdrawn'] : isUnposted ? ['posted nowhere'] : []),
      ]
      return parts.join(', ')
    },
  },

  notes: {
    share_snapshot: ({ id }: { readonly id: string }) =>
      `It is shown as it is now: what you note later stays with you. /share withdraw:${id} takes it back.`,
    share_made_so_far: ({ count }: { readonly count: number }) =>
      count === 1 ? 'One other person has begun a jar from it.' : `${count} people have begun a jar from it.`,
    share_withdraw: () => '/share withdraw: and the id takes one back.',
    forget_shares: ({ count }: { readonly count: number }) =>
      `${count === 0 ? '' : `${countedPosts(count)} of batches you share would be taken back too. `}What others posted or made from your batches stays theirs.`,
    forgot_shares: ({ changed, left }: { readonly changed: number; readonly left: number }) => {
      const done =
        changed === 0
          ? ''
          : `${countedPosts(changed)} of yours ${changed === 1 ? 'says' : 'say'} now that nothing is shared any more. `
      const rest =
        left === 0
          ? ''
          : `${countedPosts(left)} of yours I could not change: delete ${left === 1 ? 'it' : 'them'} yourself; the button makes nothing any more. `
      return `${done}${rest}What others posted or made from your batches stays theirs.`
    },
    print_size: () => 'It is made for 300 dots per inch: print it at its own size, not fitted to the page.',
  },

  actions: {
    make_too: () => 'Make this too',
    share_carry: () => 'Whoever wants to make it too types',
  },

  files: {
    batch_card: cardText.alt,
    shelf: shelfText.alt,
    jar_tag: tagText.alt,
    bottle_label: labelText.alt,
  },
}
