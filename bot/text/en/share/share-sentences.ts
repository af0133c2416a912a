import type { Measured } from '../../../../core/quantity/measured/measured.ts'
import { dayFromIso, type IsoDay, isoTime } from '../../../../core/quantity/time/calendar-day.ts'
import type { Format } from '../../format.ts'
import { shortDayWords } from '../jar/day-words.ts'
import { guestWords } from '../label/guest-words.ts'
import { listed, timesText } from '../phrases.ts'
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
  gone: ' Its message is gone already.',
  out_of_reach:
    ' I may not change its message, because I am not in that place myself; delete it there. Its button makes nothing any more.',
  failed: ' Discord did not let me change its message just now: say it again to try once more.',
}

const jarsText = (count: number): string => (count === 1 ? 'one jar' : `${count} jars`)

const NAMELESS = 'a jar that is gone'

const countedPosts = (count: number): string => (count === 1 ? 'One post' : `${count} posts`)

/** `25 Nov, 18:30`. */
const momentText = (
  { day, minutes }: { readonly day: IsoDay; readonly minutes: number },
  today: IsoDay,
  format: Format,
) => format.moment(dayFromIso(day), minutes, `${shortDayWords(day, today, format)}, ${isoTime(minutes)}`)

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
    shares: ({ batches, count }: { readonly batches: number; readonly count: number }) => {
      if (count === 0) return 'You share no batch. /share and the name of a jar shows it to everybody.'
      const one = count === 1 ? 'You share one batch.' : `You share one batch, ${timesText(count)}.`
      if (batches === 1) return one
      return `You share ${batches} batches${count === batches ? '' : `, ${count} times in all`}.`
    },
    share_withdrawn: (values: {
      readonly name: string | null
      readonly post: PostChange | null
      readonly isAgain: boolean
    }) => {
      const { name, post, isAgain } = values
      const what = name === null ? 'This batch' : name
      const done = `${what} ${isAgain ? 'was withdrawn before' : 'is shared no longer'}.`
      return `${done}${post === null ? '' : POST[post]} Whoever kept its code can still make it.`
    },
    jar_tag: ({ name }: { readonly name: string }) => `A tag for the ${name} jar, to print.`,
    jar_label: ({ name, count }: { readonly name: string; readonly count: number }) =>
      count === 1
        ? `A label for the bottles of ${name}, to print.`
        : `${count} labels for the bottles of ${name}, to print.`,
  },

  rows: {
    share_allergens: () => 'For guests',
    share_made: () => 'Made too',
    share_code: () => 'Its code',
    share: ({ id }: { readonly id: string }) => id,
  },

  cells: {
    share_made: ({ count }: { readonly count: number }) => `others have begun ${jarsText(count)} of this batch so far`,
    share_code: ({ code }: { readonly code: string }) => code,
    share_allergens: guestWords,
    share: (
      values: {
        readonly name: string | null
        readonly at: { readonly day: IsoDay; readonly minutes: number } | null
        readonly today: IsoDay
        readonly channelId: string | null
        readonly isUnposted: boolean
      },
      format: Format,
    ) => {
      const { name, at, today, channelId, isUnposted } = values
      const on = at === null ? '' : `, shared ${momentText(at, today, format)}`
      const where = channelId === null ? '' : ` in ${format.channel(channelId)}`
      return `${name ?? NAMELESS}${on}${where}${isUnposted ? ', posted nowhere' : ''}`
    },
  },

  notes: {
    share_snapshot: ({ id }: { readonly id: string }) =>
      `It is shown as it is now: what you note later stays with you. /share withdraw:${id} takes it back.`,
    /** `own`: begun by whoever reads it, who is not its maker. */
    share_made_so_far: ({ count, own }: { readonly count: number; readonly own: number }) => {
      const others = own === 0 ? 'Others than its maker' : 'Others than its maker and you'
      return [
        ...(own > 0 ? [`You have begun ${jarsText(own)} of this batch so far.`] : []),
        ...(count > 0 ? [`${others} have begun ${jarsText(count)} of this batch so far.`] : []),
      ].join(' ')
    },
    shares_made: ({ made }: { readonly made: readonly { readonly name: string | null; readonly count: number }[] }) =>
      made.length === 0
        ? 'Nobody else has begun a jar of what you share yet.'
        : `Begun by others, your own not counted: ${listed(made.map(({ name, count }) => `${jarsText(count)} of ${name ?? NAMELESS}`))}.`,
    shares_withdrawn: ({ count }: { readonly count: number }) =>
      `${count === 1 ? 'One more was' : `${count} more were`} withdrawn.`,
    share_withdraw: () => '/share withdraw: and the id takes back any other.',
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
    name_unprinted: ({ id }: { readonly id: string }) =>
      `My letters lack signs of this name, so #${id} stands there: write the name by hand, or /jar rename it.`,
    print_size: ({ count }: { readonly count: number }) =>
      count === 1
        ? 'It is made for 300 dots per inch: print it at its own size, not fitted to the page.'
        : 'They are made for 300 dots per inch: print them at their own size, not fitted to the page.',
  },

  actions: {
    make_too: () => 'Make this too',
    share_withdraw: ({ id, name }: { readonly id: string; readonly name: string | null }) =>
      `Withdraw ${name ?? NAMELESS} (${id})`,
    share_carry: () => 'Whoever wants to make it too types',
  },

  files: {
    batch_card: cardText.alt,
    shelf: shelfText.alt,
    jar_tag: tagText.alt,
    bottle_label: labelText.alt,
  },
}
