/** What is not, or cannot be. */
const NOT =
  '(?:not|isnt|arent|wasnt|werent|cant|couldnt|wont|wouldnt|doesnt|dont|didnt|no longer|stop(?:s|ped|ping)?|never|unable to|barely|hardly|scarcely|struggl\\w+ (?:to|with)|trouble|difficulty|difficulties|problems?|hard(?:ly)?(?: to)?|stopped)'
const NON = '(?:non|smesso di|senza|a malapena|a stento|fatica a|fatica)'

/** Parts of a body; not the thumb of ginger, nor what is done by hand. */
export const BODY =
  '(?<! (?:by|in|at|on|a|of|one|other|first|second|to|old|per|man|ogni|lato) )(?:hands?|fingers?|thumbs?|palms?|wrists?|arms?|forearms?|elbows?|shoulders?|legs?|thighs?|knees?|shins?|calf|ankles?|foot|feet|toes?|face|cheeks?|forehead|chin|nose|ears?|scalp|head|neck|chest|belly|tummy|stomach|back|skin|lips?|tongue|mouth|throat|knuckles?|body|groin|lap|eyelids?|veins?|artery)(?! (?:of|sized?|width|length|long|thick|worth|deep|high|made|feel|label|luggage|written|blender|whisk|soap|room))'
const CORPO =
  '(?<! (?:per|man|ogni|a|di|fuori|sotto|prima|alla|buona) )(?:man[oi]|dit[oa]|pollic[ei]|polpastrell\\w+|palm[oi]|pols[oi]|bracci[oa]|avambracci[oa]|gomit[oi]|spall[ae]|gamb[ae]|cosc[ei]a?|ginocchi[oa]|polpacci[oi]?|cavigli[ae]|pied[ei]|facci[ae]|viso|guanc\\w+|naso|orecchi[oa]|testa|collo|petto|pancia|stomaco|schiena|pelle|labbr[oa]|lingua|bocca|gola|corpo|nocche)(?! (?:di|a)\\b)'
const ANY_BODY = `(?:${BODY}|${CORPO})`
const SELF = '(?:myself|himself|herself|themselves|itself|yourself|ourselves)'
const WHOSE = '(?:my|his|her|their|the|our|your|its|both|both my|a|one|one of my|\\w+s|in laws)'

/** Signs and deeds of harm, each a list of pieces of regular expressions over plain words. */
export const harmWords = {
  /** Without their senses; said of people alone. */
  senseless: [
    'pass(?:ed|es|ing)? out|unconscious(?:ness)?|unconcious|unresponsive|los(?:t|ing|es?) consciousness|out cold|black(?:ed|ing) out|faint(?:ed|ing)|comatose|in a coma|alcohol coma|keel(?:ed|ing) over|dropped unconscious|half conscious|semi conscious|barely conscious|not conscious|isnt conscious|in and out of consciousness',
    `${NOT} (?:(?:be|get|seem|want|her|him|them|to|even|really|able|being|me|the|my|mum|dad|wife|husband|him|friend|nana?|\\w+) ){0,4}(?:wak(?:e|es|ing|en|ened)|woken|awake|rous(?:e|ed|ing|able)|wakeable|come round|coming round)`,
    'sven(?:ut[oaie]|endo|uto|imento|ire)|svien[ei]|sveniva|svenn[ei]|pers[oa] (?:i )?(?:sensi|conoscenza|coscienza)|perd(?:endo|e) (?:i sensi|conoscenza)|priv[oaie] di (?:sensi|conoscenza)|senza sensi|incoscient[ei]|inconscient[ei]|coma(?: etilico)?|semi ?cosciente',
    `${NON} (?:(?:si|riesc\\w+|riusc\\w+|vuole|piu|a|ad|lo|la|far\\w+|mio|mia|il|\\w+) ){0,4}(?:svegli\\w+|risvegli\\w+|riprend\\w+|rinvien\\w+)|${NON} (?:e )?(?:piu )?cosciente`,
  ],
  /** Said of people, and of much besides. */
  limp: [
    `collaps(?:ed|es|ing)|slump(?:ed|ing)|${NOT} (?:(?:is|be|to|even|really|anymore|seem|seems|at all) ){0,2}(?:mov(?:e|es|ing)|respond(?:s|ing)?|react(?:s|ing)?)|floppy|limp|lifeless|motionless|knocked out|no (?:response|reaction|reflexes)|eyes? (?:\\w+ )?roll\\w* (?:back|up)|${NOT} (?:\\w+ )?(?:open|keep) (?:his|her|their) eyes(?: open)?`,
    `collassat[oaie]|crollat[oaie]|stramazzat[oaie]|accasciat[oaie]|cadut[oaie] a terra|${NON} (?:(?:mi|ci|si|piu|riesc\\w+|a) ){0,3}(?:rispond\\w+|reagisc\\w+|muov\\w+)|immobile`,
  ],
  slack: [
    `${NOT} (?:(?:is|be|to|even|really|anymore|seem|seems|at|all) ){0,2}(?:answer(?:s|ing)?|talk(?:s|ing)?|speak(?:s|ing)?|get(?:ting)? up|stand(?:ing)?(?: up)?|sit up|walk(?:ing)?|focus|swallow(?:ing)?)|(?:fell|fallen|falling|falls|lying|found) (?:\\w+ ){0,3}(?:floor|ground|asleep|over|down)|on the floor|(?:just )?lying (?:there|here|down|still)|snor\\w+ (?:\\w+ )?(?:weird\\w*|loud\\w*|strange\\w*)|went down`,
    `cadut[oaie]|a terra|per terra|${NON} (?:(?:mi|ci|si|piu|riesc\\w+|a) ){0,3}(?:parl[ai]\\w*|alz\\w+|regg\\w+|cammin\\w+|deglut\\w+)|floscio|immobile`,
  ],
  breathless: [
    `${NOT} (?:(?:to|be|seem|even|really|get|any|her|his|my|with|is|catch|a) ){0,3}(?:breath(?:e|es|ing|ed|s)?|breth\\w*|breathin)|breath\\w* (?:(?:is|are|has|really|very|so|become|gone|getting|and|looks|sounds|seems|a bit|all) ){0,3}(?:slow\\w*|fast|funny|funnily|weird\\w*|strange\\w*|shallow\\w*|heav\\w+|hard|irregular\\w*|bad\\w*|noisy|rattl\\w+|wrong|odd\\w*|difficult\\w*|labou?red|rapid\\w*|stopp\\w+)|(?:slow|shallow|strange|funny|weird|irregular|heavy|noisy|laboured|labored) breath\\w*|gasp\\w*(?: for)?|wheez\\w+|chok(?:ing|ed)(?! hazard)|chokes on|suffocat\\w+|asphyxi\\w+|short(?:ness)? of breath|out of breath|throat (?:(?:is|has|feels|really|getting|all) ){0,2}(?:clos\\w+|swell\\w+|swollen|swole|tight\\w*|shut\\w*|block\\w*)|no pulse|(?:cant|couldnt|no) (?:find|feel) (?:a|any|his|her) pulse|cpr|heart (?:has )?stopped|(?:lips?|face|fingers|skin|nails) (?:(?:is|are|has|have|gone|went|going|turn\\w*|look\\w*|all|a bit|slightly) ){1,3}(?:blue|grey|gray|purple)|(?:blue|purple|gray|grey) lips`,
    `${NON} (?:(?:riesc\\w+|riusc\\w+|piu|a|sta|quasi|mi|si|fa|di) ){0,3}respir\\w+|respir\\w+ (?:(?:molto|un po|e|piu|troppo) )?(?:male|a fatica|con (?:fatica|difficolta)|piano|a malapena|poco|appena|lentamente|lento|affannos\\w+|affannato|corto|pesante|irregolare|debole)|(?:fatica|difficolta|problemi|difficolta) (?:a|di|nel|nella) respir\\w+|soffoc\\w+|strozz(?:ando|a|ata)|strozzato (?:con|da|mangiando|bevendo)|manca(?:no)? (?:il respiro|l aria|il fiato|aria|fiato)|labbra (?:blu|viola|cianotiche|bluastre|livide)|cianotic[oa]|rantol\\w+|boccheggi\\w+|senza (?:polso|battito|respiro)|gola (?:(?:si|sta|gli|le|e|mi) )*(?:chiu\\w+|gonfi\\w+|serra\\w+)|massaggio cardiaco`,
  ],
  fit: [
    'seizures?|siezure|convuls\\w+|(?:having|had|has|have|had had|threw|taking|into|of) (?:(?:a|an|some|kind|sort|of|another|massive|big) )*fits?|(?:foam|froth)\\w* (?:\\w+ ){0,2}mouth|mouth (?:is )?(?:foaming|frothing)|epileptic|fitting(?= (?:and|on the floor|after|now|please|help|[.,]|$))|jerking (?:all over|and|on|about|around)|shaking (?:all over|uncontrollabl\\w+|violently|badly)',
    'convulsion\\w*|crisi (?:epilettic\\w+|convulsiv\\w+)|attacco epilettico|epilettic\\w+|schium\\w+ (?:\\w+ ){0,2}bocca|bava alla bocca|spasmi',
  ],
  /** Said of bodies alone, and grave enough by itself. */
  vomiting: [
    'vomit(?:s|ed|ing|ting|ted)?|vommit\\w*|vomet\\w*|throw(?:ing|n|s)? (?:it (?:all )?)?up|threw (?:it (?:all )?)?up|puk(?:ed|ing|es)|retching|barf\\w+|spewing|cough\\w* (?:up )?blood|blood in (?:his|her|my|the|their) (?:vomit|sick|poo|stool|urine|pee)|diarrh\\w+|vomit(?:a|o|ano|ando|ato|are|iamo)|rimett(?:e|endo|eva)|rigettat[oa]|rigetta|sputa(?:ndo)? sangue',
  ],
  /** Said of bodies alone. */
  ill: [
    'drowsy|drowsiness|dizzy|dizziness|light ?headed|groggy|woozy|wobbl(?:y|ing)|stagger(?:s|ed|ing)|stumbl(?:ing|ed|es)|slurr?(?:s|ed|ing)|disorient\\w+|delirious|lethargic|hallucinat\\w+|drool(?:s|ed|ing)|twitch(?:es|ed|ing|y)|trembl(?:es|ed|ing)|tremors?|spasms?|jerking|palpitations?|nausea|nauseous|queasy|eyes? roll\\w*|(?:stomach|tummy|belly|chest|abdominal) ?(?:pains?|cramps?|aches?)|head ?aches?|hyperventilat\\w+|hypothermi\\w+|talking nonsense|not making sense|barcoll\\w+|nausea|giramenti|capogir\\w+|vertigini|gira(?:no)? la testa|delir(?:a|ando|io)|allucinazion\\w+|tachicardia|mal di (?:pancia|stomaco|testa)|sonnolent\\w+|intontit[oaie]|stordit[oaie]',
  ],
  /** Of who is sick, dazed or in pain; said of much besides. */
  unwell: [
    '(?:is|was|being|been|are|were|feel\\w*|felt|get\\w*|got|gone|become|became|look\\w*|violently|really|very|so|seem\\w*|im|hes|shes|theyre|and|now|quite|horribly|badly|all|pretty|both|both of us) (?:(?:so|really|very|a bit|quite|violently|all|been|feeling|both|now|extremely|terribly|horribly) ){0,2}(?:sick|ill|unwell|poorly|nauseous|nauseated|queasy|dizzy|faint|awful|terrible|dreadful|horrible|weird|strange|funny|numb|drowsy|sleepy|groggy|confused|disorient\\w+|delirious|wobbly|woozy|lethargic|unsteady|shaky|twitchy|jittery|pale|clammy|grey|gray|blue|yellow|white as|ice cold|freezing|burning up|rigid|stiff|swollen|in (?:\\w+ )?pain|in agony|agitated|hallucinat\\w+|paraly\\w+|out of it)|sick(?= (?:after|from|everywhere|please|help|and|now|[.,]|$))',
    'drowsy|drowsiness|dizzy|dizziness|groggy|wobbl(?:y|ing|es)|stagger\\w*|stumbl\\w+|slurr?\\w+|disorient\\w+|delirious|lethargic|hallucinat\\w+|drool\\w*|dribbl\\w+|clammy|twitch\\w*|trembl\\w*|tremors?|shak(?:ing|y)|shiver\\w*|spasms?|jerking|stiffen\\w*|cramps?|cramping|palpitations?|(?:heart|pulse) (?:(?:is|s|rate|beat\\w*|going|really|very|so|his|her|been) ){0,3}(?:rac\\w+|pound\\w+|fast|slow|weak|irregular\\w*|fluttering|funny|crazy|beat\\w+)|(?:stomach|tummy|belly|chest|head|abdominal) ?(?:pains?|cramps?|aches?)|headaches?|pains? in (?:his|her|my|the|their) (?:stomach|chest|tummy|belly|head)|(?:acting|behaving|walking|talking|looking|breathing) (?:(?:very|really|so|all|a bit) )?(?:weird\\w*|strange\\w*|funny|odd\\w*|drunk|off|crazy|confused)|(?:fell|falling|falls|fallen|keeps falling) (?:asleep|over|down|about)|sleepy|rash|hives|swelling|swollen|swole|going (?:blue|grey|gray|yellow|purple|white|stiff)|turn(?:ed|ing) (?:blue|grey|gray|yellow|purple|white)|went (?:blue|grey|gray|yellow|purple|white|limp|floppy|stiff|pale)|crying|screaming|in (?:\\w+ )?pain|unwell|poorly',
    'sta(?:nno|va)? (?:\\w+ ){0,2}mal\\w*|(?:sto|stiamo|stato|stata) (?:\\w+ ){0,2}male|sent(?:e|ono|ito|ita|iti|ite|o|iamo) (?:\\w+ )?male|malessere|malore|nausea|mal di (?:pancia|stomaco|testa)|dolori? (?:\\w+ ){0,2}(?:pancia|stomaco|petto|testa|addominal\\w+)|crampi|diarrea|sonnolent\\w+|assonnat[oaie]|stordit[oaie]|intontit[oaie]|rintronat[oaie]|barcoll\\w+|confus[oaie]|gira(?:no)? la testa|giramenti|capogir\\w+|vertigini|delir\\w+|allucinazion\\w+|(?:si )?regge in piedi|in piedi|pallid[oaie]|bianc[oa] come|sbav\\w+|sudat[oaie] fredd\\w+|sud(?:a|ando|o) freddo|trem(?:a|ando|ano|ori|ore|o)|agitat[oaie]|debol[ei]|si lamenta|piang\\w+|url(?:a|ando)|palpitazion\\w+|batte (?:forte|il cuore)|cuore (?:batte|accelerat\\w+)|gonfi(?:a|o|e|ato|ata|ando|ore)|orticaria|febbre|si contorce|strano|strana|rigid[oaie]|schiuma|brividi',
  ],
  drunk: [
    '(?:too|so|very|really|completely|blind|dead|dangerously|extremely|totally|absolutely|proper|is|hes|shes|seems?|looks?|acting|are|theyre|got|was) (?:(?:very|so|really|completely|totally|a bit|all) )?(?:drunk|legless|plastered|hammered|paralytic|wasted|inebriated|intoxicated)(?! (?:in|it|the|this|with|by|from|at|all|too|some))|drunk off|alcohol poisoning|overdos\\w+|(?:drank|drunk|drink\\w*|had|downed|swallowed) (?:\\w+ ){0,3}(?:way |far |much )?too much|too much (?:to drink|alcohol|booze|spirit|drink)|(?:ubriac\\w+|sbronz\\w+)|bevuto (?:\\w+ ){0,2}troppo|troppo (?:alcol|alcool)|intossicazione',
  ],
  /** It burns inside, not in a fire. */
  smarting: [
    '(?:throat|mouth|tongue|lips|chest|stomach|belly|tummy|insides?) (?:(?:is|are|was|were|feels?|like|really|all) ){0,3}(?:on fire|burning|burnt|burned|raw)|(?:brucia|bruciano) (?:\\w+ )?(?:gola|bocca|stomaco|lingua|petto)|(?:gola|bocca|lingua|stomaco) (?:\\w+ ){0,2}(?:a fuoco|in fiamme|brucia)',
  ],
  /** Sight that fails; `spirit` may be a cause hours after. */
  sightless: [
    '(?:vision|eyesight|sight) (?:\\w+ ){0,3}(?:blur\\w*|fuzzy|foggy|going|gone|fail\\w*|double\\w*|weird|strange|funny|odd|white|snow\\w*|dim\\w*|dark\\w*|cloud\\w*|haz\\w+|tunnel|wrong|bad|worse|lost|off)|(?:blur\\w*|double|tunnel|fuzzy|foggy|snow\\w*|cloudy|hazy|loss of|lost|losing|dim) (?:(?:his|her|my|of|all|field|their) ){0,2}(?:vision|sight|eyesight)|(?:going|gone|went|go|turned|is|hes|shes|im|are|temporarily|half|nearly|almost|partially) (?:\\w+ )?blind(?! (?:tast|drunk|date|alley))|blindness|blinded|see(?:s|ing)? (?:double|stars|spots|snow|flashes|halos?|everything (?:\\w+ )?(?:blur\\w*|white|double|hazy|foggy))|everything (?:(?:is|looks|s|seems|has|gone|went|all|so|goes|going|appears) ){1,3}(?:blur\\w*|white|foggy|hazy|double|snow\\w*|dark|dim|fuzzy|black)|eyes? (?:(?:is|are|have|has|gone|went|all|so|look\\w*) ){1,2}(?:blur\\w*|cloudy|foggy|hazy|unfocus\\w+)|all i (?:can )?see is (?:white|snow|black|fog)|light hurts|hurts? to look at (?:the )?light',
    '(?:cant|cannot|couldnt|hardly|barely|unable to|not able to|not|stopped|cant really|doesnt) (?:\\w+ )?(?:see|seeing)(?= (?:well|properly|right|clearly|straight|anymore|any more|now|out|after|since|please|help|what do|at all|a thing|much|because|and|very|anything(?! (?:in|through|wrong|about|on|under|inside|at|else|to|of|floating|like)|$)|[.,]|$))',
    '(?:vista|visione) (?:\\w+ ){0,3}(?:annebbi\\w+|offusc\\w+|sfoc\\w+|doppi\\w+|confus\\w+|calat\\w+|appann\\w+|sparit\\w+|persa|che va|va via|strana)|pers[oa] la vista|perd(?:e|o|endo) la vista|(?:ved[eo]|vediamo|vedono) (?:(?:tutto|solo|le cose|un po|molto) ){0,2}(?:annebbi\\w+|offusc\\w+|sfoc\\w+|doppi\\w+|bianco|nero|appann\\w+|male|nebbia|neve|macchie|confuso|a macchie)|(?:non|senza) (?:(?:ci|riesc\\w+|piu|mi|a|quasi) ){0,4}ved(?:e|o|ere|erci|iamo|ono|eva|evo)(?= (?:piu|bene|niente|nulla(?! (?:nel|di|da))|da|dopo|aiuto|quasi|molto|[.,]|$))|niente vista|ciec[oaie]|accecat[oaie]|diventa(?:ndo|ta|to)? ciec\\w+|occhi (?:annebbi\\w+|appann\\w+)|tutto (?:bianco|annebbiato|sfocato|sfuocato|nero|offuscato|appannato)|vede(?:re)? (?:tutto )?(?:sfuocato|sfocato)',
  ],
  /** Something in an eye. */
  eye: [
    `(?:in|into|inside|on|to|up|and|to) (?:(?:${WHOSE}|both) )?(?:\\w+ )?(?:eyes?|eyeballs?)|eyes? (?:is |are |all |really |and )*(?:burn\\w*|sting\\w*|stung|hurt\\w*|red|sore|swollen|on fire)|${WHOSE} (?:\\w+ )?(?:eyes?|eyeballs?)|(?:negli|nell|nei|agli|gli|all|gl|l|un|sugli|mi) occh(?:i|io)|occhi`,
  ],
  /** What gets into an eye, and how. */
  splash: [
    'splash\\w*|squirt\\w*|spray\\w*|spurt\\w*|spill\\w*|spilt|got|get|gets|getting|went|gone|flew|shot|flicked|dripped|poured|rubbed|touched|sting\\w*|stung|burn\\w*|burnt|hurt\\w*|sore|red|irritat\\w*|swollen|watering|pain\\w*|alcohol|spirit|spirits|vodka|gin|rum|grappa|ethanol|liqueur|limoncello|infusion|syrup|juice|chill?i|pepper|zest|oil|acid|lye|cleaner|bleach|liquid|booze|stuff|stream',
    'schizz\\w+|spruzz\\w+|finit[oaie]|andat[oaie]|entrat[oaie]|cadut[oaie]|caduta|arrivat[oaie]|versat[oaie]|bruci\\w+|pizzic\\w+|male|ross[oi]|gonfi\\w*|lacrim\\w+|alcol|alcool|alchol|spirito|liquore|grappa|vodka|limoncello|succo|sciroppo|peperoncino|liquido|detersivo|candeggina',
  ],
  /** A burnt body, each a whole finding. */
  burnt: [
    `(?:burn(?:t|ed|s|ing)?|burnd|bruned|scald(?:ed|s|ing)?|blister\\w*|scorch\\w*) (?:(?:all|the|inside|on|over|across|up|a|bit|part|half|most|of|back|tip|top|left|right|whole|both|badly|it|from|and|quite|really|very|side|sides) ){0,4}${WHOSE} (?:(?:left|right|whole|little|other|lower|upper|bare|poor|entire) )?${BODY}`,
    `(?:burn(?:t|ed|s)|burnd|scald(?:ed|s)?) (?:(?:all|up|both|badly) )?${SELF}|${WHOSE} (?:(?:left|right|whole|little|other) )?${BODY} (?:(?:is|are|got|was|were|has|have|been|gets|looks|badly|all|really|a|bit|feels|severely|and|now|just|so) ){1,4}(?:burnt|burned|scalded|blister\\w*|on fire|burning|peeling|raw)`,
    `(?:second|third|2 nd|3 rd|first|bad|nasty|severe|serious|big|huge|deep|terrible|awful|steam|electric|chemical|friction) (?:degree )?burns?(?= (?:on|to|all|from|across|over|how|what|after|and|help|please|[.,]|$))|(?:got|get|have|has|had|with|suffered|treat) (?:\\w+ ){0,3}burns?(?= (?:on|to|all|from|across|over|how|what|after|and|help|please|[.,]|$))|burns? (?:(?:all|right) )?(?:on|to|over|across) (?:\\w+ ){0,3}${BODY}|(?:skin|blisters?|burn) (?:\\w+ ){0,2}(?:peeling|blister\\w*|bubbling|coming (?:off|up))|blisters? (?:on|all over|coming|form\\w*|from)|${BODY} (?:\\w+ ){0,5}(?:blister\\w*|peeling off|charred|scorched|scalded)|(?:touched|grabbed|grabbing|touching|held|fell (?:on|onto|into|against)|leaned on|knocked|hand (?:on|in|into)) (?:\\w+ ){0,3}(?:red hot|hot|boiling|burning|scalding) (?:pan|pot|hob|stove|plate|syrup|ring|oven|sugar|caramel|water|oil|jar|kettle|still|element|tray|burner)`,
    `(?:boiling|scalding|hot|burning|flaming|bubbling|molten|steam\\w*) (?:\\w+ ){0,7}(?:on|onto|over|down|into|all over|across|hit|hits|got|in) (?:\\w+ ){0,2}(?:${BODY}|${SELF}|me|him|them|us)(?= |$)`,
    `(?:bruci(?:at[oaie]|a|ano|ando|ato)|scott(?:at[oaie]|a|ando|atura)|ustion(?:at[oaie]|i|e)|ustione|abbrustolit\\w+) (?:(?:tutt[oaie]|il|la|le|l|un|una|i|gli|mio|mia|mie|suo|sua|parte|dell[ae]|di|sul|sulla|sulle|sull|malissimo|male|con|po|al|alla|alle|ai|mezz[oa]|destr[oa]|sinistr[oa]) ){0,4}${CORPO}`,
    `(?:si e|s e|si sono) (?:\\w+ )?scottat[oaie]|(?:mi sono|mi son|ci siamo|me so|mi so|ti sei|mi ero) (?:(?:tutt[oa]|proprio|appena|gravemente|anche) )?(?:bruciat[oaie]|scottat[oaie]|ustionat[oaie])(?! (?:lo|il|lo|la|lo zucchero|la buccia|tutto (?:lo|il)|i|gli|le) (?!${CORPO}))(?! (?:zucchero|caramell\\w+|sciroppo))|ustion[ei]|ustionat[oaie]|scottatur[ae]|vescic[ah]e?|bolle sulla pelle|${CORPO} (?:(?:e|si|gli|le|tutt[oa]|e|molto|mi) ){0,3}(?:bruciat[oaie]|scottat[oaie]|ustionat[oaie])`,
    `(?:bollent[ei]|caldissim[oa]|rovente|vapore) (?:\\w+ ){0,5}(?:${CORPO}|addosso)|(?:rovesciat\\w+|versat\\w+|schizzat\\w+|cadut\\w+|tirat\\w+) (?:\\w+ ){0,6}(?:bollent[ei]|rovente)(?: \\w+){0,3} (?:${CORPO}|addosso)|rovesciat\\w+ (?:\\w+ ){0,3}addosso (?:\\w+ ){0,5}bollent[ei]|(?:bollent[ei]|rovente) addosso`,
  ],
  /** A person burnt, without the part. */
  scalded: [
    '(?:is|was|got|been|badly|severely|has|gets|hes|shes|are|were|im|gotten|all) (?:(?:badly|severely|really|been|got|been badly) ){0,2}(?:burnt|burned|scalded)(?! (?:sugar|caramel|the|it|orange|taste|down|out|out|on the bottom|to|at the|black|syrup))',
    '(?:burnt|burned|scalded) (?:(?:my|the|his|her|our) (?:\\w+ )?(?:son|daughter|kid|baby|child|toddler|wife|husband|friend|boy|girl|dog|cat|mum|mom|dad)|(?:him|them|me|us))',
    '(?:si e|si sono|s e|e rimast[oa]|stat[oaie]|rimast[oaie]|gravemente) (?:(?:tutt[oa]|proprio|appena|gravemente|anche) )?(?:bruciat[oaie]|scottat[oaie]|ustionat[oaie])(?! (?:lo|il|la|un po) (?!(?:man|dit|bracc|gamb|facc|pied|lingu|labbr)))|scottat[oaie](?! (?:il|lo|la|i|gli|le|un|una) )',
  ],
  /** What a person wears. */
  worn: [
    '(?:clothes|clothing|shirt|t shirt|tshirt|sleeves?|hair|beard|apron|jumper|sweater|hoodie|trousers|pants|jeans|dress|skirt|coat|jacket|cardigan|scarf|top|blouse|robe|gown|pyjamas|pajamas|gloves?|oven glove|sock|socks|tie|eyebrows?|fur|tail)',
    '(?:vestit[oi]|maglia|maglione|maglietta|camicia|manic[ah]e?|capelli|barba|grembiule|pantaloni|gonna|giacca|felpa|sciarpa|guant[oi]|pigiama|pelo)',
  ],
  /** In flames, said of what burns now. */
  aflame: [
    '(?:on|caught|catching|set|took|still on) fire|(?:has|have|had|it|just|its|s) (?:gone|went|go|going) up (?:in flames|like)|(?:caught|burst\\w* into|up in|in|into) flames|aflame|ablaze|alight|in flames|flames (?:everywhere|all over|on|from|out|in|up|are|coming|shooting|wont|reaching|going)|(?:is|are|was|its|still|wont stop|keeps|started|started to|begun|has been) burning(?! (?:my|the|his|her|question|a|off|with (?:desire|curiosity|excitement|questions|envy|shame)|through|calories|lo|il|la|i|le))|ignit(?:ed|ing)|flared up|exploded in(?:to)? (?:flames|fire)|(?:fire|its|it is|flames?|is) spreading|caught light|set light to|flash fire|went whoosh|fireball|(?:is|are|its|was|room|kitchen|house|full of|filled with|filling with) (?:(?:filling with|full of|all) )?(?:thick |black )?smoke',
    'a fuoco|(?:ha|hanno|sta|ha gia|stanno|e|avuto) (?:\\w+ )?(?:pres[oa]|prendendo) (?:\\w+ )?fuoco|pres[oa] fuoco|prende fuoco|preso fiamma|(?:in|le|delle|alte|ci sono|sono|tra le) fiamme|fiamme (?:sul|sulla|nel|nella|in|ovunque|alte|dappertutto|che)|incendi\\w+|infiammat[oaie]|(?:sta|stanno|si sta|si stanno|e che|ancora|va|mi|gli|le) (?:\\w+ )?(?:bruciando|brucia|bruciano)(?! (?:lo|la gola|il palato|un po|troppo|in gola|la lingua))|divampat\\w+|fiammata|fumo (?:ovunque|dappertutto|nero)|pieno di fumo|piena di fumo',
  ],
  /** What may be on fire besides people. */
  burnable: [
    '(?:kitchen|house|home|flat|shed|garage|room|pan|pot|saucepan|frying pan|stove|hob|cooker|oven|stovetop|burner|table|counter|worktop|countertop|bench|spirit|spirits|alcohol|ethanol|vodka|gin|rum|brandy|grappa|jar|jars|bottle|demijohn|carboy|still|liqueur|limoncello|infusion|syrup|vapou?rs?|fumes?|curtains?|towel|tea towel|cloth|rag|floor|carpet|rug|tablecloth|paper|funnel|filter|sugar|caramel|oil|hot plate|bowl|sink|cupboard|wall|place|everything|spill|spilt|spilled|it|its|this|thing|something|there|theres|microwave|tray|ladle|stuff)',
    '(?:cucina|casa|garage|cantina|stanza|padella|pentola|pentolino|fornell[oi]|forno|piano cottura|tavol[oa]|piano|alcol|alcool|spirito|grappa|liquore|vodka|barattolo|vaso|bottiglia|damigiana|tend[ae]|strofinaccio|canovaccio|asciugamano|tovaglia|tappeto|pavimento|carta|imbuto|sciroppo|vapori?|tutto|roba|qualcosa|qui|microonde|ciotola|mobile)',
  ],
  /** A fire, named. */
  blaze: [
    '(?:there is|theres|we have|ive got|weve got|we got|a|small|big|pan|kitchen|house|stove|alcohol|grease|started a|got a|oven|hob) (?:(?:a|small|big|huge|massive|little|kitchen|pan|stove) ){0,3}fire(?= (?:in|on|at|what|how|and|help|please|now|broke|spreading|started|here|from|wont|is|after|under|by the stove|[.,]|$))|fire (?:in|on) (?:my|the|our) (?:kitchen|house|stove|hob|pan|oven|table|counter|sink|shed|garage|floor|curtains?)|fire+ (?:help|please)|(?:help|quick) (?:[.,] )?fire|kitchen fire|house fire|(?:kitchen|house|curtains?|table|tablecloth|carpet|pan|stove|sofa|shed|room|towel) (?:\\w+ )?(?:burning|ablaze|burns)(?! (?:off|smell))|pan fire|stove fire|(?:put|putting) (?:the |this |out |it )*(?:fire|flames) ?(?:out)?|(?:fire|flames?) (?:is |are )?(?:spreading|wont go out|still going|getting bigger|out of control|reaching)',
    'c e (?:un |il )?(?:fuoco|incendio)|(?:incendio|fuoco) (?:in|nella|sul|sui) (?:cucina|casa|tavolo|fornelli?)|un incendio|spegner\\w* (?:il fuoco|le fiamme|l incendio)|aiuto (?:al )?fuoco|al fuoco|fuoco fuoco|(?:tend[ae]|cucina|casa|tovaglia|padella|tavolo|tappeto|strofinaccio|divano|mobile|garage|stanza|canovaccio) (?:\\w+ )?brucia(?:no)?',
  ],
  vessel: [
    '(?:bottles?|jars?|demijohns?|carboys?|kilner|mason jars?|flasks?|glass(?:es)?|jugs?|decanters?|growlers?|flip tops?|swing tops?|jug|container|vessel|flagon|thermos|vase|pressure cooker|the still|one of (?:them|the)|lids?|corks?|stopper)',
    '(?:bottigli[ae]|barattol[oi]|vas[oi]|vasett[oi]|damigian[ae]|vetro|bocc[ei]a?|bocci(?:one|oni)|caraff[ae]|brocc[ah]e?|tapp[oi]|alambicco|pentola a pressione|recipient[ei]|contenitor[ei])',
  ],
  burst: [
    '(?:has|have|had|just|it|they|s|jar|jars|bottle|bottles|demijohn|carboy|glass|ones?|all|both|and|them|then|been|suddenly|another|kilner|lid|cork|of them|top|was|gin|limoncello|were|container|flask|jug|liqueur) (?:(?:just|has|have|all|suddenly|went|gone|been|over|also|literally|apparently|completely|now) ){0,3}(?:burst(?:ed)?|explod(?:ed|ing)|blown up|blew (?:up|apart|off|out)|shatter(?:ed|ing)|erupted|imploded|went (?:bang|off like|boom)|gone (?:bang|boom))|(?:bottles?|jars?|demijohns?|carboys?|flip tops?) (?:(?:is|are|keep|keeps|started) ){0,2}(?:bursting|exploding|blowing up|going off)|(?:burst|exploded|exploding|shattered|bursting) (?:bottles?|jars?|demijohns?|carboys?|glass)|(?:about|going|gonna|ready|threaten\\w*) to (?:burst|explode|blow|pop|go bang)|bottle bombs?|(?:hissing|bulging|swollen|bulged|fizzing) (?:\\S+ ){0,6}(?:explod\\w*|burst\\w*|blow)|went off (?:like|with|in)|(?:like|as) a bomb',
    '(?:e|sono|s e|si e|mi e|gli e|le e|ha|appena|sta|stanno|per) (?:(?:appena|gia|tutt[oaie]|quasi|per|la|il|una|un) ){0,3}(?:scoppiat[oaie]|esplos[oaie]|scoppiando|esplodendo|frantumat[oaie]|saltat[oaie] in aria|in mille pezzi|scoppiare|esplodere|andat[oaie] in (?:frantumi|pezzi))|scoppiat[oaie]|esplos[oaie]',
  ],
  /** Glass that went to pieces in a smaller way. */
  broken: [
    'smash(?:ed|ing)?|brok(?:e|en)|crack(?:ed)|shatter\\w*|burst\\w*|explod\\w*|blew up|splintered|shards?|splinters?|glass|bottle|jar|lid|knife|peeler|blade|mandoline',
    'rott[oaie]|rompe\\w*|spaccat[oaie]|frantum\\w+|schegg[ei]a?|vetr[oi]|scoppiat\\w|esplos\\w|bottiglia|barattolo|coltello|pelapatate|mandolina',
  ],
  /** A wound, each a whole finding. */
  wound: [
    `(?:cut|cuts|cutting|slic(?:ed|ing)|slash(?:ed)?|gash(?:ed)?|stabb?(?:ed)?|lacerat\\w+|pierc\\w+|impal\\w+|chopped off|took off|nearly cut off|cut through|cut open|shredded|peeled|grated|skewered) (?:(?:all|open|into|deep|deeply|the|off|up|through|tip|top|end|a|of|bad|badly|half|and|on|in|right|slice|piece|chunk|bit|over|really|very|to|side) ){0,5}(?:my|his|her|their|our|both|a|the) (?:(?:left|right|whole|little|index|own|poor|middle|ring|bare) )?${BODY}|(?:cut|slic(?:ed|ing)|stabbed|slashed|gashed) (?:(?:open|up|badly) )?${SELF}|(?:deep|bad|nasty|big|huge|open|gaping|serious|massive) (?:\\w+ )?(?:cut|gash|wound|laceration)s?(?= (?:on|in|to|from|across|and|what|how|what|help|wont|please|is|[.,]|$))|(?:cuts?|gash|wound|laceration) (?:is |are )?(?:(?:wont|doesnt|not|isnt|keeps?|on|across|in|to|all over|over) )(?:\\w+ ){0,3}(?:bleed\\w*|stop\\w*|${BODY})`,
    `(?:bleed(?:s|ing)?|bled|bloody|blood) (?:\\w+ ){0,3}(?:a lot|heavily|badly|everywhere|profusely|like crazy|loads|wont stop|not stop\\w*|all over|pouring|gush\\w*|spurt\\w*|from|to death|out|dripping)|(?:is|hes|shes|im|am|are|still|wont stop|keeps|stop|stopped|he is|she is|hand|finger|arm|leg|face|foot|started|badly) (?:\\w+ )?bleeding|lots of blood|so much blood|losing (?:\\w+ )?blood|blood (?:all over|everywhere)|there s blood|theres (?:\\w+ ){0,2}blood|bleeding(?= (?:help|please|what|how|and|[.,]|$))|covered in blood|severed|amputat\\w+`,
    `(?:glass|shards?|splinters?|bits?|pieces?|fragments?|slivers?) (?:\\w+ ){0,5}(?:in|into|through|stuck in|under|hit|cut) (?:my|his|her|their|our|the|a|both) (?:\\w+ )?(?:${BODY}|eyes?)|(?:in|into) (?:my|his|her|their) (?:\\w+ )?(?:${BODY}|eyes?) (?:\\w+ ){0,4}(?:glass|shards?|splinters?)|(?:stepped|trod|stood|stepping|knelt|fell|sat) (?:on|in|onto) (?:\\w+ ){0,3}glass|(?:jar|bottle|lid|glass|demijohn) (?:\\w+ ){0,5}(?:cut|hit|sliced|gashed) (?:(?:open )?(?:my|his|her|their|our) (?:\\w+ )?(?:${BODY}|\\w+)|me|him|them|us)(?= |$)|(?:blew up|exploded|burst|shattered|broke|smashed) in (?:my|his|her|their|our) (?:hands?|face|hand)|stitches`,
    `(?:tagliat[oaie]|ferit[oaie]|sfregiat[oaie]|squarciat[oaie]|affettat[oaie]) (?:(?:profondamente|tutt[oa]|un|il|la|le|l|una|i|mezz[oa]|al|alla|sul|sulla|con|vetro|il vetro|mio|mia|suo|sua|col|coltello|punta|del|della) ){0,5}${CORPO}|(?:mi sono|mi son|si e|si sono|s e|ci siamo|me so) (?:(?:tutt[oa]|appena|gravemente) )?(?:tagliat[oaie]|ferit[oaie]|affettat[oaie])|tagli[oi] (?:(?:profond[oi]|brutt[oi]|molto|su|sul|sulla|alla|al|a|in|tutt[oa]|nel|nella|enorme|grosso) ){1,3}(?:\\w+ ){0,2}${CORPO}?|sanguin(?:a|o|ano|ando|ato|ante|are)|emorragia|perd(?:e|o|endo) (?:\\w+ ){0,2}sangue|(?:esce|tanto|molto|pieno di|piena di|troppo|coperto di) (?:\\w+ )?sangue(?! di)|sangue (?:ovunque|dappertutto|che)|(?:schegg[ei]a?|vetr[oi]|pezz[oi]) (?:\\w+ ){0,4}(?:${CORPO}|occhi[o]?)|punti di sutura`,
  ],
  /** Poisoned, shocked, struck: said of bodies alone. */
  struck: [
    'poisoned (?:him|her|my|them|everyone|everybody|us|me|the (?:guests|kids|dog|cat)|\\w+self|\\w+selves)|(?:been|got|was|is|are|were|be|has|have|might have|think i|did i|i|we|hes|shes) (?:\\w+ )?(?:poisoned|intoxicated|electrocuted)|(?:has|have|had|got|its|it s|is this|signs of|symptoms of|think its|maybe|with) (?:\\w+ ){0,2}(?:methanol |alcohol |food |ethanol )?poisoning|alcohol poisoning|avvelenat[oaie]|avvelenamento|intossicat[oaie]|anafila\\w+|anaphyla\\w+|allergic (?:reaction|shock)|reazione allergica|shock anafilattico|heart attack|having a stroke|infarto|ictus|epipen|overdos(?:e|ed|ing)',
  ],
  hurt: [
    '(?:got|is|was|been|are|were|badly|seriously|someone|somebody|hes|shes|im|really|get) (?:(?:badly|really|seriously|been|got|all) ){0,2}(?:hurt|injured|wounded)(?! (?:the|my|your|by)? ?(?:feelings|pride|taste|flavou?r|wallet))|injur(?:y|ies|ed)|ferit[oaie]|si e fatt[oa] (?:\\w+ )?male|mi sono fatt[oa] (?:\\w+ )?male|choking',
  ],
  swelling: [
    `(?:${ANY_BODY}|eyes?|airway) (?:(?:is|are|has|have|all|really|very|starting|started|to|getting|gone|s|so|been|badly|feels|e|si|sono|le|gli|mi|tutt[oa]|sta|stanno|tutta) ){0,4}(?:swell\\w*|swollen|swole\\w*|puff\\w*|gonfi\\w+)|(?:swell\\w*|swollen|swole|puffy|gonfi\\w+) (?:\\w+ ){0,3}(?:face|lips?|tongue|throat|eyes?|faccia|viso|labbr\\w+|lingua|gola|occhi)|(?:covered in|came out in|broke out in|breaking out in|come out in|all over) (?:\\w+ )?(?:hives|rash|spots|welts)|hives|orticaria`,
  ],
  dying: [
    '(?:(?:going|gonna|about|might|will|could|may) )?(?:to )?(?:die|dying)|dead|died|(?:sta|stanno|sto|puo|potrebbe|per) (?:\\w+ )?(?:morendo|morire)|e mort[oa]',
  ],
  /** Somebody asks for those who help. */
  rescue: [
    '(?:call|need|get|ring|send|want|phone|called|ringing|calling|rang|dial|give me|whats|what is|whats the number (?:of|for)|number (?:of|for)|should i|do i|contact|fetch|where is) (?:(?:an|a|the|me|to|for|of|up|call|my|number|ring|us|local|please|is|get|phone|contact|for an|911 or|go) ){0,4}(?:ambulance|911|999|112|118|000|poisons? (?:control|centre|center|line|info\\w*)|paramedics?|emergency (?:services|number|room|doctor)|fire (?:brigade|department|service)|er|a and e|hospital|antivenin|medics?)|ambulance|poisons? (?:control|centre|center|line|hotline|helpline|unit|number)|(?:emergency|poison) (?:number|services|phone)|medical emergency|this is an emergency|its an emergency|emergency (?:help|please)|(?:centro )?anti ?veleni|antiveleno|ambulanza|pronto soccorso|vigili del fuoco|pompieri|numero (?:di|delle|per le) emergenz\\w|chiam(?:o|a|are|ate) (?:\\w+ ){0,2}(?:112|118|115|soccors\\w+|medico|guardia medica)|emergenza medica|e un emergenza|soccors[oi]|life ?saving|emergency vet|vet (?:now|please|help|number|urgent\\w*)|veterinari[oa] (?:subito|urgente|adesso|ora)',
  ],
  inhaled: [
    '(?:inhal(?:ed|ing)|breath(?:ed|ing) in|sniff(?:ed|ing)|overcome by|overcome with|gassed by|too many) (?:\\w+ ){0,5}(?:fumes?|vapou?rs?|gas|smoke|steam|spirit|alcohol|stuff|it)|(?:fumes?|vapou?rs?|smoke) (?:\\w+ ){0,4}(?:lungs?|dizzy|faint|sick|light ?headed|headache|cough\\w*|overc\\w+)|smoke inhalation|(?:inalat\\w+|respirat\\w+|inspirat\\w+|annusat\\w+) (?:\\w+ ){0,4}(?:vapor[ei]|fum[oi]|gas|alcol|alcool|esalazion\\w+)',
  ],
} as const
