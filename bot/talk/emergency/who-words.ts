/** Who may have been harmed, as they are called. Pieces of regular expressions over plain words. */
export const whoWords = {
  /** Nobody would take them for grown up. */
  young: [
    'kid|kids|kiddo|kiddos|child|children|childs|childrens|baby|babies|babys|toddlers?|infants?|newborn|bub|bubba|bairn|wean',
    'little (?:one|ones|boy|girl|guy|man|lad|brother|sister|bro|sis|cousin|son|daughter|nephew|niece)|wee (?:one|boy|girl|lad|man|lass)|sippy cup|high chair|nappy|nappies|diapers?|pupils?|school ?kids|school ?children|little (?!bit|by|more|less|too|of|while|later|longer|water|sugar|sweet|bitter|strong|weak|orange|lemon|cloud\\w*|jar|bottle|time|help|trick|glass|sip|experiment|batch)(?=\\w+ (?:drank|ate|swallowed|has|had|got|is|was|licked))|youngest|grandbaby|tot|schoolboy|schoolgirl|preschooler|twins',
    'grand(?:kid|kids|child|children)',
    '(?:[1-9]|1[0-7]|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen) ?(?:yo|y o|yr|yrs|year|years) ?olds?(?! (?:brandy|rum|whisk|cognac|grappa|port|sherry|jar|bottle|batch|liqueur|limoncello|gin|vinegar|vodka|tree|bush))',
    '(?:[1-9]|1[0-7]) (?:yo|y o|yr|yrs)(?! (?:brandy|rum|whisk|cognac|grappa|jar|bottle|batch|liqueur))',
    '(?:hes|shes|only|aged?|he is|she is|who is|whos|they are|theyre|ha|hanno|ha solo) (?:only |just |nearly |almost )?(?:[1-9]|1[0-7]|two|three|four|five|six|seven|eight|nine|ten)(?! (?:percent|days?|weeks?|l|litres?|liters?|ml|cl|g|kg|degrees|jars?|bottles?|stars?|out|of|to|or|x|hours?|minutes?|lemons?|am|pm|parts?|giorni|settimane|litri|limoni|gradi|barattoli|bottiglie|p|\\d))',
    '(?:[1-9]|[1-3]\\d) ?(?:months?|mth|mths|weeks?|wk|wks) olds?(?! (?:jar|bottle|batch|liqueur|limoncello|infusion|syrup))',
    '(?:hes|shes|is|only|aged?|just) (?:[1-9]|[1-3]\\d) (?:months?|mth|mths|mo|weeks?)(?! (?:in|into|ago|away|left|long|late|early|more|now) )|, (?:[1-9]|1[0-7]) ,(?= (?:has|had|is|drank|swallowed|ate|got|was|just|might))|(?:ha|hanno|di|solo) (?:solo )?(?:[1-9]|1[0-7]|un|due|tre|quattro|cinque|sei|sette|otto|nove|dieci) (?:anni|anno|mesi|mese)(?! (?:fa|di|che|e mezzo in))',
    'bimb[oaei]|bambin[oaei]|neonat[oaie]|lattante|piccolin[oaie]|nipotin[oaie]|ragazzin[oaei]|pup[oa]|bebe|creatura|fratellino|sorellina|cuginett[oa]|gemellin[ie]|marmocchi[oa]?|figlioletto|figlioletta',
    '(?:il|la|mio|mia|del|della|al|alla) (?:mio |mia |nostro |nostra |piu )?piccol[oa](?= (?:ha|si|e|sta|non|mi|ce|pero|di|[.,]|$))',
    'di (?:[1-9]|1[0-7]|un|due|tre|quattro|cinque|sei|sette|otto|nove|dieci) (?:ann[oi]|mes[ei])(?= (?:ha|si|e|sta|non|mi|ce|[.,]))',
  ],
  /** Of any age. */
  grown: [
    '(?:my|our) sun(?= (?:drank|ate|swallowed|has|had|is|got|wont|cant))|sons?|daughters?|dtr|grandsons?|granddaughters?|godson|goddaughter|stepson|stepdaughter|nephews?|nieces?|boys?|girls?|lads?|teens?|teenagers?|eldest|oldest',
    'figli[oa]?|figlie|nipot[ei]|ragazz[oaei]|figliastr[oa]',
  ],
  adult: [
    'wife|wifes|wifey|husband|husbands|hubby|hubbys|partner|boyfriend|girlfriend|gf|bf|fiancee?|friends?|mates?|pal|mum|mums|mom|moms|mummy|mommy|mam|mother|mothers|dad|dads|daddy|father|fathers|in law',
    'gran|grans|granny|grandma|grandmas|grandmother|nan|nana|nanny|grandpa|grandad|granddad|grandfather|gramps|auntie?|aunts?|uncles?|cousins?|brothers?|bro|sisters?|sis|neighbou?rs?|colleagues?|coworker|flatmates?|roommates?|housemates?|guests?|visitors?|tenant',
    'someone|somebody|someones|anyone|anybody|everyone|everybody|people|person|persons|man|men|woman|women|guys?|lady|ladies|bloke|fella|gentleman|boss|student|old (?:man|lady|woman)|customer|helper|postman',
    'moglie|marito|compagn[oa]|fidanzat[oa]|amic[oaih]|amiche|mamma|mama|papa|babbo|madre|padre|genitori|nonn[oaie]|suocer[oaie]|zi[oa]|zii|fratell[oi]|sorell[ae]|cugin[oaie]|cognat[oaie]|vicin[oa] di casa|(?:il|la|mio|mia|nostro|nostra) vicin[oa]|coinquilin[oaie]|collegh?[aie]|ospit[ei]|invitat[oaie]|qualcuno|qualcuna|tutti|persone?|uomo|uomini|donn[ae]|signor[ae]?|tizio|ragazz[oa]',
  ],
  pronoun: [
    'he|she|hes|shes|hed|(?<! (?:the|a|my|our|his|her|their|your|in|of|garden|tool|tools|potting|bike|wood|mens|allotment|goat|cow|hen) )shed|her|his|him|lui|lei|glielo|lha|ha|e stat[oa]',
  ],
  them: ['they|theyre|theyve|them|their|one of (?:us|them|the (?:guests|kids))|loro|gli'],
  self: [
    'i|im|ive|id|ill|me|my|myself|we|weve|were all|us|our|you|both of us|all of us|io|mi|mio|mia|noi|ho|abbiamo|siamo|sto|stiamo',
  ],
  animal: [
    'dogs?|doggo|doggos|doggy|doggie|puppy|puppies|pupper|pups?|hounds?|labrador|(?:my|our|old|black|chocolate|yellow|golden) lab|westie|corgi|pug|husky|cockapoo|cavapoo|whippet|staffie|jack russell|great dane|yorkie|rottweiler|german shepherd|dalmatian|mastiff|lurcher|doodle|labradoodle|cavalier|pointer|weimaraner|maltese|pekingese|pomeranian|bichon|bloodhound|bulldog|sheepdog|deerhound|wolfhound|malinois|akita|samoyed|rottie|cocker|springer|schnauzer|setter|tabby|siamese|tomcat|moggie|spaniel|terrier|retriever|collie|beagle|poodle|dachshund|greyhound|alsatian|chihuahua|cats?|kitten|kittens|kitty|kitties|kittie|rabbits?|bunny|bunnies|hamsters?|guinea ?pigs?|guineapigs?|gerbils?|ferrets?|parrots?|budgies?|budgerigar|parakeet|canary|cockatiel|cockatoo|birds?|hens?|chickens?|rooster|cockerel|chooks?|ducks?|goose|geese|turkey|goats?|sheep|lambs?|pony|ponies|horses?|foal|mare|donkeys?|cows?|calf|calves|pigs?|piglets?|tortoise|turtle|pets?|animals?|hedgehog|llama|alpaca|mutt|pooch|moggy|alpacas|ewe|ewes|ram|heifer|bull|stallion|gelding|quail|peacock|parakeets|lovebird|chinchilla|degu|gecko|iguana|koi|goldfish|rats?|pigeons?|doves?|crows?|squirrels?|fox|foxes|badgers?|swans?|pheasants?|peacocks?|livestock|cattle|magpies?|robins?',
    'can[ei]|cagn(?:a|olino|olina|etto|etta|olini)|cagnon[ei]|barboncino|gatt[oaie]|gattin[oaie]|mici[oa]|micin[oa]|conigli[oae]?|conigliett[oi]|pappagall[oi]|pappagallin[oi]|uccell[oi]|uccellin[oi]|cricet[oi]|cavi[ae]|porcellin[oi]|furett[oi]|tartarug[ae]|cavall[oaie]|ponys?|asin[oaie]|capr[ae]|caprett[ae]|pecor[ae]|agnell[oi]|gallin[ae]|pulcin[oi]|paper[ae]|anatr[ae]|oc[ah]e?|maial[ei]|maialin[oi]|mucc[ah]e?|vitell[oi]|cucciol[oaie]|canarin[oi]|animal[ei]|besti[ae]|bestiol[ae]',
  ],
} as const

export type WhoKind = keyof typeof whoWords
