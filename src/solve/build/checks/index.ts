import type { Finding } from "../../../findings/finding.ts";
import type { Check } from "../../build.ts";
import { onePerPlace } from "../../design/one-per-place.ts";
import { accept } from "./accept.ts";
import { alikeOnce } from "./alike.ts";
import { bareMitreRule } from "./bare-mitre.ts";
import { benchEndTipsRule } from "./bench-end-tips.ts";
import type { Checked, Rule } from "./check.ts";
import { chestWithoutAirRule } from "./chest-without-air.ts";
import { cutterDoesNotExistRule } from "./cutter-does-not-exist.ts";
import { doesNotGoThroughTheDoorRule } from "./does-not-go-through-the-door.ts";
import { catchMissesStrikeRule } from "./doors/catch-misses-strike.ts";
import { closingEdgeRubsRule } from "./doors/closing-edge-rubs.ts";
import { cupMeetsGrooveRule } from "./doors/cup-meets-groove.ts";
import { cupTooDeepRule } from "./doors/cup-too-deep.ts";
import { doorTooThickRule } from "./doors/door-too-thick.ts";
import { doorWithoutCatchRule } from "./doors/door-without-catch.ts";
import { doorWithoutGripRule } from "./doors/door-without-grip.ts";
import { hingeBoundRule } from "./doors/hinge-bound.ts";
import { hingeLeafOffDoorRule } from "./doors/hinge-leaf-off-door.ts";
import { hingeLeafToEdgeRule } from "./doors/hinge-leaf-to-edge.ts";
import { hingeNotLetInRule } from "./doors/hinge-not-let-in.ts";
import { hingeOverlayRule } from "./doors/hinge-overlay.ts";
import { insetDoorWithoutStopRule } from "./doors/inset-door-without-stop.ts";
import { opensTooLittleRule } from "./doors/opens-too-little.ts";
import { shutsWithoutPlayRule } from "./doors/shuts-without-play.ts";
import { tooFewHingesRule } from "./doors/too-few-hinges.ts";
import { drawerNodsRule } from "./drawer-nods.ts";
import { drawerWithoutGripRule } from "./drawer-without-grip.ts";
import { drawerWithoutStopRule } from "./drawer-without-stop.ts";
import { fastenersMeetRule } from "./fasteners-meet.ts";
import { fillsItsFrameRule } from "./fills-its-frame.ts";
import { fittingBreaksOutRule } from "./fitting-breaks-out.ts";
import { fittingScrewComesThroughRule } from "./fitting-screw-comes-through.ts";
import { fixedAcrossGrainRule } from "./fixed-across-grain.ts";
import { footOffFloorRule } from "./foot-off-floor.ts";
import { frontScrewsTooLongRule } from "./front-screws-too-long.ts";
import { glassHoldsNothingRule } from "./glass-holds-nothing.ts";
import { hardwareOffItsPartRule } from "./hardware-off-its-part.ts";
import { hardwareOverlapsRule } from "./hardware-overlaps.ts";
import { hingeLeavesApartRule } from "./hinge-leaves-apart.ts";
import { holeRunsIntoCutRule } from "./hole-runs-into-cut.ts";
import { holesMeetRule } from "./holes-meet.ts";
import { knobScrewDoesNotFitRule } from "./knob-screw-does-not-fit.ts";
import { leftToPlaneRule } from "./left-to-plane.ts";
import { legNotBracedRule } from "./leg-not-braced.ts";
import { lidNotHeldRule } from "./lid-not-held.ts";
import { lidSupportOutOfReachRule } from "./lid-support-out-of-reach.ts";
import { lidWithoutGripRule } from "./lid-without-grip.ts";
import { mortisesMeetRule } from "./mortises-meet.ts";
import { nailHoldsTooLittleRule } from "./nail-holds-too-little.ts";
import { nobodySellsThatThicknessRule } from "./nobody-sells-that-thickness.ts";
import { notMarkedExactlyRule } from "./not-marked-exactly.ts";
import { oneGoodFaceRule } from "./one-good-face.ts";
import { onlyOneStudRule } from "./only-one-stud.ts";
import { pinsMeetInDividerRule } from "./pins-meet-in-divider.ts";
import { pulledOverRule } from "./pulled-over.ts";
import { seatBendsRule } from "./seat-bends.ts";
import { shelfAtAHingeRule } from "./shelf-at-a-hinge.ts";
import { shelfSagsRule } from "./shelf-sags.ts";
import { slabNotFlattenedRule } from "./slab-not-flattened.ts";
import { slideLongerThanCaseRule } from "./slide-longer-than-case.ts";
import { slideNeedsPackingRule } from "./slide-needs-packing.ts";
import { slideOverloadedRule } from "./slide-overloaded.ts";
import { slideSideSpaceRule } from "./slide-side-space.ts";
import { strikesOnItsWayRule } from "./strikes-on-its-way.ts";
import { thinWallRule } from "./thin-wall.ts";
import { tipsOverRule } from "./tips-over.ts";
import { wallScrewTooShortRule } from "./wall-screw-too-short.ts";
import { wallScrewsMissStudsRule } from "./wall-screws-miss-studs.ts";
import { wetLumberRule } from "./wet-lumber.ts";

/** Every check of this version. A new one is a file here and a line in this list. */
const RULES: readonly Rule[] = [
  nailHoldsTooLittleRule,
  nobodySellsThatThicknessRule,
  leftToPlaneRule,
  wetLumberRule,
  hingeLeavesApartRule,
  holeRunsIntoCutRule,
  holesMeetRule,
  fastenersMeetRule,
  mortisesMeetRule,
  bareMitreRule,
  thinWallRule,
  cutterDoesNotExistRule,
  fixedAcrossGrainRule,
  fillsItsFrameRule,
  shelfSagsRule,
  shelfAtAHingeRule,
  seatBendsRule,
  notMarkedExactlyRule,
  slabNotFlattenedRule,
  oneGoodFaceRule,
  pinsMeetInDividerRule,
  slideLongerThanCaseRule,
  slideSideSpaceRule,
  slideNeedsPackingRule,
  slideOverloadedRule,
  drawerNodsRule,
  drawerWithoutGripRule,
  drawerWithoutStopRule,
  frontScrewsTooLongRule,
  benchEndTipsRule,
  chestWithoutAirRule,
  doesNotGoThroughTheDoorRule,
  fittingBreaksOutRule,
  hardwareOverlapsRule,
  hardwareOffItsPartRule,
  fittingScrewComesThroughRule,
  footOffFloorRule,
  glassHoldsNothingRule,
  knobScrewDoesNotFitRule,
  legNotBracedRule,
  lidNotHeldRule,
  lidSupportOutOfReachRule,
  lidWithoutGripRule,
  tipsOverRule,
  pulledOverRule,
  wallScrewTooShortRule,
  onlyOneStudRule,
  wallScrewsMissStudsRule,
  doorTooThickRule,
  cupTooDeepRule,
  hingeBoundRule,
  hingeNotLetInRule,
  hingeLeafOffDoorRule,
  hingeLeafToEdgeRule,
  hingeOverlayRule,
  cupMeetsGrooveRule,
  closingEdgeRubsRule,
  shutsWithoutPlayRule,
  tooFewHingesRule,
  strikesOnItsWayRule,
  opensTooLittleRule,
  insetDoorWithoutStopRule,
  catchMissesStrikeRule,
  doorWithoutCatchRule,
  doorWithoutGripRule,
];

/** What every check says, with what the maker accepts marked as that, and the findings that are left. */
export function check(checked: Checked): { readonly checks: readonly Check[]; readonly findings: readonly Finding[] } {
  const { verdicts, findings } = accept(
    RULES.flatMap((rule) => rule(checked)),
    checked.design.accepted ?? [],
  );
  const found = verdicts.flatMap((verdict) => verdict.finding ?? []);
  return {
    checks: verdicts.map((verdict) => verdict.check),
    findings: alikeOnce(onePerPlace([...found, ...findings])),
  };
}
