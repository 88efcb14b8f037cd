/**
 * Specific gravity of trees that towns plant and that the weight table of 156 species lacks.
 *
 * A row with one record is weak, and so is one whose records lie far apart: the card of the species says so. Lombardy
 * poplar is a form of black poplar and has no row of its own.
 *
 * @source GWDD, mean and ends of its records of the species
 *
 * Columns:
 * species; the common name by which the formulas know it
 * Latin name
 * H hardwood, S softwood
 * records of the species in the database
 * specific gravity of the wood, oven-dry weight over green volume: mean of the records
 * the least of them
 * the most of them
 */
export const TOWN_TREES = [
  ["Norway maple", "Acer platanoides", "H", 2, 0.516, 0.508, 0.525],
  ["sycamore maple", "Acer pseudoplatanus", "H", 2, 0.509, 0.508, 0.51],
  ["hedge maple", "Acer campestre", "H", 1, 0.525, 0.525, 0.525],
  ["London plane", "Platanus acerifolia", "H", 4, 0.553, 0.507, 0.604],
  ["Siberian elm", "Ulmus pumila", "H", 2, 0.544, 0.537, 0.55],
  ["Chinese elm", "Ulmus parvifolia", "H", 1, 0.773, 0.773, 0.773],
  ["English elm", "Ulmus procera", "H", 1, 0.442, 0.442, 0.442],
  ["white mulberry", "Morus alba", "H", 9, 0.601, 0.5, 0.89],
  ["English walnut", "Juglans regia", "H", 3, 0.558, 0.533, 0.591],
  ["Norway spruce", "Picea abies", "S", 1, 0.37, 0.37, 0.37],
  ["ginkgo", "Ginkgo biloba", "S", 2, 0.455, 0.451, 0.458],
  ["blue gum eucalyptus", "Eucalyptus globulus", "H", 11, 0.722, 0.52, 0.804],
  ["river red gum", "Eucalyptus camaldulensis", "H", 16, 0.721, 0.48, 0.973],
  ["red ironbark", "Eucalyptus sideroxylon", "H", 3, 0.925, 0.911, 0.938],
  ["silver dollar gum", "Eucalyptus polyanthemos", "H", 2, 0.893, 0.884, 0.902],
  ["common pear", "Pyrus communis", "H", 2, 0.632, 0.603, 0.661],
  ["southern magnolia", "Magnolia grandiflora", "H", 3, 0.437, 0.37, 0.482],
  ["deodar cedar", "Cedrus deodara", "S", 1, 0.47, 0.47, 0.47],
  ["atlas cedar", "Cedrus atlantica", "S", 1, 0.44, 0.44, 0.44],
  ["horse chestnut", "Aesculus hippocastanum", "H", 1, 0.5, 0.5, 0.5],
  ["Scots pine", "Pinus sylvestris", "S", 5, 0.395, 0.37, 0.422],
  ["Austrian pine", "Pinus nigra", "S", 2, 0.417, 0.414, 0.42],
  ["Italian stone pine", "Pinus pinea", "S", 1, 0.5, 0.5, 0.5],
  ["Aleppo pine", "Pinus halepensis", "S", 1, 0.46, 0.46, 0.46],
  ["Canary Island pine", "Pinus canariensis", "S", 1, 0.61, 0.61, 0.61],
  ["littleleaf linden", "Tilia cordata", "H", 1, 0.422, 0.422, 0.422],
  ["bigleaf linden", "Tilia platyphyllos", "H", 1, 0.422, 0.422, 0.422],
  ["European beech", "Fagus sylvatica", "H", 2, 0.585, 0.585, 0.585],
  ["European ash", "Fraxinus excelsior", "H", 3, 0.57, 0.56, 0.59],
  ["English oak", "Quercus robur", "H", 7, 0.575, 0.52, 0.62],
  ["sessile oak", "Quercus petraea", "H", 2, 0.57, 0.56, 0.58],
  ["holm oak", "Quercus ilex", "H", 1, 0.82, 0.82, 0.82],
  ["cork oak", "Quercus suber", "H", 1, 0.77, 0.77, 0.77],
  ["sawtooth oak", "Quercus acutissima", "H", 5, 0.733, 0.68, 0.801],
  ["silver birch", "Betula pendula", "H", 2, 0.512, 0.5, 0.525],
  ["European hornbeam", "Carpinus betulus", "H", 2, 0.693, 0.68, 0.706],
  ["sweet chestnut", "Castanea sativa", "H", 3, 0.463, 0.43, 0.52],
  ["sweet cherry", "Prunus avium", "H", 1, 0.474, 0.474, 0.474],
  ["apricot", "Prunus armeniaca", "H", 1, 0.675, 0.675, 0.675],
  ["princess tree", "Paulownia tomentosa", "H", 1, 0.28, 0.28, 0.28],
  ["Japanese pagoda tree", "Sophora japonica", "H", 4, 0.635, 0.588, 0.676],
  ["goldenrain tree", "Koelreuteria paniculata", "H", 1, 0.62, 0.62, 0.62],
  ["camphor tree", "Cinnamomum camphora", "H", 5, 0.487, 0.42, 0.62],
  ["dawn redwood", "Metasequoia glyptostroboides", "S", 3, 0.284, 0.278, 0.294],
  ["Monterey cypress", "Cupressus macrocarpa", "S", 1, 0.4, 0.4, 0.4],
  ["Italian cypress", "Cupressus sempervirens", "S", 2, 0.435, 0.38, 0.49],
  ["Japanese cedar", "Cryptomeria japonica", "S", 4, 0.4, 0.31, 0.46],
  ["monkey puzzle", "Araucaria araucana", "S", 2, 0.518, 0.516, 0.52],
  ["olive", "Olea europaea", "H", 2, 0.806, 0.7, 0.913],
  ["jacaranda", "Jacaranda mimosifolia", "H", 2, 0.49, 0.473, 0.507],
  ["silk oak", "Grevillea robusta", "H", 17, 0.521, 0.444, 0.64],
  ["mango", "Mangifera indica", "H", 6, 0.552, 0.48, 0.68],
  ["avocado", "Persea americana", "H", 3, 0.549, 0.516, 0.6],
  ["sweet orange", "Citrus sinensis", "H", 1, 0.78, 0.78, 0.78],
  ["white poplar", "Populus alba", "H", 1, 0.353, 0.353, 0.353],
  ["black poplar", "Populus nigra", "H", 1, 0.353, 0.353, 0.353],
  ["white willow", "Salix alba", "H", 1, 0.284, 0.284, 0.284],
  ["weeping willow", "Salix babylonica", "H", 1, 0.42, 0.42, 0.42],
  ["Chinaberry", "Melia azedarach", "H", 9, 0.438, 0.369, 0.56],
  ["Chinese pistache", "Pistacia chinensis", "H", 2, 0.684, 0.665, 0.704],
  ["Chinese tallow", "Sapium sebiferum", "H", 4, 0.473, 0.441, 0.51],
  ["West Indian mahogany", "Swietenia mahagoni", "H", 2, 0.63, 0.51, 0.75],
  ["monkeypod", "Albizia saman", "H", 2, 0.495, 0.49, 0.5],
  ["blackwood acacia", "Acacia melanoxylon", "H", 8, 0.531, 0.389, 0.637],
  ["silver wattle", "Acacia dealbata", "H", 4, 0.587, 0.568, 0.607],
  ["English holly", "Ilex aquifolium", "H", 1, 0.65, 0.65, 0.65],
  ["English yew", "Taxus baccata", "S", 2, 0.551, 0.551, 0.551],
  ["European larch", "Larix decidua", "S", 1, 0.474, 0.474, 0.474],
  ["European silver fir", "Abies alba", "S", 1, 0.353, 0.353, 0.353],
  ["black alder", "Alnus glutinosa", "H", 3, 0.42, 0.4, 0.439],
  ["rowan", "Sorbus aucuparia", "H", 1, 0.629, 0.629, 0.629],
  ["Russian olive", "Elaeagnus angustifolia", "H", 3, 0.482, 0.431, 0.55],
  ["pepper tree", "Schinus molle", "H", 1, 0.525, 0.525, 0.525],
  ["royal poinciana", "Delonix regia", "H", 4, 0.579, 0.379, 0.8],
  ["banyan fig", "Ficus benghalensis", "H", 3, 0.494, 0.38, 0.59],
] as const;

export type TownTreeName = (typeof TOWN_TREES)[number][0];

/** Check totals, of the file of the database. */
export const TOWN_TREES_TOTALS = { rows: 75, records: 219, mean: 40.414, least: 38.083, most: 43.049 };
