/** What tells that it is now: then nothing that somebody lives with is left out. */
const NOW =
  'help|now|quick(?:ly)?|drank|drunk|ate|eaten|eating|drinking|swallow\\w*|tasted|sipped|reaction|already|still|used|injected|jabbed|gave|given|collaps\\w*|worse|ambulance|moonshine|methanol|swelling|swollen|wheez\\w*|throat|suddenly|fit|having one|' +
  'bevut\\w+|mangiat\\w+|assaggiat\\w+|adesso|ora|aiuto|subito|usat\\w+|gonfi\\w*|reazione|crisi'

/** Of a calm sentence: none of those words before or after. */
const calm = (said: string): string => `(?<! (?:${NOW}) .*)(?:${said})(?! (?:.* )?(?:${NOW}) )`

const PEN =
  'epi ?pens?|epinephrine|adrenaline(?: (?:pens?|injectors?))?|auto ?injectors?|adrenalina|penna di adrenalina|autoiniettor[ei]'

/** What makes anybody cough, and passes. */
const SPICED =
  'chill?i(?:e?s)?|habaneros?|jalapenos?|scotch bonnets?|cayenne|fiery|spicy|spiciness|too hot|hotness|horseradish|wasabi|peppery|peperoncin[oi]|piccante'

const COUGHING_STILL =
  'still|now|help|cant|cannot|couldnt|wont|stop|blue|blood|breath\\w*|chok\\w*|throat|swell\\w*|swollen|ambulance|worse|child|kid|toddler|baby|boy|girl|son|daughter|grandson|granddaughter'

/** A cough that is over, after something hot: `my uncle was coughing for ten minutes`. */
const COUGHED =
  '(?:was|were|had (?:\\w+ ){1,5}|made (?:\\w+ ){1,4}|left (?:\\w+ ){1,4}|set (?:\\w+ ){1,4}|got (?:\\w+ ){1,4}|kept|started) ?coughing|(?<!(?:has|have) )coughed'

const coughedOver = (said: string): string =>
  `(?<! (?:${COUGHING_STILL}) .*)(?:${said})(?! (?:.* )?(?:${COUGHING_STILL}) )`

/**
 * What somebody lives with, carries or has had long ago, and is in no danger of by itself: `a guest has an EpiPen, which
 * allergens are in it?`. Pieces of regular expressions over plain words.
 */
export const livedWith: readonly string[] = [
  calm(
    `(?:has|have|carry|carries|carried|carrying|brings?|bringing|keeps?|keeping|with|owns?|prescribed|and|or|shes got|hes got|ive got|weve got|theyve got|has got|have got|needs? to (?:carry|have|keep)) (?:(?:always|to|a|an|no|two|2|own|spare|and) )*(?:(?:his|her|their|my|our) )?(?:own |spare )?(?:${PEN})|` +
      `(?:${PEN}) (?:is )?(?:(?:in|at) (?:the|his|her|a|my|our) (?:\\w+ )?(?:bag|handbag|box|pocket|kit|drawer|cupboard|car|fridge|stall|fair|table)|coming|holders?|users?|carriers?|owners?|near|nearby)|` +
      `(?:ha|hanno|porta|portano|tiene|con|avere|gira con) (?:(?:sempre|con|se|dietro) )*(?:l |un |il |la |lo |una |suo |sua )*(?:${PEN})`,
  ),
  calm(
    '(?:history|risk|rischio|storia|fear|prone|subject|episodi) (?:of|di|to) (?:\\w+ ){0,2}(?:anafila\\w+|anaphyla\\w+(?: shock)?|seizures?|fits|fainting|heart attacks?|strokes?|black ?outs?|convulsions|svenimenti|infarto|ictus)|' +
      '(?:has|have|is|are|am|im|hes|shes|was) (?:\\w+ )?anaphyla(?:xis|ctic) to|' +
      '(?:has|have|gets?|suffers? from|had) (?:\\w+ )?(?:seizures|fits|convulsions|blackouts) (?:sometimes|at times|as a (?:child|kid|boy|girl)|in the past|now and then|from time to time|if|when)|' +
      'epileptic(?! (?:fit|seizure|attack|shock|episode))|(?<!(?:crisi|attacco|stato) )epilettic[oaie]|' +
      '(?:has|have|ha) (?:\\w+ )?(?:vertigo|vertigini)(?: (?:and|e) (?:\\w+ )?(?:gets? )?dizzy)?|(?:short|out) of breath (?:on|up|climbing|going up|from) (?:the )?(?:stairs?|hills?|steps|climbing)',
  ),
  calm(
    '(?:heart attacks?|strokes?|infarto|ictus|overdose|seizures?|allergic reaction|anaphyla\\w+) (?:last (?:year|month|summer|winter|spring|autumn|week|christmas)|(?:back )?in (?:19|20)\\d\\d|(?:\\w+ ){1,2}(?:years?|months?) ago|years ago|as a (?:child|kid)|l anno scorso|nel (?:19|20)\\d\\d|(?:\\w+ ){1,2}(?:anni|mesi) fa|da (?:bambin[oa]|piccol[oa]))|' +
      '(?:survived|recovering from|recovered from|surviving) (?:his |her |a |the |my |an )*(?:heart attack|stroke|overdose|anaphyla\\w+|coma)',
  ),
  calm(
    'blind(?= (?:.* )?(?:braille|print|labels?|read|reads|guide|stick|birth|registered|etichett\\w+) )|(?:registered|partially|born|legally) blind|blind (?:from|since) birth|(?:e )?(?:non vedente|ciec[oa])(?= (?:.* )?(?:braille|etichett\\w+|leggere|nascita) )',
  ),
  calm(
    '(?:gets?|comes? (?:out|up) in|breaks? out in) (?:\\w+ )?(?:hives|rash|swollen (?:lips?|tongue|face|eyes)|itchy (?:mouth|lips)) (?:from|if|when|whenever|with)(?! the)|' +
      '(?:gets?|comes? out in) (?:\\w+ )?hives (?:if|when|whenever)',
  ),
  coughedOver(`(?<= (?:${SPICED}) .*)(?:${COUGHED})|(?:${COUGHED})(?= (?:.* )?(?:${SPICED}) )`),
  calm(
    'bee ?hives?|(?:keeps?|kept) (?:\\w+ )?hives|(?:from|out of|off|in) (?:my|our|the|his|her|own|a) (?:\\w+ )?hives?|(?<= (?:honey|bees?|miele) .*)(?<!(?: in| with| got| has| have| itchy| of) )hives|(?<!(?: in| with| got| has| have| itchy| of) )hives?(?= (?:.* )?(?:honey|bees?) )|(?:gets?|suffers? from|prone to) (?:\\w+ )?palpitations',
  ),
  // What a vessel held.
  calm(
    '(?:had|has|held|contained) (?:white spirits?|bleach|turps|turpentine|paraffin|petrol|meths|cleaner|detergent|descaler) in (?:it|them|there)(?: once| before)?',
  ),
  // Years ago.
  'used to drink(?: (?:too much|a lot|heavily|far too much|like a fish))?',
  calm('(?:take|takes) (?:\\w+ ){0,2}(?:medicines?|medication|tablets|pills?) (?:every|each|daily|regularly|for)'),
]
