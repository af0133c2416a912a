import type { LimitKey } from '../../../../core/botanical/botanical.ts'
import type { BotanicalProblems } from '../../../../core/botanical/problems.ts'
import type { LimitProblems, PieceWeight } from '../../../chat/limit-problems.ts'
import type { Format } from '../../format.ts'
import { listed } from '../phrases.ts'
import { cookName } from './cook-name.ts'

type Over = BotanicalProblems['over_ceiling']

/** What there would be too much of. */
const substances: { readonly [Key in LimitKey]?: string } = {
  thujone: 'thujone',
  coumarin: 'coumarin',
  caffeine: 'caffeine',
  liquorice: 'glycyrrhizin',
  bitterness: 'bitterness',
  saffron_dose: 'saffron',
  nutmeg: 'nutmeg',
  capsaicin: 'heat',
  eugenol: 'eugenol',
  anethole: 'anethole',
  linalool: 'lavender',
  turmeric_liver: 'curcumin',
  angelica_furocoumarins: 'angelica',
}

/** Volumes are known as well as a kitchen jug tells them. */
const VOLUME_TOOL_SHARE = 0.02

const volume = (ml: number, format: Format): string => format.volume({ value: ml, plusMinus: VOLUME_TOOL_SHARE * ml })

/** Grams, rounded down so that the amount said is still allowed. */
const gramsAtMost = (massG: number, format: Format): string => {
  const step = massG < 1 ? 0.01 : massG < 10 ? 0.1 : 1
  return `${format.plain(Math.floor(massG / step + 1e-9) * step, 2)}\u00a0g`
}

const makesText = ({ per, volumeMl }: Over, format: Format): string =>
  per === 'finished' ? `, which makes ${volume(volumeMl, format)} of drink` : ''

/** `at most 0.65 g nutmeg in 1.00 l of spirit, which makes 1.33 l of drink.` */
function mostText(over: Over, format: Format): string {
  const most = over.of.map(({ id, state, mostG }) => `${gramsAtMost(mostG, format)} ${cookName(id, state)}`)
  return `at most ${listed(most)} in ${volume(over.spiritMl, format)} of spirit${makesText(over, format)}.`
}

const pieceText = ({ id, piece, minG, maxG }: PieceWeight, format: Format): string => {
  const weighs = minG === maxG ? format.plain(minG, 2) : `${format.plain(minG, 2)} to ${format.plain(maxG, 2)}`
  const name = cookName(id)
  // `One clove`, `one star`: the name says already of what.
  const isNamed = name.includes(piece)
  const what = piece === 'each' || piece === 'nut' ? name : isNamed ? piece : `${piece} of ${name}`
  return ` One ${what} weighs ${weighs}\u00a0g.`
}

const tooMuch = (over: Over, pieces: readonly PieceWeight[], format: Format): string =>
  `That’s too much ${substances[over.hazard] ?? over.hazard}: ${mostText(over, format)}${pieces.map((each) => pieceText(each, format)).join('')}`

/** Why so much of a plant is not planned, how much is fine, and the line that is right. */
export const limitProblems = {
  plan_over_ceiling: ({ line, pieces, ...over }, format) =>
    `${tooMuch(over, pieces, format)}${line === null ? '' : ` This is fine: ${line}`}`,
  jar_passes_ceiling: ({ jar, isPlants, line, already, pieces, ...over }, format) => {
    const most = tooMuch(over, pieces, format)
    if (line !== null) return `${most} If it’s in already, say so with already:yes. This much fits: ${line}`
    return `${most}${isPlants ? ` No more of it fits in ${jar}.` : ''} Is it so already? Then say so: ${already}`
  },
} satisfies { readonly [Key in keyof LimitProblems]: (values: LimitProblems[Key], format: Format) => string }

export const overCeilingText = (over: Over, format: Format): string => tooMuch(over, [], format)
