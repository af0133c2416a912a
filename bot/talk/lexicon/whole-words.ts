import { wordSet } from './concepts.ts'
import type { Lexicon } from './lexicon.ts'

/**
 * Words that are whole as they stand, one slip from one that means something here: `sheet` is no `sweet`, `stained` nothing strained,
 * `prizes` no prices. English: those of SCOWL (see NOTICE) that were mended otherwise, but for other endings of the same word; Italian from
 * memory.
 */
const WHOLE: Readonly<Record<Lexicon['id'], string>> = {
  en: `abide abode abort abound acrid advise aground aided alike allays alloyed alter amble ameer among antic apter arming ascetic ashed ashing
    askew aspiring atone aunts avert averts babble babbles babes babiest bagging bailed bailing bails baits baked balds baled banged banks
    banned barbs bared baring bashed basins baste basted bathe bathes battle battled battles battling bauds bawls bayed baying beached beads
    beaks beams beater beating beats bedside beefy begging belch belling bellow belying benches bending bends beset besting betting bettor
    biased bides bikes binds bitch bitches blabs blacked blase bleated bleed bleeding blent blest blinded blinding blobbing blotted boarder
    boars boated bobbin bobbins bodes bogging bolder bolting bombing bonds bones booby boons boors booth boots booty bores boring botches
    bough boughs bowel bowels bowled bowler bowling boxers brags brain brake brawn breach break breathe breed bribe bride bright brinks
    broil broiled broiler broiling brooks broom brooms broth brother browsed browsing brunch brunches brutish bucked budged budging buggier
    bugler bugling built bulls bungle bungled bunked bunks bunny buoying burble burbles burger burly burping burps burring burrs bused
    busing busying bytes cabled caches caddy cages cakes calmed camel cameo camps cancer canny canoe canoes canter captions carps cases
    casting casts cater cautious caves cease chafe chance chant chapped chaps charge charity chasm chassis chaste chaster checked cheek
    cheeks cheep cheeps chess chimp chins chirp choked chokes chords chorus chuckled chunk cinder clack clacked clacking clacks clank claps
    clarify cleansed cleats click clicks cloak cloaks clods closet closing clothe clothed clothing clout clouted clouting clouts clucked
    clucks coach coaled coaling coarse coast coaster coasts coats coaxing coding coffer coiled coils coking collar colons comas combs
    commando commandos commends compose concealed concert confidant consent contend contest context cooing copier coping corded cords cored
    coring corned corps coups court courted courting courts covert coveted cowered cowing cranes cranked cranking crashed crating creak
    crepe crest crime croak croci crook crooked cropped crouch crude crusted culled curried curse curtain cysts dally damped danker daring
    dawned deceit defile deftest deplete derail derails descent desert detain detains detect deterrent dicing diking dilate dilated dilating
    dinning dipped dipping direr direst discord discorded dividend divined diving doers dogging doily doled doles doling doming donor doomed
    doped dopes doping dosing doted dotes doting doubly doubted douse doves dozed dozes dozing drafting drags drawn dread dress dressier
    driest drily driver drives drone droned droop drooped droops dropping dross drown drowsed drugs duding duped duping dying easel easing
    enact event exalt excise expansive explored extensive facet facets facing faked fakes faking falter faltered faltering falters famed
    farce fared fares faring farms fated fating favour favoured favours fazed fazing feast feeling feint felled fending ferry feuding fibre
    fiends files fillet filmed finale findings fitter fixed flair flare flares flees flicks fliers fliest flint flips flits flocks flogged
    flogs flood flour flout flouting flouts flowered flues flukes flurry fogey folds forger forges forgo forks fount frame freeing fried
    fries frieze friezes frill fringe frogs fulled fussy gales galled games gapes garbage gashes gasolene gasps gated gates gauze gavel
    gazed gazes gelded gentile gently gents gibes gibing gilts glade glads gland glared gloom gloomy gloss glosses glove glowing glows gnaws
    goats goofy gores goring gouge grace graced grafted granted grants grassy graved gravy graze grind groan groans groins groping gross
    growling growls gulled gutting gyrated hails halfway haloed halted halving handled handsful hanged hardest harem hares harry harts haste
    haunt havens hayed heading healing heaped heaping hearing heath heeds heirs helms heroes herpes hires hither hiving hoard hoeing holing
    homie homing honing honked hooded hoofed hooped hooping hooted hopping hosing howls humps hunts hurls ideals imperil impossibly inert
    insert intent invent invest irrigates jigged jingle jingled jogged jointed jolly juicy keeling keels keening kennels kerosine kinda
    kinked kinks knack knacks knots laces ladder laded lading lamps lancing lander lapel lapels larding larks lasers lather latter lauding
    lawyer lawyers leafed leaned leaped leapt leased leases leash leers lending levee lever libel libels liberally licked licks liking
    lilted lilts liming limps liners linger lining linked lisps listed lithe lither litter litters lively livens livest loaded loafs loans
    loath loaves lobbied locking lodger lofted logger loiter loiters lonely looming looms loons looping loops looting loping lords lowing
    lucks lunge lungs macing makers males malting manes mangy manic marches maria marine market marking marred martin marts masking masks
    massage massages massing master mating matts mazes meddling mediation meditation meeting messing meted meting midget midgets midst miked
    mikes milker miller mimed miming mince mining mired miring mirth misting misusing mitts modal modes mooed mooing mooning moped moping
    motel mourning movie mowed mowing muddling mussing mutter myths naked nearby neatly nether neural newer newts niche nicked niece nodes
    noise noose notching noting nought nudes otter otters overlay oversight overstepped overt overtly paced paces packer packers packing
    pains palled paltry pamper pampers pangs panning panted panting parch parches pares parity parse partied pasta pastas pastry patrol
    patting patty paunch paunchier pauper paupers payers pealed peals pecked pecking pecks peeked peeks peeped peeps peered peers peeved
    pepped pepping perch perked perter pester peter petted petting petty pickets pierce pierces pigging piked pikes pilled pills pining
    pinked pinning pitied pitting placid plaice planed planet planked plated plating played pleas pliant plies plods plopped plopping plops
    plotting plumps poach poles poling polled ponder pooped pooping poops pored porting portly ports posed posing posting pouch pouts
    power precis prefect premise premised prevented pricing pricked pricking prickling pricks pride prides priding pries primate prime
    primes primping prince princes prise prises prising prize prizes probable prone propel property propped propping props prosper proud
    provably prude pucks puking pulped pulsed punches punned punts pupped pupping puree purge putted putting quack quality quantify quark
    quartet quirk quote racing radio rafted rafting raged raging raided railed rained raising raking rally ranked ranted ranting raped
    raping rared raring rasher raved raving razed razing readying reals realty reaming reams reaping reaps rearing rears rebind rebinding
    recite recover reeds refuges refutes reliably remainder remainders remote remoter rending repeal repent report reset reside reveres
    reverie revery rewind ricing rides riding riles riling rinks rinses rinsing risers rites roads robber robbery robes rocker roles rooks
    rooting rotating rotund rouge rouse routing rubier ruing ruins rungs runts ruses rutting sacking salmon saloon salve saying scald scalp
    scaly scant scanted scares scars scene scooted scopes scorch scorned scorns scour scoured scout scram scrape scuff seams seared sects
    seeding seize selling selves sensing setter settlers shading shady shaft shafted shafting shaky shames shaming shapes shaping sharing
    sharking sharks shaven shaves shaving shawl sheaf sheared sheaves sheen sheet shelling shied shimmer shimmering shines shingle shins
    shipped shipping ships shire shirt shirted shirting shoeing shooing shopped shopper shore shoring shorted shorts shovel shoving shrew
    shrub shucking shunt sicker sickle sidle siege sifted sifts silicon silks silting simile simplex simply singing singly sings sinning
    sinus sipped siring siting sizzled skate skein skeins skids skies skills skimp skimped skims skipped skunk slack slake slakes slaking
    slashing slate slave slaying sleek sleeks sleeping sleets slicked slicker slicking slides slily slimmed slimmer slinking slinks slobs
    slope sloped slopes slopping sloth slowed sluice sluiced sluices slummer slums slurs sluts smart smarted smarting smelted smelting smock
    smoke smuggest smuggle smuggled snack snake snakes snaking snared sneak snicker snickers snide snitch snooped snort snorted snout snowed
    snuff snuggest snuggle snuggled snugs soaking soars socked socking soled soles sopped sopping sorta souls sowed space spaced spacial
    spank sparing spark sparking sparkle sparse spats spaying spending spied spies spiked spikes spire spited spites splat splice splices
    splint splinting spoilt spokes spoof spool spoonsful sported spouts sprain sprained spraining sprang sprint sprung spunk spying stable
    stacking staff staging stain stained staining stains stakes staling stalls stamp staple starring starved starving staving steak steal
    steals steel steeled steeling steer steered steering stepped stepping stews stickier stickler sticklers stiff stilling stings stingy
    stint stitch stocking stoke stokes stoles stolid stomp stony stool stooped stopping storm stormed stormy stout stows strait stranding
    strangle strap straps stray straying strays strew stride strife stript strive stroke strove strung stung sturdy style suave suckling
    suitably sulking summering summit superb supper surge swamped swaying sweat sweater sweeper sweeping sweeps swept swerving swift swine
    swines swooped tablet tacked tackles takers tales tangs tanks tanner taped tapes tasked tasking tasty taxes teamed teared teethe tempi
    tempo tempt tender tensed tenser tented tents terribly testing testis thanking thaws themes thinker thinkers thinning thong thongs
    though threat threats throb thrust thump thumps ticked tided tides tiled tiles tilling timers tinkles tints tipis toasting toiled token
    tolling tomes tonal tonic tonne toots topic topical toppled torch tough towed tower toxin toying traced trapped treads treed tremble
    trick trickles trifle trifled trill trilled tripe trips trough trowel truck trucked trued truest truing tubas tuned tuning turfed
    turfing turgid twine twins udder unable underlay unfit unfits unseated untie untied useable vanish varnished verses vetted video violent
    vocation wadding wafer wafted wafting wafts wager wagered wailing waist waited waiter waiving waked waken walled wander wandering wands
    waned wanes warded wards warned warns warped warps warred watts waver wavered weave weaver wedging weeps weigh weighs weirdo whereas
    whines whirr whirs whitens whitest wholly whores wicket widow width wince windy winked wises wished wishing worded wording wordy world
    worming worse wound wounder wreak wrens wriggle wright wring writhe writing writs wrung yearns`,
  it: ``,
}

export const isWhole = (word: string, { id }: Lexicon): boolean => wordSet(WHOLE[id]).has(word)
