/** What was swallowed and how, and what tells that all is well; pieces of regular expressions over plain words. */
export const deedWords = {
  /** Drunk or eaten; done, or being done now. */
  swallowed: [
    'drank|dranked|drunk|drunked|drinked|drinken|dronk|drinking|swallow(?:ed|ing)|ate|eaten|eated|eating|lick(?:ed|ing)|lapped|lapping|gulp(?:ed|ing)|guzzl(?:ed|ing)|slurp(?:ed|ing)|swig(?:ged|ging)?|down(?:ed|ing)|neck(?:ed|ing)|chug(?:ged|ging)?|sipp?(?:ed|ing)|suck(?:ed|ing)|chew(?:ed|ing)|nibbl(?:ed|ing)|munch(?:ed|ing)|gobbl(?:ed|ing)|scoff(?:ed|ing)|scarf(?:ed|ing)|devour(?:ed|ing)|wolf(?:ed|ing)|bit(?:ten)? (?:into|on|through)|ingest(?:ed|ing)|consumed|finished off|polished off|knocked back|tipped back|put away|quaff(?:ed|ing)|pecked|pecking|crunch(?:ed|ing)|snaffled|wolfed|hoovered|demolished|slugged|glugg(?:ed|ing)|swill(?:ed|ing)|gnaw(?:ed|ing)|mouthing|drained the|got drunk on|drunk on',
    '(?:had|has had|having|took|taken|taking|tak(?:en|ing)|snuck|stole|sneaked|grabbed|got|have had|just had) (?:(?:\\d\\d+|a|an|some|several|few|the|most|half|all|whole|big|little|small|tiny|good|huge|quick|couple|of|two|three|four|much|bit|too|sneaky|large|his|her) ){0,5}(?:sip|sips|mouthful|mouthfuls|gulp|gulps|swig|swigs|slug|drink|drinks|lick|licks|taste|swallow|nibble|bite|bites|shots?|litres?|liters?|pints?|tumblers?|cans?|drops?|spoon ?fuls?|tea ?spoons?|tea ?spoon ?fuls?|table ?spoons?|spoons?|glass(?:es|ful)?|cup(?:s|ful)?|handfuls?|mugs?|bowls?|jugs?|flasks?|samples?|half (?:a |the )?\\w+|of it|of the (?:jar|liqueur|spirit|alcohol|limoncello|vodka|stuff|bottle|fruit|cherries|peel)|from the (?:jar|bottle|glass))',
    '(?:been|was|were) (?:at|into|in|on) (?:the|my|our|some|that) (?:\\w+ )?(?:jars?|bottles?|spirits?|alcohol|liqueur|limoncello|vodka|gin|rum|brandy|grappa|booze|drink|nocino|cherries|plums|fruit|\\w+cello)',
    '(?:in|into|to|from|out of) (?:his|her|its|their) (?:little )?(?:mouth|gob|lips)|(?:mouth|breath) (?:(?:of|and|that|is|s) )?(?:smells?|smelling|reeks|stinks|full)|(?<! (?:the|that|a|this|its) )(?:smells?|smelling|reeks?|stinks?) (?:\\w+ )?(?:of|like) (?:\\w+ )?(?:alcohol|spirits?|booze|liqueur|vodka|drink|gin|rum|limoncello|brandy|grappa)|(?:put|puts|got|has|had|with|stuff\\w*|sticking|stuck|shov\\w+|popped) (?:\\w+ ){0,6}in (?:the |a )?mouths?|mouth ?ful|mouth full of|fed (?:him|her|the|my|it|our)|gave (?:\\w+ ){1,4}(?:drink|sip|taste|some|it|to drink|shot)|(?:been|was|got|were) (?:given|fed) (?:\\w+ ){0,3}(?:drink|sip|it|alcohol|spirit|some|liqueur|vodka|limoncello)',
    'bevut[oaie]|bev(?:e|eva|endo|ve|uto)|ingoiat[oaie]|ingo[ij]a(?:ndo)?|inghiott\\w+|ingerit[oaie]|mangiat[oaie]|mangia(?:ndo|va)|leccat[oaie]|lecca(?:ndo|va)?|lappat[oaie]|sorseggiat[oaie]|assaggiat[oaie]|succhiat[oaie]|succhia(?:ndo|va)?|masticat[oaie]|mastica(?:ndo|va)?|morsicat[oaie]|morso|mors[oi]|addentat[oaie]|rosicchiat[oaie]|trangugiat[oaie]|tracannat[oaie]|divorat[oaie]|mandat[oaie] giu|buttat[oaie] giu|(?:mess[oaie]|infilat[oaie]) (?:\\w+ ){0,3}(?:in|alla) bocca|(?:un|due|tre|qualche|un bel|alcuni) (?:sors[oi]|goccio|goccetto)|pappat[oaie]|sbafat[oaie]|(?:puzza|sa|odora) (?:\\w+ ){0,2}(?:di|d) (?:alcol|alcool|liquore|grappa|vodka|spirito)|(?:dat[oaie]) (?:da bere|un sorso)|becchettat[oaie]',
  ],
  /** Swallowed beyond doubt, and not as at table. */
  gulped: ['swallow(?:ed|ing)|ingest(?:ed|ing)|gulp(?:ed|ing)|ingoiat[oaie]|ingerit[oaie]|inghiottit[oaie]'],
  /** Had some of it, or used it up; said with what nobody may drink. */
  partaken: [
    '(?:had|have had|has had|tried|tasted|sampled|shared|serv(?:ed|ing)|finished) (?:\\w+ ){0,3}(?:some|it|glass(?:es)?|sips?|tastes?|few|little|bit|one|two|three|drinks?|most|half|all)|assaggiat[oaie]|provat[oaie]',
  ],
  /** Got at, so that it may have been swallowed; said of a child or an animal. */
  gotAt: [
    '(?:got|get|gotten|getting|gets|broke|broken|dug|dived|raided|climbed|went) (?:(?:right|himself|herself|itself|his|her|their|little|a|paws?|hands?|hold|head) ){0,3}(?:in|into|in to|at|of|hold of|to|on|onto|inside) (?:(?:the|my|our|a|some|that|this|his|her|its|those|one of the|one of my|all|all the|of|jar of|bottle of|bowl of) ){0,3}(?!(?:bed|sleep|school|hospital|work|bath|car|university|uni|college|liqueurs?|making|brewing|it as|home ?brew|trouble|a? ?fight|arguing|cooking|foraging|distilling|know|help|know|like|taste|try|the (?:garden|kitchen|table|car|shop|party|fair|door|phone|show|pub|shed))\\b)(?:\\w+ )?(?:jars?|bottles?|glass(?:es)?|mugs?|jugs?|tumblers?|it|spirit|spirits|alcohol|liqueur|limoncello|vodka|gin|rum|brandy|grappa|infusion|fruit|peels?|cherries|berries|plums|sloes|stuff|cupboard|cabinet|pantry|raisins|chocolate|beans|booze|drink|drinks|compost|bin|trash|nocino|punch|meths|antifreeze|cleaner|seeds|stones|leaves|plant|plants|grapes|lemons?|macerated|spent|soaked|\\w+ello)',
    'tasted|tried (?:some|a (?:bit|sip|little))|(?:finished|emptied|drained) (?:it|the lot|them|off)|(?:spoon |bottle )?fed (?:\\w+ ){0,3}(?:spirits?|alcohol|liqueur|limoncello|vodka|gin|rum|brandy|grappa|booze|it|some)|dipped (?:\\w+ ){0,3}(?:finger|dummy|pacifier)|poured (?:himself|herself|themselves)',
    'fell (?:in|into) (?:\\w+ ){0,3}(?:jar|spirit|alcohol|liqueur|vodka|demijohn|bowl|bucket|vat|infusion)',
    '(?:help(?:ed|ing) (?:himself|herself|itself|themselves)|emptied|drained|finished|cleaned out|had a go at|playing with|played with|holding|found (?:with|holding|beside|next to|sitting)|caught (?:with|holding)|opened|tipped (?:over|up)|spilled|stole|grabbed|took|taken|sneaked|snuck) (?:\\w+ ){0,4}(?:jars?|bottles?|spirit|alcohol|liqueur|limoncello|vodka|gin|rum|brandy|grappa|infusion|glass|drink|drinks|punch|cherries|booze|meths|antifreeze|leftovers|dregs|steeped|soaked|strained|spent|macerated|boozy|drunken)|(?:jar|bottle|glass) (?:is|was|s) (?:\\w+ )?(?:empty|open|half empty|in (?:his|her))',
    '(?:aperto|preso|trovato|rubato|finito|svuotato|rovesciato|giocato con|scolat[oa]) (?:\\w+ ){0,3}(?:barattol[oi]|vas[oi]|vasett[oi]|bottigli[ae]|alcol|alcool|liquore|limoncello|grappa|vodka|spirito|bicchiere|infuso|ciliegie|bucce|frutta|nocino)|(?:barattolo|bottiglia|bicchiere) (?:in mano|vuot[oa]|apert[oa])|si e (?:attaccat[oa]|scolat[oa]|fatt[oa] fuori)',
  ],
  /** Given by somebody; said of a child or an animal. */
  given: [
    `(?:gave|fed|feeding|given|slipped|spoon ?fed) (?!(?:\\w+ ){0,6}(?:to (?:carry|hold|take|pass|hand|give|deliver|stir|shake)|a shake)\\b)(?:\\w+ ){1,6}(?:boozy|drunken|(?:spirit|gin|vodka|rum|brandy) soaked|soaked in (?:gin|vodka|rum|brandy|spirit|alcohol)|(?:spent|strained|steeped|macerated) (?:fruit|cherries|plums|sloes|berries|peaches|raspberries|oranges|peels?)|(?:sip|taste|drop|spoon ?ful|glass|cup|shot|bit|lick|some|little) (?:of )?(?:the |my |our |some )?(?:\\w+ )?(?:liqueur|gin|vodka|rum|brandy|limoncello|\\w+cello|nocino|grappa|spirit|alcohol|booze|whisk(?:y|ey)))|(?:gave|fed|given|slipped) (?:some|it|a (?:sip|taste|drop|spoon ?ful|lick|bit|glass)|the rest) to (?:the |my |our )?(?:toddlers?|bab(?:y|ies)|infants?|kids?|child|children|little ones?)(?! to \\w)`,
    '(?:dat[oaie]|fatto (?:mangiare|bere|assaggiare)) (?:\\w+ ){0,6}(?:sotto (?:spirito|alcol|alcool|grappa)|al liquore|alla grappa|ubriac[ah]e|macerat[aeio]|(?:sorso|goccio|goccetto|bicchierino|bicchiere|cucchiaino|cucchiaio|po) (?:di |d |del |della |dell )(?:\\w+ )?(?:limoncello|liquore|grappa|alcol|alcool|vodka|gin|rum|nocino|\\w+cello))(?: (?:al|allo|alla|ai|agli|alle|a) (?:mi[oaei]+ |nostr[oaie] )?\\w+)?',
  ],
  /** Got at; said of an animal. */
  raided: [
    '(?:got|had|stole|nicked|pinched) (?:the|my|our|some) (?:\\w+ ){0,2}(?:raisins|cherries|chocolates?|grapes|sloes|plums|fruit|peels?|stones|liqueur|limoncello|rum|vodka|gin|brandy)',
    '(?:got|gotten|gets|getting|broke|raided|dug|dived) (?:(?:right|itself|himself|herself|his|her|its|nose|head|hold) ){0,2}(?:in|into|in to|at|of) (?:the|my|our|a|some|that|those)(?! (?:\\w+ )?(?:box|bag|bed|car|garden|house|kitchen|shed|room|basket|sofa|way|habit|greenhouse|barn|field|boot|bath|drawer)\\b)',
  ],
  /** Had by a child. */
  had: [
    '(?:had|has|have|got|holding|with|found|nicked|pinched|poured) (?:\\w+ ){0,4}(?:brandy|vodka|gin|rum|alcohol|spirits?|liqueur|limoncello|booze|grappa|nocino|whisky|95|96)',
  ],
  /** Of a child or an animal: said of others as of a glass at table. */
  hadSome: [
    'had (?:some|any|a (?:sip|taste|swig|gulp|mouthful|lick|bit|few|drink|glass|shot)|one|two|three|four|five|several|loads|lots|half|most|all|the)(?= (?:of )?(?:\\w+ ){0,3}(?:brandy|vodka|gin|rum|alcohol|spirits?|liqueur|limoncello|booze|grappa|nocino|whisky|jars?|cherries|sloes|fruit) )',
  ],
  /** Eaten where it grows. */
  growing: [
    '(?:on|off|from|under) the (?:trees?|bush(?:es)?|vines?|plot)|in the (?:orchard|garden|field)|(?:my|the|our) (?:\\w+ )?(?:plants?|seedlings)|all (?:the|my|our) (?:basil|mint|herbs|lettuce)|before i (?:could|got)|this year|so no|what else|dell orto|sull albero|quest anno|niente liquore',
  ],
  /** It came after something. */
  since: ['fumes?|vapou?rs?|after|since|dopo|da quando|from (?:the|it|my|drinking|tasting)'],
  /** What was taken for something else. */
  mistaken: [
    'by (?:mistake|accident)|accident\\w*|mistook|thinking (?:it|that)|thought it was|mixed (?:it |them )?up|instead of (?:water|juice|the (?:water|juice|weak|diluted|finished|liqueur)|tea|his|her|my)|(?:per|x) (?:sbaglio|errore)|pensando|credendo|scambiat[oaie]|undiluted|non diluito',
  ],
  /** Supposed of a child or an animal. */
  supposed: [
    '(?:kill|harm|poison) (?:a|an|my|our|the|your) (?:\\w+ )?\\w+',
    '(?:what if|what happens (?:if|when)|what (?:do|should) (?:i|we) do (?:if|when)|if|in case|suppose|cosa succede se|cosa faccio se|e se|se) (?:\\w+ ){1,5}(?:drinks?|eats?|swallows?|licks?|ate|drank|swallowed|beve|mangia|ingoia|lecca|bevesse|mangiasse|ingoiasse|beva)',
  ],
  /** What a healthy table takes in. */
  harmless: [
    '(?:homework|lemonade|juice|orange juice|apple juice|milk|tea|cordial|squash|smoothie|water|hot chocolate|cakes?|cookies?|biscuits?|dinner|lunch|breakfast|supper|tea|pasta|pizza|ice cream|sandwich\\w*|bread|jam|marmalade|soup|candied peel|pudding|sweets|candy|pancakes?|cereal|sorbet|toast|crisps|pie|crumble|curry|burgers?|ginger beer|hay|grass|kibble|seed mix)',
    '(?:limonata|succo|spremuta|latte|acqua|torta|biscott[oi]|pranzo|cena|colazione|pasta|pizza|gelato|pane|marmellata|minestra|merenda|caramell[ae]|dolci|sciroppo d acero|fieno|erba)',
  ],
  /** What makes harmless things dangerous again. */
  strong: [
    '(?:jars?|bottles?|spirits?|alcohol\\w*|liqueurs?|limoncello|\\w+cello|9[0-7]|vodka|gin|rum|brandy|grappa|whisk(?:y|ey)|everclear|moonshine|infusion|macerat\\w+|booze|liquor|ethanol|neat|steep\\w*|soaked|spent|nocino|ratafia|schnapps|eggnog|cocktails?|punch|tincture)',
    '(?:barattol[oi]|vas[oi]|vasett[oi]|bottigli[ae]|alcol|alcool|alchol|liquor[ei]|spirito|infuso|macerat[oaie]|nocino|rosolio|amaro|mirto|sambuca|bitter|95|96|90)',
  ],
  /** So much, or so strong, that a grown person is in danger. */
  alarming: [
    '(?:from|out of|straight from|direct\\w* from) (?:\\w+ ){0,3}(?:jar|demijohn|carboy|still)|(?:whole|entire|full|all of|half|most of|two|three|nearly all|almost all) (?:(?:the|a|of|my|that|this|big|\\w+) ){0,3}(?:jars?|bottles?|litres?|liters?|pint|flask|demijohn)|(?:a|one|two|half|\\d+) (?:a |of )?(?:litres?|liters?|pints?)|undiluted|rectified|over ?proof|high proof|big gulp|for a (?:bet|dare)|pure (?:alcohol|spirit|ethanol)|(?:9\\d|8\\d|190|75) (?:percent|proof|degrees|abv|vol)|neat (?:spirit|alcohol)|(?:straight|neat|raw) (?:alcohol|spirit|ethanol)|by (?:mistake|accident)|accident\\w*|mistook|thinking it was|thought it was|instead of|way too much|dal (?:barattolo|vaso|bottiglione)|dalla damigiana|(?:tutt[oa]|intera?|intero|mezz[oa]|mezzo|due|tre) (?:(?:il|la|un|una|l|di|intera) ){0,2}(?:barattolo|vaso|bottigli[ae]|litr[oi]|bicchieroni|damigiana|liquore|fiasco|spirito|alcol|alcool)|alcol puro|alcool puro|(?:per|x) (?:sbaglio|errore)|pensando (?:che )?fosse|credendo (?:che )?fosse|scambiat[oaie]|troppo|(?:9\\d|8\\d) (?:gradi|percent)|non diluito',
  ],
  /** Somebody asks what to do, and is afraid. */
  alarm: [
    'help|emergency|urgent\\w*|asap|what (?:do|should|shall|can|must) (?:i|we|he|she|they) do|what to do|what now|wat do i do|should (?:i|we) (?:be worried|worry|call|ring|take|go|make|induce|panic|give|phone|get)|do (?:i|we) (?:need to )?(?:call|ring|go|take|need (?:a|to see))|is (?:that|this|it|he|she|they) (?:\\w+ )?(?:dangerous|serious|going to be (?:ok|okay|alright|fine)|gonna be|bad|in danger|poisonous|toxic|deadly|harmful|fatal)|(?:will|would) (?:he|she|they|it|my \\w+|the \\w+) (?:be (?:ok|okay|alright|all right|fine)|die|survive|get sick|make it)|(?:is|are|will) (?:i|we) (?:going to )?die|worried|scared|panic\\w*|frighten\\w*|terrified|omg|oh my god|oh no|oh god|hospital|doctor|a and e|is (?:it|that|this) ok|what now|poison\\w*|make (?:him|her|it|them) (?:sick|vomit|throw up)|induce vomiting|accident\\w*|by (?:mistake|accident)|quick(?:ly)? (?:please|what|help)|hurry|sos',
    'aiut\\w+|urgente|emergenza|cosa (?:devo |posso |si |dobbiamo |bisogna )?f(?:accio|are|acciamo|a)|che (?:devo |si |dobbiamo )?f(?:accio|are|acciamo|a)|come (?:devo )?f(?:accio|are)|(?:devo|dobbiamo) (?:chiamare|preoccupar\\w+|portar\\w+|andare|correre|far\\w+)|e (?:pericolos[oa]|grave|tossic[oa]|velenos[oa])|preoccupat[oa]|paura|panico|oddio|o dio|mio dio|ospedale|medico|dottore|velen\\w+|avvelen\\w+|(?:per|x) (?:sbaglio|errore)|subito|presto|farlo vomitare|farla vomitare',
  ],
  /** Told by somebody content. */
  content: [
    '(?:liked?|likes|loved?|loves|lovely|enjoy\\w*|ador\\w+|favou?rites?|prefer\\w*|best|better|delicious|yummy|tasty|scrumptious|gorgeous|amazing|brilliant|excellent|perfect|great|fantastic|good stuff|so good|really good|very good|was good|is good|pretty good|nice|thought (?:it was (?:nice|good|lovely|great|too)|that it)|asked for|asks for|asking for|wants? (?:more|another|some|the|me)|raved?|compliment\\w*|cheers|toast\\w*|wedding|birthday|anniversary|christmas|xmas|party|new year|celebrat\\w+|needs? (?:more|sugar|time|another|a bit|some|less)|bitter|sour|harsh|smooth|mild|so i (?:need|have|only|made|make|want|started|bought)|only have|can i use|too (?:sweet|bitter|strong|weak|dry|sour|sharp)|not (?:sweet|bitter|strong) enough|hit with|hooked|fan of|approves?|approved|recommend\\w*|impressed|pleased|happy|verdict|went down (?:well|a treat)|make (?:more|another|some more|a)|another (?:batch|jar)|new batch|next batch|need more|more of it|running low|none left|all gone|\\d stars?|out of (?:5|five|10|ten)|recipe|over ice|on ice|with (?:tonic|ice|cheese|dessert|pudding)|after dinner|as an aperitif|last year|every (?:year|night|evening|sunday|day))',
    '(?:piaciut[oaie]|piace|piacciono|ador\\w+|ottim[oaie]|buon[oaie]|buonissim[oaie]|squisit[oaie]|delizios[oaie]|preferi\\w+|miglior\\w*|matrimonio|compleanno|festa|natale|capodanno|brindat\\w+|brindisi|troppo (?:dolc\\w|amar\\w|fort\\w|secc\\w)|dice|dicono|ha detto|hanno detto|trova|apprezzat\\w+|gradit\\w+|complimenti|content[oaie]|felic\\w|un altra volta|di nuovo|altro lotto|farne|rifar\\w+|ricetta|a cena|dopo cena|a pranzo|con ghiaccio|tutti gli anni)',
  ],
  /** It did not happen. */
  denied: [
    '(?:nobody|no one|noone|none of (?:us|them)|never|didnt|did not|hasnt|havent|wont|wouldnt|doesnt|dont|not|isnt|refus\\w+|before (?:he|she|they|it|the|my|anyone|anybody)|avoid\\w*|so that|nessuno|mai|non)',
  ],
  /** Nobody may drink it. */
  undrinkable: [
    'meths?|methylated|methanol|denatur\\w+|denat|anti ?freeze|antifreez\\w*|coolant|de ?icer|screen ?wash|(?:washer|wiper|windscreen|windshield|brake|cleaning|lighter|camping|stove|fireplace|burner|hydraulic) (?:washer )?(?:fluid|fuel|alcohol|liquid|spirits?|product|ethanol|gel)|isopropyl\\w*|isopropanol|rubbing alcohol|surgical spirits?|hand (?:sanitis\\w+|sanitiz\\w+|gel)|sanitis\\w+|sanitiz\\w+|bleach|(?:drain|oven|window|glass|toilet|floor|bathroom|kitchen|surface) cleaner|cleaner|cleaning stuff|white spirit|turps|turpentine|petrol|gasoline|kerosene|paraffin|paint thinner|thinners?|lamp oil|bio ?ethanol|perfume|after ?shave|mouth ?wash|cologne|essential oils?|(?:lab|laboratory|industrial|wood|fuel|technical|medical|pharmacy) (?:alcohol|ethanol|spirits?)|wood spirits?|acetone|nail (?:varnish|polish) remover|caustic soda|lye|sodium hydroxide|detergent|washing up liquid|dish(?:washer)? (?:soap|tablet|liquid)|ammonia|fuel|acid|weed ?killer|pesticide|rat poison|starsan|star san|metabisulphite|metabisulfite|descaler|wrong (?:(?:kind|sort|type) of )?(?:spirits?|alcohol|ethanol)',
    '(?:alcol|alcool|alchol|spirito) (?:etilico )?(?:denaturat\\w|rosa|rosso|da bruciare|isopropilico|industriale|disinfettante|(?:da|per|delle|di) (?:pulizie|le pulizie|casa|pulire|disinfettare|camin\\w+|ferite)|canforato|saponato|metilico)|denaturat[oaie]|antigelo|(?:liquido|detersivo) (?:\\w+ ){0,2}(?:lavavetri|radiatore|refrigerante|tergicristalli|freni|piatti|vetri)|lavavetri|candeggina|varechina|varecchina|detersivo|detergente|disinfettante|amuchina|igienizzante|trementina|acquaragia|benzina|metanolo|bioetanolo|isopropilico|ammoniaca|soda caustica|solvente|smacchiatore|diserbante|profumo|dopobarba|colluttorio|olio essenziale|acido|anticalcare|sturalavandini|(?:alcol|alcool|spirito) sbagliato',
  ],
  /** Nobody knows what is in it. */
  doubtful: [
    'moonshine|hooch|poteen|poitin|bathtub gin|boot ?leg|un ?label\\w+|home ?(?:distill\\w+|still\\w*|brewed spirit|made (?:spirit|spirits|alcohol|vodka|grappa|rakia|schnapps|hooch))|self distill\\w+|distilled (?:myself|himself|at home|by)|foreshots|heads (?:from|of the)|first run|fake (?:vodka|spirit|booze)|counterfeit|dodgy (?:spirit|vodka|alcohol|booze|bottle|stuff)|unknown (?:bottle|spirit|alcohol)|black market|from (?:his|my|a|the) still|unmarked|distillat[oaie] in casa|fatt[oaie] in casa|di contrabbando|senza etichetta|grappa casalinga|alambicco|teste (?:della|del)',
  ],
  /** Gone off, so that it is thrown away. */
  spoiled: [
    'mou?ld(?:y|s)?|fur(?:ry)?|slim(?:e|y)|rott(?:en|ing)|putrid|gone off|(?:went|gone|going) bad|spoil(?:ed|t)|bulging|bulged|botulism',
    'muffa|ammuffit[oaie]|marci[oa]|andat[oa] a male|avariat[oa]|guast[oa]|gonfi[oa]|botulino|botulismo',
  ],
  /** As a solvent smells, whatever it is. */
  solventSmell: [
    '(?:smell\\w*|smelt|stink\\w*|stank|reek\\w*|tast\\w+) (?:(?:a bit|a lot|strongly|slightly|faintly|really|badly|just|kind|sort|of|like|the) )*(?:varnish|glue|paint\\w*|solvents?|nail (?:varnish|polish)\\w*|thinners?|acetone|petrol|chemicals?|pear drops?)',
    '(?:puzza\\w*|odora|sa|sapeva|sanno|odore) (?:(?:un po|molto|tanto|forte|di|del|da) )*(?:vernice|smalto|colla|solvente|acetone|benzina|acquaragia|diluente)',
  ],
  /** Plants that poison. */
  toxic: [
    'oleander|yew|hemlock|foxglove|digitalis|laburnum|nightshade|belladonna|lily of the valley|lilies|monks ?hood|aconite|wolfs ?bane|datura|thorn ?apple|castor|cherry laurel|laurel|lupins?|rhododendron|azalea|daffodils?|hog ?weed|death ?cap|mushrooms?|toadstools?|autumn crocus|meadow saffron|mistletoe|holly|ivy|privet|spindle|poinsettia|elder (?:leaves|bark|twigs|stems|root)|bitter almonds?|apricot (?:kernels?|stones?|pits?)|cherry (?:stones?|pits?|kernels?)|peach (?:stones?|pits?|kernels?)|apple (?:seeds?|pips?)|plum (?:stones?|kernels?)|kernels|hellebore|hydrangea|cyclamen|tobacco|comfrey|tansy|rue|pennyroyal|wild (?:carrot|parsnip|garlic|berries|mushrooms?)|water dropwort|cuckoo ?pint|lords and ladies|arum|jimson weed|snowberr\\w+|honeysuckle berr\\w+|deadly',
    'oleandro|tasso|cicuta|digitale|maggiociondolo|mughetto|aconito|stramonio|ricino|lauroceraso|colchico|vischio|agrifoglio|edera|ligustro|fung[oh]i?|gigaro|elleboro|ciclamino|mandorle amare|nocciol[oi] (?:di|delle|dei|d)|stella di natale|rododendro|oleandri|erba velenosa|velenos[oaie]|digitalis',
  ],
  /** What it was after all. */
  misread: [
    'something else|turn(?:s|ed) out (?:to be|it was|they were|it is)|misidentified|mixed them up|confused them with|wrong (?:plant|berr(?:y|ies)|leaf|leaves|mushrooms?|flowers?|root)|instead of (?:wild )?(?:garlic|parsley|carrot|parsnip|comfrey|onions?|elder\\w*|chervil|horseradish)|pianta sbagliata',
  ],
  plant: [
    'berr(?:y|ies)|berrys|leaf|leaves|leafs|plants?|flowers?|petals?|seeds?|bulbs?|bark|roots?|stones?|pits?|pips?|kernels?|mushrooms?|twigs?|nuts?|pods?|sap|herb|weed|houseplant|pot ?plant',
    'bacc[ah]e?|fogli[ae]|piant[ae]|fior[ei]|petali|sem[ei]|bulb[oi]|corteccia|radic[ei]|nocciol[oi]|fungh[oi]|erba|erbe|rametti',
  ],
  /** Nobody is sure of it. */
  unsure: [
    'wild|unknown|unidentified|hedge ?rows?|hedges?|mystery|strange|roadside|not sure what|dont know what|poison\\w*|toxic|raw|unripe|green|wrong|from (?:the|a|some) (?:\\w+ )?(?:hedge|garden|woods?|forest|park|roadside|bush|tree)|mistook|mistaken|thought (?:it|they) (?:was|were)|selvatic[oaie]|sconosciut[oaie]|velenos[oaie]|acerb[oaie]|del bosco|della siepe|del giardino|sbagliat[oaie]|scambiat[oaie]|non so che|crud[oaie]',
  ],
  glass: [
    '(?:piece|pieces|bit|bits|shards?|sliver|slivers|splinters?|fragments?|chips?|broken|some|crushed|tiny) (?:of |\\w+ )?glass|(?:ate|eaten|eating|swallowed|chewed|bit|bitten) (?:\\w+ ){0,2}glass|glass (?:shards?|splinters?|bits|chips?|pieces?|fragments?)|shards?|splinters? of glass|glass (?:\\w+ ){0,3}(?:his|her|my|the|their) (?:mouth|throat|drink)|(?:pezz\\w+|schegg\\w+|framment\\w+) (?:\\w+ )?vetr[oi]|del vetro|(?<! di )vetr[oi]',
  ],
  pregnant: [
    'pregnan\\w+|expecting (?:a baby|our|my)|(?:weeks|months) (?:pregnant|gone|along)|incint[ae]|gravidanza|in attesa di un',
  ],
  /** The bot, a jar or a liquid that does what people do. */
  gadget: [
    'bots?|app|apps|commands?|terminal|reminders?|discord|larderbell|computer|laptop|phone|browser|website|program|button|server|screen|timer|scale|scales|hydrometer|filter|funnel|yeast|tap|valve|siphon|pump|fridge|freezer|label|printer',
    'app|comando|comandi|terminale|promemoria|computer|telefono|programma|bottone|pulsante|schermo|bilancia|densimetro|filtro|imbuto|lievito|rubinetto|frigo|congelatore|etichetta|stampante',
  ],
} as const
