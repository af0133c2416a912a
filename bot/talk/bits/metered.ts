import { type Open, type RolesAround, wordsOf } from './attach.ts'

const ON_METER =
  /^(?:on|by|sul|sull|all) (?:(?:the|my|our) )?(?:\p{L}*meter|float|floaty|gauge|dial|scale|alcolometro|densimetro)\b/u

const ON_LABEL =
  /^(?:(?:it|that|she|the (?:label|bottle)) (?:says|said|reads)|(?:says|said|reads) (?:it|the (?:label|bottle))|(?:on|by) (?:the|its) (?:label|bottle)|dice(?: l etichetta)?|c e scritto|sull(?: |a )?(?:etichetta|bottiglia))\b/

/** `Alcolometro 86`, `57 on the meter`, `37.5 it says`: a number that an instrument or a label shows. */
export const isMetered = (around: RolesAround, { from, to }: Open): boolean =>
  around.spans.some((span) => (span.concept === 'instrument' || span.concept === 'reads') && span.to === from) ||
  ON_METER.test(wordsOf(around, to, to + 3).join(' ')) ||
  ON_LABEL.test(wordsOf(around, to, to + 3).join(' '))
