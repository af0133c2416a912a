import type { FoodAnswer, FoodQuestion } from '../../../core/botanical/food.ts'
import type { UnplannedFood } from '../../../core/botanical/problems.ts'

/** Of `flesh`: what else there is of the fruit. */
const inside: Readonly<Record<string, string>> = {
  pips: 'core and pips out? They give off cyanide.',
  stones: 'stones out? They give off cyanide.',
  seeds: 'the ripe flesh only, seeds out? The seeds aren’t food.',
  rest: 'the flesh only? The rest of the plant isn’t food.',
}

const questions: { readonly [Answer in Exclude<FoodAnswer, 'flesh' | 'bought'>]: string } = {
  stoned: 'stones out? Whole ones are fine too, but cracked ones give off cyanide.',
  whole: 'pips whole? Crushed ones give off cyanide.',
  ripe: 'fully ripe? Unripe, it makes you ill.',
  husked: 'ripe, and out of the husk? The husk is poisonous.',
  peeled: 'peeled?',
  mild: 'mild, not bitter? A bitter one is poisonous.',
  cooked: 'cooked? Raw, it makes you ill.',
  roasted: 'roasted? Raw, it isn’t food.',
  pod: 'the pod?',
}

const boughtText = (double: string | null): string =>
  double === null
    ? 'bought as food, or planted by you?'
    : `bought, or planted by you? ${double.charAt(0).toUpperCase()}${double.slice(1)} looks alike and is poisonous.`

const questionText = ({ answer, about }: FoodQuestion): string => {
  if (answer === 'bought') return boughtText(about)
  return answer === 'flesh' ? inside[about ?? 'rest']! : questions[answer]
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

/** `20 g pineapple` typed with everything else, or alone. */
const lineOf = ({ line, as }: UnplannedFood['retype']): string =>
  line ?? `/plan of:${as} spirit:1 l 50% unknown-ok:yes days:14`

/** What is known of a food that has no amounts, and the line to type. */
export const foodText = ({ name, question, retype }: UnplannedFood): string =>
  question === null
    ? `${capital(name)}: a food, but I’ve no amount for it. Give your own grams and days: ${lineOf(retype)}`
    : `${capital(name)}: ${questionText(question)} Then type: ${lineOf(retype)}`
