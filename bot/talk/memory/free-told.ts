import { parsePrices } from '../../../core/cost/read-price.ts'
import { isRefused } from '../../../core/domain-error.ts'
import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'
import { NOTHING_SAID, type Remembered } from './remembered.ts'
import { callReading } from './rule.ts'

const OWN =
  '(?:my|our|the|a|his|her|their|mums?|mum’s|dads?|dad’s|grans?|gran’s|(?:a |my )?neighbou?rs?|(?:a |my )?neighbou?r’s|(?:a )?friend’s|own)'
const PLACE = '(?:garden|allotment|orchard|tree|trees|hedge|hedges|hedgerow|greenhouse|balcony|plot|windowsill)'

/** Nothing was paid for it, behind what it is of. */
const FREE = new RegExp(
  `^(?:(?:and|so|but|oh|e|ma) )?(?:(?:the|my|our|i|le|gli|il|lo|la) )?(?<of>\\p{L}[\\p{L} ]*?) (?:(?:were|was|are|is|came|come|cost|costs|cost me|cost us|costs me|erano|era|sono|è) )(?:all |completely |totally )?(?:free|for free|free of charge|nothing|nowt|zero|for nothing|gratis|a gift|a present|foraged|given(?: to (?:me|us))?|(?:from|out of|off) (?:${OWN} )*${PLACE}|regalat[oaie]|(?:del|dal) (?:mio |nostro )?(?:orto|giardino|campo))[.!]*$`,
  'iu',
)

/** How it is sold, the likeliest first. */
const UNITS = ['kg', 'l', 'each']

/** `The damsons were free`, `the sugar cost nothing`, `they are from my garden`: a price of nothing, for the costs that are spoken of. */
export function freeTold({ typed }: Sentence, { call }: Remembered = NOTHING_SAID): TalkReading | null {
  const of = FREE.exec(typed.text.trim())?.groups?.of
  if (of === undefined) return null
  const prices = UNITS.map((unit) => `${of.toLowerCase()} 0/${unit}`).find(
    (text) => !isRefused(() => parsePrices(text)),
  )
  if (prices === undefined) return null
  const { jar, plan } = call?.command === 'cost' ? call.options : {}
  return callReading({
    command: 'cost',
    options: { ...(jar !== undefined && { jar }), ...(plan !== undefined && { plan }), prices },
  })
}
