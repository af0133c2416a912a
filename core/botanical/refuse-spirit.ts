import { DomainError } from '../domain-error.ts'
import { shown } from '../quantity/typed-text.ts'
import { isOneTypo } from './one-typo.ts'
import { plainWords } from './plain-words.ts'

const UNDRINKABLE = new RegExp(
  '\\b(?:denatur(?:ed|ated|at[oaie]|ant)|methylated|meths|rubbing|iso ?prop(?:yl|anol|ylic|ilico|anolo)\\w*|prop(?:yl|anol|anolo|ilico)|ipa|' +
    'meth(?:anol|yl)|metanolo|metilico|wood alcohol|surgical|chirurgico|industrial\\w*|industriale|fuel|biofuel|combustibil[ei]|carburante|' +
    'bio ?(?:ethanol|etanolo|alcohol|alcol)|e ?85|antifreeze|antigelo|saniti[sz]\\w*|igienizzant[ei]|disinfett\\w*|disinfectants?|antisept\\w*|' +
    'antisettic\\w*|(?:alcol|alcool|alcohol|spirito|spirit|etanolo) (?:\\w+ )?rosa|(?:pink|purple) (?:alcohol|spirit)|clean(?:ing|er|ers)|' +
    'deterg\\w+|pulizi[ae]|technical|tecnico|lab|laborator(?:y|io)|reagents?|analytical|absolute (?:alcohol|ethanol)|(?:alcol|alcool|etanolo) assoluto|' +
    'anhydrous|anidro|perfum\\w+|profum\\w+|cosmetic\\w*|moonshine|home ?distilled|home ?made|fatt[oa] in casa|distillat[oa] in casa|' +
    'distillati fatti in casa|burn(?:ing|er)|stove|fireplace|camino|camping|fondue|lamp|lampada|solvents?|solvente|thinners?|paint|vernic\\w*|' +
    'white spirit|mineral spirits?|turpentine|acquaragia|trementina|aftershave|cologne|colonia|mouthwash|collutorio|wind(?:ow|screen)|' +
    'brennspiritus|spiritus|franzbranntwein|vergallt\\w*|industriealkohol|methylalkohol|frostschutz\\w*|reinig\\w+|desinf\\w+|losungsmittel|' +
    '(?:selbst|schwarz) ?gebrannt\\w*|denature|bruler|menager|industriel\\w*|methylique|antigel|nettoy\\w+|parfum\\w*|solvant|camphre|' +
    'fait maison|desnaturaliz\\w+|quemar|anticongelante|limpi\\w+|sanitario|disolvente|cas[eo]r[oa]|' +
    'uso esterno|external use|not for drinking|undrinkable|non potabile|glycol|glicole|butanol\\w*|acetone?|hair ?spray|nail)\\b',
)

const UNHARMED = /\b(?:not|non|never) denatur\w+/g

/** Words of such labels that a typo may hide. */
const LABELS =
  'denatured denaturated denaturato methylated rubbing isopropyl isopropanol isopropilico methanol metanolo surgical industrial bioethanol bioetanolo sanitiser sanitizer igienizzante disinfettante moonshine antifreeze'.split(
    ' ',
  )

/** Ordinary words one letter away from a label. */
const ORDINARY = new Set(['ethanol', 'etanolo', 'rubbings'])

/** Throws where the words typed after a spirit's amount name what must not be drunk, or nearly do. Empty is fine. */
export const expectDrinkable = (words: string): void => {
  const typed = shown(words)
  const list = plainWords(words)
  const plain = list.join(' ').replace(UNHARMED, ' ')
  const found = UNDRINKABLE.exec(plain)?.[0]
  if (found !== undefined) throw new DomainError('refused', 'refused_spirit', { typed, word: found })
  for (const each of list) {
    const near = ORDINARY.has(each) ? undefined : LABELS.find((label) => isOneTypo(each, label))
    if (near !== undefined) throw new DomainError('ambiguous', 'near_refused_spirit', { typed, word: near })
  }
}
