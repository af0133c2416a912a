import { byName, keyOf } from '../botanical/names/name-index.ts'
import { nameWords } from '../spelling/normalise-name.ts'
import { MONEY } from './money.ts'

/** `lemons 4/kg`, `gin 40% £22 for 700 ml`, `vanilla 1,50 € a pod`, `bottles 0.80 each`, `10 lemons 4`. */
export const ITEM = new RegExp(
  String.raw`^(?<of>.+?)\s+(?<money>${MONEY}|\?)\s*(?:(?:\/|(?:per|for|a|an|al|allo|alla|il|la|the)\s+|(?:al)?l['’]\s*)\s*(?<per>.+)|(?<each>each|apiece|cad(?:auno|\.)?|ciascun[oa]|ognun[oa]))?$`,
  'u',
)
export const NONE = /^(?<of>.+?)\s+(?:none|no price|nessuno|-)$/iu
export const VERB =
  /\s*(?:\b(?:at|is|are|was|were|cost|costs|costing|costa(?:no)?|costava(?:no)?|viene|vengono|sono|erano|a)|(?<=\s)è(?:\s+a)?|[=:])$/iu
export const ARTICLE = /^(?:the|my|il|lo|la|i|gli|le|l['’])\s*(?<=\s|['’])/iu
/** `1 kg sugar`, `700 ml gin 40%`, `10 lemons`: how much of it, and what. */
export const AMOUNT_BEFORE =
  /^(?<per>\d[\d.,]*\s*(?:kg|g|ml|cl|l|lb|oz)|\d+(?=\s+(?!proof\b|gradi\b)\p{L}))\s+(?:of\s+|di\s+)?(?<of>\S.*)$/u

/** Another thing begins: a `+`, a semicolon, or a comma or `and` before a word. */
const JOINT = /\s*[+;]\s*|,\s+(?=\p{L})|\s+(?:and|e|ed)\s+(?=\p{L})/gu

/** Whether what a price stands behind is one plant, its comma within its name: `Bay leaf, dried 4/kg`. */
function isOneNamed(text: string): boolean {
  const { of } = ITEM.exec(text)?.groups ?? NONE.exec(text)?.groups ?? {}
  if (!of?.includes(',')) return false
  const name = of.trim().replace(VERB, '').replace(ARTICLE, '')
  const [whole, plain] = [name, AMOUNT_BEFORE.exec(name)?.groups?.of ?? name].map((each) => keyOf(nameWords(each)))
  return byName.has(whole!) || byName.has(plain!)
}

/** The things of a text; a comma within a plant's name parts nothing. */
export function itemsIn(text: string): readonly string[] {
  const joints = [...text.matchAll(JOINT)].map(({ index, 0: joint }) => ({
    from: index,
    to: index + joint.length,
    isComma: joint.startsWith(','),
  }))
  const parting = joints.filter(({ isComma }, at) => {
    const around = text.slice(joints[at - 1]?.to ?? 0, joints[at + 1]?.from)
    return !isComma || !isOneNamed(around.replace(/\s+/gu, ' '))
  })
  const begins = [0, ...parting.map(({ to }) => to)]
  return begins.map((begin, at) => text.slice(begin, parting[at]?.from))
}
