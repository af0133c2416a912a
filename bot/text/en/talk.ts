import { usualBottleMl } from '../../../core/recipe/plan/parse-bottles.ts'
import { symptoms } from '../../../core/trouble/symptoms.ts'
import type { Path } from '../../calls/signatures.ts'
import type { GlassesThere, OfferedWay, PouredFor } from '../../talk/frames/reading.ts'
import type { Format } from '../format.ts'
import type { Feature, Written } from '../language.ts'
import type { TalkMessages, TalkProblems } from '../messages/talk.ts'
import { sweetnessWords } from './calculate.ts'
import { drinkChanged } from './changed-drink.ts'
import { cookName } from './cook-names.ts'
import { handbook } from './handbook/index.ts'
import { bound, capital, counted, countWord, listed, plural, shortDayWords, spanText } from './phrases.ts'
import { bottlesMade } from './planned-bottles.ts'
import { sweetenerName } from './sweeteners.ts'
import { unitsCounted } from './units-counted.ts'
import { vesselText } from './words.ts'

/** What is asked for an option that is lacking. */
const QUESTIONS: Readonly<Record<string, string>> = {
  bottles: 'How many bottles, and how big?',
  given: 'How many bottles?',
  opened: 'How many bottles?',
  where: 'Where is it now?',
  'jar add sugar': 'How much sugar?',
  fining: 'What was it fined with?',
  infusion: 'How much infusion have you got?',
  jar: 'Which jar is it?',
  liqueur: 'How much of the liqueur is there?',
  of: 'What goes in it?',
  'jar take-out of': 'What came out?',
  parts: 'How much of each is there, and how strong?',
  'pause-until': 'Until which day shall I keep quiet, or for good?',
  pour: 'How big is the glass?',
  'ready-by': 'Which day is that?',
  rating: 'How does it taste, in a word or two, or from 1 to 5?',
  spirit: 'How much spirit is there, and how strong?',
  strength: 'How strong is it?',
  sugar: 'How much sugar, and how much of the other?',
  to: 'What shall I call it?',
  'to-strength': 'How strong do you want it?',
  'to-sweetness': 'How sweet do you want it?',
  until: 'Until when?',
}

/** What a sentence alone never does, with how things stand until then. */
const ONLY_OFFERED: Readonly<Record<string, (jar: string) => string>> = {
  'jar discard': (jar) => `Nothing’s changed yet. To throw ${jar} away`,
  'jar empty': (jar) => `Nothing’s changed yet. If ${jar} is all gone`,
  share: (jar) => `Nobody else sees it yet. To show ${jar} to everybody`,
  forget: () => 'Nothing’s deleted yet. To delete all I have about you, your jars and their copies too',
  reminders: () => 'Nothing’s changed yet. To be reminded here',
}

/** What a command wrote down. */
const STEPS: Readonly<Record<string, string>> = {
  bottles: 'bottles that left',
  'jar add': 'what you added',
  'jar bottle': 'the bottling',
  'jar combine': 'two jars in one',
  'jar correct': 'a correction',
  'jar filter': 'the filtering',
  'jar later': 'when to ask again',
  'jar note': 'a note',
  'jar open': 'a bottle opened',
  'jar rename': 'a new name',
  'jar shake': 'a shake',
  'jar split': 'a jar split',
  'jar start': 'the start',
  'jar strain': 'the straining',
  'jar sweeten': 'the sweetening',
  'jar take-out': 'what came out',
  'jar taste': 'a taste',
}

/** The command that makes an entry. */
const STEP_OF: Readonly<Record<string, string>> = {
  started: 'jar start',
  added: 'jar add',
  layered: 'jar add',
  strained: 'jar strain',
  sweetened: 'jar sweeten',
  filtered: 'jar filter',
  bottled: 'jar bottle',
  bottles_out: 'bottles',
  shaken: 'jar shake',
  tasted: 'jar taste',
  taken_out: 'jar take-out',
  opened: 'jar open',
  renamed: 'jar rename',
  put_off: 'jar later',
  noted: 'jar note',
  corrected: 'jar correct',
}

const quotedWords = (words: readonly string[]): string => listed(words.map((word) => `“${word}”`))

/** What the line under an entry of the handbook is for; the others are sums. */
const GOES_ON: Readonly<Partial<Record<Path, string>>> = {
  botanical: 'See amounts and days',
  cautions: 'See the cautions',
  'jar list': 'See your jars',
  label: 'Try a label',
  plan: 'Plan one',
  reminders: 'Set reminders',
  settings: 'Set your units',
  trouble: 'Check yours',
}

/** An example of what can be said. */
const LEMONS = '10 lemons and a litre of 95%'

/** For how many glasses it has to do. */
const glassesFor = ({ people, glasses, glassMl, volumeMl }: PouredFor, format: Format): string =>
  `For ${people} people that’s ${people * glasses} glasses of ${glassMl} ml, ${format.round.volume(volumeMl)} in all.`

/** A bottle as they are usual in a kitchen, ml. */
const bottleMlIn = (format: Format): number => usualBottleMl(format.dose.each === 'quart' ? 'us' : 'metric')

/** `two 500 ml bottles`: as many as it takes to hold it all. */
function bottlesFor(volumeMl: number, format: Format): string {
  const count = Math.ceil(volumeMl / bottleMlIn(format))
  return `${countWord(count)} ${vesselText(bottleMlIn(format), format)} ${plural(count, 'bottle')}`
}

/** How many glasses there are, and whether that is enough; `has` begins the sentence on what there is. */
function glassesThere({ thereMl, glassMl, poured, held }: GlassesThere, has: string, format: Format): string {
  const there = `${format.round.volume(thereMl)}${held === 'bottled' ? ' in full bottles' : ''}`
  if (poured === null)
    return `${has} ${there}: ${counted(Math.floor(thereMl / glassMl), 'glass', 'glasses')} of ${glassMl} ml.`
  const lackMl = poured.volumeMl - thereMl
  const verdict = lackMl <= 0 ? 'enough' : `${format.round.volume(lackMl)} short`
  return `${glassesFor(poured, format)} ${has} ${there}: ${verdict}.`
}

/** What is said around sentences. */
export const talkSentences = {
  headlines: {
    talk_greeting: (_values, format) =>
      `Hello! Tell me what you’ve got, such as “${format?.example(LEMONS) ?? LEMONS}”, or ask “what’s on?”`,
    talk_right: () => 'Right. For what comes next, ask “what’s next?”',
    talk_thanks: () => 'You’re welcome.',
    talk_driest: () => 'No sugar goes in, so it’s as dry as it goes.',
    talk_let_be: () => 'All right, I’ll leave it.',
    talk_converted: ({ typed, material, unit, count }, format) =>
      `${capital(typed)}${material === null ? '' : ` of ${material === 'water' ? material : sweetenerName(material)}`} is about ${unitsCounted(count, unit, format)}.`,
    asked_freezer: ({ name, state }) =>
      ({
        pours: `${name} pours from the freezer.`,
        should_pour: `${name} should pour from the freezer.`,
        slush: `${name} goes slushy in the freezer. It thaws without harm.`,
        solid: `${name} freezes: a full bottle can burst in the freezer.`,
      })[state],
    asked_enough: ({ name, sugarGPerL }, format) =>
      `${name} is ${sweetnessWords(sugarGPerL, format)}. Chill a spoonful and taste. Not right? Say “sweeter”, “drier” or “too strong”.`,
    asked_yield: ({ name, thereMl, held }, format) => {
      const much = format.round.volume(thereMl)
      if (held === 'ahead')
        return `${name} will make about ${much}: ${bottlesMade(thereMl, bottleMlIn(format), null, format)}.`
      return held === 'bottled' ? `${name} has ${much} in full bottles.` : `${name} has about ${much}.`
    },
    asked_taken_out: ({ name, from, by, today }, format) =>
      from === null || by === null
        ? `Everything in ${name} stays in until you strain it.`
        : `Everything in ${name} stays in until you strain it, ${spanText(from, by, today, format)}.`,
    asked_tasting: ({ name, isHot, isDaily, from, today }, format) => {
      const since = from === null || from <= today ? '' : ` from ${shortDayWords(from, today, format)}`
      if (isHot)
        return `Taste ${name} a few hours after the chilli went in, then twice a day. Strain it once it’s nearly hot enough.`
      return isDaily
        ? `Taste ${name} every day${since}, and strain it once you like it.`
        : `Taste ${name} about once a week${since}, and every day once it’s nearly right.`
    },
    asked_glasses: ({ name, ...glasses }, format) =>
      glassesThere(glasses, `${name} ${glasses.held === 'ahead' ? 'will make' : 'has'}`, format),
    drink_changed: ({ was, now }, format) => drinkChanged(was, now, format),
    handbook_entry: ({ entry }) => bound(handbook[entry].text),
  },
  sure: {
    handbook_source: ({ entry }) => `Where it comes from: ${handbook[entry].source} (${handbook[entry].trust}).`,
  },
  actions: {
    handbook_next: ({ command }) => GOES_ON[command] ?? 'Work it out',
  },
  notes: {
    handbook_more: ({ entries }) =>
      `Near it in the handbook: ${listed(entries.map((entry) => handbook[entry].title.toLowerCase()))}.`,
    sugar_to_taste: () => 'Sugar to taste: stir it in bit by bit, and stop when you like it.',
    day_open: () => 'Which day is it for? Say it like “ready by 14 June”.',
    start_ahead: () => 'Nothing’s written down yet. Say “start it” on the day, and I’ll note it.',
    left_out: ({ words }) => `I left out ${quotedWords(words)}.`,
    poured_for: glassesFor,
    poured_bottles: (poured, format) =>
      `${glassesFor(poured, format).slice(0, -1)}: ${bottlesFor(poured.volumeMl, format)}.`,
    glasses_there: (glasses, format) => glassesThere(glasses, 'This makes', format),
    vessels_taken: ({ vessels }, format) =>
      `I’ve taken ${listed(vessels.map(({ name, ml }) => `a ${name} as ${format.round.volume(ml)}`))}.`,
    amounts_replaced: ({ typed, filled, wished }) =>
      filled < wished
        ? `Your ${typed} would fill ${filled === 0 ? 'not even one' : `only ${countWord(filled)}`}. For ${countWord(wished)} it takes what’s here.`
        : filled === wished
          ? `This is for just ${countWord(wished)}: your ${typed} would fill them too, with some over.`
          : `Your ${typed} would fill ${countWord(filled)}. This is for ${countWord(wished)}.`,
    bottles_taken: () => 'That’s my guess at the bottles. If it’s wrong, say “it was three small bottles”.',
    strength_open: () => 'How strong it is, I’ve estimated from what went in. That’s good enough to carry on.',
    jar_open: () => 'How big is the jar? Say “a litre jar” or “a jam jar”, and I’ll work out how much that is.',
    sugar_guessed: () => 'How much went in is my guess, so strength and sweetness are rough now. Go by taste.',
    unmeasured: () => 'How much is it? See which bottle it fills, and say “it fills a wine bottle”. Or weigh it.',
    kind_taken: ({ ask, id }) =>
      ask === 'cinnamon'
        ? `I’ve gone for ${cookName(id)}, as most supermarket cinnamon is that. Is yours Ceylon? Say “Ceylon”.`
        : `I’ve gone for ${cookName(id)}, as shops mostly sell that. Is it another? Say which.`,
    spirit_taken: ({ spirit }) => `I’ve gone for ${spirit}. Is it another? Say how much and how strong.`,
  },
} satisfies Feature<TalkMessages>

/** What a job is when it is done. */
const DONE_WORDS: Readonly<Record<string, string>> = {
  'jar shake': 'shaken',
  'jar taste': 'tasted',
  'jar add': 'added',
  'jar strain': 'strained',
  'jar sweeten': 'sweetened',
  'jar filter': 'filtered',
  'jar bottle': 'bottled',
}

/** `Have you shaken or tasted lemon`, `which is done: lemon strained or plum tasted`. */
function whichDoneText(jobs: TalkProblems['talk_which_done']['jobs']): string {
  const done = (command: Path): string => DONE_WORDS[command] ?? 'done'
  const names = new Set(jobs.map(({ name }) => name))
  const [only] = names
  if (names.size === 1 && only != null)
    return `What’s done with ${only}: is it ${either(jobs.map(({ command }) => done(command)))}?`
  return `Which is done: ${either(jobs.map(({ command, name }) => `${name ?? 'all'} ${done(command)}`))}?`
}

const either = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`

/** What does each of what a recipe offers. */
const WAYS: { readonly [Way in OfferedWay]: string } = {
  start: 'start it',
  drier: 'drier',
  stronger: 'stronger',
  shopping: 'shopping list',
}

const typeThis = (line: string | null): string => (line === null ? '' : ` You can type: ${line}`)

export const talkProblems: Written<TalkProblems> = {
  talk_lacks: ({ command, option, line, other }) =>
    `${QUESTIONS[`${command} ${option}`] ?? QUESTIONS[option] ?? `What’s the ${option.replaceAll('-', ' ')}?`}${typeThis(line)}${other === null ? '' : ` or ${other}`}`,
  talk_which_jar: ({ names, line }) =>
    names.length === 0
      ? `Which jar is it?${typeThis(line)}`
      : `${names.length === 1 ? `Is it ${names[0]}` : `Which jar is it: ${names.join(' or ')}`}?${typeThis(line)}`,
  talk_not_so: ({ symptom, line }) =>
    `So it’s not a case of “${symptoms[symptom].en[0]}”. What’s wrong with it then? You can type: ${line}`,
  talk_jar_size: () => 'How big is the jar? Say it in litres, or “a jam jar”.',
  talk_jar_of_what: () =>
    'What’s in the jar, and how big is it? Say it like “half a jam jar of raspberries, topped up with gin”.',
  talk_two_drinks: ({ lines: [one = '', other = ''] }) =>
    `Is that a jar of each? One after the other: ${one} then ${other}`,
  talk_which_done: ({ jobs, line }) => `${whichDoneText(jobs)}${typeThis(line)}`,
  talk_which_reading: ({ lines }) => `I can read that in more than one way. Which do you mean: ${lines.join(' or ')}`,
  talk_which_offered: ({ ways }) => `Which one? Say ${either(ways.map((way) => `“${WAYS[way]}”`))}.`,
  talk_number: ({ typed, line }) => `I don’t know what “${typed}” is for. Without it I’d read: ${line}`,
  talk_told: ({ line }) => `Shall I write that down? Say “yes”, or type: ${line}`,
  talk_one_reminder: ({ jar, line, reminders, moves, isMeant }) => {
    const none = isMeant
      ? 'I only write down what’s been done, so nothing’s changed.'
      : 'I can’t set a single reminder, so nothing’s changed.'
    if (line !== null && jar !== null) return `${none} To hear about ${jar} that day, and not before: ${line}`
    if (reminders === null) return none
    return `${none} ${moves ? 'To move all of them' : 'Jars remind you by themselves'}: ${reminders}`
  },
  talk_undo_step: ({ jar, step, line }) =>
    `The last thing I wrote down here was ${STEPS[step] ?? 'a step'}, for ${jar}. To undo that: ${line}`,
  talk_undo_first: ({ jar, last, wanted, line }) => {
    const before = last === null ? 'something else' : (STEPS[STEP_OF[last] ?? ''] ?? 'something else')
    return `I can only undo the last step of ${jar}, which was ${before}, not ${STEPS[wanted] ?? 'that'}. To undo the last one: ${line}`
  },
  talk_undo_told: ({ jar, told, line }) =>
    `The last thing I noted on ${jar} is “${told}”. Undoing that only makes me forget it, and the jar’s no safer. If you never saw it: ${line}`,
  talk_only_jar: ({ jar, line }) =>
    `I only know one jar here, ${jar}, so nothing’s written down. ${line === null ? `Say it with its name if you mean ${jar}.` : `If you mean ${jar}: ${line}`}`,
  talk_undo_jar: ({ names, line, told }) => {
    const asked =
      names.length === 1
        ? `Undo the last step of ${names[0]}?`
        : `Which jar’s last step is to go: ${names.join(' or ')}?`
    const last = told.map(({ jar, told: of }) => `of ${jar} that’s “${of}”`).join(', ')
    const stays = last === '' ? '' : ` ${capital(last)}: undoing it only makes me forget, and the jar’s no safer.`
    return `${asked}${stays} You can type: ${line}`
  },
  talk_wish_of_what: ({ line }) => `Which recipe is that for? Tell me what goes in first, for example: ${line}`,
  talk_zone_of: ({ place, line }) =>
    `I don’t know the time zone of ${place}. Which city with the same clock is near? For example: ${line}`,
  talk_only_typed: ({ command, jar, line }) =>
    `${ONLY_OFFERED[command]?.(jar ?? 'it') ?? 'Nothing’s changed yet. To do that'}: ${line}`,
  talk_lost: ({ lines, isSentence }) => {
    const lost = `I didn’t understand that. You could say, for example: ${lines.join(', or ')}`
    return isSentence ? `${lost} If somebody’s hurt, type: emergency` : lost
  },
  talk_set_aside: ({ words, isOfNone }) =>
    `I left out ${quotedWords([words])}. ${isOfNone ? 'Which jar is that for?' : 'Nothing’s written down for that.'}`,
  talk_no_last: () =>
    'I haven’t told you anything in the last half hour, so there’s nothing to explain. What would you like to know?',
}
