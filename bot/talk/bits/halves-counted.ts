import { isPlantWord } from '../../../core/botanical/find/plant-said.ts'

/** `Half an orange`, `mezzo limone`. */
const HALF = /(?<!\p{L}|\d\s|and\s|e\s)(?:half (?:of )?an?|mezz[oa])\s(?=(\p{L}+)(?:\s(\p{L}+))?)/giu

/** Behind the name of a plant what a half is of: `half an orange liqueur bottle`, `half a ginger jar`. */
const OTHER =
  /^(?:bottles?|jars?|liqueurs?|batch(?:es)?|juice|cordial|vodka|gin|recipe|plan|jugs?|mugs?|cups?|glass(?:es)?)$/i

/** A sentence in which a half of a fruit is counted, `0.5 orange`: never one whole, and never as many as the spirit takes. */
export const halvesCounted = (text: string): string =>
  /half|mezz[oa]/i.test(text)
    ? text.replace(HALF, (half, fruit: string, next: string | undefined) =>
        isPlantWord(fruit) && !OTHER.test(next ?? '') && !OTHER.test(fruit) ? '0.5 ' : half,
      )
    : text
