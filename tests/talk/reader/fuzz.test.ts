import fc from 'fast-check'
import { expect, it } from 'vitest'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { isOneTypo } from '../../../core/spelling/one-typo.ts'
import { runs, SEED } from '../../runs.ts'
import { readDangers, readOffTopic, sentencesOf } from '../corpus.ts'
import { talkerFor } from './told.ts'

const WORDS = [...sentencesOf('open'), ...sentencesOf('own-1'), ...readOffTopic(), ...readDangers()]
  .map(({ text }) => text.split(/\s+/))
  .filter((words) => words.length > 1)

/** A piece of one sentence of the corpus, perhaps with a slip in it. */
const piece = fc
  .record({
    sentence: fc.nat(WORDS.length - 1),
    from: fc.nat(20),
    length: fc.integer({ min: 1, max: 6 }),
    slip: fc.option(fc.tuple(fc.nat(40), fc.constantFrom('x', 'e', '', ' ')), { nil: null }),
  })
  .map(({ sentence, from, length, slip }) => {
    const words = WORDS[sentence]!
    const begin = from % words.length
    const text = words.slice(begin, begin + length).join(' ')
    if (slip === null) return text
    const at = slip[0] % text.length
    return text.slice(0, at) + slip[1] + text.slice(at + 1)
  })

const scrambled = fc.array(piece, { minLength: 1, maxLength: 4 }).map((pieces) => pieces.join(' '))

/** By command, stems of which one has to be there where anything is written down; written apart from the reader's own words. */
const MEANS_IT: Readonly<Record<string, RegExp>> = {
  'jar shake': /sh[ao]+ok|shak|swirl|stir|turn|jiggl|agit|scoss|sbatt|moss|girat/i,
  'jar strain': /strain|drain|siev|took|taken|fish|remov|press|separat|through|filtr|col|scol|tolt|passat/i,
  'jar sweeten': /sweet|syrup|sugar|add|put|went|in\b|zuccher|dolc|sciropp|aggiunt|mess/i,
  'jar filter': /filt|rack|travas|passat/i,
  'jar bottle': /bottl|fill|decant|imbott|riemp/i,
  'jar taste':
    /tast|tri(?:ed|al)|try|sip|sampl|rat(?:e|ing)|star|scor|give|gets|got|out of|meh|\/ ?5|assagg|prov|vot|do\b|stell|punt/i,
  'jar add': /add|put|pop|drop|chuck|thr[eo]w|bung|slip|st[iu]ck|tip|top|pour|went|aggiunt|mess|butt/i,
  'jar open': /open|crack|broke|drink|glass|apert|stapp/i,
  bottles:
    /ga?ve|give|hand|gift|donat|open|crack|broke|drink|uncork|glass|cork|popp|bottle|pass|regal|dat[oaie]|apert|stapp/i,
  'jar combine': /mix|pour|tip|blend|stir|together|combin|merg|unit|join|marr|vat|mescol|misch|vers|insieme|unit/i,
  'jar split': /split|divid|pour|dr[ae]w|decant|part|aside|jar|took|divis|separ|part|vaso|spill|preliev|prelev/i,
  'jar take-out': /t[ao]k|fish|pull|pick|lift|remov|scoop|out|tolt|lev|ripesc|estra|tir|rim|sfil/i,
  'jar note':
    /mov|shift|st[ao][no]|at the|sit|li[vf]|put|stor|keep|kept|in |on |under|carr|went|tuck|note|jot|wri|annot|nota|spost|sta|mess|port|trav/i,
  'jar start':
    /start|beg[au]n|set|put|made|going|on the go|steep|filled|kick|add|pop|drop|thr[eo]w|chuck|do|go|record|log|save|keep|mak|cominc|iniz|mess|prepar|avvi|aggiunt|vai|registr|salv/i,
  'jar later':
    /remind|ping|nudge|tell|let me|notif|alert|poke|shout|prod|later|ask|snooze|postpone|put|leave|day|hold|come back|ricord|promem|avvis|fammi|dimm|tardi|dopo|rimand|chied|ripass|lasci|posticip|volta|notific/i,
  'jar undo':
    /undo|back|wrong|scrap|ignore|mean|cancel|delete|remove|mistake|me\b|revert|annull|togl|sbagl|cancell|indietro|detto/i,
  'jar rename': /call|name|rinomin|chiam/i,
  // What has to be thrown away, or may have to, is kept of its jar.
  trouble:
    /mou?ld|fur|fuzz|fluff|hair|grow|slim|scum|varnish|glue|paint|solvent|acet|smell|stink|reek|rott|rancid|bulg|swell|swoll|burst|lid|hiss|fizz|bubbl|foam|gas|ferment|vinegar|glass|crack|broke|insect|fl(?:y|ies)|ants?\b|mouse|garlic|stone|sun|hot|warm|muff|pel|puzz|odor|curdl|cagli|split|panna|cream|taste|sap|poison|ill|sick|strange|wrong|weird|brown|black|pink|orang|worm|verm|maggot|mag|colla|vernic|marci|aceto|bolli|schium|gonfi|tapp|coperch|vetro|rott|mosc|inset|formich|aglio|sole|cald/i,
  again: /again|same|last|before|repeat|redo|another|more batch|come|nuovo|rif|stess|altro|ripet|ugual/i,
}

/** Of each command a word that means it, which may be a slip of the finger away. */
const SAID: Readonly<Record<string, readonly string[]>> = {
  'jar shake': ['shake', 'shook', 'shaken', 'stirred'],
  'jar strain': ['strain', 'strained', 'filtered', 'drained'],
  'jar sweeten': ['sweetened', 'syrup', 'sugar', 'added'],
  'jar filter': ['filter', 'filtered', 'racked'],
  'jar bottle': ['bottle', 'bottled', 'filled'],
  'jar taste': ['taste', 'tasted', 'tried', 'sampled', 'stars'],
  'jar add': ['added', 'popped', 'dropped', 'poured'],
  'jar open': ['open', 'opened'],
  bottles: ['opened', 'gave', 'bottles'],
  'jar combine': ['poured', 'mixed', 'together', 'combined'],
  'jar split': ['split', 'divided'],
  'jar take-out': ['taken', 'removed', 'fished'],
  'jar note': ['moved', 'stands', 'note'],
  'jar start': ['start', 'started', 'begin', 'begun', 'steeping'],
  'jar later': ['remind', 'later', 'snooze', 'postpone'],
  'jar undo': ['undo', 'wrong', 'cancel', 'mistake'],
  'jar rename': ['rename', 'called'],
  again: ['again', 'repeat', 'another'],
}

/** A slip in a shorter stem makes any word of it. */
const LEAST_STEM = 4

/** The stems of `MEANS_IT` that are letters alone: `scoss`, `swirl`. */
const stemsOf = (command: string): readonly string[] =>
  (MEANS_IT[command]?.source.split('|') ?? []).filter((stem) => stem.length >= LEAST_STEM && /^\p{L}+$/u.test(stem))

const isMisspelt = (text: string, command: string): boolean =>
  text
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .some(
      (word) =>
        SAID[command]?.some((said) => isOneTypo(word, said)) ||
        stemsOf(command).some((stem) => [-1, 0, 1].some((more) => isOneTypo(word.slice(0, stem.length + more), stem))),
    )

it('erases nothing, throws nothing away, shows nothing to others, and writes down only what a word means', {
  timeout: 1_800_000,
}, async () => {
  await fc.assert(
    fc.asyncProperty(scrambled, async (text) => {
      const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
      const told = await one.say(text)
      const { jars, shares } = await one.store.read('local')
      expect(one.faults).toEqual([])
      expect(told.erased).toBe(false)
      expect(jars.filter(({ entries }) => jarStateOf(entries)?.ended !== null && jarStateOf(entries) !== null)).toEqual(
        [],
      )
      expect(shares).toEqual([])
      if (told.recorded !== 0 && !isMisspelt(text, told.command ?? '')) {
        expect(text).toMatch(MEANS_IT[told.command ?? ''] ?? /$ never/)
      }
    }),
    { numRuns: runs(500, 20_000), seed: SEED },
  )
})
