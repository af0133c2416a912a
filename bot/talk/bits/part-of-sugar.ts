import { AMOUNTS, type Open, type RolesAround } from './attach.ts'

const PLAIN = /^(?:white |caster |granulated )?(?:sugar|zucchero)(?: bianco)?$/

/** Said of a share: `a third of the sugar as honey`, `agave for some of the sugar`, `metà zucchero e metà miele`. */
const SHARE =
  /\b(?:half|third|quarter|some|part|bit|most) (?:(?:of|the|my|its) )*(?:white )?sugar\b|\b(?:cup|cups|spoons?|tablespoons?|tbsp|g|grams?|oz|percent|%|\d+) of (?:the|my|its) (?:white )?sugar\b|\b(?:half|third|quarter|some|part)\b.*\b(?:and|&) (?:half|a third|the rest|some)\b|\b(?:meta|terzo|quarto|parte|po|tazza|\d g|\d grammi)(?: (?:di|dello|lo|del))* zucchero\b/
const TURNED =
  /\b(?:swap|swapped|replace|replaced|substitute|instead|as|for|with|be|honey instead|sostitu\p{L}*|con|come|al posto|invece|e meta)\b/u

/** Sugar and what sweetens in its place, each of a share that nothing works out: neither is an amount of the batch. */
export function partOfSugar({ typed: { tokens } }: RolesAround, bits: Open[]): void {
  const sweet = bits.filter(({ kind }) => kind === 'sugar')
  const plain = sweet.filter(({ text }) => PLAIN.test(text.toLowerCase()))
  const other = sweet.filter((bit) => !plain.includes(bit))
  const [sugar, honey] = [plain[0], other[0]]
  if (sugar === undefined || honey === undefined || sweet.length > 2 || honey.with !== undefined) return
  const [first, last] = sugar.from < honey.from ? [sugar, honey] : [honey, sugar]
  const words = tokens
    .slice(Math.max(0, first.from - BACK), last.to)
    .map(({ text }) => text)
    .join(' ')
  if (!SHARE.test(words) || !TURNED.test(words)) return
  for (const bit of sweet) bit.role = 'left_out'
  const amount = sugar.with === undefined ? undefined : bits[sugar.with]
  if (amount !== undefined && AMOUNTS.has(amount.kind)) amount.role = 'left_out'
}

const BACK = 6
