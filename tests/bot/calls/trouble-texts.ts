import fc from 'fast-check'
import { troubleOptions } from '../../../bot/calls/trouble-options.ts'

/** What is typed of a trouble. */
export const troubleTexts = [
  [troubleOptions.symptom, fc.constantFrom('cloudy', 'too sweet', 'it went cloudy in the freezer', 'troppo dolce')],
  [troubleOptions.signs, fc.constantFrom('growth', 'growth + fizz', 'bought, sure and fuel')],
] as const
