import { plainWords } from '../../../core/spelling/normalise-name.ts'
import { termOf } from './same-words.ts'

/** Words of gardens, of other kitchens, of brewing, cleaning, bars and cellars: a sentence with one is mostly of that. From memory. */
const WORDS =
  'prune pruning sow sowing seedling seedlings lawn mulch weed weeding bindweed slug slugs snails aphids greenfly blight greenhouse ' +
  'canes netting transplant repot plot allotments soil fertiliser manure tomatoes courgettes leeks lettuce potatoes onions carrots ' +
  'potare pota poto seminare semino trapiantare concime orto prato lumache afidi pomodori zucchine insalata patate annaffiare ' +
  'hops hop wort malt ale lager stout bitter brew brewing homebrew priming mead cider lees campden airlock carboy demijohns scoby kombucha ' +
  'kefir birra luppolo malto mosto cerveza ' +
  'carpet oven sink bleach toilet curtains laundry tablecloth moss patio windows tovaglia forno lavello candeggina tappeto bucato ' +
  'jam marmalade chutney chutneys pickle pickles pickled gherkins brine sauerkraut sourdough dough bread pizza pasta lasagne pesto soup ' +
  'meringues meringue curd roast lamb beef chicken fish risotto sauce marmellata marmellate confettura conserve sottaceti sottaceto ' +
  'cetriolini salamoia olive lievitare impasto arrosto sugo minestra pesce cena salsa ' +
  'martini negroni mojito mojitos manhattan margarita daiquiri spritz shaken stirred bartender ' +
  'rioja chablis burgundy bordeaux barolo chianti merlot chardonnay claret champagne sommelier vintage'

/** The terms of these. */
export const otherMatters: ReadonlySet<string> = new Set(plainWords(WORDS).map(termOf))
