import type { SaidOfHarm, WordSpan } from './said.ts'
import type { WhoKind } from './who-words.ts'

/** It may have happened: `what if the dog ate it`. Of what never has an entry tells: `what if the dog eats it`. */
const MAY_HAVE =
  / (?:ate|eaten|drank|drunk|swallowed|licked|had|has|got|just|already|help|now|ha|hanno|avesse|bevut[oaie]|mangiat[oaie]|ingoiat[oaie]|leccat[oaie]|appena|aiuto|adesso) /

/** `Che succede se un bambino beve`, of no day. */
export const isNeverYet = (said: SaidOfHarm, { from, to }: WordSpan): boolean =>
  /^(?:beve|mangia|lecca|ingoia)$/.test(said.between(from, to)) &&
  / (?:se|quando|qualora)(?: \w+){1,3} $/.test(` ${said.between(0, from)} `)

/** `What if the dog ate it?` */
export const isSupposedOf = (said: SaidOfHarm, kinds: readonly WhoKind[]): boolean =>
  MAY_HAVE.test(said.text) &&
  said
    .spans('supposed')
    .some(
      ({ from, to }) =>
        said.mentions().some((each) => kinds.includes(each.kind) && each.from >= from && each.to <= to) &&
        !said.near('harmless', { from: to, to }, 0, 6),
    )
