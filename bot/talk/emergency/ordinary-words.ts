/**
 * Words of English and Italian that are a slip or two from those and mean what they say. Found by reading the word lists of
 * Debian (wamerican-small, wbritish-small, witalian) and the names of the catalogue through `respelt`.
 */
export const ordinaryWords: readonly string[] = (
  'sanguigna sanguigno acuto alcohols alights allegria allegrie allergen allergies allergys amaca ambiance ambulances ambulant ' +
  'ambulanti amino annebbia annebbiai annebbiammo annebbiamo annebbiando annebbiano annebbiante annebbiare ' +
  'annebbiaste annebbiasti annebbiava annebbiavi annebbiavo annebbino annebbio antifreezes antigel aright ' +
  'assaggia assaggiai assaggiammo assaggiamo assaggiando assaggiano assaggiante assaggiare assaggiarlo ' +
  'assaggiaste assaggiasti assaggiatolo assaggiava assaggiavi assaggiavo assaggino assaggio avvelena ' +
  'avvelenai avvelenammo avvelenando avvelenano avvelenante avvelenare avvelenaste avvelenasti avvelenatore ' +
  'avvelenatori avvelenava avvelenavi avvelenavo avvelenera avveleniamo avveleniate avvelenino avveleno ' +
  'babes babied babier babiest baies bailing ballante banche banisters barattano barattato barattavo ' +
  'barattino barche barcollai barcollano barcollare barcollata barcollate barcollati barcollato barcollava ' +
  'barcollavi barcollavo barcollera battaglia battle beach beaching beeries befriend berried berthing bland ' +
  'bleaching bleachs bleating bleedin blend blending blessing blink blinkered blinkers blond blooding ' +
  'bloods blotters blurted blustered blusters bocche bocciata bocciato bollendo bollenti bolletta bollette ' +
  'bolliate bolliste bolstered bolsters boosters bother botole botte bottled bottler bowling boyfriends ' +
  'breach breaching breading breadth breasting breathed breather breathes breaths breathy breeding ' +
  'breedings breezing broaching broccato broiling brood bruciammo bruciamo bruciante bruciarlo bruciaste ' +
  'bruciasti bruciatori bruciava bruciavi bruciavo budge bugie buist bullette buried burped burping burred ' +
  'burring burying cadra cagionino calcolino campi candeggio capira cappa capua censused checkers chickened ' +
  'chile chili chilo chocking chowed chowing cigolino cipiglio clothe clothed cloths coked coking collapse ' +
  'collapses collared collaring collasso collated collating collaudato collegare collegate compulsion ' +
  'compulsions concilio conclusion conclusioni conclusions concussion concussioni concussions confessed ' +
  'confided confined confuse confuses confusing confusion confusioni confusions conjured consciousnesses ' +
  'consciousnesss consigli consiglia consiglino consiglio consulting contusioni conversing conversion ' +
  'conversioni conversions convoglio convulsed convulsi convulsione convulsiva convulsive convulso cooked ' +
  'copra cramp crampo crewed crewing crickets crinolino cucino cumino curino denaturated denature deperivo ' +
  'determino dinking doodling draining draughted draughtier drawling drifting drilling drinkin drooping ' +
  'dropping drowning drowse drowsing earing easing easting eater eatin emergence emergences emergencys ' +
  'emergent emergente emergenze employed employing esplora esploro evermore everyones excluded excluding ' +
  'expanded expanding expended expending explodes exploited exploiting explored explorer explores exploring ' +
  'exposing eyesights faceting faglia fainter fames fardello farther fatter faulting feather febbri feinted ' +
  'feinting fiammate fiend fiends finer finge fingera fingere fioco fittings flagello flakes flame flamed ' +
  'flares flaunting flinging flirting flitting foaling foglia foglio foisting forming foxgloves frames ' +
  'framing fraterno fraticello fried fringing fronting gallia galling gettino getto girlfriends ' +
  'grandfathered grandfathers grandino grandmothers grannys grattino gratto guess guesss gulled gupled ' +
  'gusts guzzle guzzles hemlocks hoarse horde horsed hospitable hospitals ignorata ignorato incendiai ' +
  'incendiamo incendiano incendiato incendiavo incendino incentivo indebted indented indorato infected ' +
  'infested infocata infocato inghiotti inghiottii inghiottire inglobata ingoiammo ingoiamo ingoiando ' +
  'ingoiano ingoiante ingoiare ingoiaste ingoiasti ingoiava ingoiavi ingoiavo ingoiera ingolfato ingommata ' +
  'ingommato inhale inhaler inhales iniziata iniziato injected inserted insisted invented inverted invested ' +
  'invocata invocato kitchens lacked lacking lapsed leccano leccavo licquore liking linked linking lipped ' +
  'liquored liquori liquors locked locking lopped lucked lucking maglie manciata mandiamo mandiate ' +
  'maneggiata maneggiato mangiammo mangiamo mangiano mangiante mangiare mangiarla mangiaste mangiasti ' +
  'mangiatina mangiatore mangiava mangiavi mangiavo mangiona marino mario melangolo merito mogli mooing ' +
  'moping mournful mowing nauseai nauseas neighbored neighborly neighbors neighboured neighbourly ' +
  'neighbours nibbles nightshades nipoti offuscai offuscano offuscante offuscare offuscaste offuscasti ' +
  'offuscava offuscavi offuscavo oleanders oleandr oleandre orchi ospedali ospita ospitai ospitale ospito ' +
  'ospizi overbore overdoes overdone overdosed overdoses overrode overtone paralysis paralytics parasitic ' +
  'parsed partners passe passer passes pasted paused piccolos piking poignant poisson poking poppies poppy ' +
  'pregante pregnancy prison prisoned prisoner puppys rabbi rabbia rabbie rabbis rescinding resounding ' +
  'respirai respirano respirante respirasse respiraste respirata respirate respirati respirato respiratore ' +
  'respirava respiravi respiravo respirera respirerei respiriate sallow sallower sanguigne sanguigni ' +
  'sanguigno sanguinai sanguinano sanguinare sanguinata sanguinate sanguinati sanguinato sanguinava ' +
  'sanguinavi sanguinavo sanguinera sanguinosa sbagliare sbattere sbatterei scagliare scaled scalloped ' +
  'scalloping scalped scappata scappato scappiamo scappiate scarring scartata scartato scattano scattata ' +
  'scattate scattati scattato scattava scattavo scattered scatterei scegliere scempiato scolded scollata ' +
  'scollato scolpiamo scolpiate scolpita scolpito scontano scontata scontate scontati scontato scontava ' +
  'scontavo scontrato scoppiai scoppiammo scoppiamo scoppiano scoppiante scoppiaste scoppiasti scoppiava ' +
  'scoppiavi scoppiavo scoppiera scoppietta scoppino scopriamo scopriate scordata scordato scornful ' +
  'scortano scortata scortate scortati scortato scortava scortavo scostano scostata scostate scostati ' +
  'scostato scostava scostavo scottammo scottando scottano scottante scottanti scottare scottaste scottasti ' +
  'scottatura scottava scottavi scottavo scottera scottiamo scottiate scottino scozzata scozzato scrostata ' +
  'scrostato scrutata scrutato scurrying sdoppiamo sdoppiano sdoppiata sdoppiate sdoppiati sdoppiato ' +
  'sdoppiava sdoppiavo seedling selling sfocera sfociato sfogato sfogliare shading shallower shaming ' +
  'shaping sharing sharking shatters shaving shelling sheltered shelving shuttered sitter sizing skilling ' +
  'slaking sleeps slittata slittato slugging sluicing slumming slumping smagliare smelting smontata ' +
  'smontato snaking soaking soffiando soffocammo soffocano soffocante soffocarlo soffocato soffocavo ' +
  'somebodys soppianta soppianto soppiatto sourcing spaniels sparito sparring spattered spelling spellings ' +
  'spellino spettata spettato spilling spirato spiri spirino spirt splattered splurging spogliare spoonfuls ' +
  'spoonsful spostata spostato spurning spurring spurting sputtered squaring squiring staking stalling ' +
  'stammering starring stealing steeling stellina sterling stilling stirring stomaca stomachi stomachs ' +
  'stomaci storpiata storpiato stuttered suonera svegliai svegliamo svegliano svegliante svegliarla ' +
  'svegliarmi svegliarsi svegliasse svegliaste svegliata svegliate svegliati svegliato svegliava svegliavi ' +
  'svegliavo svegliera sveglierei svenato svogliate svoltata svoltato swaggering swearing sweating sweeping ' +
  'swellings swerving swilling swirling swivelling tacciata tacciato tagliammo tagliamo tagliando tagliano ' +
  'tagliante tagliare tagliarla tagliaste tagliasti tagliava tagliavi tagliavo tagliera tagliola tarrier ' +
  'teaspoons teenage terriera terriere terriers thatching threat thriving throats throbbing thronging ' +
  'toddle toddled toddles togliamo tortoises tortuose trampling trebling troubling tumbling unconsciously ' +
  'unconsciouss ustiona ustionai ustionammo ustionando ustionano ustionante ustionare ustionaste ustionasti ' +
  'ustionava ustionavi ustionavo ustioni ustioniamo ustioniate ustionino ustiono vertigine vestitini vicing ' +
  'virino visino visioni visions visitando visitato visiting vizino vociando voltando vomica vomits wading ' +
  'waging waning waving waxing wobble'
).split(' ')
