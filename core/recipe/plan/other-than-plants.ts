import { isDrink } from '../../botanical/spirit/classify.ts'
import { plantList } from '../../botanical/words/plant-list.ts'
import { DomainError, unlessRefused } from '../../domain-error.ts'
import { readLiquid } from '../../quantity/read/read-liquid.ts'
import { splitList } from '../../quantity/read/split-list.ts'
import { shown, type TypedText } from '../../quantity/read/tokens.ts'

/** What has an option of its own. */
export type OtherThing = 'sugar' | 'water' | 'spirit'

const words: { readonly [Thing in OtherThing]: string } = {
  sugar:
    '(?:(?:white|caster|castor|granulated|table|plain|fine|cane|beet|brown|raw) )*sugar|' +
    'zucchero(?: (?:bianco|semolato|di canna))?',
  water:
    '(?:(?:cold|warm|hot|boiling|boiled|tap|still|spring|mineral|distilled|filtered) )*water|' +
    'acqua(?: (?:fredda|calda|naturale|minerale|distillata))?',
  spirit:
    '(?:(?:neutral|grain|pure|food|rectified) )*(?:vodka|wodka|gin|rum|grappa|brandy|whisky|whiskey|schnapps|spirits?|' +
    'alcohol|ethanol|liquor)|(?:alcol|alcool|etanolo)(?: (?:puro|etilico))?|acquavite',
}

const AMOUNT = '\\p{N}[\\p{N}.,/ ]*(?:\\p{L}{1,14}\\.?(?: oz| ounces?)?)?'
const STRENGTH = '\\d[\\d.,]* ?(?:%|°|proof)(?: vol)?'

const patterns = (Object.keys(words) as OtherThing[]).map((thing) => ({
  thing,
  pattern: new RegExp(
    `^(?:(?<amount>${AMOUNT}) )?(?:(?:of|di) )?(?:(?<before>${STRENGTH}) )?(?:${words[thing]})(?: (?:at )?(?<behind>${STRENGTH}))?$|` +
      `^(?:${words[thing]}) (?<last>${AMOUNT})$`,
    'iu',
  ),
}))

/** A drink of the trade by volume: `500 ml Allotment Pride gin 40%`. */
const isPoured = (item: TypedText): boolean => {
  const read = unlessRefused(() => readLiquid(item, { styles: false }))
  return read?.amount.kind === 'volume' && isDrink(read.words)
}

/** Throws `not_a_plant` where sugar, water or spirit stands among plants. */
export function expectPlantsOnly(text: string): void {
  for (const each of splitList(plantList(text))) {
    const { text: item } = each
    const plain = item.trim().replace(/\s+/g, ' ')
    for (const { thing, pattern } of patterns) {
      const found = pattern.exec(plain)
      if (found === null) continue
      const { amount, last, before, behind } = found.groups ?? {}
      const value = [amount ?? last, before ?? behind].filter((part) => part !== undefined).join(' ')
      throw new DomainError('bad_value', 'not_a_plant', { typed: shown(item), thing, value: shown(value) })
    }
    if (isPoured(each)) {
      throw new DomainError('bad_value', 'not_a_plant', { typed: shown(item), thing: 'spirit', value: shown(plain) })
    }
  }
}
