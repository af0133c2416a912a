import { kitchenRounded } from '../../../core/recipe/tool-precision.ts'
import type { Why } from '../../../core/trouble/finding.ts'
import type { TroubleProblems } from '../../../core/trouble/problems.ts'
import type { RemedyKind } from '../../../core/trouble/row.ts'
import { troubleSources } from '../../../core/trouble/sources.ts'
import type { Stake } from '../../../core/trouble/stake.ts'
import { type SymptomId, symptoms } from '../../../core/trouble/symptoms.ts'
import type { Format } from '../format.ts'
import type { Feature, Written } from '../language.ts'
import type { CauseSaid, CauseText, TroubleCauses, TroubleMessages } from '../messages/trouble.ts'
import { plantName } from './cook-names.ts'
import { capital, daysWords, either, listed, trustNamed, uncapital } from './phrases.ts'
import { ifDrunk } from './plant-refusals.ts'
import { cloudTexts } from './trouble-clouds.ts'
import { growthTexts } from './trouble-growth.ts'
import { mishapTexts } from './trouble-mishaps.ts'
import { keepReasons, questions, stopReasons, stopSigns, symptomClauses } from './trouble-signs.ts'
import { tasteTexts } from './trouble-taste.ts'

const causes: TroubleCauses = { ...cloudTexts, ...growthTexts, ...tasteTexts, ...mishapTexts }

const textOf = ({ symptom, cause }: CauseSaid): CauseText =>
  (causes[symptom] as Readonly<Record<string, CauseText>>)[cause]!

/** A plain number as it is said, to the nearest of a whole. */
const about = (value: number, plusMinus = 1) => ({ value, plusMinus })

const strength = (value: number, format: Format): string => format.strength(about(value))
const sweetness = (value: number, format: Format): string => format.sweetness(about(value, 5))

/** How long something was. */
const forDays = (days: number): string => (days === 0 ? 'less than a day' : daysWords(days))

/** Why a cause fits, in the jar's own figures. */
function whyText(why: Why, format: Format): string {
  switch (why.key) {
    case 'plants':
      return `It has ${listed(why.ids.slice(0, 2).map(plantName))} in it.`
    case 'fell':
      return `It fell from ${strength(why.from, format)} to ${format.strength(why.to)}.`
    case 'strength':
      return `It’s about ${format.strength(why.abvPercent)}.`
    case 'weakest':
      return `It was as weak as ${strength(why.abvPercent, format)}.`
    case 'steep_strength':
      return `On the plants it was ${strength(why.abvPercent, format)}.`
    case 'off_range':
      return `It steeped at ${strength(why.abvPercent, format)}. ${capital(plantName(why.id))} likes ${why.range[0]} to ${why.range[1]} %.`
    case 'sugar':
      return `It has ${format.sweetness(why.sugarGPerL)} of sugar.`
    case 'should_not':
      return `By its numbers, ${strength(why.abvPercent, format)}, it shouldn’t. Measure it.`
    case 'plant_sugar':
      return `The plants brought about ${sweetness(why.sugarGPerL, format)} of it.`
    case 'units':
      return `At ${strength(why.abvPercent, format)} it comes to ${format.number(why.units, 0)} Delle units: under 75 it ferments, over 85 it doesn’t.`
    case 'too_long':
      return `${capital(plantName(why.id))} was in for ${forDays(why.days)} (usually ${why.usualDays}).`
    case 'too_short':
      return `${capital(plantName(why.id))} was in for ${forDays(why.days)} (usually ${why.usualDays}).`
    case 'dose':
      return `There’s ${format.dose.mass(kitchenRounded(why.gPerL).value, 1)} of ${plantName(why.id)} a ${format.dose.each} (usually ${format.dose.mass(kitchenRounded(why.usualGPerL).value, 1)}).`
    case 'piece':
      return `Each ${plantName(why.id)} weighs ${format.number(why.share, 1)} times what peel alone does.`
    case 'rested':
      return `Its syrup went in ${why.days === 0 ? 'today' : `${daysWords(why.days)} ago`}.`
    case 'steeped':
      return `It steeped for ${forDays(why.days)}.`
    case 'age':
      return why.days === 0 ? 'It’s from today.' : `It’s ${daysWords(why.days)} old.`
    case 'freezes':
      return Math.abs(why.freezesAtC - why.freezerC) < 1.5
        ? `Ice starts at about ${format.round.temperature(why.freezesAtC)}, about as cold as your freezer.`
        : `Ice starts at ${format.round.temperature(why.freezesAtC)}, and your freezer is at ${format.round.temperature(why.freezerC)}.`
    case 'no_room':
      return `It has ${format.sweetness(why.sugarGPerL)}, and only ${sweetness(why.largestGPerL, format)} is sure to stay dissolved.`
    case 'planned':
      return `It’s ${format.strength(why.abvPercent)}, and the plan was ${strength(why.plannedPercent, format)}.`
    case 'missing':
      return `About ${format.number(100 * why.share, 0)} % of it is missing.`
    case 'over_ceiling':
      return 'It’s over a limit.'
  }
}

const whysText = (whys: readonly Why[], format: Format): string =>
  (whys.some(({ key }) => key !== 'plants') ? whys.filter(({ key }) => key !== 'plants') : whys)
    .slice(0, 2)
    .map((why) => ` ${whyText(why, format)}`)
    .join('')

const LIKELIEST = { nothing: 'Most likely', yes: 'If so, most likely', no: 'If not, most likely' } as const

/** On which answer it goes. */
const stakeText = (stake: Stake): string => {
  if (stake.if === 'weaker') return `Under ${stake.percent} %`
  return stake.if === 'so' ? 'If so' : 'If not'
}

const HOLD: Readonly<Record<'over_ceiling' | 'fizz' | 'air' | 'recurs' | 'weak', string>> = {
  over_ceiling: 'there’s more of a plant in it than is safe',
  fizz: 'it may still be fermenting',
  air: 'first see whether it stops by itself',
  recurs: 'first see whether the lid pushes up again',
  weak: 'it’s too weak to keep',
}

const REMEDY: Readonly<Record<RemedyKind, string>> = {
  weaker: 'Make it weaker',
  stronger: 'Make it stronger',
  less_sweet: 'Make it less sweet',
  sweeter: 'Make it sweeter',
  strain: 'Once it’s strained',
  filter: 'Once it’s filtered',
  correct: 'See its entries',
  measure: 'Measure it',
}

/** The name by which a symptom is typed. */
const symptomName = (id: SymptomId): string => symptoms[id].en[0]!

/** Help for `/trouble`. */
/** Why nothing that keeps it is done yet. */
const NOT_YET = {
  gas: 'No. Don’t drink it yet: what makes the gas is all through it, not just on top.',
  skimmed: 'No. Don’t taste it yet: whatever it is, it’s all through the drink, not just on top.',
  used: 'No. Don’t taste it yet, and don’t cook with it or give it away.',
} as const

export const troubleText = {
  summary: 'What went wrong, and how to save it',
  options: {
    symptom: 'What you see, smell or taste, in your words: cloudy, too sweet, fizzing',
    jar: 'The jar: its numbers answer most of what I’d ask',
    of: 'Without a jar, what’s in it: plum + cinnamon',
    strength: 'Without a jar, how strong it is: 28%',
    sweetness: 'Without a jar, how sweet it is: 250 g/L',
    days: 'Without a jar, how long the plants were in: 3 weeks',
    yes: 'What you answered yes to: growth, fizz',
    no: 'What you answered no to: vinegar',
    'what-if': 'yes, and I keep nothing of it in the jar',
    about: 'What you’d do with it all the same: cooking, skimming, other bottles',
    given: 'Who has some of it already: Ann',
  },
  examples: [
    '/trouble cloudy',
    '/trouble too sweet strength:28% sweetness:330 g/L',
    '/trouble fizzing of:plum strength:16%',
  ],
}

/** Of more signs the rest is a sentence of its own. */
const MOST_SIGNS = 5

const isSmell = (sign: string): boolean => sign.startsWith('a smell')

/** What `/trouble` says. */
export const troubleSentences = {
  headlines: {
    trouble_what: ({ name }) =>
      `What’s wrong${name === null ? '' : ` with ${name}`}? Say what you see, smell or taste, in your words.`,
    trouble_throw_away: ({ because, isRefused }) =>
      `${isRefused ? 'No. Throw' : 'Throw'} it away: ${stopReasons[because]}.`,
    trouble_hold: ({ because }) => `Don’t drink or bottle it yet: ${HOLD[because]}.`,
    trouble_hold_for: ({ whys, isForGood, ...said }, format) =>
      `Don’t drink or bottle it${isForGood ? '' : ' yet'}: ${textOf(said).cause}.${whysText(whys.slice(0, 1), format)}`,
    trouble_ask: ({ question, stake }) => {
      const asked = uncapital(questions[question])
      return stake === null ? `First: ${asked}` : `Don’t taste it yet: ${asked} ${stakeText(stake)}, throw it away.`
    },
    trouble_no_yet: ({ why, question }) =>
      `${NOT_YET[why]} ${question === null ? 'Don’t drink or bottle it yet.' : `First: ${uncapital(questions[question])}`}`,
    trouble_likely: ({ question, stake, ...said }) => {
      const asked = uncapital(questions[question])
      const lost = stake === null ? '' : ` ${stakeText(stake)}, throw it away.`
      return `Most likely: ${textOf(said).cause}. But ${asked}${lost}`
    },
    trouble_keep: ({ because }) =>
      because === null ? 'Keep it: nothing here says throw it away.' : `Keep it: ${keepReasons[because]}.`,
    trouble_alone_harmless: () => 'That alone is no reason to throw it away. But don’t drink it yet.',
    trouble_cannot_tell: ({ isTaste, isMended }) =>
      isMended
        ? 'You can fix it. None of its numbers is unusual, so go by your taste.'
        : isTaste
          ? 'Keep it: that’s a matter of taste. None of its numbers is unusual, so taste it again in a few days.'
          : 'I can’t tell what that is: nothing I know of fits. If in doubt, throw it away.',
  },
  notes: {
    trouble_how_to_throw_away: () =>
      'Pour it down the drain with plenty of water, window open, and no flame, child or pet near.',
    trouble_kept: ({ name, verdict }) =>
      verdict === 'ask' ? `I’ll keep that question open on ${name}.` : `I’ve noted that on ${name}.`,
    trouble_which_jar: ({ count }) =>
      count === 1 ? 'Is it this jar? Then I’ll note it there.' : 'Which jar is it? I’ll note it there.',
    trouble_stays: ({ name }) =>
      `${name} stays marked until you say in words what it was, or it’s noted as thrown away.`,
    trouble_settled: ({ name }) => `I’ve noted that on ${name}: it goes on as before.`,
    trouble_skimmed: () => 'Skimming, straining or boiling doesn’t help: what it made is all through the drink.',
    trouble_no_use: () => 'That goes for cooking, cleaning and giving it away too.',
    trouble_other_bottles: () =>
      'Its other bottles are the same batch. Look at each against the light, and throw away any with the same. Taste none to find out.',
    trouble_same_bottles: () => 'Its other bottles hold the same drink, so what’s said here goes for each of them.',
    trouble_full_bottles: () =>
      'Full bottles of it can burst. Gloves and goggles, a towel over each, and into the fridge. Once they’re cold, open them slowly, away from your face. One that’s still tight: leave it cold and covered, and don’t touch it.',
    trouble_more_known: () => 'Its strength and plants would tell me more.',
    trouble_read_as: ({ typed, symptoms: ids }) =>
      `I’ve read “${typed}” as ${listed(ids.map((id) => `“${symptomName(id)}”`))}.`,
    trouble_question: ({ question }) => questions[question],
    trouble_cause: ({ whys, after, ...said }, format) =>
      `${LIKELIEST[after]}: ${textOf(said).cause}.${whysText(whys, format)}`,
    trouble_whys: ({ whys }, format) => whysText(whys, format).trimStart(),
    trouble_tell: (said) => `How to tell: ${uncapital(textOf(said).tell)}`,
    trouble_todo: (said) => textOf(said).todo,
    trouble_other: ({ whys, ...said }, format) => {
      const { cause, tell, todo } = textOf(said)
      return `Or ${cause}.${whysText(whys, format)} ${tell} ${todo}`
    },
    trouble_rule_out: ({ whys, ...said }, format) => {
      const { cause, tell, todo } = textOf(said)
      return `Rule this out first: ${cause}.${whysText(whys, format)} ${tell} If that’s it: ${uncapital(todo)}`
    },
    trouble_known: ({ trust, sources, ...said }) => {
      const { cause, more } = textOf(said)
      const known = listed([...new Set(trust.map((each) => trustNamed[each]))])
      // What is of nobody's page is said by its trust alone.
      const pages = sources.filter((each) => each !== 'practice' && each !== 'memory' && each !== 'core')
      const from = pages.map((each) => ` ${capital(troubleSources[each])}.`).join('')
      return `${more === null ? '' : `${more} `}About ${cause}: ${known}.${from}`
    },
    trouble_takes: (
      { spiritMl, spiritPercent, drink, waterMl, sugarG, abvPercent, sugarGPerL, isPerLitre },
      format,
    ) => {
      const poured = isPerLitre ? format.dose.volume : format.round.volume
      const weighed = isPerLitre ? format.dose.mass : format.round.mass
      const parts = [
        ...(spiritPercent !== null && spiritMl.value > 0
          ? [`${poured(spiritMl.value)} of ${strength(spiritPercent, format)} ${drink ?? 'spirit'}`]
          : []),
        ...(waterMl.value > 0 ? [`${poured(waterMl.value)} water`] : []),
        ...(sugarG.value > 0 ? [`${weighed(kitchenRounded(sugarG.value).value, 1)} sugar`] : []),
      ]
      return `${capital(listed(parts))} ${isPerLitre ? `in each ${format.dose.each} ` : ''}${parts.length > 1 ? 'make' : 'makes'} it ${format.strength(abvPercent)}, ${format.sweetness(sugarGPerL)}.`
    },
  },
  cautions: {
    trouble_if_drunk: ({ numbers, poisonCentre, isAssumed }) => {
      const emergency = numbers.join(' or ')
      const assumed = isAssumed ? ' (US assumed)' : ''
      if (poisonCentre !== null)
        return `If anyone’s had some, call the poison centre now, ${poisonCentre}${assumed}, well or not. If they’re ill, ${emergency}.`
      return emergency === '' ? ifDrunk() : `If anyone’s had some, call ${emergency} now, even if they feel well.`
    },
    trouble_given: ({ who, call }) => {
      const tell = `Tell ${who ?? 'whoever has some'} now not to drink it.`
      if (call === null) return tell
      const { numbers, poisonCentre } = call
      const whom = poisonCentre === null ? numbers.join(' or ') : `the poison centre, ${poisonCentre}`
      return `${tell} If it’s been drunk and anyone feels ill, call ${whom === '' ? 'a doctor or poison centre' : whom}.`
    },
    trouble_unless: ({ unless }) => {
      const signs = [...new Set(unless.flatMap((each) => stopSigns[each].split(' or ')))]
      // What is smelled stands last, so that nothing after it reads as a smell.
      const first = signs.slice(0, MOST_SIGNS).toSorted((one, other) => Number(isSmell(one)) - Number(isSmell(other)))
      const rest = signs.slice(MOST_SIGNS)
      const also = rest.length === 0 ? '' : ` Same goes for ${listed(rest)}.`
      return `But throw it away if it has ${either(first)}.${also}`
    },
  },
  actions: {
    trouble_yes: () => 'Yes',
    trouble_no: () => 'No',
    trouble_strength: () => 'With its strength',
    trouble_plants: () => 'With its plants',
    trouble_strain: () => 'Once it’s strained',
    trouble_filter: () => 'Once it’s filtered',
    trouble_correct: () => 'See its entries',
    trouble_measure: () => 'Measure it',
    trouble_of_jar: ({ name }) => `It’s ${name}`,
    trouble_remedy: ({ kind }) => REMEDY[kind],
    trouble_usual: ({ symptom }) => capital(symptomName(symptom)),
    trouble_also: ({ symptom }) => `And ${symptomClauses[symptom]}`,
    trouble_see: ({ symptom }) => `If ${symptomClauses[symptom]}`,
    trouble_offer: ({ symptom }) => (symptom === null ? 'What’s wrong with it?' : `If ${symptomClauses[symptom]}`),
  },
} satisfies Feature<TroubleMessages>

/** What cannot be asked of a trouble. */
export const troubleProblems = {
  unknown_symptom: ({ typed, nearest }) => {
    const meant = nearest.map((name) => `“${name}”`)
    const question =
      meant.length === 0
        ? 'What do you see, smell or taste? Say cloudy, bitter or fizzing, for example.'
        : `Do you mean ${either(meant)}?`
    return `I don’t know “${typed}”. ${question}`
  },
  unknown_sign: ({ typed, known }) => `I didn’t ask about “${typed}”. I ask about ${listed(known)}.`,
} satisfies Written<TroubleProblems>
