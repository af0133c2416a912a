import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import { middle } from '../../../core/botanical/catalogue/piece-mass.ts'
import type { PriceAsked } from '../../../core/cost/asked-price.ts'
import { type Cost, type CostLine, pricesOfNothing } from '../../../core/cost/cost.ts'
import { currencyKey, type Money, moneyText } from '../../../core/cost/money.ts'
import type { Price, PriceRead, PriceTyped } from '../../../core/cost/price.ts'
import type { Used } from '../../../core/cost/used.ts'
import type { JarState } from '../../../core/jar/state/jar-state.ts'
import type { Call } from '../../calls/call.ts'
import type { InputOf } from '../../calls/signatures.ts'
import { inMore } from '../../chat/depth.ts'
import type { Action, Data, Reply } from '../../chat/reply.ts'
import type { ShopFor } from '../../text/messages/shopping.ts'
import type { Message } from '../../text/words.ts'
import { kitchenOfJar } from '../jar/known/jar-kitchen.ts'
import { kitchenOf } from '../options/input-units.ts'
import { note } from '../reply/outcome-reply.ts'

type Input = InputOf<'cost'>

/** What is asked about, and the line that gives prices for it. */
export interface Costed {
  readonly batch: ShopFor
  readonly used: Used
  /** Of a jar; null of a plan. */
  readonly story: JarState | null
  readonly asked: (prices: readonly PriceTyped[]) => Call
}

interface Prices {
  readonly kept: readonly Price[]
  readonly prices: readonly PriceRead[]
}

/** An amount without its currency, and that. */
const moneyData = (money: Money): Data => ({
  amount: moneyText({ ...money, currency: { ...money.currency, text: '', isComma: false } }),
  currency: money.currency.text,
})

const sumsData = (sums: readonly Money[]): readonly Data[] => sums.map(moneyData)

const lineData = ({ item, price, money }: CostLine): Data => {
  const used =
    item.kind === 'plant'
      ? { ...item.plant }
      : item.kind === 'spirit'
        ? { ...item.spirit }
        : item.kind === 'sweetener'
          ? { ...item.sweetener }
          : { ...item.vessels }
  return {
    kind: item.kind,
    ...used,
    price: price === null ? null : { ...price.price },
    cost: money && moneyData(money),
  }
}

const unreadNotes = ({ kept, prices }: Prices): readonly Message<'notes'>[] => {
  const read = new Set(prices.map(({ price }) => price))
  const of = kept.filter((price) => !read.has(price)).map((price) => price.of)
  return of.length === 0 ? [] : [{ group: 'notes', key: 'cost_unread', values: { of } }]
}

/** What was priced just now and is not in it. */
function strangeNotes({ prices }: Input, { used, batch }: Costed): readonly Message<'notes'>[] {
  const given = (prices?.is ?? []).flatMap((each) => (each.kind === 'given' ? [each] : []))
  const of = pricesOfNothing(used, given).map(({ price }) => price.of)
  return of.length === 0 ? [] : [{ group: 'notes', key: 'cost_not_in_it', values: { of, batch } }]
}

/** What one of a fruit was taken to weigh. */
function fruitNotes({ lines }: Cost): readonly Message<'notes'>[] {
  const fruit = lines.flatMap(({ item, isByUsualWeight }) => {
    const id = item.kind === 'plant' && isByUsualWeight ? item.plant.id : null
    const fruitG = id === null ? null : botanicalById(id).fruitG
    return id === null || fruitG === null ? [] : [{ id, eachG: middle(fruitG) }]
  })
  return fruit.length === 0 ? [] : [{ group: 'notes', key: 'cost_fruit', values: { fruit } }]
}

const currenciesOf = ({ total }: Cost): number => new Set(total.map(({ currency }) => currencyKey(currency))).size

/** Prices of which no currency was said, counted to the one that there is. */
function assumedNotes({ lines, total }: Cost): readonly Message<'notes'>[] {
  const [only, another] = total
  if (only === undefined || another !== undefined || currencyKey(only.currency) === '') return []
  const of = lines.flatMap(({ money, price }) =>
    money !== null && price !== null && currencyKey(money.currency) === '' ? [price.price.of] : [],
  )
  const values = { of, currency: only.currency.text }
  return of.length === 0 ? [] : [{ group: 'notes', key: 'cost_currency_assumed', values }]
}

/** What a batch and a bottle cost, thing by thing; what has no price is named, with the line that gives it. */
export function costReply(
  input: Input,
  costed: Costed,
  { cost, asked, ...prices }: Prices & { readonly cost: Cost; readonly asked: readonly PriceAsked[] },
): Reply {
  const { batch, used, story, asked: line } = costed
  const { lines, total, missing, perBottle, per100Ml, perFluidOunce } = cost
  const isPriced = total.length > 0
  return {
    headline: { group: 'headlines', key: 'cost', values: { batch, total, missing } },
    under:
      isPriced && per100Ml.length > 0
        ? [
            {
              group: 'headlines',
              key: 'cost_each',
              values: { perBottle, per100Ml, perFluidOunce, isAll: missing.length === 0 },
            },
          ]
        : [],
    table: (isPriced ? lines : []).map((each) => ({
      label: { group: 'rows', key: 'cost_item', values: each.item },
      cell: { group: 'cells', key: 'cost_item', values: each },
    })),
    sure: [],
    notes: [
      ...strangeNotes(input, costed),
      ...(used.pouredFrom.length === 0
        ? []
        : [{ group: 'notes', key: 'cost_poured', values: { from: used.pouredFrom } } as const]),
      ...fruitNotes(cost),
      ...assumedNotes(cost),
      ...(currenciesOf(cost) > 1 ? [note('cost_currencies')] : []),
      ...unreadNotes(prices),
      ...inMore([...(used.isExpected ? [note('cost_expected')] : []), note('cost_counted')]),
    ],
    cautions: [],
    actions:
      asked.length === 0
        ? []
        : [
            {
              label: { group: 'actions', key: 'cost_missing', values: undefined },
              call: line(asked),
              isChangedFirst: true,
            },
          ],
    data: {
      batch: { ...batch },
      total: sumsData(total),
      perBottle: perBottle.map(({ volumeMl, sums }) => ({ volumeMl, cost: sumsData(sums) })),
      per100Ml: sumsData(per100Ml),
      volumeMl: used.volumeMl,
      expected: used.isExpected,
      items: lines.map(lineData),
      missing: asked.map(({ of }) => of),
      pouredFrom: used.pouredFrom,
    },
    kitchen: kitchenOfJar(input, story),
    visibility: 'confidential',
  }
}

function pricesHeadline({ prices: typed }: Input, kept: readonly Price[]): Reply['headline'] {
  if (typed === undefined) {
    return kept.length === 0
      ? { group: 'headlines', key: 'cost_no_prices', values: undefined }
      : { group: 'headlines', key: 'cost_prices', values: { count: kept.length } }
  }
  const given = typed.is.flatMap((each) => (each.kind === 'given' ? [each.price] : []))
  const gone = typed.is.flatMap((each) => (each.kind === 'none' ? [each.of] : []))
  if (given.length === 0 && kept.length === 0) {
    return { group: 'headlines', key: 'cost_prices_gone', values: undefined }
  }
  return { group: 'headlines', key: 'cost_noted', values: { given, gone } }
}

/** The prices that are kept. */
export function pricesReply(
  input: Input,
  { kept, actions, ...read }: Prices & { readonly actions: readonly Action[] },
): Reply {
  const rows = kept.map(
    (price) =>
      ({
        label: { group: 'rows', key: 'cost_price', values: price },
        cell: { group: 'cells', key: 'cost_price', values: price },
      }) as const,
  )
  return {
    headline: pricesHeadline(input, kept),
    table: input.prices === undefined ? rows : inMore(rows),
    sure: [],
    notes: unreadNotes({ kept, ...read }),
    cautions: [],
    actions,
    data: { prices: kept.map((price) => ({ ...price })) },
    kitchen: kitchenOf(input),
    visibility: 'confidential',
  }
}
