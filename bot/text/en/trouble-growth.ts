import type { TroubleCauses } from '../messages/trouble.ts'
import { told } from './trouble-told.ts'

/** Causes of what grows, floats or gives off gas, and of what became of the colour. */
export const growthTexts = {
  mould: {
    fruit_above: told(
      'mould on fruit that stands out of the liquid',
      'Under a lamp it’s furry or dusty, often coloured.',
      'Throw it all away. Don’t sniff, skim or strain it, and scald the jar.',
      'Threads and toxins go deeper than you see, and spirit doesn’t undo them. Weigh the fruit down next time.',
    ),
    film_yeast: told(
      'film yeast on a weak jar',
      'A flat white or wrinkled skin without any fur.',
      'Throw it away: it’s spoiling.',
    ),
    not_mould: told(
      'pith, pectin, spent fruit or fat, not mould',
      'It’s under the liquid, smooth, and has no fur, dust or colour. Fat melts between your fingers.',
      'Harmless. If you’re still in doubt, throw it away.',
    ),
  },
  pink_orange_slime: {
    growing: told(
      'bacteria or yeast growing',
      'It wipes off as slime, or sits there in spots.',
      'Throw it all away. Scald the ring and lid, or bin them too.',
    ),
    dye: told(
      'dye from the fruit, or rust from the lid',
      'It stains kitchen paper, without any slime.',
      'Harmless. Wipe it off, and change a rusty lid.',
    ),
  },
  skin_on_top: {
    fat: told('fat from the plant', 'It melts between warm fingers.', 'Chill it and lift the fat off.'),
    cream: told(
      'cream rising or drying',
      'There’s cream in it.',
      'Fresh today and cold: shake it. Two days old, or left out: throw it away.',
    ),
    film_yeast: told(
      'film yeast',
      'A flat white film, wrinkled later, with air above it.',
      'Throw it away: it’s spoiling already.',
    ),
    mould: told('mould', 'Furry under a lamp.', 'Throw it all away. No skimming.'),
    pectin: told('a skin of pectin or dust', 'It’s stringy and goes when you stir.', 'Harmless. Skim it or strain it.'),
  },
  floating_bits: {
    light_fruit: told(
      'seeds, skins and fruit lighter than the liquid',
      'They’re clean and bare.',
      'Harmless. Weigh them down or turn the jar daily, and sieve them out.',
      'Fruit that stays above the liquid goes mouldy.',
    ),
    mould: told('islands of mould', 'Fur, dust or colour under a lamp.', 'Throw it all away.'),
    flies: told('insects', 'Look closely.', 'One or two in a strong jar: strain them out. Many: throw it away.'),
    crumbs: told(
      'crumbs of cork, paper or cloth',
      'Brown crumbs or white fibres, clean.',
      'Harmless. Strain it through wetted paper.',
    ),
  },
  insects: {
    few: told(
      'one or two that fell in',
      'You can count them.',
      'Strain it through paper. Keep it for yourself: give none of it away.',
      'Tie the cover down next time.',
    ),
    many: told('many, or a weak jar they soured', 'They bring vinegar bacteria.', 'Throw it away.'),
  },
  hairs_or_spines: {
    rosehip: told(
      'hairs from the rosehips',
      'Fine hairs in a glass held to a lamp.',
      'Strain it twice through muslin folded in four, then wetted paper. Don’t drink it before it’s clear.',
    ),
    prickly_pear: told(
      'hairs from the prickly pear',
      'Stiff fine hairs.',
      'Cloth, then paper, with gloves on. Peel it next time.',
    ),
    mould: told('threads of mould', 'Fur or dust under a lamp.', 'Throw it all away.'),
  },
  fermenting: {
    yeast: told(
      'yeast at work',
      'It goes on, and smells of bread.',
      'Gloves, goggles, a towel round it. Chill it, and loosen the lid once it’s cold.',
      'Don’t shake, seal, bottle or give it away. If it’s fruit, never fell under 15 % and smells only of bread, wait till it’s' +
        ' quiet. Then bring it up to 22 % or more, lid loose, and watch it for four weeks. Keep that for your own table.' +
        ' Throw anything else away.',
    ),
    air: told(
      'air leaving the fruit in its first days',
      'Bubbles come from the fruit and stop by themselves. No hiss, no smell of bread.',
      'Harmless. If it goes on past three days, treat it as fermenting.',
    ),
    shaken: told('foam from shaking', 'It’s gone within an hour.', 'Harmless.'),
  },
  pressure: {
    yeast: told(
      'yeast at work under a closed lid',
      'It hisses again each time you open it.',
      'Towel and gloves, into the fridge, and loosen it only once it’s cold, away from your face.',
    ),
    warm_room: told(
      'warmth, frost or overfilling',
      'It hisses only once, and smells as before.',
      'Cool it, let the air out once with your face away, and leave 5 % room.',
    ),
    low_acid: told(
      'a weak jar with garlic or vegetables: botulism',
      'There may be no smell and no fizz.',
      'Throw it away unopened and untasted, in a bag.',
    ),
  },
  curdled: {
    met_acid: told(
      'cream that met acid or strong spirit',
      'It split as you poured, and smells fresh.',
      'Ugly, not unsafe: cook with it today.',
      'Next time mix pasteurised or UHT cream in a jug with cold liqueur. Keep it in the fridge and use it within two days.',
    ),
    soured: told('cream that soured or got warm', 'It split later, or stood out.', 'Throw it away, untasted.'),
  },
  leaves_went_black: {
    air: told(
      'the leaf’s own enzymes and air',
      'Dark but firm, and they smell of herb.',
      'Harmless. Strain it now: 1 to 3 days are enough, and any longer tastes of hay.',
      'Next time use whole dry leaves, strong spirit, and keep them covered.',
    ),
    metal: told(
      'iron or copper',
      'Metal touched it.',
      'Into glass today. If it stood long in copper, zinc or aluminium, throw it away.',
    ),
    rot: told('rot in a weak jar', 'It’s slimy, or smells of a pond.', 'Throw it away.'),
  },
  brown: {
    chlorophyll: told(
      'the green of the leaf breaking down',
      'It happens within hours or weeks.',
      'Normal. Keep it dark and drink it young.',
    ),
    oxidised: told(
      'pale fruit browning in air',
      'Fruit sticks out of the liquid. Look there for fur too.',
      'Top it up with spirit of the same strength, weigh the fruit down, add a little lemon juice.',
    ),
    light: told('light and warmth', 'It stood in a clear bottle.', 'Harmless. Keep it dark and cool.'),
    brown_sugar: told(
      'brown sugar, treacle or dark honey',
      'It was brown from the start.',
      'Normal. White sugar next time.',
    ),
    metal: told(
      'iron or copper and the fruit’s tannin',
      'Grey, blue-black or brown within a day of touching metal.',
      'Into glass today. If it stood long in copper, zinc or aluminium, throw it away.',
    ),
  },
  faded: {
    red_breaks_down: told(
      'the red of fruit breaking down',
      'It fades over weeks. At 30 °C half is gone in about 6, and in the fridge it lasts several times longer.',
      'Harmless. Keep it dark, in the fridge, and drink it within months.',
    ),
    too_little_acid: told(
      'too little acid for the red',
      'It went grey or blue, and a drop of lemon in a spoonful brings it back.',
      'Harmless. Stir in a little lemon juice.',
    ),
    bleach: told(
      'bleach or cleaner left in the jar',
      'The colour went within hours, and it smells of swimming pool.',
      'Throw it away. Rinse jars with plenty of hot water.',
    ),
  },
  black_or_metal: {
    iron: told(
      'iron with tannin: a rusty lid, an old pan',
      'It went grey, blue-black or brown within about a day.',
      'Strain it into a new jar. With flakes of rust it isn’t worth keeping.',
    ),
    own_colour: told('its own colour', 'No metal touched it.', 'Normal.'),
    copper: told(
      'copper, brass or bronze',
      'A white deposit within days, a green or blue stain, a taste of metal.',
      'If it was in there longer than it takes to make a syrup, or anything’s green, throw it away.',
    ),
    zinc: told(
      'zinc, aluminium, pewter, solder or chipped enamel',
      'It stood in it for hours.',
      'Throw it away: zinc makes you sick within the hour, lead is worse.',
    ),
  },
  fruit_went_pale: {
    spent: told(
      'spent fruit: its colour and oil are in the spirit',
      'Smooth, pale, under the liquid, without fur.',
      'Normal, and a sign that it’s ready to strain.',
    ),
    fur: told('white fur', 'It’s on fruit above the liquid, and furry under a lamp.', 'Throw it all away.'),
    shrivelled: told(
      'strong spirit, drawing water out',
      'The fruit is tough and shrivelled.',
      'Normal. The fruit isn’t worth eating, and none of it is for children or pets.',
    ),
  },
  garlic_or_vegetable: {
    botulism: told(
      'a weak jar, or oil, with vegetables in it: botulism',
      'No smell, fizz or taste warns you.',
      'Throw it away untasted. For double vision or slurred speech after drinking, call the emergency number.',
    ),
    blue_garlic: told('garlic turning blue or green in acid', 'Only the colour changed.', 'Harmless.'),
  },
} satisfies Partial<TroubleCauses>
