import type { SpeciesName } from "./species";

/**
 * Bare names that several woods share, so that none of them is taken for the one meant.
 *
 * Columns: the name; whose species it may mean, a Latin genus with a capital or the last letters of a common name; those
 * most often sawn, first. The others follow in the order of the species table.
 *
 * @source common practice, no source
 */
export const GENERA: readonly (readonly [string, readonly string[], readonly SpeciesName[]])[] = [
  ["acacia", ["Acacia"], []],
  ["alder", ["Alnus"], ["red alder"]],
  ["ash", ["Fraxinus"], ["white ash", "green ash", "black ash"]],
  ["aspen", ["aspen"], ["quaking aspen"]],
  ["beech", ["Fagus"], ["American beech"]],
  ["birch", ["Betula"], ["yellow birch", "paper birch", "sweet birch"]],
  ["cedar", ["cedar"], ["eastern redcedar", "western redcedar", "incense-cedar", "northern white-cedar"]],
  ["cherry", ["cherry"], ["black cherry"]],
  ["chestnut", ["Castanea", "chestnut"], ["American chestnut"]],
  ["cottonwood", ["cottonwood"], ["eastern cottonwood"]],
  ["cypress", ["cypress"], ["baldcypress"]],
  ["dogwood", ["dogwood"], ["flowering dogwood"]],
  ["elm", ["Ulmus"], ["American elm", "slippery elm", "Siberian elm"]],
  ["eucalyptus", ["Eucalyptus"], ["blue gum eucalyptus", "river red gum"]],
  ["fir", ["Abies", "Douglas-fir"], ["Douglas-fir", "white fir", "grand fir", "balsam fir"]],
  ["gum", ["gum", "Nyssa", "Eucalyptus"], ["sweetgum", "blackgum", "water tupelo"]],
  ["hemlock", ["hemlock"], ["eastern hemlock", "western hemlock"]],
  ["hickory", ["Carya"], ["shagbark hickory", "pignut hickory", "mockernut hickory"]],
  ["holly", ["Ilex"], ["American holly"]],
  ["hornbeam", ["Carpinus"], ["American hornbeam"]],
  ["juniper", ["Juniperus"], ["eastern redcedar"]],
  ["larch", ["Larix"], ["western larch", "tamarack"]],
  ["linden", ["Tilia"], ["American basswood"]],
  ["locust", ["locust"], ["black locust", "honeylocust"]],
  ["magnolia", ["Magnolia"], ["southern magnolia"]],
  ["maple", ["Acer"], ["sugar maple", "red maple", "silver maple", "bigleaf maple", "Norway maple"]],
  ["mulberry", ["Morus"], []],
  ["oak", ["Quercus"], ["northern red oak", "white oak", "black oak", "pin oak", "bur oak", "post oak", "live oak"]],
  ["pear", ["Pyrus"], []],
  ["pine", ["Pinus"], ["eastern white pine", "ponderosa pine", "loblolly pine", "lodgepole pine", "red pine"]],
  ["plane", ["Platanus"], ["London plane"]],
  ["poplar", ["poplar", "Populus"], ["yellow-poplar", "eastern cottonwood", "quaking aspen"]],
  ["silver fir", ["silver fir"], ["Pacific silver fir"]],
  ["spruce", ["Picea"], ["Engelmann spruce", "white spruce", "Sitka spruce", "Norway spruce"]],
  ["sycamore", ["Platanus", "sycamore maple"], ["American sycamore", "London plane"]],
  ["tupelo", ["Nyssa"], ["blackgum", "water tupelo"]],
  ["walnut", ["Juglans"], ["black walnut", "English walnut"]],
  ["willow", ["Salix"], ["black willow", "weeping willow"]],
  ["yew", ["Taxus"], ["Pacific yew"]],
];
