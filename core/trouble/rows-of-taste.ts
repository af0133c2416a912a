import {
  asPlanned,
  canHaveSyrup,
  drier,
  everUnder,
  hasSugar,
  mayFerment,
  missing,
  oddlySweetened,
  olderThan,
  overCeiling,
  plantSugarOver,
  restedUnder,
  steepedUnder,
  steeping,
  stronger,
  sweeter,
  weakerThanPlanned,
} from './conditions.ts'
import { dosedOver, dosedUnder, heavyPieces, offRange, plants, tooLong, tooShort } from './conditions-of-plants.ts'
import { all, always, any, denied, likely, maybe, not, notBought, said, surely } from './logic.ts'
import { cause, danger, type SymptomRow } from './row.ts'

/** What it tastes of. */
export const tasteRows = {
  bitter: {
    asks: ['kernels', 'not_for_drinking', 'plant_unsure'],
    stops: { over_ceiling: overCeiling },
    causes: {
      pith: cause(1, all(likely(plants('citrus')), any(heavyPieces, maybe)), 'pc', ['limonin', 'thibodeau'], {
        remedies: ['sweeter'],
      }),
      too_long: cause(2, likely(tooLong('long', 'citrus')), 'c', ['steep'], { remedies: ['strain'] }),
      by_nature: cause(3, all(likely(plants('bitter')), likely(restedUnder(90))), 'c', ['practice']),
      burnt_sugar: cause(4, all(canHaveSyrup, likely(sweeter(5))), 'm', ['memory']),
      kernels: danger(5, said('stones'), 'p', ['hazards', 'kernel_study'], { leadsTo: 'cracked_stones' }),
      wrong_spirit: danger(6, notBought, 'm', ['memory'], { leadsTo: 'wrong_spirit' }),
      overdosed: danger(7, any(overCeiling, denied('sure')), 'dp', ['hazards'], { leadsTo: 'unknown_plant' }),
    },
  },
  harsh_hot: {
    anyway: ['weaker'],
    asks: ['not_for_drinking', 'fuel', 'varnish'],
    causes: {
      too_strong: cause(1, likely(stronger(32)), 'p', ['nolden', 'thibodeau'], { remedies: ['weaker'] }),
      too_young: cause(2, likely(restedUnder(30)), 'c', ['practice']),
      hot_plant: cause(3, likely(plants('hot')), 'p', ['steep'], { leadsTo: 'too_spicy' }),
      wrong_spirit: danger(4, notBought, 'pm', ['fake_spirit', 'hazards', 'memory'], { leadsTo: 'wrong_spirit' }),
    },
  },
  too_sweet: {
    anyway: ['less_sweet'],
    keeps: { id: 'taste', when: always },
    causes: {
      recipe: cause(1, likely(sweeter(250)), 'd', ['core'], { remedies: ['less_sweet'] }),
      sugar_inside: cause(2, all(surely(steeping), hasSugar), 'd', ['core']),
      no_syrup_yet: cause(3, all(surely(steeping), not(hasSugar), likely(plantSugarOver(0))), 'd', ['core']),
      sweet_plant: cause(4, all(surely(steeping), not(hasSugar)), 'm', ['memory']),
      fruit_sugar: cause(5, all(not(surely(steeping)), likely(plantSugarOver(20))), 'd', ['core'], {
        remedies: ['less_sweet'],
      }),
      sweeter_cold: cause(6, oddlySweetened, 'p', ['tsuzuki'], { remedies: ['less_sweet'] }),
    },
  },
  too_dry_or_sour: {
    anyway: ['sweeter'],
    stops: { vinegar: said('vinegar'), fizzed: said('fizz') },
    causes: {
      little_sugar: cause(1, likely(drier(120)), 'd', ['core'], { remedies: ['sweeter'] }),
      acid_fruit: cause(2, likely(plants('sour')), 'c', ['practice'], { leadsTo: 'too_sour', remedies: ['sweeter'] }),
      vinegar: danger(3, all(everUnder(20), said('vinegar')), 'p', ['aab_wine'], { leadsTo: 'vinegar' }),
    },
  },
  too_weak: {
    anyway: ['stronger'],
    stops: { too_weak: all(everUnder(15), any(said('fizz'), said('vinegar'), said('rotten'), said('growth'))) },
    causes: {
      volumes: cause(1, likely(weakerThanPlanned), 'd', ['core'], { remedies: ['stronger'] }),
      juicy_fruit: cause(2, all(likely(plants('fruit')), likely(steepedUnder(25))), 'd', ['core'], {
        remedies: ['stronger'],
      }),
      evaporated: cause(3, likely(missing(0.03, 0.1)), 'd', ['core'], { remedies: ['stronger'] }),
      on_the_tongue: cause(4, all(likely(asPlanned), likely(drier(150))), 'm', ['memory'], { remedies: ['sweeter'] }),
      believed_strength: cause(5, likely(asPlanned), 'm', ['memory'], { remedies: ['measure', 'correct'] }),
      can_spoil: danger(6, mayFerment, 'd', ['keeping'], { remedies: ['stronger'] }),
    },
  },
  weak_taste: {
    keeps: { id: 'taste', when: always },
    causes: {
      too_little: cause(1, likely(any(dosedUnder, tooShort)), 'c', ['steep']),
      too_cold: cause(2, maybe, 'm', ['memory']),
      wrong_strength: cause(3, likely(offRange(10)), 'p', ['steep']),
      old_plant: cause(4, maybe, 'm', ['memory']),
      scent_gone: cause(5, likely(any(all(plants('citrus'), olderThan(180)), olderThan(365))), 'p', [
        'lemonshu',
        'lemonoil',
        'dugo',
      ]),
      lid: cause(6, likely(missing(0.03, 0.1)), 'm', ['memory'], { leadsTo: 'leaking_lid' }),
    },
  },
  too_sour: {
    anyway: ['sweeter'],
    stops: { vinegar: said('vinegar') },
    causes: {
      acid_fruit: cause(1, likely(plants('sour', 'fruit')), 'cm', ['practice', 'memory'], { remedies: ['sweeter'] }),
      little_sugar: cause(2, likely(drier(150)), 'd', ['core'], { remedies: ['sweeter'] }),
      vinegar: danger(3, all(everUnder(20), said('vinegar')), 'p', ['aab_wine'], { leadsTo: 'vinegar' }),
    },
  },
  too_spicy: {
    causes: {
      hot_plant: cause(
        1,
        likely(any(all(plants('hot'), any(tooLong('hot'), dosedOver(1.2, 'hot'))), plants('hot'))),
        'pm',
        ['steep', 'chilliburn', 'memory'],
        { remedies: ['strain', 'sweeter'] },
      ),
      alcohol: cause(2, likely(stronger(32)), 'p', ['nolden'], { leadsTo: 'harsh_hot', remedies: ['weaker'] }),
      in_the_eyes: danger(3, all(plants('chilli'), maybe), 'p', ['emergency']),
    },
  },
  soapy_perfume: {
    stops: { perfume: said('perfume'), soap: said('foam') },
    causes: {
      too_much: cause(1, likely(plants('perfumed')), 'c', ['steep'], { remedies: ['strain'] }),
      detergent: danger(2, said('foam'), 'm', ['memory']),
      essential_oil: danger(3, said('perfume'), 'd', ['hazards']),
      florist: danger(4, said('perfume'), 'c', ['hazards']),
    },
  },
  cloth_or_paper_taste: {
    stops: { soap: said('foam') },
    causes: {
      paper: cause(1, maybe, 'p', ['paper']),
      detergent: danger(2, said('foam'), 'm', ['memory'], { leadsTo: 'soapy_perfume' }),
      musty_cloth: cause(3, maybe, 'm', ['memory'], { leadsTo: 'musty' }),
    },
  },
  plastic_taste: {
    stops: { plastic: said('plastic') },
    causes: {
      ring: cause(1, maybe, 'm', ['memory']),
      soft_plastic: danger(2, said('plastic'), 'pm', ['plastic', 'fire', 'memory']),
      food_plastic: cause(3, maybe, 'mc', ['fire', 'memory']),
    },
  },
} as const satisfies Readonly<Record<string, SymptomRow>>
