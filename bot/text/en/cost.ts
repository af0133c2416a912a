import { type Money, moneyText } from '../../../core/cost/money.ts'
import type { Price } from '../../../core/cost/price.ts'
import type { CostProblems } from '../../../core/cost/problems.ts'
import type { UsedItem } from '../../../core/cost/used.ts'
import { lineTyped } from '../../calls/write-line.ts'
import type { Format } from '../format.ts'
import type { Feature, Written } from '../language.ts'
import type { CostMessages } from '../messages/cost.ts'
import { cookName, peeledText, piecesText } from './cook-names.ts'
import { capital, counted, either, listed, oneOf } from './phrases.ts'
import { forName } from './shopping.ts'
import { sweetenerName } from './sweeteners.ts'
import { drinkWord, pouredMlOf, unknownName, vesselText } from './words.ts'

/** Help for `/cost`. */
export const costText = {
  summary: 'What a batch and a bottle cost, from your prices',
  options: {
    jar: 'Which jar it’s about: lemon',
    plan: 'Or a plan, by its code',
    bottles: 'With a plan: the bottles you’re going to fill: 500 ml',
    prices: 'What you pay, kept for next time: lemons 4/kg + sugar 1.20/kg + spirit 95% 18/l + bottles 0.80 each',
  },
  examples: ['/cost prices:lemons 4/kg + sugar 1.20/kg + spirit 95% 18/l + bottles 0.80 each'],
}

const moneys = (sums: readonly Money[]): string => listed(sums.map(moneyText))

/** The thing alone: `lemons`, `95 % spirit`, `sugar`, `500 ml bottles`. */
function thingOf(item: UsedItem, format: Format): string {
  switch (item.kind) {
    case 'plant': {
      const { id, name, isDried, ofZest } = item.plant
      if (id === null) return unknownName(name)
      return ofZest ? peeledText(id, 2) : cookName(id, isDried ? 'dried' : undefined)
    }
    case 'spirit':
      return `${format.wished.strength(item.spirit.abvPercent, 1)} ${item.spirit.sugarGPerL < 1 ? drinkWord(item.spirit) : 'liqueur'}`
    case 'sweetener':
      return sweetenerName(item.sweetener.material)
    case 'bottles':
      return `${vesselText(item.vessels.volumeMl, format)} bottles`
  }
}

/** How much of it went in. */
function muchOf(item: UsedItem, format: Format): string {
  switch (item.kind) {
    case 'plant': {
      const { id, massG, count, unit, ofZest } = item.plant
      if (id === null || count === null || unit === null) return format.round.mass(massG)
      return piecesText({ id, count, unit, ofZest }, format)!.split('\u00a0')[0]!
    }
    case 'spirit':
      return format.round.volume(item.spirit.volumeMl)
    case 'sweetener': {
      const { material, massG } = item.sweetener
      const volumeMl = pouredMlOf({ material, massG: { value: massG, plusMinus: 0 } })
      return volumeMl === null ? format.round.mass(massG) : format.round.volume(volumeMl.value)
    }
    case 'bottles':
      return String(item.vessels.count)
  }
}

/** `4 €/kg`, `0.80 each`, as its maker says it. */
const priceText = ({ amount, per }: Price): string =>
  /^[^\d]*0+(?:[.,]0+)?[^\d]*$/.test(amount)
    ? 'free'
    : /^[a-z]{4,}$/i.test(per) && per === 'each'
      ? `${amount} each`
      : `${amount}/${per}`

/** What `/cost` says. */
export const costSentences = {
  headlines: {
    cost: ({ batch, total, missing }, format) => {
      const name = forName(batch)
      const without = listed([...new Set(missing.map((item) => thingOf(item, format)))])
      if (total.length === 0) return `I’ve no prices yet for what’s in ${forName(batch)}.`
      return missing.length === 0
        ? `Making ${name} costs ${moneys(total)}.`
        : `Making ${name} costs ${moneys(total)}, not counting the ${without}.`
    },
    cost_each: ({ perBottle, per100Ml, perFluidOunce, isAll, glassMl }, format) => {
      const glass = per100Ml.map((money) => ({ ...money, minor: Math.round((money.minor * (glassMl ?? 0)) / 100) }))
      const much =
        glassMl !== undefined
          ? `${moneys(glass)} a ${format.round.volume(glassMl)} glass`
          : format.dose.each === 'quart'
            ? `${moneys(perFluidOunce)} a fluid ounce`
            : `${moneys(per100Ml)} for 100\u00a0ml`
      const bottles = perBottle.map(({ volumeMl, sums }) => `${moneys(sums)} a ${vesselText(volumeMl, format)} bottle`)
      return `${isAll ? 'About' : 'So far about'} ${listed([...bottles, much])}.`
    },
    cost_no_prices: () => 'You’ve given me no prices yet. What do you pay?',
    cost_prices: ({ count }) => `You’ve given me ${counted(count, 'price')}.`,
    cost_prices_gone: () => 'Your prices are gone.',
    cost_noted: ({ given, gone }) =>
      [
        ...(given.length === 0 ? [] : [`Got it: ${listed(given.map((price) => `${price.of} ${priceText(price)}`))}.`]),
        ...(gone.length === 0 ? [] : [`I’ve dropped your price for ${listed(gone)}.`]),
      ].join(' '),
  },
  rows: {
    cost_item: (item, format) => capital(thingOf(item, format)),
    cost_price: ({ of }) => capital(of),
  },
  cells: {
    cost_item: ({ item, price, money }, format) =>
      price === null || money === null
        ? `${muchOf(item, format)}, no price yet`
        : `${muchOf(item, format)} at ${priceText(price.price)}: ${moneyText(money)}`,
    cost_price: (price) => priceText(price),
  },
  notes: {
    cost_fruit: ({ fruit }, format) =>
      `I counted ${listed(fruit.map(({ id, eachG }) => `${oneOf(peeledText(id, 1))} as about ${format.round.mass(eachG)}`))}.`,
    cost_currency_assumed: ({ of, currency }) =>
      `I’ve read your ${of.length === 1 ? 'price' : 'prices'} for ${listed(of)} as ${currency} too.`,
    cost_poured: ({ from }) => `What came from ${listed(from)} isn’t in it.`,
    cost_not_in_it: ({ of, batch }) =>
      `There’s no ${either(of)} in ${forName(batch)}, so I’ve only kept ${of.length === 1 ? 'that price' : 'those prices'} for next time.`,
    cost_unread: ({ of }) => `I can’t read your price for ${listed(of)} any more. What is it?`,
    cost_expected: () => 'Sugar and bottles still to come count as planned.',
    cost_counted: () => 'It’s what goes in, not the whole packs you buy. Jars, cloth and water aren’t counted.',
    cost_currencies: () => 'Two currencies don’t add up, so each stands by itself.',
  },
  actions: {
    cost_missing: () => 'Give the missing prices',
    cost_prices: () => 'Give your prices',
    cost_of: ({ name }) => `What ${name} costs`,
  },
} satisfies Feature<CostMessages>

/** What is asked about a price. */
export const costProblems = {
  price_not_read: ({ typed }) =>
    `I can’t read a price in “${typed}”. Say it like this, with two decimals at most: ${lineTyped('cost', { prices: 'lemons 4.50/kg' })}`,
  price_per_what: ({ typed, example }) =>
    `“${typed}”: for how much of it? For example: ${lineTyped('cost', { prices: example })}`,
  price_asked: ({ of }) => `What do you pay for ${listed(of)}? Put it in the place of the question mark.`,
  too_many_prices: ({ most }) =>
    `I keep ${most} prices at most. Drop one first: ${lineTyped('cost', { prices: 'sugar none' })}`,
} satisfies Written<CostProblems>
