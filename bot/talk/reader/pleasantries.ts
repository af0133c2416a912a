import type { Sentence } from '../bits/bit.ts'
import type { TalkReading } from '../frames/reading.ts'
import { type Concept, DEEDS } from '../lexicon/lexicon.ts'
import { plainWords } from '../lexicon/plain-text.ts'

const words = (list: string): ReadonlySet<string> => new Set(list.split(/\s+/))

/** One of these is thanks, whatever is said around it. */
const THANKS = words(
  `thank thanks thankyou thanx thanks thnx thx tysm tyvm ty ta cheers obliged grateful gratitude appreciate appreciated appreciative grazie ringrazio
  ringraziamo ringraziarti grato grata riconoscente merci gracias danke dank obrigado obrigada`,
)

/** Praise, which is thanks where more is said of it than the word alone. */
const PRAISE = words(
  `brilliant perfect wonderful lovely marvellous marvelous fantastic excellent superb splendid terrific fabulous fab amazing impressive bravo brava bravissimo bravissima
  perfetto ottimo fantastico meraviglioso grandioso stupendo eccellente star angel gem legend hero genius treasure diamond saint lifesaver godsend marvel darling
  sweetheart clever kind patient helpful job work stuff rock rocks tesoro angelo genio mito grande gentile gentilissimo gentilissima`,
)

/** Said to whom, and of what has been done for whom. */
const AROUND_THANKS = words(
  `i im ive id you youre your youve youd ur u me my we our us it its that thats this these those what whats how a an the of for to too so such very really truly quite ever all
  and but as is are was were be been being am have has had do does did done will would could couldnt can cant not nt never without with in on at up by from there here
  oh ah ooh aw aww och aye well ok okay right now then today again much many more most lot lots heaps loads tons bunch million thousand mil ton best better great good grand nice neat
  kindly infinitely sincerely deeply awfully terribly immensely dearly hugely super mega ever nicely beautifully perfectly exactly just clearly well
  dear love pal mate friend friends buddy bud hun sir madam maam chum duck pet folks everyone bot larderbell larder my old lad lass man boss god lord heaven bless blessed blessings heart
  wife husband hubby missus mum mam mom dad gran nan sister brother daughter family guests neighbour neighbours neighbor neighbors he she they hell shell theyll pleased happy delighted chuffed thrilled glad
  explain explained explaining explains explanation told telling tell say said help helped helping helps helpful answer answered answering answers advice info information patience patient time taking took take
  trouble effort clear clears cleared clearer sense understand understood understanding get got makes made make know knew see worked work out myself yourself needed need wanted want looking hoped all sorted weekend
  saved saving save day life bacon wonder wonders useful kindness generous thoughtful lovely thing things one person people like everything question questions
  great brilliant perfect wonderful fantastic excellent amazing awesome
  di del della per il la lo le i gli un una mi ti ci si ne sei siete era e ed ma molto tanto tanta tante tanti mille davvero proprio veramente infinite infinitamente cuore cara caro cari amico amica
  hai avete stato stata stati spiegato spiegata spiegazione bene chiaro chiara chiarissimo chiarissima aiuto aiutato aiutata salvato salvata pazienza tempo disponibile preciso precisa prezioso preziosa
  tutto che cosa quello quanto come sempre ancora adesso ora capito tutti grazie oggi dell
  amigo beaucoup schon sehr mucho muchas molte mucho`,
)

/** Said in meeting somebody; the second ones need more than themselves. */
const GREETING = words(
  `hi hello hey hiya heya hullo hallo helo ello morning mornin afternoon evening greetings howdy gday hola bonjour bonsoir salve ciao ehi ehila buongiorno buonasera buondi
  buonpomeriggio rieccomi rieccoci yo wotcha wotcher ahoy oi aloha namaste yoohoo guten hej`,
)

const MET_AGAIN =
  /^(?:(?:and |so |well |oh |aye )*(?:i ?a?m |its |it is |were )?(?:only |just )?(?:back (?:again|here|once more)|me again|me back|(?:only|just) me|here again|long time no see|ey up|ay up|g day|good day|alright|you alright|are you there|you there|hows tricks)|eccomi|eccoci|sono (?:di nuovo|ancora) (?:qui|qua|io)|sono tornat[oa]|ci sei|come stai|come state)(?= |$)/

const AROUND_GREETING = words(
  `good day all well alright ok okay fine everything great nice lovely i im am is it its thats a an the to of and or but so oh ah um well my me we were us you your youre u ur again back once more
  only just here there now today this very long time no see how hows are ya doing do going keeping feeling tricks life up sup hope hoping hopes trust find finds meet meeting met see seeing anyone anybody
  someone somebody home awake about around still on with at top from friend friends pal mate buddy bud love dear partner folks everyone everybody people lad lads lass lot bot larderbell larder sir madam old
  ey ay afraid sorry guess what whats know another hello hi hey morning afternoon evening night
  di nuovo ancora qua qui io sono eccomi eccoci come va stai state andiamo tutto tutti bene ci sei si e ed a un un il la mio mia amico amica amici caro cara cari bella bello giornata sera piacere conoscerti ritrovarti
  bentrovato bentrovata spero tu che vada tornato tornata ragazzi bot abend tag morgen buenas tardes dias noches`,
)

/** Asked of whoever is greeted, not of jars. */
const OF_YOU =
  /\b(?:you|ya|u|your|anyone|anybody|someone|somebody|tricks|stai|state|sei|andiamo|all well|all good|everything good|tutto bene)\b/

const MOST_WORDS = 14

/** `That’s me sorted`, `well done`: of no jar. */
const OF_MAKER = /\b(?:me|us) sorted\b|\bwell done\b/i

/** `You star` rates no jar. */
const TOLD: readonly Concept[] = [
  ...[...DEEDS].filter((deed) => deed !== 'tasted'),
  'done_word',
  'start_word',
  'take_back',
]

/** `Heyyy` is `hey`. */
const once = (word: string): string => word.replace(/(\p{L})\1{2,}/gu, '$1')
const shortest = (word: string): string => word.replace(/(\p{L})\1+$/gu, '$1')

/**
 * Thanks or a greeting however they are put: `ta love, you’ve been a great help`, `buonasera, eccomi di nuovo qua`. Null where any other
 * word stands beside them, and for what a yes, a no or an answer may be.
 */
export function pleasantry({ typed, has }: Sentence, isAskedBefore: boolean): TalkReading | null {
  const said = once(plainWords(typed.text)).trim().split(' ')
  // `Thanks, it’s all in` tells of what was done.
  if (said.length > MOST_WORDS || (has(...TOLD) && !OF_MAKER.test(typed.text))) return null
  const isAsked = typed.text.includes('?')
  const all = said.join(' ')
  const are = (word: string, ...lists: readonly ReadonlySet<string>[]): boolean =>
    lists.some((list) => list.has(word) || list.has(shortest(word)))
  const isThanked = said.some((word) => are(word, THANKS))
  const isPraised = !isAskedBefore && said.length >= 3 && said.some((word) => are(word, PRAISE))
  const isThanks = said.every((word) => are(word, THANKS, PRAISE, AROUND_THANKS, GREETING))
  if ((isThanked || isPraised) && isThanks && !isAsked && !NO_THANKS.test(all))
    return { kind: 'small_talk', key: 'thanks' }
  const isMet = said.some((word) => are(word, GREETING)) || MET_AGAIN.test(all)
  const isGreeting = said.every((word) => are(word, GREETING, AROUND_GREETING))
  const isOfJars = has('help_me') || (has('what_is_on') && !OF_YOU.test(all))
  const isOpen = (isAsked || /\b(?:how|come)\b/.test(all)) && !OF_YOU.test(all) && said.length > 2
  return isMet && isGreeting && !isOfJars && !isOpen ? { kind: 'small_talk', key: 'greeting' } : null
}

/** Begins with what answers a question, or takes it up. */
const NO_THANKS =
  /^(?:no|nope|nah|yes|yep|yeah|yup|aye|si|not|never)\b|\b(?:do it|make it|get it|work it out|no thanks|tell me)\b/
