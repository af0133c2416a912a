const PEOPLE: ReadonlySet<string> = new Set(
  (
    'wife husband partner fiance fiancee son daughter child kid boy girl lad baby mother father mum mom mummy dad daddy parent nan gran ' +
    'granny nana grandma grandad grandpa grandmother grandfather aunt auntie uncle cousin nephew niece sister brother neighbour neighbor ' +
    'friend mate boss colleague flatmate ' +
    'moglie marito figlio figlia figli figlie mamma papa madre padre nonno nonna nonni zio zia zii cugino cugina cugini vicino vicina ' +
    'vicini amico amica amici sorella fratello suocero suocera nipote nipoti'
  ).split(' '),
)

/** Who is spoken of beside a jar, one, several or whose (`wifes`): a word without accents or apostrophes. */
export const isPerson = (word: string): boolean => PEOPLE.has(word) || PEOPLE.has(word.replace(/s$/, ''))
