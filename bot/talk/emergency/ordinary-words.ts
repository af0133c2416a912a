/**
 * Words of English and Italian that are a slip or two from those and mean what they say. Found by reading the word lists of
 * Debian (wamerican-small, wbritish-small, witalian) and the names of the catalogue through `respelt`.
 */
export const ordinaryWords: readonly string[] = (
    'acuto alcohols alcol alights allegria allegrie allergen allergies allergys alright amaca ambiance ' +
    'ambulances ambulant ambulanti amino annebbia annebbiai annebbiammo annebbiamo annebbiando annebbiano ' +
    'annebbiante annebbiare annebbiaste annebbiasti annebbiava annebbiavi annebbiavo annebbino annebbio ' +
    'antifreezes antigel aright assaggia assaggiai assaggiammo assaggiamo assaggiando assaggiano assaggiante ' +
    'assaggiare assaggiarlo assaggiaste assaggiasti assaggiatolo assaggiava assaggiavi assaggiavo assaggino ' +
    'assaggio avuto avvelena avvelenai avvelenammo avvelenando avvelenano avvelenante avvelenare avvelenaste ' +
    'avvelenasti avvelenatore avvelenatori avvelenava avvelenavi avvelenavo avvelenera avveleniamo ' +
    'avveleniate avvelenino avveleno babes babied babier babiest baies bailing ballante banche banisters ' +
    'barattano barattato barattavo barattino barche barcollai barcollano barcollare barcollata barcollate ' +
    'barcollati barcollato barcollava barcollavi barcollavo barcollera battaglia battle beach beaching ' +
    'beeries befriend berried berthing bland bleaching bleachs bleating bleedin blend blending blessing ' +
    'blinding blinds blink blinkered blinkers blister blond blooding bloods bloody bloom blotters blurted ' +
    'blustered blusters bocche bocciata bocciato bollendo bollenti bolletta bollette bolliate bolliste ' +
    'bolstered bolsters boosters bother botole botte bottled bottler bottles bowling boyfriends breach ' +
    'breaching breading breadth breaking breasting breathed breather breathes breaths breathy breeding ' +
    'breedings breezing broaching broccato broiling brood brothers bruciammo bruciamo bruciando bruciano ' +
    'bruciante bruciare bruciarlo bruciaste bruciasti bruciatori bruciava bruciavi bruciavo budge bugie buist ' +
    'bullette buried burner burns burped burping burred burring bursts burying cadra cagionino calcolino ' +
    'campi candeggio capira cappa capua censused checkers chickened childrens childs chile chili chill chilo ' +
    'chocking choke chokes chowed chowing cigolino cipiglio clothe clothed cloths coked coking collapse ' +
    'collapses collared collaring collasso collated collating collaudato colleagues collegare collegate ' +
    'compulsion compulsions concilio conclusion conclusioni conclusions concussion concussioni concussions ' +
    'confessed confided confined confuse confuses confusing confusion confusioni confusions conigli conjured ' +
    'consciousnesses consciousnesss consigli consiglia consiglino consiglio consulting consumed contusioni ' +
    'conversing conversion conversioni conversions convoglio convulsed convulsi convulsione convulsiva ' +
    'convulsive convulso cooked cooking copra cousins cramp crampo cramps crewed crewing crickets crinolino ' +
    'cucina cucino cumino curino daughters denaturated denature deperivo determino dinking doodling draining ' +
    'draughted draughtier drawling drifting drilling drink drinkin dripping drooping dropping drowning drowse ' +
    'drowsing drunk earing easing easting eater eatin emergence emergences emergencys emergent emergente ' +
    'emergenza emergenze employed employing esplora esploro evermore everyones excluded excluding expanded ' +
    'expanding expended expending explode explodes exploited exploiting explored explorer explores exploring ' +
    'exposing eyesights faceting faglia fainter fames fardello farther fathers fatter faulting feather febbri ' +
    'feinted feinting fiamma fiammate fiend fiends figli finer finge fingera fingere fingers fioco fittings ' +
    'flagello flakes flame flamed flaming flares flaunting flinging flirting flitting foaling foglia foglio ' +
    'foisting forming foxgloves frames framing fratellino fraterno fraticello fried fringing fronting gallia ' +
    'galling gettino getto girlfriends granddaughters grandfathered grandfathers grandino grandmothers ' +
    'grandsons grannys grattino gratto guess guesss gulled gupled gusts guzzle guzzles hamsters hemlocks ' +
    'hoarse horde horsed horses hospitable hospitals house husbands ignorata ignorato incendi incendiai ' +
    'incendiamo incendiano incendiato incendiavo incendino incentivo indebted indented indorato infected ' +
    'infested infocata infocato inghiotti inghiottii inghiottire inglobata ingoiammo ingoiamo ingoiando ' +
    'ingoiano ingoiante ingoiare ingoiaste ingoiasti ingoiava ingoiavi ingoiavo ingoiera ingolfato ingommata ' +
    'ingommato inhale inhaler inhales iniziata iniziato injected inserted insisted invented inverted invested ' +
    'invocata invocato kitchens lacked lacking lapsed leccano leccavo licquore liked liking linked linking ' +
    'lipped liqueurs liquor liquored liquori liquors locked locking lopped lucked lucking maglie manciata ' +
    'mandiamo mandiate maneggiata maneggiato mangiammo mangiamo mangiando mangiano mangiante mangiare ' +
    'mangiarla mangiaste mangiasti mangiatina mangiatore mangiava mangiavi mangiavo mangiona marino mario ' +
    'melangolo merito methanol mogli mooing moping mothers mournful mouthfuls mowing nauseai nauseas ' +
    'neighbored neighborly neighbors neighboured neighbourly neighbours nephews nibble nibbles nieces ' +
    'nightshades nipoti offuscai offuscano offuscante offuscare offuscaste offuscasti offuscava offuscavi ' +
    'offuscavo oleanders oleandr oleandre oleandri oleandro orchi ospedali ospita ospitai ospitale ospito ' +
    'ospizi overbore overcome overdoes overdone overdosed overdoses overrode overtone paralysis paralytics ' +
    'parasitic parrots parsed partners passe passer passes pasted paused piccol piccolos piking poignant ' +
    'poisons poisson poking poppies poppy pregante pregnancy prison prisoned prisoner puppys rabbi rabbia ' +
    'rabbie rabbis rabbits rescinding resounding respirai respirano respirante respirasse respiraste ' +
    'respirata respirate respirati respirato respiratore respirava respiravi respiravo respirera respirerei ' +
    'respiriate roommates sallow sallower sanguigne sanguigni sanguigno sanguinai sanguinano sanguinare ' +
    'sanguinata sanguinate sanguinati sanguinato sanguinava sanguinavi sanguinavo sanguinera sanguinosa ' +
    'sbagliare sbattere sbatterei scagliare scaled scalloped scalloping scalped scappata scappato scappiamo ' +
    'scappiate scarring scartata scartato scattano scattata scattate scattati scattato scattava scattavo ' +
    'scattered scatterei scegliere scempiato scolded scollata scollato scolpiamo scolpiate scolpita scolpito ' +
    'scontano scontata scontate scontati scontato scontava scontavo scontrato scoppiai scoppiammo scoppiamo ' +
    'scoppiando scoppiano scoppiante scoppiare scoppiaste scoppiasti scoppiava scoppiavi scoppiavo scoppiera ' +
    'scoppietta scoppino scopriamo scopriate scordata scordato scornful scortano scortata scortate scortati ' +
    'scortato scortava scortavo scostano scostata scostate scostati scostato scostava scostavo scottammo ' +
    'scottando scottano scottante scottanti scottare scottaste scottasti scottatura scottava scottavi ' +
    'scottavo scottera scottiamo scottiate scottino scozzata scozzato scrostata scrostato scrutata scrutato ' +
    'scurrying sdoppiamo sdoppiano sdoppiata sdoppiate sdoppiati sdoppiato sdoppiava sdoppiavo seedling ' +
    'selling sfocera sfociato sfogato sfogliare shading shallow shallower shaming shaping sharing sharking ' +
    'shatters shaving shelling sheltered shelving shuttered sisters sitter sizing skilling slaking sleep ' +
    'sleeps sleeves slittata slittato slugging sluicing slumming slumping smagliare smelling smelting ' +
    'smontata smontato snaking soaking soffiando soffocammo soffocano soffocante soffocarlo soffocato ' +
    'soffocavo somebodys someones soppianta soppianto soppiatto sourcing spaniels sparito sparring spattered ' +
    'spelling spellings spellino spettata spettato spilling spirato spiri spirino spirits spirt splattered ' +
    'splurging spogliare spoonfuls spoonsful spostata spostato spurning spurring spurting sputtered squaring ' +
    'squiring staking stalling stammering starring stealing steeling stellina sterling stilling stirring ' +
    'stomaca stomachi stomachs stomaci stomaco storpiata storpiato stuttered suonera svegli svegliai ' +
    'svegliamo svegliano svegliante svegliarla svegliarmi svegliarsi svegliasse svegliaste svegliata ' +
    'svegliate svegliati svegliato svegliava svegliavi svegliavo svegliera sveglierei svenato svogliate ' +
    'svoltata svoltato swaggering swallows swearing sweating sweeping swellings swerving swilling swirling ' +
    'swivelling tacciata tacciato tagliammo tagliamo tagliando tagliano tagliante tagliare tagliarla ' +
    'tagliaste tagliasti tagliava tagliavi tagliavo tagliera tagliola tarrier teaspoons teenage teenagers ' +
    'terriera terriere terriers thatching threat thriving throats throbbing thronging toddle toddled toddlers ' +
    'toddles togliamo tortoises tortuose trampling trebling troubling tumbling uncles unconsciously ' +
    'unconsciouss ustiona ustionai ustionammo ustionando ustionano ustionante ustionare ustionaste ustionasti ' +
    'ustionava ustionavi ustionavo ustioni ustioniamo ustioniate ustionino ustiono vertigine vestitini vicing ' +
    'virino visino visione visioni visions visitando visitato visiting vizino vociando voltando vomica vomits ' +
    'wading waging walking waning waving waxing wobble'
).split(' ')
