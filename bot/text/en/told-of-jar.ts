import { isSymptom } from '../../../core/trouble/find-symptom.ts'
import { isBadSign, isSign } from '../../../core/trouble/signs.ts'
import { symptoms } from '../../../core/trouble/symptoms.ts'
import { lineTyped } from '../../calls/write-line.ts'
import type { ToldOfJar } from '../messages/jar-danger.ts'
import { uncapital } from './phrases.ts'
import { questions, stopReasons } from './trouble-signs.ts'

type Told = ToldOfJar['trouble']

const nameOf = ({ symptom }: Told): string => (isSymptom(symptom) ? symptoms[symptom].en[0]! : 'something wrong')

const reasonOf = (trouble: Told): string =>
  (stopReasons as Readonly<Record<string, string>>)[trouble.because ?? ''] ?? `you told me of “${nameOf(trouble)}”`

/** What is to be done with what a jar was told of. */
export const toldText = ({ name, trouble }: ToldOfJar): string =>
  trouble.verdict === 'throw_away'
    ? `Throw ${name} away: ${reasonOf(trouble)}.`
    : `Don’t drink or bottle ${name} yet: you told me of “${nameOf(trouble)}”.`

/** The line that looks at it again, with what was answered. */
export const lookAgain = ({ name, trouble }: ToldOfJar): string => {
  const signs = (['yes', 'no'] as const).flatMap((is) =>
    trouble[is].length === 0 ? [] : [[is, trouble[is].join(' + ')] as const],
  )
  return lineTyped('trouble', { symptom: nameOf(trouble), jar: name, ...Object.fromEntries(signs) })
}

/** What is open, and by which answer it goes. */
export const openText = ({ question }: Told): string => {
  if (question === null || !isSign(question)) return 'what’s wrong with it?'
  return `${uncapital(questions[question])} ${isBadSign(question) ? 'If so' : 'If not'}, throw it away.`
}
