/** What is asked, or told, of somebody who was harmed, once it is known whom to call. */
export const AIDS = [
  'make_sick',
  'sleep',
  'position',
  'shower',
  'coffee',
  'go_home',
  'alone',
  'walk_about',
  'water_or_food',
  'sober_up',
  'when_to_call',
  'being_sick',
  'snoring',
  'asleep',
  'can_wake',
  'breathes',
  'fine_now',
  'fire_out',
  'on_burn',
] as const

export type AidId = (typeof AIDS)[number]

/** Ways of asking or telling, each by what it comes to. Pieces of regular expressions over plain words. */
type AidWords = readonly (readonly [aid: AidId, says: string])[]

const WHOM = '(?:him|her|them|someone|somebody|(?:my|our|the|a|his|her) (?:\\w+ ){0,2}\\w+|one of them)'
const WHO =
  '(?:he|she|they|i|we|anyone|somebody|someone|(?:my|our|the) (?:\\w+ )?(?!(?:jar|bottle|infusion|liqueur|peel|fruit)s? )\\w+)'
const MAY = '(?:can|could|should|may|must|shall|would|will|let|do|does|is|are|ok|okay|safe|better|need|needs|have|has)'

/** What is asked in words that ask for nothing else, whoever it is of; the states that are only told stand last. */
export const askedWords: AidWords = [
  [
    'make_sick',
    `(?:make|making|get|getting|let) ${WHOM} (?:be |to be |to )?(?:sick|vomit|throw up|puke|bring it (?:back )?up)|induc\\w+ (?:vomiting|it)|bring on vomiting|fingers? down (?:his|her|their|the|my) throat|salt ?water|(?:far(?:lo|la|gli|le)|fargli|farle|faccio) (?:\\w+ )?vomitare|due dita in gola|acqua e sale`,
  ],
  [
    'sleep',
    `(?:sleep|sleeps|sleeping|slept) (?:(?:it|this|that|things) )?(?:all )?off|(?:let|leave|put|get|send|letting|putting) ${WHOM} (?:\\w+ )?(?:(?:go )?to )?(?:sleep|sleeping|bed|asleep|nap|rest)|(?:safe|ok|okay|alright|all right|fine|allowed|dangerous|bad|wise) (?:(?:for|if) ${WHOM} )?(?:to )?(?:\\w+ )?(?:sleep|sleeps|go to bed|nap)|${MAY} ${WHO} (?:(?:just|now|go|to|be|safely|still) ){0,3}(?:sleep|asleep|nap|bed)|(?:safe|ok) asleep|(?:goes|falls|falling|drops) (?:to sleep|asleep|off)|(?:wants?|going|trying|needs?|gone|went) (?:to )?(?:go )?(?:to )?(?:sleep|bed)|(?:should|do|must|can) (?:i|we) (?:(?:have|need|try|keep) )?(?:to )?(?:wake|waking) ${WHOM}|keep(?:ing)? ${WHOM} awake|` +
      '(?:smaltir\\w*|passare|passarla) dormendo|dormirci su|(?:lascio|lasci\\w+|faccio|far\\w*|metto|mett\\w+) (?:\\w+ ){0,2}(?:dormir\\w*|a dormire|a letto|riposare)|(?:puo|posso|vuole|deve) (?:\\w+ )?(?:andare a )?(?:dormire|letto)|(?:svegliarl[oa]|tener\\w* svegli[oa])',
  ],
  [
    'position',
    '(?:on|onto|upon) (?:his|her|their|the|my|one|a) (?:left |right )?(?:back|front|side|stomach|tummy|belly)|recovery position|(?:which|what) (?:side|position)|(?:how|should|can|could) (?:i|we|he|she|they) (?:lie|lay|position|prop|turn|roll)|(?:lie|lying|lay|laying) (?:(?:him|her|them) )?(?:flat|down)|sit (?:him|her|them) up|sulla schiena|supin[oa]|(?:di|sul|su un|sul suo) fianco|a pancia in (?:su|giu)|(?:sdrai|stend|coric|gir)(?:o|arl[oa]|erl[oa]|are|ere|arsi|ersi)|posizione (?:laterale|di sicurezza)',
  ],
  [
    'shower',
    '(?<! baby )(?:shower|showers|showering)|(?:cold|hot|warm|ice|a|the) (?:bath|bathtub|tub)|cold water (?:on|over|in)|(?:splash|pour|throw)\\w* (?:\\w+ ){0,2}(?:cold )?water (?:on|over|in)|doccia|(?:bagno|un bagno) (?:freddo|caldo)|acqua fredda',
  ],
  [
    'coffee',
    '(?:coffee|coffees|espresso|caffeine|energy drinks?|red bull|strong tea)(?! (?:liqueurs?|liquor|beans?|jars?|batch|bottles?|vodka|spirit|rum|infusion))|(?<!(?:di|al|del) )caff?e(?! (?:in grani|macinato))|hair of the dog|another drink',
  ],
  [
    'go_home',
    `(?:go|goes|going|get|gets|getting|walk|walks|walking|drive|drives|driving|drove|cycle|cycling|ride|riding|head|heading|send|sending|take|taking|on (?:his|her|their|my) way|way) (?:(?:${WHOM}|straight|back|off) ){0,2}home|(?:wants?|trying|insists?|going|ok|okay|safe|fit|able|${MAY} ${WHO}) (?:on )?(?:to )?(?:driv(?:e|ing)|cycl(?:e|ing)|leave|leaving|walk off)(?! (?:him|her|them|the|my|it))|(?:hell|shell|he will|she will|hes|shes|he is|she is|they will|theyll) (?:\\w+ )?(?:driv(?:e|ing)|cycl(?:e|ing))|(?:a|in a|by|call) (?:taxi|cab|uber)|(?:tornare|torna|andare|vada|va|andarsene|mandarl[oa]|portarl[oa]|tornarsene) a casa|(?:vuole|puo|lascio|posso) (?:\\w+ )?(?:guidare|andarsene|andar via)`,
  ],
  [
    'alone',
    `(?:leave|leaving|left) (?:${WHOM} )(?:\\w+ ){0,3}?(?:alone|here|there|unattended|with|for|by|on)|(?:leave|leaving|left) (?:him|her|them)(?= [.,]|$| now| and| or| to)|(?:be|stay|being|is|hes|shes|ok|safe|sleep|left) (?:left )?alone|on (?:his|her|their) own|by (?:himself|herself|themselves)|(?:can|should|do|must|could) (?:i|we) (?:(?:have|need|now|just) ){0,2}(?:to )?(?:stay|leave|go (?:home|out|to (?:bed|work|sleep))|keep (?:watching|checking|an eye))|(?:lasciarl[oa]|lascio|resta\\w*|stare|rimane\\w*) (?:\\w+ ){0,2}(?:da )?sol[oa]`,
  ],
  [
    'walk_about',
    `(?:walk|walking|run) (?:${WHOM} )?(?:it off|(?:around|about|round|up and down))|fresh air|(?:keep|get) ${WHOM} (?:moving|walking|on (?:his|her|their) feet)|(?:take|get|bring) ${WHOM} outside|exercise|slap ${WHOM}|(?:far\\w*|faccio) (?:\\w+ )?camminare|camminare un po|aria fresca|prendere aria`,
  ],
  [
    'water_or_food',
    `(?:give|giving|feed|offer|get|make|let|${MAY} ${WHO}) (?:(?:${WHOM}|have|eat|drink|some|a|any|more|lots|of|glass|bit|to|take|something) ){0,6}(?:water|food|eat|drink|bread|toast|milk|sugar|juice|paracetamol|ibuprofen|aspirin|painkillers?|tablets?|pills?|medicine|charcoal)|(?:eat|eating) something|does (?:water|food|eating|bread|milk|charcoal|sugar) help|(?:dar(?:gli|le)|do|dare|diamo|gli do|le do|mangiare|bere|bere un po) (?:\\w+ ){0,3}(?:acqua|cibo|pane|latte|da mangiare|da bere|qualcosa|zucchero|tachipirina|aspirina)`,
  ],
  [
    'sober_up',
    `sober(?:s|ed|ing)? (?:${WHOM} )?(?:\\w+ )?up|(?:get|make|be|becomes?) (?:${WHOM} )?sober|(?:out of|from|clear) (?:his|her|their|the|my) (?:system|blood|body)|how long (?:\\w+ ){0,6}(?:sober|drunk|wear off|wears off|pass|passes|last|lasts)|(?:wear|wears) off|(?:passare|smaltir\\w*|smaltisc\\w*) (?:\\w+ ){0,2}(?:sbornia|sbronza|ubriacatura|alcol|alcool)|far(?:gli|le) passare|tornare sobri[oa]|sobri[oa]`,
  ],
  [
    'when_to_call',
    '(?:should|do|must|when|shall|can) (?:\\w+ ){0,4}(?:call|ring|phone|get|take|need|dial|go to) (?:\\w+ ){0,4}(?:ambulance|999|112|911|111|doctor|hospital|help|someone|somebody|emergency|a and e|er)|(?:devo|dobbiamo|quando|posso) (?:\\w+ ){0,2}(?:chiamare|chiamo|portarl[oa]|andare) (?:\\w+ ){0,3}(?:ambulanza|112|118|medico|dottore|ospedale|pronto soccorso)|(?:is|are) (?:he|she|they|this|it|that) (?:\\w+ )?(?:in danger|dangerous|serious|going to be (?:ok|okay|all ?right|fine)|gonna be (?:ok|fine))|(?:will|would) (?:he|she|they) be (?:ok|okay|all ?right|fine)',
  ],
]

export const toldWords: AidWords = [
  [
    'being_sick',
    '(?:keeps?|kept|still|been|started|starts|being|getting|gets|got|feels?|feeling|going to be|gonna be|about to be|was|is|hes|shes|theyre|very|so|really) (?:(?:being|getting|going|to|be|so|very|been) ){0,2}sick(?! (?:of|and tired))|(?:vomit|puk|retch)\\w*|(?:throw\\w*|threw|bringing) (?:it |everything )?up|vomita\\w*|(?:rimett|rigett)\\w+',
  ],
  [
    'can_wake',
    '(?:can|could|do|did|managed to|able to|just|i|we) (?:(?:just|still|easily|always|did|have|ve) )?(?:wake|woke|woken|rouse|roused) (?:him|her|them|(?:my|our|the) \\w+)(?: up)?|(?:wakes?|stirs?|rouses?|stirring|responds?|reacts?|answers?|mumbles?|groans?|grunts?|talks?|speaks?|moans?)(?: up)?(?: (?:to|at|a bit|back))? (?:when|if|whenever|every time|each time|after) (?:i|we|you|someone|somebody|he|she|they|hes|shes|poked|shaken|called|spoken)|(?:opens?|opened|opening) (?:his|her|their) eyes|(?:responds?|responding|responded|reacts?|reacting|answers?|answered|answering|talks?|talking|talked|speaks?|speaking|spoke) (?:(?:back|again|normally|now) )*(?:to )?(?:me|us)|(?:is|are|hes|shes|theyre) (?:\\w+ )?(?:responsive|rousable|responding|conscious)|(?:squeez\\w+|tak(?:es|ing)|took) (?:my|our) hand|' +
      '(?:riesco|riusciamo|riuscit[oa]|siamo riusciti) (?:a )?(?:svegli|risvegli|far)\\w+|(?:lo|la|li|l) (?:ho |abbiamo |posso )?svegli\\w+|si (?:ri)?sveglia(?:no)? (?:se|quando|appena)|(?:apre|ha aperto|aprono) gli occhi|(?:mi|ci) (?:risponde|parla|ha rispost[oa])(?:no)?|reagisce|e cosciente',
  ],
  [
    'breathes',
    '(?:breath(?:e|es|ing|ed)|breath) (?:(?:is|seems|looks|sounds|just|quite|all|perfectly|absolutely|very|pretty) )*(?:fine|ok|okay|normal(?:ly)?|well|alright|right|regular(?:ly)?|steady|steadily|even(?:ly)?|calm(?:ly)?|good|deep(?:ly)?)|(?:is|are|hes|shes|theyre|still) (?:still )?breathing(?= (?:[.,]|and|but|though|now|just)|$)|respir(?:a|ano|ando|o) (?:(?:molto|abbastanza|del tutto) )*(?:bene|normalmente|regolarmente|tranquill\\w+|regolare|normale)',
  ],
  [
    'asleep',
    '(?:asleep|sleeping|sleeps|dozing|dozed off|nodded off|dropped off|out of it|eyes (?:are )?(?:shut|closed)|dorm(?:e|ono)|dormendo|addormentat[oaie])',
  ],
  ['snoring', 'snor\\w+|russ(?:a|are|ando|ava)(?: \\w+)?'],
  [
    'fine_now',
    '(?:hes|shes|he is|she is|they are|theyre|im|i am|he|she|feels?|feeling|seems?|looks?|doing|is|all|much) (?:(?:a|bit|much|all|now|quite|is|seems?|looks?|feels?|doing|so|still|to|be|back|feeling|again|totally|completely|perfectly) ){0,4}(?:fine|ok|okay|better|alright|all right|good now|well again|awake|sober|(?:to )?normal|(?:himself|herself) again)|(?:woke|woken) up(?: \\w+)?|came (?:round|to)|come round|(?:talking|walking|up) (?:and \\w+ )?(?:again|normally|now|about)|recovered|got better|(?:sta|si sente|mi sento) (?:(?:gia|ora|adesso|molto|un po|di nuovo) ){0,2}(?:bene|meglio)|si e (?:ripres[oa]|svegliat[oa])|adesso sta bene',
  ],
]

/** Of a fire or a burn: that it is out, and what to put on it. */
export const fireWords: AidWords = [
  [
    'on_burn',
    '(?:butter|toothpaste|ice|icepack|frozen|honey|egg white|vinegar|aloe|creams?|ointment|oil|vaseline|potato|flour|burro|dentifricio|ghiaccio|miele|pomata|crema|olio|aloe)|(?:pop|burst|prick|open|break)\\w* (?:\\w+ ){0,2}blisters?|bucar\\w* (?:\\w+ ){0,2}(?:bolle|vescic\\w+)|(?:blister\\w*|vescic\\w+|boll[ae])|how long (?:\\w+ ){0,5}(?:water|cool|tap|under)|(?:cover|bandage|wrap|plaster|cling film|fasciar\\w*|coprir\\w*|bendar\\w*)',
  ],
  [
    'fire_out',
    '(?:is|its|are|were|was|theyre|went|gone|flames?|fire|all|now|got|put|blew|blown|stamped|smothered|patted|he|she) (?:(?:it|them|that|the|all|is|are|went|now|flames?|fire|both) ){0,3}out|(?:fire|flames?) (?:is |are |have |has )?(?:gone|over|died|dead|stopped)|extinguish(?:ed)?|under control|singe[ds]?|singeing|scorched|(?:only|just) (?:\\w+ ){0,4}(?:sleeve|hair|clothes|jumper|shirt|eyebrows?|fringe|apron|cuff|towel|tablecloth|curtains?)|(?:no|not|nobody|no one|noone|arent|isnt|wasnt) (?:\\w+ ){0,3}(?:burnt|burned|burns?|hurt|injured)|(?:skin|arm|hand|wrist|finger|its|it is|bit) (?:\\w+ ){0,2}(?:red|sore|pink|tender)|(?:hes|shes|theyre|everyones?|im|were) (?:\\w+ )?(?:fine|ok|okay|alright|all right)|(?:si e |e |abbiamo |ho |l ho |e stato )?(?:spent[oaie]|spegnut[oaie])|bruciacchiat\\w+|strinat\\w+|nessuno (?:si e )?(?:fatto male|bruciato)|sta bene',
  ],
]
