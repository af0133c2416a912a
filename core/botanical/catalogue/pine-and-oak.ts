import { type Group, group, guess, memory } from './rows.ts'

// biome-ignore format: a table, a plant a row
export const pineAndOak: readonly Group[] = [
  // Cones, buds and tips.
  group('wood', {
    state: 'fresh', exchange: [0.5, 1], daysByAnalogy: true, spirit: [40, 70],
    hazards: ['conifer_lookalikes', 'pregnancy_breastfeeding', 'foraging'],
  }, {
    pine_cones: { title: 'Young pine cones (green)', en: 'pine cone+, green pine cone+, young pine cone+',
      it: 'pigna, pigne, pigna verde, pigne verdi, pigna di mugo, pigne di mugo, cirmolo, pigna di cirmolo, ' +
        'pigne di cirmolo',
      latin: 'Pinus mugo, Pinus sylvestris, Pinus pinea',
      months: [6, 7], holds: guess(0.65), kept: [0.3, 0.7], dose: [100, 250, 400], days: [20, 30, 45, 60, 90, 90],
      pieces: { cone: [5, 15, 'estimated'] },
      preparation: ['only_sure_pine_never_yew', 'soft_enough_to_cut', 'never_ponderosa_in_pregnancy'] },
    pine_buds: { title: 'Pine buds / shoots', en: 'pine bud+, pine shoot+, pine tip+',
      it: 'gemma di pino, gemme di pino, germogli di pino, gemme di mugo', latin: 'Pinus sylvestris, Pinus mugo',
      months: [4, 5], holds: guess(0.6), kept: [0.4, 0.8], dose: [50, 100, 200], days: [7, 15, 30, 40, 60, 60],
      preparation: ['only_sure_pine_never_yew', 'check_picking_rules'] },
  }),
  // Cones, buds and tips, from memory.
  group('wood', {
    practice: 'memory', state: 'fresh', exchange: [0.5, 1], kept: [0.4, 0.8], dose: [50, 100, 200],
    days: [7, 14, 30, 60, 60, 60], daysByAnalogy: true, spirit: [40, 60],
    hazards: ['conifer_lookalikes', 'pregnancy_breastfeeding', 'foraging'],
    preparation: ['soft_tips_never_yew', 'check_picking_rules'],
  }, {
    spruce_tips: { title: 'Spruce tips', en: 'spruce tip+, spruce shoot+, spruce bud+',
      it: 'gemma di abete rosso, gemme di abete rosso, germogli di abete rosso', latin: 'Picea abies',
      months: [4, 6], holds: memory(0.75) },
    fir_tips: { title: 'Fir tips', en: 'fir tip+, fir shoot+, fir bud+, Douglas fir tip+',
      it: 'gemma di abete bianco, gemme di abete bianco, gemme di abete', latin: 'Abies alba, Pseudotsuga menziesii',
      months: [4, 6], holds: memory(0.75) },
  }),
  // Wood.
  group('wood', {}, {
    oak_chips: { title: 'Oak chips, toasted', en: 'oak chip+, toasted oak chip+, oak cube+',
      it: 'truciolo di rovere, trucioli di rovere, chips di rovere, rovere tostato', latin: 'Quercus',
      state: 'dried', holds: guess(0.07, undefined, [0.05, 0.1]), exchange: [0.9, 1], kept: [0.6, 1.2],
      dose: [2, 5, 15], days: [3, 14, 45, 90, 30, 30], daysByAnalogy: true, spirit: [35, 65],
      hazards: ['oak_food_grade'], preparation: ['only_chips_for_drinks', 'rinse_dust_taste_weekly'] },
  }),
]
