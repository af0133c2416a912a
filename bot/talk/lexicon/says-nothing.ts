import { plainWords } from '../../../core/spelling/normalise-name.ts'
import { wordSet } from './concepts.ts'
import { isPerson } from './people.ts'

/**
 * Words that change nothing in what is done, so that nobody is told they were left out: how somebody likes it, is in the mood,
 * greets, or when something is said. A word that might change what is meant, an amount, a deed, a plant, a child, is none of them.
 */
const NOTHING = wordSet(`
  gorgeous superb delicious yummy yum tasty amazing fantastic brilliant smashing wonderful splendid stunning divine heavenly fab fabulous perfect beautiful
  excellent awesome marvellous terrific magnificent scrumptious grand champion belting
  horrible awful terrible dreadful disgusting vile rubbish minging yuck yucky eww bleurgh grim
  haha hehe lol yay wow whoa phew blimey crikey gosh golly heck damn bloody flipping flaming yesss woohoo hooray hurrah cheers ta alas oops whoops argh ugh sigh
  sadly luckily finally honestly frankly hopefully obviously apparently clearly somehow thankfully kindly nicely thrilled chuffed delighted bothered keen afraid sorry
  excited proud happy glad sad tired knackered daft silly bored
  already meanwhile day days giorno giorni gday howdy howya namaste hoi yo wotcha alright greetings bye
  reckon forgot recall wish guess bet fancy track knows dear boss pal buddy darling love
  ottimo ottima ottimi ottime squisito squisita squisiti squisite delizioso deliziosa meraviglioso meravigliosa fantastico fantastica stupendo stupenda eccellente perfetto perfetta
  orribile orrendo orrenda schifo schifoso schifosa disgustoso disgustosa pessimo pessima tremendo tremenda
  purtroppo finalmente evviva ahime ahi uffa mannaggia accidenti boh magari fortunatamente sinceramente intanto buonasera buongiorno buonanotte capo contento contenta felice stanco stanca
`)

/** Of whom it is named that they were spoken of: nothing is made for a child. */
const YOUNG = /^(?:son|daughter|child|kid|boy|girl|lad|baby|nephew|niece|figli[aoe]|figli|nipot[ei])s?$/

/** When it is said, or was done that day: of no weight but where the hour is what is asked for. */
const HOUR = wordSet(
  'arvo evening evenin evenings morning mornin mornings afternoon night nights stamattina stasera stanotte pomeriggio mattina',
)
const OF_HOURS = /^(?:reminders|settings|jar later|calendar|remind)/

/** Nothing is done anew by it but where something is begun, taken back or thrown away. */
const AGAIN = wordSet('again nuovamente')
const BEGINS = /^(?:plan|again|jar (?:start|undo|discard|correct))$/

/** What the answer itself tells of. */
const IN_ANSWER: readonly (readonly [command: RegExp, words: ReadonlySet<string>])[] = [
  [/^(?:dilute|mix|syrup|adjust)$/, wordSet('water acqua')],
  [/^(?:syrup|adjust|mix|dilute|serving|keeping)$/, wordSet('sugar zucchero alcohol alcol')],
  [/^botanical$/, wordSet('sit leave stay stays stand lie remain steep spirit alcohol alcol stare restare rimanere')],
]

/** A command with its options as texts. */
interface Said {
  readonly command: string
  readonly options: Readonly<Record<string, string>>
}

/** What a price of nothing says already. */
const FREE = wordSet('free gratis nothing nowt gratuito gratuita gratuiti gratuite regalato regalata regalati regalate')
const AT_NOTHING = /\s0\//

/** Whether a word that was left out changes nothing of what was read. */
export function saysNothing(word: string, { command, options }: Said): boolean {
  const plain = plainWords(word).join('')
  if (NOTHING.has(plain) || (isPerson(plain) && !YOUNG.test(plain))) return true
  if (HOUR.has(plain)) return !OF_HOURS.test(command)
  if (AGAIN.has(plain)) return !BEGINS.test(command)
  if (command === 'cost' && FREE.has(plain)) return AT_NOTHING.test(options.prices ?? '')
  return IN_ANSWER.some(([of, words]) => of.test(command) && words.has(plain))
}
