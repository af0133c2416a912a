import type { Bit, Sentence, TalkJar } from '../bits/bit.ts'
import { jarCalled, jarsNamed, runningAmong } from '../bits/jars-of.ts'
import type { CallRead, GlassesThere, PouredFor, TalkReading } from '../frames/reading.ts'
import { codeOf } from '../memory/cost-rule.ts'
import { GLASS_ML, poured } from '../memory/glass-rule.ts'
import { isOf } from '../memory/plan-rules.ts'
import type { Remembered } from '../memory/remembered.ts'
import { callReading, whichJar } from '../memory/rule.ts'
import { planMeant } from './plan-asked.ts'

const LEAD = '^(?:(?:and|so|but|ok|okay|then|now|roughly|about|e|ma|allora) )*'
const TAIL =
  '(?: (?:of|from|in|with|it|this|that|them|mine|ours|the|my|our|one|jar|batch|bottle|liqueur|drink|stuff|there|then|now|please|have|has|got|contain|contains|hold|holds|di|d|del|dello|della|dell|dal|questo|questa|quello|il|lo|la|l|mio|mia|ha|ne|c|e|liquore))*$'
const GLASS =
  '(?:(?:a|an|one|each|every|per|the|un|una|ogni|al|in|del|il) )*(?:(?:small|little|single|normal|usual|piccolo) )?(?:glass|shot|nip|dram|tot|measure|pour|serving|glassful|shotful|bicchier[ei]|bicchierin[oi]|cicchett[oi]|shottin[oi])(?:es|s)?(?: glass)?'
const BOTTLE = '(?:(?:a|an|one|each|every|per|the|una|ogni|alla) )*(?:bottle|bottiglia)s?'

const asks = (...ways: readonly string[]): RegExp => new RegExp(`${LEAD}(?:${ways.join('|')})${TAIL}`, 'u')

/** How strong a glass of it is. */
const STRONG = asks(
  `how (?:strong|potent|alcoholic)(?: (?:is|s|are|would|will|be))* (?:in )?${GLASS}`,
  `how (?:much|many) (?:pure )?(?:alcohol|booze|units?|standard drinks?)(?: of alcohol)?(?: (?:is|are|s|will|would|does|do|there|be|i|get|have))* (?:in |per |from )?${GLASS}`,
  `(?:quanto|quant) (?:alcol|alcool)(?: (?:c|e|ce|contiene|ha|si|trova))* ${GLASS}`,
  `(?:quanto|com|come) (?:e forte|forte e) ${GLASS}`,
)

/** How many glasses it makes. */
const GLASSES = asks(
  `how many ${GLASS}(?: (?:will|does|would|do|can|could|is|are|i|we|it|this|that|the|my|jar|batch|plan|get|make|fill|give|yield|pour|be|out|left))*`,
  `(?:quanti) ${GLASS}(?: (?:fa|fanno|ci|sono|vengono|riempio|escono|ottengo))*`,
)

const PRICED = `(?:${GLASS}|${BOTTLE})`
/** What a bottle or a glass of it costs. */
const COSTS = asks(
  `(?:what|how much)(?: (?:does|do|would|will|did|is|s|are|was))+ ${PRICED}(?: (?:of|from) (?:it|this|that|the|my|mine)(?: jar| one| batch)?)?(?: (?:cost|costs|come to|work out at|work out as|set me back|me|us))*`,
  `(?:what(?: is|s)? (?:the )?|the )?(?:cost|price)(?: (?:of|for|is|s))* ${PRICED}`,
  `what(?: does| do| is)? (?:it|this|that)(?: (?:cost|costs|come to|work out at|me|us))+ (?:for )?${PRICED}`,
  `how much(?: does| do| is)? (?:it|this|that)(?: (?:cost|costs|come to|me|us))* (?:for )?${PRICED}`,
  `quanto (?:mi |ci |ti )?(?:costa|viene|costerebbe|costera|verrebbe)(?: a costare)? ${PRICED}`,
  `(?:qual e )?(?:il )?(?:costo|prezzo) (?:di |per )?${PRICED}`,
)
const OF_GLASS = new RegExp(GLASS, 'u')

/** Stronger than this nothing is drunk: it is what steeps, % vol. */
const STRONGEST_TO_DRINK = 55

/** Its syrup is still to come. */
const AHEAD: ReadonlySet<TalkJar['stage']> = new Set(['steeping', 'strained'])

type Meant = { readonly plan: NonNullable<Remembered['worked']> } | { readonly jars: readonly TalkJar[] }

const isName = ({ kind }: Bit): boolean => kind === 'plant' || kind === 'jar'

/** The plan or the jars that a question of a glass or a bottle is of: named, spoken of last, or the only one. */
export function drinkMeant({ bits, jars }: Sentence, said: Remembered): Meant {
  const running = runningAmong(jars)
  const plan = planMeant(said)
  const names = bits.filter(isName)
  const named = jarsNamed(bits, jars).map(({ jar }) => jar)
  if (names.length > 0) {
    const isOfPlan = names.every(
      (bit) => bit.kind === 'plant' && plan?.call.options.of?.split('+').some((item) => isOf(item, bit)) === true,
    )
    return plan !== null && isOfPlan ? { plan } : { jars: [...new Set(named)] }
  }
  if (plan !== null) return { plan }
  const last = jarCalled(said.call?.options.jar ?? said.call?.options.name, running)
  return { jars: last === undefined ? running : [last] }
}

const OF_DRINK = /^(?:jar|plant|volume|bottles|bare)$/

/** Asked how much of it there is, it is no spirit that went in. */
const ALCOHOL = /^(?:alcohol|booze|alcool|alcol)$/iu

/** A sentence without its jar and its amounts; null where it tells of anything else. */
function restOf({ bits, typed }: Sentence): string | null {
  const isOther = bits.some(({ kind, text }) => !OF_DRINK.test(kind) && !ALCOHOL.test(text))
  if (isOther || typed.tokens.length > 18) return null
  const at = (place: number): Bit | undefined => bits.find(({ from, to }) => from <= place && place < to)
  return typed.tokens
    .flatMap(({ kind, text }, place) => {
      if (kind === 'sign') return []
      const bit = at(place)
      if (bit === undefined || bit.kind === 'bare' || bit.kind === 'spirit') return [text]
      return bit.kind === 'bottles' && bit.from === place ? ['bottle'] : []
    })
    .join(' ')
}

function oneOf(command: CallRead['command'], calls: readonly CallRead[]): TalkReading | null {
  const [call, another] = calls
  if (call === undefined) return null
  return another === undefined ? callReading(call) : whichJar({ command, options: {} }, calls)
}

const percent = (abvPercent: number): string => `${Math.round(abvPercent)}%`

/** `How strong is a shot of it`: what is in a glass of the plan or the jar that is meant. */
function strengthAsked(sentence: Sentence, said: Remembered): TalkReading | null {
  const meant = drinkMeant(sentence, said)
  const servingAt = (abvPercent: number): CallRead => ({
    command: 'serving',
    options: { pour: poured(sentence), strength: percent(abvPercent) },
  })
  if ('plan' in meant) {
    const { drink } = meant.plan
    return drink === null ? null : callReading(servingAt(drink.abvPercent))
  }
  const strengths = meant.jars.flatMap((jar) => {
    const abvPercent = jar.isTroubled === true ? null : jar.strengthPercent()
    return abvPercent === null || abvPercent > STRONGEST_TO_DRINK ? [] : [servingAt(abvPercent)]
  })
  return oneOf('serving', strengths)
}

/** `What does a bottle cost`: what the plan or the jar that is meant comes to. */
function costAsked(sentence: Sentence, said: Remembered, text: string): TalkReading | null {
  const meant = drinkMeant(sentence, said)
  const code =
    'plan' in meant
      ? (codeOf(said.call ?? meant.plan.call, said.offered) ?? codeOf(meant.plan.call, meant.plan.offered))
      : null
  const calls: readonly CallRead[] =
    'jars' in meant
      ? meant.jars.map(({ name }) => ({ command: 'cost', options: { jar: name } }))
      : code === null
        ? []
        : [{ command: 'cost', options: code }]
  const reading = oneOf('cost', calls)
  return reading?.kind === 'call' && OF_GLASS.test(text) ? { ...reading, costOfMl: GLASS_ML } : reading
}

/** Whether it is still to come, in full bottles, or stands there. */
export const heldIn = (stage: TalkJar['stage'], told: TalkJar['told']): GlassesThere['held'] =>
  AHEAD.has(stage) ? 'ahead' : told().some(({ kind }) => kind === 'bottled') ? 'bottled' : 'there'

/** How many glasses there are in the jars that may be meant. */
export function jarsGlasses(jars: readonly TalkJar[], asked: PouredFor | null): TalkReading | null {
  const there = jars.flatMap(({ name, stage, volumeMl, told }) => {
    const thereMl = volumeMl?.() ?? null
    return thereMl === null
      ? []
      : [{ call: { command: 'jar show', options: { jar: name } } as const, thereMl, held: heldIn(stage, told) }]
  })
  const [only, another] = there
  if (only === undefined) return null
  if (another !== undefined)
    return whichJar(
      { command: 'jar show', options: {} },
      there.map(({ call }) => call),
    )
  const { thereMl, held } = only
  const leads = { kind: 'glasses', thereMl, held, glassMl: asked?.glassMl ?? GLASS_ML, poured: asked } as const
  return { kind: 'call', call: only.call, leftOut: [], does: 'compute', leads }
}

/** How many glasses the plan that is meant makes. */
export function planGlasses(
  { call, drink }: NonNullable<Remembered['worked']>,
  asked: PouredFor | null,
): TalkReading | null {
  const thereMl = drink?.volumeMl ?? null
  if (thereMl === null) return null
  const leads = { kind: 'glasses', thereMl, held: 'ahead', glassMl: asked?.glassMl ?? GLASS_ML, poured: asked } as const
  return { kind: 'call', call, leftOut: [], does: 'compute', leads }
}

/** How many glasses the plan or the jar that is meant has. */
function glassesAsked(sentence: Sentence, said: Remembered): TalkReading | null {
  const meant = drinkMeant(sentence, said)
  return 'plan' in meant ? planGlasses(meant.plan, null) : jarsGlasses(meant.jars, null)
}

/** What is asked of a glass or a bottle of one's own: how strong it is, what it costs. Null where nothing was planned, and nothing stands there. */
export function ownGlass(sentence: Sentence, said: Remembered): TalkReading | null {
  const text = restOf(sentence)
  if (text === null) return null
  if (STRONG.test(text)) return strengthAsked(sentence, said)
  if (GLASSES.test(text)) return glassesAsked(sentence, said)
  return COSTS.test(text) ? costAsked(sentence, said, text) : null
}
