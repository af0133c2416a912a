import { dayFromIso, type IsoDay, isoTime } from '../../../core/quantity/time/calendar-day.ts'
import type { CodeProblems } from '../../../core/recipe/code/problems.ts'
import type { ShareProblems } from '../../../core/recipe/code/share-problems.ts'
import type { Format } from '../format.ts'
import type { Feature, Written } from '../language.ts'
import type { Becomes, CodeFrom, CodeMessages, PostChange, ShareMessages } from '../messages/share.ts'
import { plantName } from './cook-names.ts'
import { guestWords } from './label.ts'
import { capital, listed, plural, shortDayWords, spanWords, timesText } from './phrases.ts'
import { unknownName } from './words.ts'

const why = ({ by, id }: CodeFrom): string => {
  if (by === 'plant') return `as far as your ${id === null ? 'plants' : plantName(id)} goes`
  return by === 'bottles'
    ? 'as much as fills your bottles'
    : 'by the alcohol in your spirit, so that a glass holds as much of the plants'
}

const factorText = ({ factor }: CodeFrom, format: Format): string => {
  const times = format.plain(factor, factor < 0.1 ? 3 : 2)
  return times === '1' ? 'in about the same amounts' : `times ${times}`
}

/** What `/plan from:` says besides the plan. */
export const codeSentences = {
  notes: {
    code_from: (values, format) =>
      values.by === null
        ? 'As the batch of this code was made, in the same amounts.'
        : `As the batch of this code was made, ${factorText(values, format)}: ${why(values)}.` +
          `${values.isSpiritLeft ? ' Some of your spirit stays over.' : ''}`,
    code_only_plant: ({ typed, id }) => `I took “${typed}” as ${plantName(id)}, the one plant of that batch.`,
    code_weaker: ({ abvPercent, recipeAbvPercent }, format) =>
      `That batch steeped in ${format.plain(recipeAbvPercent, 1)} % vol, yours does in ${format.plain(abvPercent, 1)}: as much alcohol` +
      ' comes with more water, so it steeps weaker, and less water goes in after straining.',
    code_stronger: ({ abvPercent, recipeAbvPercent }, format) =>
      `Your spirit has ${format.plain(abvPercent, 1)} % vol: water first brings it to ${format.plain(recipeAbvPercent, 1)}, in which that batch steeped.`,
    code_dried: ({ ids }) => `Dried, not fresh: ${listed(ids.map(plantName))}. Fresh would be another amount.`,
    code_days: ({ usual, ...days }) =>
      // Days that were are one number; one number may also have been planned, for a feast.
      `${capital(spanWords(days))} on the plants, ${days.fromDays === days.byDays ? 'like that batch' : 'as that batch was planned'}.` +
      `${usual === null ? '' : ` Usual is ${spanWords(usual)}, so taste as it goes.`}`,
  },
} satisfies Feature<CodeMessages>

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
} satisfies Written<CodeProblems>
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
    shared: (values, format) => {
      const { name, ids, becomes } = values
      const plants = listed([...new Set(ids)].map(plantName))
      return becomes === null
        ? `${name}: ${plants} in spirit, not sweetened yet.`
        : `${name}: a liqueur of ${plants}, ${becomesText(becomes, format)}.`
    },
    shares: ({ batches, count }) => {
      if (count === 0) return 'You share no batch. /share and the name of a jar shows it to everybody.'
      const one = count === 1 ? 'You share one batch.' : `You share one batch, ${timesText(count)}.`
      if (batches === 1) return one
      return `You share ${batches} batches${count === batches ? '' : `, ${count} times in all`}.`
    },
    share_withdrawn: (values) => {
      const { name, post, isAgain } = values
      const what = name === null ? 'This batch' : name
      const done = `${what} ${isAgain ? 'was withdrawn before' : 'is shared no longer'}.`
      return `${done}${post === null ? '' : POST[post]} Whoever kept its code can still make it.`
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
    share: ({ id }) => id,
  },

  cells: {
    share_made: ({ count }) => `others have begun ${jarsText(count)} of this batch so far`,
    share_code: ({ code }) => code,
    share_allergens: guestWords,
    share: (values, format) => {
      const { name, at, today, channelId, isUnposted } = values
      const on = at === null ? '' : `, shared ${momentText(at, today, format)}`
      const where = channelId === null ? '' : ` in ${format.channel(channelId)}`
      return `${name ?? NAMELESS}${on}${where}${isUnposted ? ', posted nowhere' : ''}`
    },
  },

  notes: {
    share_snapshot: ({ id }) =>
      `It is shown as it is now: what you note later stays with you. /share withdraw:${id} takes it back.`,
    /** `own`: begun by whoever reads it, who is not its maker. */
    share_made_so_far: ({ count, own }) => {
      const others = own === 0 ? 'Others than its maker' : 'Others than its maker and you'
      return [
        ...(own > 0 ? [`You have begun ${jarsText(own)} of this batch so far.`] : []),
        ...(count > 0 ? [`${others} have begun ${jarsText(count)} of this batch so far.`] : []),
      ].join(' ')
    },
    shares_made: ({ made }) =>
      made.length === 0
        ? 'Nobody else has begun a jar of what you share yet.'
        : `Begun by others, your own not counted: ${listed(made.map(({ name, count }) => `${jarsText(count)} of ${name ?? NAMELESS}`))}.`,
    shares_withdrawn: ({ count }) => `${count === 1 ? 'One more was' : `${count} more were`} withdrawn.`,
    share_withdraw: () => '/share withdraw: and the id takes back any other.',
    forget_shares: ({ count }) =>
      `${count === 0 ? '' : `${countedPosts(count)} of batches you share would be taken back too. `}What others posted or made from your batches stays theirs.`,
    forgot_shares: ({ changed, left }) => {
      const done =
        changed === 0
          ? ''
          : `${countedPosts(changed)} of yours ${plural(changed, 'says', 'say')} now that nothing is shared any more. `
      const rest =
        left === 0
          ? ''
          : `${countedPosts(left)} of yours I could not change: delete ${plural(left, 'it', 'them')} yourself; the button makes nothing any more. `
      return `${done}${rest}What others posted or made from your batches stays theirs.`
    },
    name_unprinted: ({ id }) =>
      `My letters lack signs of this name, so #${id} stands there: write the name by hand, or /jar rename it.`,
    print_size: ({ count }) =>
      count === 1
        ? 'It is made for 300 dots per inch: print it at its own size, not fitted to the page.'
        : 'They are made for 300 dots per inch: print them at their own size, not fitted to the page.',
  },

  actions: {
    make_too: () => 'Make this too',
    share_withdraw: ({ id, name }) => `Withdraw ${name ?? NAMELESS} (${id})`,
    share_carry: () => 'Whoever wants to make it too types',
  },
} satisfies Feature<ShareMessages>

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
} satisfies Written<ShareProblems>
