import { deciding, type HardwareKind, mass, measure, measures, range, word } from "./kind.ts";

const INCHES = "10, 12, 14, 16, 18, 20, 22, 24, 26, 28";
const MILLIMETRES = "250, 300, 350, 400, 450, 500, 550, 600, 650, 700";

const common = {
  length: measure("Its length, if it is to be that one: the longest that fits if nothing is said."),
  lengths: measures("The lengths that are sold.", INCHES, MILLIMETRES),
  extension: deciding(word("How far the drawer comes out.", "full", "three quarters", "over")),
  load: deciding(mass("What a pair of them carries, the drawer's own weight included.", 45)),
};

/** A slide on balls beside the drawer: one member on its side, one on the case. */
export const sideSlide: HardwareKind = {
  kind: "side slide",
  also: ["side slides", "drawer slide", "drawer slides", "ball-bearing slide"],
  meaning: "A slide on balls between the side of a drawer and that of its case, sold in pairs.",
  fields: {
    ...common,
    thick: measure("How thick it is, both members together.", "1/2", "12.7"),
    "side space": deciding(range("The space that it wants on each side.", "12.9 mm to 13.2 mm", "12.9 to 13.2")),
    narrower: measure("How much narrower than its opening a box is, both sides together.", "1 1/32", "26"),
    high: deciding(measure("How high it is.", "1 3/4", "45")),
    "set back": measure("How far its front end stays behind that of the drawer side.", "0", "0"),
  },
  soldIn: "pair",
  basis: "side space: a slide maker's technical note; the rest is common practice, no source",
};

/** A slide that is hidden under the drawer: the box hooks on at the back and locks at the front. */
export const undermountSlide: HardwareKind = {
  kind: "undermount slide",
  also: ["undermount slides", "concealed slide", "concealed slides"],
  meaning: "A slide under a drawer, sold in pairs with the locks for its front.",
  fields: {
    ...common,
    load: deciding(mass("What a pair of them carries, the drawer's own weight included.", 34)),
    narrower: deciding(
      measure("How much narrower than the opening a box is inside, from side to side.", "42 mm", "42"),
    ),
    "most side": measure("The thickest side of a box that goes over it.", "5/8", "16"),
    "bottom up": deciding(measure("How far the bottom lies above the lower edge of the sides.", "1/2", "13")),
    under: measure("The room that it wants under the box.", "9/16", "14"),
    lower: measure("How much lower than its opening the box is, in all.", "1", "25"),
    high: measure("How high its member on the case is, under the sides of the box.", "1/2", "12"),
    wide: measure("How far it reaches in from the inside of the box's side.", "1", "25"),
    "notch wide": measure("How wide the notch at each end of the box's back is.", "1 3/8", "35"),
    "hole up": measure("How far above the underside of the bottom the hole for its hook is.", "7/16", "11"),
    "hole in": measure("How far the hole for its hook is from the inside of the side.", "9/32", "7"),
    hole: measure("The diameter of the hole for its hook.", "1/4", "6"),
    "hole deep": measure("How deep the hole for its hook is.", "3/8", "10"),
  },
  soldIn: "pair",
  basis: "the box by a slide maker's leaflet; notch and hole from memory; the rest is common practice, no source",
};
