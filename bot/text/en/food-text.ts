import type { FoodAnswer, FoodQuestion } from '../../../core/botanical/foods/food.ts'
import type { UnplannedFood } from '../../../core/botanical/problems.ts'

/** Of `flesh`: what else there is of the fruit. */
const inside: Readonly<Record<string, string>> = {
  pips: 'Are the core and pips out? They give off cyanide.',
  stones: 'Is the stone out? It gives off cyanide.',
  seeds: 'Is it the ripe flesh, with the seeds out? The seeds aren’t food.',
  rest: 'Is it the flesh only? The rest of the plant isn’t food.',
}

const questions: { readonly [Answer in Exclude<FoodAnswer, 'flesh' | 'bought'>]: string } = {
  stoned: 'Are the stones out? Whole ones are fine too, but cracked ones give off cyanide.',
  whole: 'Are the pips whole? Crushed ones give off cyanide.',
  ripe: 'Is it fully ripe? Unripe, it makes you ill.',
  husked: 'Is it ripe, and out of its husk? The husk is poisonous.',
  peeled: 'Is it peeled?',
  mild: 'Is it a mild one? A bitter one is poisonous.',
  cooked: 'Is it cooked? Raw, it makes you ill.',
  roasted: 'Is it roasted? Raw, it isn’t food.',
  pod: 'Is it the pod?',
}

const boughtText = (double: string | null): string =>
  double === null
    ? 'Is it bought as food, or did you plant it?'
    : `Is it bought, or did you plant it? ${double.charAt(0).toUpperCase()}${double.slice(1)} looks alike and is poisonous.`

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
    : `${capital(name)}: ${questionText(question)} If so, type: ${lineOf(retype)}`
