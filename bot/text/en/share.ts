import { dayFromIso, type IsoDay, isoTime } from '../../../core/quantity/time/calendar-day.ts'
import type { CodeProblems } from '../../../core/recipe/code/problems.ts'
import type { ShareProblems } from '../../../core/recipe/code/share-problems.ts'
import { lineTyped } from '../../calls/write-line.ts'
import type { Format } from '../format.ts'
import type { Feature, Written } from '../language.ts'
import type { Becomes, CodeMessages, PostChange, ShareMessages } from '../messages/share.ts'
import { plantName } from './cook-names.ts'
import { guestWords } from './label.ts'
import { capital, listed, plural, shortDayWords, spanWords, timesText } from './phrases.ts'
import { amountsScaled, scaledBy } from './scaled.ts'
import { unknownName } from './words.ts'

/** What `/plan from:` says besides the plan. */
export const codeSentences = {
  notes: {
    code_from: (values, format) =>
      values.by === null
        ? 'Same amounts as the shared batch.'
        : `${capital(amountsScaled(values.factor, 'the shared batch', format))}, ${scaledBy(values)}.` +
          `${values.isSpiritLeft ? ' You’ll have some spirit left over.' : ''}`,
    code_only_plant: ({ typed, id }) => `I’ve read “${typed}” as ${plantName(id)}, the only plant in that batch.`,
    code_weaker: ({ abvPercent, recipeAbvPercent }, format) =>
      `Your spirit is weaker (${format.wished.strength(abvPercent, 1)} instead of ${format.wished.strength(recipeAbvPercent, 1)}), so you’ll add less water at the end.`,
    code_stronger: ({ abvPercent, recipeAbvPercent }, format) =>
      `Your spirit is stronger (${format.wished.strength(abvPercent, 1)}), so you’ll dilute it to ${format.wished.strength(recipeAbvPercent, 1)} first, as that batch was.`,
    code_dried: ({ ids }) => `Dried, not fresh: ${listed(ids.map(plantName))}. Fresh needs a different amount.`,
    code_days: ({ usual, ...days }) =>
      // Days that were are one number; one number may also have been planned, for a feast.
      `${capital(spanWords(days))} on the plants, ${days.fromDays === days.byDays ? 'the same as that batch' : 'as that batch was planned'}.` +
      `${usual === null ? '' : ` Most steep them ${spanWords(usual)}, so taste before you strain.`}`,
  },
} satisfies Feature<CodeMessages>

const formName = ({ id, state }: CodeProblems['not_in_recipe']['plants'][number]): string =>
  state === 'dried' && !plantName(id).includes('dried') ? `${plantName(id)} (dried)` : plantName(id)

/** Why a batch's code cannot be read, made or followed. */
export const codeProblems = {
  not_a_code: ({ typed }) =>
    `“${typed}” isn’t a batch’s code. It’s one line of letters and digits, under the batch that was shared.`,
  code_damaged: () => `That code is damaged: a letter is missing, wrong or extra. Copy the whole line again.`,
  code_extra: ({ extra, line }) =>
    line === null || line === undefined
      ? `What’s “${extra}” after the code? Leave it out.`
      : `What’s “${extra}” after the code? To leave it out: ${line}`,
  code_newer: () => 'I can’t read this code: it’s from a newer version of me, or has a plant I don’t know yet.',
  recipe_too_long: ({ most }) =>
    `I can’t share this batch: it has too many plants and spirits for a code of ${most} characters.`,
  plant_unshared: ({ name }) =>
    `I can’t share this jar: it has ${unknownName(name)}, and I don’t know a safe limit for that.`,
  nothing_to_share: () => 'This jar has no plants and spirit yet, so there’s nothing to share.',
  not_in_recipe: ({ typed, plants }) =>
    `“${typed}” isn’t in that batch. It has ${listed(plants.map(formName))}. How much of that do you have?`,
  amount_of_which: ({ typed, plants, line }) =>
    `“${typed}” of what? That batch has ${listed(plants.map(formName))}. How much do you have?${line == null ? '' : ` For example: ${line}`}`,
  plant_without_amount: ({ typed }) => `How much “${typed}” do you have? For example: 5 lemons, or 30 g ginger.`,
  spirit_too_weak: (values, format) => {
    const { spiritAbvPercent, toAbvPercent, toSugarGPerL, line = null } = values
    const why = `${format.wished.strength(spiritAbvPercent, 1)} spirit is too weak for ${format.wished.strength(toAbvPercent, 1)} with ${format.round.sweetness(toSugarGPerL)}.`
    return line === null ? `${why} Use stronger spirit.` : `${why} This works: ${line}`
  },
} satisfies Written<CodeProblems>
const becomesText = (becomes: Becomes, format: Format): string => {
  const { by, abvPercent, sugarGPerL } = becomes
  if (by === 'plan') {
    const sweet = sugarGPerL > 0 ? ` with ${format.wished.sweetness(sugarGPerL, 0)} of sugar` : ''
    return `aiming for about ${format.wished.strength(abvPercent, 1)}${sweet}`
  }
  const sweet = sugarGPerL.value > 0 ? ` with ${format.round.sweetness(sugarGPerL.value)} of sugar` : ''
  return `about ${format.round.strength(abvPercent)}${sweet}`
}

const POST: Readonly<Record<PostChange, string>> = {
  changed: ' Its message says so.',
  gone: ' Its message is already gone.',
  out_of_reach: ' I can’t change its message there, so delete it yourself. Its button no longer works.',
  failed: ' Discord didn’t let me change its message just now. Type that again to retry.',
}

const jarsText = (count: number): string => (count === 1 ? 'one jar' : `${count} jars`)

const NAMELESS = 'a jar that’s gone'

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
    shared: (values, format) => {
      const { name, ids, becomes } = values
      const plants = listed([...new Set(ids)].map(plantName))
      return becomes === null
        ? `${name}: ${plants} in spirit, not sweetened yet.`
        : `${name}: a liqueur of ${plants}, ${becomesText(becomes, format)}.`
    },
    shares: ({ batches, count }) => {
      if (count === 0) return 'You’re not sharing anything yet. To see how it’s done: /help share'
      const one = count === 1 ? 'You’re sharing one batch.' : `You’re sharing one batch, ${timesText(count)}.`
      if (batches === 1) return one
      return `You’re sharing ${batches} batches${count === batches ? '' : `, ${count} times in all`}.`
    },
    share_withdrawn: (values) => {
      const { name, post, isAgain } = values
      const what = name === null ? 'This batch' : name
      const done = `${what} ${isAgain ? 'was withdrawn before' : 'is no longer shared'}.`
      return `${done}${post === null ? '' : POST[post]} Anyone who kept its code can still make it.`
    },
    jar_tag: ({ name }) => `A tag for the ${name} jar, to print.`,
    jar_label: ({ name, count }) =>
      count === 1
        ? `A label for the bottles of ${name}, to print.`
        : `${count} labels for the bottles of ${name}, to print.`,
  },

  rows: {
    share_allergens: () => 'For guests',
    share_made: () => 'Made too',
    share_code: () => 'Its code',
    share: ({ called }) => called,
  },

  cells: {
    share_made: ({ count }) => `others have started ${jarsText(count)} of this batch so far`,
    share_code: ({ code }) => code,
    share_allergens: guestWords,
    share: (values, format) => {
      const { name, isCalled, at, today, channelId, isUnposted } = values
      const on = at === null ? 'shared' : `shared ${momentText(at, today, format)}`
      const where = channelId === null ? '' : ` in ${format.channel(channelId)}`
      return `${isCalled ? '' : `${name ?? NAMELESS}, `}${on}${where}${isUnposted ? ', not posted anywhere' : ''}`
    },
  },

  notes: {
    share_snapshot: ({ called }) =>
      `Shared as it stands today: later notes stay private. To take it down: ${lineTyped('share', { withdraw: called })}`,
    /** `own`: started by whoever reads it, who is not its maker. */
    share_made_so_far: ({ count, own }) => {
      const others = own === 0 ? 'People besides its maker' : 'People besides its maker and you'
      return [
        ...(own > 0 ? [`You’ve started ${jarsText(own)} of this batch so far.`] : []),
        ...(count > 0 ? [`${others} have started ${jarsText(count)} of this batch so far.`] : []),
      ].join(' ')
    },
    shares_made: ({ made }) =>
      made.length === 0
        ? 'Nobody else has started a jar from what you share yet.'
        : `Others have started ${listed(made.map(({ name, count }) => `${jarsText(count)} of ${name ?? NAMELESS}`))}.`,
    shares_withdrawn: ({ count }) => `${count === 1 ? 'One more was' : `${count} more were`} withdrawn.`,
    share_withdraw: () => 'To take down another: /help share',
    forget_shares: ({ count }) =>
      `${count === 0 ? '' : `${countedPosts(count)} of batches you share would come down too. `}What others posted or made from your batches stays theirs.`,
    forgot_shares: ({ changed, left }) => {
      const done =
        changed === 0
          ? ''
          : `${countedPosts(changed)} of yours now ${plural(changed, 'says', 'say')} that it’s no longer shared. `
      const rest =
        left === 0
          ? ''
          : `I couldn’t change ${left === 1 ? 'one post' : `${left} posts`} of yours, so delete ${plural(left, 'it', 'them')} yourself. The ${plural(left, 'button')} no longer ${plural(left, 'works', 'work')}. `
      return `${done}${rest}What others posted or made from your batches stays theirs.`
    },
    name_unprinted: ({ id }) =>
      `The font can’t print this name, so I’ve put #${id}. Write it in by hand, or rename the jar.`,
    print_size: ({ count }) => `Print ${count === 1 ? 'it' : 'them'} at 100 % (300 dots per inch), not “fit to page”.`,
  },

  actions: {
    make_too: () => 'Make this too',
    share_withdraw: ({ id, name }) => `Withdraw ${name ?? NAMELESS}${id === null ? '' : ` (${id})`}`,
    share_carry: () => 'To make it too, a friend types',
  },
} satisfies Feature<ShareMessages>

/** What is said of a batch that is shared no more, or was not found. */
export const shareProblems = {
  too_many_shares: ({ most }) =>
    `You’re already sharing ${most} batches, as many as I keep. Withdraw one first. To see them: /share`,
  no_such_share: ({ typed }) => `You’re not sharing anything called “${typed}”. To see what you share: /share`,
  several_shares: ({ name, shares }, format) => {
    const said = shares.map(({ id, day }) => (day === null ? id : `${id} of ${format.day(dayFromIso(day))}`))
    return `You’re sharing ${name} ${timesText(shares.length)}: ${listed(said)}. Which one? For example: ${lineTyped('share', { withdraw: shares[0]?.id ?? '' })}`
  },
  share_discarded: ({ jar }) =>
    `You threw ${jar} away, so I can’t share it. If that was a slip: ${lineTyped('jar undo', { jar })}`,
  bad_share: ({ typed }) => `I don’t know a shared batch “${typed}”. Press its button, or ask its maker for the code.`,
  share_withdrawn: () => 'This batch’s maker no longer shares it, so I can’t show its recipe.',
  share_gone: () => 'This batch is no longer shared: its maker has nothing here by that name.',
} satisfies Written<ShareProblems>
