import { unlessRefused } from '../../../core/domain-error.ts'
import { parseCountryCode } from '../../../core/label/parse-country-code.ts'

const WHO =
  "(?:(?:he|she|they|it|that|this|my \\p{L}+|the \\p{L}+|lui|lei|loro)(?:[’'] ?(?:s|re)| is| are| was| lives?)? )?(?:(?:is|are|è|sono|sta|abita|vive|si trova) )?"
const WHERE = '(?:(?:over|now|currently|right|all|still) )*(?:(?:in|from|a|negli|nei|nelle) )?(?:the )?'

/** `He’s in Germany`, `Germany`; not `I’m in Germany`, which is where somebody lives and is noted. */
const SAID = new RegExp(
  `^(?:(?:ok|sorry|please|well|and|but|no|yes|actually) )*${WHO}${WHERE}(\\p{L}{3,}(?: \\p{L}+){0,2}?|uk|us)(?: (?:now|right now|please|at the moment))?$`,
  'iu',
)

/** The country that is told of somebody who is harmed, two letters; null where anything else is said. Never throws. */
export function countrySaid(typed: string): string | null {
  const place = SAID.exec(typed.trim().replace(/[,.!]+/g, ''))?.[1]
  return place === undefined ? null : unlessRefused(() => parseCountryCode(place))
}
