import { type Open, type RolesAround, wordsOf } from './attach.ts'

const ON_METER =
  /^(?:on|by|sul|sull|all) (?:(?:the|my|our) )?(?:\p{L}*meter|float|floaty|gauge|dial|scale|alcolometro|densimetro)\b/u

/** `Alcolometro 86`, `57 on the meter`: a number that an instrument shows. */
export const isMetered = (around: RolesAround, { from, to }: Open): boolean =>
  around.spans.some((span) => (span.concept === 'instrument' || span.concept === 'reads') && span.to === from) ||
  ON_METER.test(wordsOf(around, to, to + 3).join(' '))
