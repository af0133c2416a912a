const AMOUNT = '\\d[\\d.,]*(?:\\s?[¼½¾])?\\s?(?:ml|cl|dl|l|kg|g)\\b'
const VOLUME = /^\d[\d.,]*\s?(?:ml|cl|dl|l)\b/i
const STRENGTH = /\d[\d.,]*\s?%(?:\s?vol\b)?/
/** Words that only join. */
const JOINING = /^(?:[\s,+]|\b(?:and|at|with|in|of)\b)*$/i

/** Options with their texts, in the order in which they are written. */
export type OptionsRead = readonly (readonly [option: string, text: string])[]

type Read = (rest: string) => OptionsRead | null

const whole =
  (option: string): Read =>
  (rest) => [[option, rest]]

/** `500 g sugar 1.5 l water`, `sugar 500 g`, or amounts alone: what is weighed is sugar. */
const syrup: Read = (rest) => {
  const found: [option: string, text: string][] = []
  const parts = new RegExp(`\\b(sugar|water)\\s+(${AMOUNT})|(${AMOUNT})(?:\\s+(?:of\\s+)?(sugar|water)\\b)?`, 'gi')
  const left = rest.replace(parts, (_, before, named, alone, after) => {
    const text = (named ?? alone) as string
    const word = (before ?? after) as string | undefined
    found.push([word?.toLowerCase() ?? (VOLUME.test(text) ? 'water' : 'sugar'), text])
    return ''
  })
  const options = new Set(found.map(([option]) => option))
  return found.length === 0 || options.size < found.length || !JOINING.test(left) ? null : found
}

/** `930 ml 87%`. */
const measurement: Read = (rest) => {
  const measured = new RegExp(AMOUNT, 'i').exec(rest)?.[0]
  const left = measured === undefined ? rest : rest.replace(measured, '')
  const strength = STRENGTH.exec(left)?.[0]
  if (!JOINING.test(strength === undefined ? left : left.replace(strength, ''))) return null
  return [
    ...(measured === undefined ? [] : [['measured', measured] as const]),
    ...(strength === undefined ? [] : [['strength', strength] as const]),
  ]
}

/** `4`, `4/5 bright`, `5 stars`, or words alone. */
const taste: Read = (rest) => {
  const found = /^([1-5])(?:\s?\/\s?5|\s+stars?)?(?![\w.,/]*\d)\b[\s,:]*(.*)$/i.exec(rest)
  const [, rating, note] = found ?? [null, undefined, rest]
  return [
    ...(rating === undefined ? [] : [['rating', rating] as const]),
    ...(note === undefined || note === '' ? [] : [['note', note] as const]),
  ]
}

/** What has a strength is spirit, else sugar and water, else plants. */
const addition: Read = (rest) => (STRENGTH.test(rest) ? [['spirit', rest]] : (syrup(rest) ?? [['of', rest]]))

const READING = /(?<!\S)(brix|hydrometer|before|after|sweetness)\s+(?=\d|dry\b|everyday\b|rich\b)/i

/** `brix 26.5 hydrometer 1.045 at 24 C`: each reading behind the name of its option. */
const readings: Read = (rest) => {
  const [before = '', ...parts] = rest.split(READING)
  const found = parts.flatMap((part, at): OptionsRead => {
    const text = parts[at + 1]
    return at % 2 === 1 || text === undefined ? [] : [[part.toLowerCase(), text.replace(/[\s,]+(?:and)?\s*$/i, '')]]
  })
  const options = new Set(found.map(([option]) => option))
  return !JOINING.test(before) || options.size < found.length ? null : found
}

/** By command, what stands behind a jar's name. */
const READ: Readonly<Record<string, Read>> = {
  'jar add': addition,
  'jar bottle': whole('bottles'),
  'jar correct': measurement,
  'jar discard': whole('when'),
  'jar empty': whole('when'),
  'jar filter': measurement,
  'jar later': whole('until'),
  'jar open': whole('when'),
  'jar rename': (rest) => [['to', rest.replace(/^to\s+/i, '')]],
  'jar shake': whole('when'),
  'jar strain': measurement,
  'jar sweeten': syrup,
  'jar taste': taste,
  again: whole('spirit'),
  measure: readings,
}

/** What follows a jar's name with the names of the command's options; null where that cannot be told. */
export const readRest = (path: string, rest: string): OptionsRead | null => {
  const options = READ[path]?.(rest) ?? null
  return options === null || options.length === 0 ? null : options
}

export interface BatchRead {
  readonly name: string | null
  readonly options: OptionsRead
}

const SPIRIT = new RegExp(`^(.*?)[\\s,]+(?:(?:and|in|with)\\s+)?(${AMOUNT}.*\\d\\s?%.*)$`, 'i')

/** `lemon 10 lemons 1 l 95%`: a jar's name, plants and, unless it is known, the spirit; null where that cannot be told. */
export const readBatch = (text: string, isSpiritKnown: boolean): BatchRead | null => {
  const [, before, spirit] = isSpiritKnown ? [null, text, null] : (SPIRIT.exec(text) ?? [null, undefined, null])
  const [, name, counted] = /^(.*?)[\s,:]*(?<!\S)(\d.*)$/.exec(before ?? '') ?? [null, '', before ?? '']
  const of = counted.trim()
  if (of === '') return null
  const options = [
    ['of', of] as const,
    ...(spirit === null || spirit === undefined ? [] : [['spirit', spirit] as const]),
  ]
  return { name: name === '' ? null : name, options }
}
