import type { BotanicalKind, Limit } from '../../../core/botanical/botanical.ts'
import { lineTyped } from '../../calls/write-line.ts'
import type { Format } from '../format.ts'
import type { Feature, Part } from '../language.ts'
import type { BotanicalMessages, DoseSaid } from '../messages/plants.ts'
import { cookName, piecesText, plantName } from './cook-names.ts'
import { capital, counted, listed } from './phrases.ts'
import { planNotes } from './plan.ts'
import {
  cutWords,
  evidenceWords,
  kindNames,
  monthsText,
  pieceWords,
  preparationWords,
  productFileWords,
  rangeText,
  shareText,
  shortName,
  southern,
  spanText,
  stateWords,
  trusted,
} from './plant-words.ts'
import { sweetenerName } from './sweeteners.ts'
import { asTyped, drinkWord } from './words.ts'

type KindRows = { readonly [Kind in BotanicalKind as `botanical_kind_${Kind}`]: () => string }

const kindRows: KindRows = {
  botanical_kind_citrus: () => kindNames.citrus,
  botanical_kind_berry: () => kindNames.berry,
  botanical_kind_fruit: () => kindNames.fruit,
  botanical_kind_vegetable: () => kindNames.vegetable,
  botanical_kind_herb: () => kindNames.herb,
  botanical_kind_spice: () => kindNames.spice,
  botanical_kind_root: () => kindNames.root,
  botanical_kind_bitter: () => kindNames.bitter,
  botanical_kind_flower: () => kindNames.flower,
  botanical_kind_nut: () => kindNames.nut,
  botanical_kind_coffee_tea_cocoa: () => kindNames.coffee_tea_cocoa,
  botanical_kind_wood: () => kindNames.wood,
} satisfies Part<BotanicalMessages['rows']>

/** Labels of the rows of `/botanical`. */
const botanicalRows = {
  ...kindRows,
  botanical_latin: () => 'Latin name',
  botanical_form: () => 'Form',
  botanical_spirit: () => 'Spirit',
  botanical_taste: () => 'Taste from',
  botanical_usual: () => 'Usual steep',
  botanical_latest: () => 'Strain by',
  botanical_rest: () => 'Rest after',
  botanical_water: () => 'Water',
  botanical_sugars: () => 'Sugars',
  botanical_zest: () => 'Peel of one',
  botanical_pieces: () => 'One weighs',
  botanical_given: () => 'Dissolves',
  botanical_kept: () => 'Soaks up',
  botanical_season: () => 'Season',
  botanical_limit: () => 'Limit',
  botanical_wise: () => 'Don’t exceed',
} satisfies Part<BotanicalMessages['rows']>

const perLitre = (limit: Limit, format: Format): string =>
  `${format.plain(limit.gPerLSpirit, 2)} g in a litre of spirit`

/** Cells of the rows of `/botanical`. */
const botanicalCells = {
  botanical_names: ({ ids }) =>
    ids
      .map(shortName)
      .toSorted((one, other) => one.localeCompare(other, 'en'))
      .join(', '),
  botanical_latin: ({ latin }) => latin.join(', '),
  botanical_form: ({ form, bulky, driedPerFresh }, format) => {
    const cut = form.cut === null ? '' : `, ${cutWords[form.cut]}`
    const wide = bulky ? ' (bulky: use a wide jar and press it under)' : ''
    const dried =
      driedPerFresh === null
        ? ''
        : `. 1 g dried counts as ${format.plain(1 / driedPerFresh.factor, 1)} g fresh${trusted(driedPerFresh.trust)}`
    return `${stateWords[form.state]}${cut}${wide}${dried}`
  },
  botanical_spirit: ({ min, max, trust }, format) => `${rangeText(min, max, format)} % vol${trusted(trust)}`,
  botanical_taste: ({ fromDays }, format) => spanText(fromDays, fromDays, format),
  botanical_span: ({ minDays, maxDays, trust }, format) => `${spanText(minDays, maxDays, format)}${trusted(trust)}`,
  botanical_latest: ({ latestDays }, format) =>
    latestDays === null ? 'no rush' : spanText(latestDays, latestDays, format),
  botanical_share: ({ share }, format) => shareText(share, format),
  botanical_zest: ({ zest }, format) => {
    const [strips, grated] = [rangeText(...zest.strips, format), rangeText(...zest.grated, format)]
    const spread = `±${format.plain(zest.plusMinusShare * 100, 0)} % from fruit to fruit`
    return `${strips} g in strips, ${grated} g grated, ${spread}${trusted(zest.trust)}`
  },
  botanical_pieces: ({ pieces }, format) =>
    pieces
      .map(({ piece, minG, maxG, trust }) => `${pieceWords[piece]} ${rangeText(minG, maxG, format)} g${trusted(trust)}`)
      .join(', '),
  botanical_given: ({ sugarsGPerL, extractGPerL }, format) => {
    const rest = format.spread.sweetness(extractGPerL)
    const given =
      sugarsGPerL.value > 0 ? `${format.spread.sweetness(sugarsGPerL)} sugar, ${rest} of other matter` : `${rest} of it`
    return `${given}, at the usual amount (estimated)`
  },
  botanical_kept: ({ min, max, trust }, format) =>
    `${rangeText(min, max, format)} ml of liquid for each gram${trusted(trust)}`,
  botanical_season: ({ months }) =>
    months === null
      ? 'all year'
      : `${monthsText(months)} in the north (common practice), ${monthsText(southern(months))} in the south (derived)`,
  botanical_most: ({ gPerL }, format) => `${format.dose.mass(gPerL, 2)} in a ${format.dose.each} of spirit`,
  botanical_percent: ({ min, max }, format) => `${rangeText(min, max, format)} %`,
  botanical_limit: ({ limit, dried }, format) => {
    const other = dried === null ? '' : ` (${format.plain(dried.gPerLSpirit, 2)} g if dried)`
    return `at most ${perLitre(limit, format)}${other}, and half of that in a litre of finished drink${trusted(limit.trust)}`
  },
  botanical_wise: ({ limit }, format) => `${perLitre(limit, format)}${trusted(limit.trust)}`,
} satisfies Part<BotanicalMessages['cells']>
/** More than these nobody counts, and less than about half a one is weighed. Common practice, no source. */
const COUNTED = { least: 0.4, most: 60 }

/** `11 lemons`, `2 vanilla pods`, `½ nutmeg`; null of what nobody counts. */
function countText({ id, dose: { pieces }, spirit }: DoseSaid, format: Format): string | null {
  if (pieces === null) return null
  const exact = pieces.count * (spirit === null ? format.dose.litres : 1)
  const count = exact < 1.75 ? Math.round(exact * 2) / 2 : Math.round(exact)
  if (exact < COUNTED.least || count > COUNTED.most) return null
  const text = piecesText({ id, count, unit: pieces.piece, ofZest: pieces.ofZest }, format)
  return text?.replace(/^0\.5/, '½').replace(/^1\.5/, '1\u00a0½') ?? null
}

/** `500 g (300 to 700)`, `120 g (50 to 250), the peel of 11 lemons,`. */
function doseText(said: DoseSaid, format: Format): string {
  const { dose, spirit } = said
  const [usual, least, most] = [dose.usualG, dose.leastG, dose.mostG].map((massG) =>
    spirit === null ? format.dose.mass(massG, massG < 10 ? 2 : 0) : format.round.mass(massG),
  )
  const count = countText(said, format)
  const about = `about ${usual} (${least?.replace(/\u00a0g$/, '')} to ${most?.replace(/\u00a0g$/, '')})`
  if (count === null) return `use ${about}`
  return `${about}, ${dose.pieces?.ofZest === true ? `the peel of ${count}` : count},`
}

/** What `/botanical` and `/cautions` say. */
export const botanicalSentences = {
  headlines: {
    botanical: (said, format) => {
      const { id, state, spirit, timesDays } = said
      const where =
        spirit === null
          ? `a ${format.dose.each} of spirit`
          : `${asTyped(spirit.amount).replace(/^1\s(?=\p{L}{3})/u, 'a ')} of ${drinkWord(spirit)}`
      const days = spanText(timesDays.usualMin, timesDays.usualMax, format)
      return `${capital(cookName(id, state))}: ${doseText(said, format)} in ${where}, for ${days}.`
    },
    botanical_ripe: ({ month, plants, isNow }) => {
      const when = isNow ? `now, in ${monthsText([month])}` : `in ${monthsText([month])}`
      return plants === 0
        ? `Nothing I know is ripe ${when}, so it’s what the shop has: lemons, spices, coffee.`
        : `Ripe ${when}: ${counted(plants, 'plant')} you can steep.`
    },
    botanical_kinds: ({ plants, kinds }) =>
      `I know ${plants} plants, of ${kinds} kinds. For one of them: /botanical ginger`,
    cautions_of: ({ ids, sweeteners, ofPlants, ofMaking }) => {
      const plants = ofPlants === 0 ? 'No cautions I know of' : counted(ofPlants, 'caution')
      return `${plants} for ${listed([...ids.map(plantName), ...sweeteners.map(sweetenerName)])}, and ${ofMaking} for any jar.`
    },
  },
  rows: botanicalRows,
  cells: botanicalCells,
  actions: {
    botanical_plan: () => 'Plan a jar',
    botanical_plan_of: ({ id }) => `Plan ${shortName(id)}`,
  },
  notes: {
    botanical_ripe_where: ({ isSouth, zone, isChosen }) => {
      const half = isSouth ? 'southern' : 'northern'
      const other = isChosen
        ? ''
        : ` Not where you live? Set it with ${lineTyped('settings', { zone: isSouth ? 'Europe/Rome' : 'Pacific/Auckland' })}`
      return `That’s for the ${half} half of the world, by your time zone (${zone}). Warm places are weeks ahead and cold ones behind (common practice).${other}`
    },
    botanical_corrected: planNotes.plan_corrected,
    botanical_form_taken: planNotes.plan_form_taken,
    botanical_steps: ({ steps, knownAs }) => {
      const said = steps.map((step) => preparationWords[step]).join(' ')
      return knownAs === null ? said : `I only know how to prepare it ${stateWords[knownAs]}: ${said}`
    },
    botanical_evidence: ({ evidence }) => evidenceWords[evidence],
    botanical_habit: ({ byAnalogy, measured, trust }) => {
      const days = byAnalogy ? 'The days are those of a similar plant' : 'The days are what people use'
      return `${days}${trusted(trust)}${measured ? '' : ', and nobody I know of has measured them'}. Taste.`
    },
    botanical_file: ({ file }, format) => productFileWords(file, format),
  },
} satisfies Feature<BotanicalMessages>
