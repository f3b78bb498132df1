// Written by scripts/catalogue.mjs from the files in rules/. Do not edit.
import type { Rule } from "./finding.ts";
import { alikeNotOnOneSheet } from "./rules/alike-not-on-one-sheet.ts";
import { alikeOfTwoStocks } from "./rules/alike-of-two-stocks.ts";
import { ambiguousName } from "./rules/ambiguous-name.ts";
import { anchorCircle } from "./rules/anchor-circle.ts";
import { assemblyCircle } from "./rules/assembly-circle.ts";
import { attitudeDisagrees } from "./rules/attitude-disagrees.ts";
import { bandIsDeducted } from "./rules/band-is-deducted.ts";
import { bandNotOnEdge } from "./rules/band-not-on-edge.ts";
import { bareMitre } from "./rules/bare-mitre.ts";
import { bareWordInBraces } from "./rules/bare-word-in-braces.ts";
import { benchEndTips } from "./rules/bench-end-tips.ts";
import { betweenMarks } from "./rules/between-marks.ts";
import { betweenWhich } from "./rules/between-which.ts";
import { boltTooShort } from "./rules/bolt-too-short.ts";
import { bracketNotClosed } from "./rules/bracket-not-closed.ts";
import { bridleNeedsAnEnd } from "./rules/bridle-needs-an-end.ts";
import { catchMissesStrike } from "./rules/catch-misses-strike.ts";
import { characterNotInType } from "./rules/character-not-in-type.ts";
import { chestWithoutAir } from "./rules/chest-without-air.ts";
import { choiceChangesNothing } from "./rules/choice-changes-nothing.ts";
import { choiceUnknown } from "./rules/choice-unknown.ts";
import { choiceWithoutValue } from "./rules/choice-without-value.ts";
import { circle } from "./rules/circle.ts";
import { closingEdgeRubs } from "./rules/closing-edge-rubs.ts";
import { commaInBraces } from "./rules/comma-in-braces.ts";
import { controlCharacter } from "./rules/control-character.ts";
import { countNotWhole } from "./rules/count-not-whole.ts";
import { crossDowelNeedsRoom } from "./rules/cross-dowel-needs-room.ts";
import { cupMeetsGroove } from "./rules/cup-meets-groove.ts";
import { cupTooDeep } from "./rules/cup-too-deep.ts";
import { curveDoesNotFit } from "./rules/curve-does-not-fit.ts";
import { cutterDoesNotExist } from "./rules/cutter-does-not-exist.ts";
import { dashBeforeMeasure } from "./rules/dash-before-measure.ts";
import { decimalComma } from "./rules/decimal-comma.ts";
import { divisionByZero } from "./rules/division-by-zero.ts";
import { doesNotGoThroughTheDoor } from "./rules/does-not-go-through-the-door.ts";
import { doorTooThick } from "./rules/door-too-thick.ts";
import { doorWithoutCatch } from "./rules/door-without-catch.ts";
import { doorWithoutGrip } from "./rules/door-without-grip.ts";
import { dovetailDoesNotFit } from "./rules/dovetail-does-not-fit.ts";
import { dowelDoesNotFit } from "./rules/dowel-does-not-fit.ts";
import { drawerNods } from "./rules/drawer-nods.ts";
import { drawerWithoutGrip } from "./rules/drawer-without-grip.ts";
import { drawerWithoutStop } from "./rules/drawer-without-stop.ts";
import { duplicateKey } from "./rules/duplicate-key.ts";
import { emptySource } from "./rules/empty-source.ts";
import { emptyValue } from "./rules/empty-value.ts";
import { errorNotAccepted } from "./rules/error-not-accepted.ts";
import { fastenerNeedsRoom } from "./rules/fastener-needs-room.ts";
import { fastenersMeet } from "./rules/fasteners-meet.ts";
import { fillsItsFrame } from "./rules/fills-its-frame.ts";
import { fingersDoNotFit } from "./rules/fingers-do-not-fit.ts";
import { fitsNothing } from "./rules/fits-nothing.ts";
import { fittingBreaksOut } from "./rules/fitting-breaks-out.ts";
import { fittingScrewComesThrough } from "./rules/fitting-screw-comes-through.ts";
import { fixedAcrossGrain } from "./rules/fixed-across-grain.ts";
import { footOffFloor } from "./rules/foot-off-floor.ts";
import { fractionAfterDivision } from "./rules/fraction-after-division.ts";
import { frontScrewsTooLong } from "./rules/front-screws-too-long.ts";
import { glassHoldsNothing } from "./rules/glass-holds-nothing.ts";
import { gluedUp } from "./rules/glued-up.ts";
import { hardwareOffItsPart } from "./rules/hardware-off-its-part.ts";
import { hardwareOverlaps } from "./rules/hardware-overlaps.ts";
import { hashStartsComment } from "./rules/hash-starts-comment.ts";
import { headNotInJoint } from "./rules/head-not-in-joint.ts";
import { hingeBound } from "./rules/hinge-bound.ts";
import { hingeLeafOffDoor } from "./rules/hinge-leaf-off-door.ts";
import { hingeLeafToEdge } from "./rules/hinge-leaf-to-edge.ts";
import { hingeLeavesApart } from "./rules/hinge-leaves-apart.ts";
import { hingeNotLetIn } from "./rules/hinge-not-let-in.ts";
import { hingeOverlay } from "./rules/hinge-overlay.ts";
import { holdStillAlongGrain } from "./rules/hold-still-along-grain.ts";
import { holeRunsIntoCut } from "./rules/hole-runs-into-cut.ts";
import { holesMeet } from "./rules/holes-meet.ts";
import { housingTooDeep } from "./rules/housing-too-deep.ts";
import { hyphenInFormula } from "./rules/hyphen-in-formula.ts";
import { hyphenReadAsMeasure } from "./rules/hyphen-read-as-measure.ts";
import { includeNotFound } from "./rules/include-not-found.ts";
import { indentation } from "./rules/indentation.ts";
import { insetDoorWithoutStop } from "./rules/inset-door-without-stop.ts";
import { jointDoesNotTouch } from "./rules/joint-does-not-touch.ts";
import { jointWantsAFace } from "./rules/joint-wants-a-face.ts";
import { jointWantsSquare } from "./rules/joint-wants-square.ts";
import { jointWithItself } from "./rules/joint-with-itself.ts";
import { keyNotText } from "./rules/key-not-text.ts";
import { kindsDoNotMix } from "./rules/kinds-do-not-mix.ts";
import { knobScrewDoesNotFit } from "./rules/knob-screw-does-not-fit.ts";
import { lapDoesNotLap } from "./rules/lap-does-not-lap.ts";
import { largerThanAnySheet } from "./rules/larger-than-any-sheet.ts";
import { legNotBraced } from "./rules/leg-not-braced.ts";
import { lengthIncludesTenons } from "./rules/length-includes-tenons.ts";
import { lidNotHeld } from "./rules/lid-not-held.ts";
import { lidSupportOutOfReach } from "./rules/lid-support-out-of-reach.ts";
import { lidWithoutGrip } from "./rules/lid-without-grip.ts";
import { likeCircle } from "./rules/like-circle.ts";
import { likeOfGroup } from "./rules/like-of-group.ts";
import { likeOfMirror } from "./rules/like-of-mirror.ts";
import { lineWithoutColon } from "./rules/line-without-colon.ts";
import { littleLeftToPlane } from "./rules/little-left-to-plane.ts";
import { longerThanAnyBoard } from "./rules/longer-than-any-board.ts";
import { makingSizeNotPositive } from "./rules/making-size-not-positive.ts";
import { measureNotRead } from "./rules/measure-not-read.ts";
import { measureTooLarge } from "./rules/measure-too-large.ts";
import { measuredStockUnknown } from "./rules/measured-stock-unknown.ts";
import { measuresMissing } from "./rules/measures-missing.ts";
import { measuresNotItsName } from "./rules/measures-not-its-name.ts";
import { measuresOutsideRange } from "./rules/measures-outside-range.ts";
import { mergeNotSettings } from "./rules/merge-not-settings.ts";
import { mirrorWithoutDirection } from "./rules/mirror-without-direction.ts";
import { missingKey } from "./rules/missing-key.ts";
import { mitreNeedsACorner } from "./rules/mitre-needs-a-corner.ts";
import { moreThanOneDocument } from "./rules/more-than-one-document.ts";
import { mortiseBreaksOut } from "./rules/mortise-breaks-out.ts";
import { mortisesMeet } from "./rules/mortises-meet.ts";
import { movementHoleTooSmall } from "./rules/movement-hole-too-small.ts";
import { nailHoldsTooLittle } from "./rules/nail-holds-too-little.ts";
import { namesNoStep } from "./rules/names-no-step.ts";
import { needsQuotes } from "./rules/needs-quotes.ts";
import { nestedTooDeep } from "./rules/nested-too-deep.ts";
import { noOwnStep } from "./rules/no-own-step.ts";
import { noPieceToMeasure } from "./rules/no-piece-to-measure.ts";
import { noPlaneToEndOn } from "./rules/no-plane-to-end-on.ts";
import { noPossibleOrder } from "./rules/no-possible-order.ts";
import { noRoom } from "./rules/no-room.ts";
import { noRoomForIt } from "./rules/no-room-for-it.ts";
import { noTipRestraint } from "./rules/no-tip-restraint.ts";
import { nobodySellsThatThickness } from "./rules/nobody-sells-that-thickness.ts";
import { notASizeOf } from "./rules/not-a-size-of.ts";
import { notInThisVersion } from "./rules/not-in-this-version.ts";
import { notMarkedExactly } from "./rules/not-marked-exactly.ts";
import { notOneStep } from "./rules/not-one-step.ts";
import { notUtf8 } from "./rules/not-utf-8.ts";
import { nothingLeftToFlatten } from "./rules/nothing-left-to-flatten.ts";
import { nothingToAccept } from "./rules/nothing-to-accept.ts";
import { nothingToHold } from "./rules/nothing-to-hold.ts";
import { oneGoodFaceSeenFromBoth } from "./rules/one-good-face-seen-from-both.ts";
import { onlyOneStud } from "./rules/only-one-stud.ts";
import { openingNotHeld } from "./rules/opening-not-held.ts";
import { opensTooLittle } from "./rules/opens-too-little.ts";
import { outsideMissed } from "./rules/outside-missed.ts";
import { outsideMissing } from "./rules/outside-missing.ts";
import { parameterMissing } from "./rules/parameter-missing.ts";
import { partFloats } from "./rules/part-floats.ts";
import { partsOverlap } from "./rules/parts-overlap.ts";
import { pinNeedsWood } from "./rules/pin-needs-wood.ts";
import { pinsMeetInDivider } from "./rules/pins-meet-in-divider.ts";
import { placeMissing } from "./rules/place-missing.ts";
import { placesDisagree } from "./rules/places-disagree.ts";
import { planVersion } from "./rules/plan-version.ts";
import { planedThickerThanSold } from "./rules/planed-thicker-than-sold.ts";
import { pocketNeedsRoom } from "./rules/pocket-needs-room.ts";
import { precisionStep } from "./rules/precision-step.ts";
import { pulledOver } from "./rules/pulled-over.ts";
import { quotesCloseEarly } from "./rules/quotes-close-early.ts";
import { quotesNotClosed } from "./rules/quotes-not-closed.ts";
import { rangeBackwards } from "./rules/range-backwards.ts";
import { reservedName } from "./rules/reserved-name.ts";
import { roughNeedsPlaning } from "./rules/rough-needs-planing.ts";
import { screwComesThrough } from "./rules/screw-comes-through.ts";
import { screwNearEdge } from "./rules/screw-near-edge.ts";
import { screwSizeUnknown } from "./rules/screw-size-unknown.ts";
import { screwTooShort } from "./rules/screw-too-short.ts";
import { seatBends } from "./rules/seat-bends.ts";
import { seatNotChecked } from "./rules/seat-not-checked.ts";
import { seatsNotWhole } from "./rules/seats-not-whole.ts";
import { settingUnknown } from "./rules/setting-unknown.ts";
import { shapeLeavesNothing } from "./rules/shape-leaves-nothing.ts";
import { shelfAtAHinge } from "./rules/shelf-at-a-hinge.ts";
import { shelfCannotComeOut } from "./rules/shelf-cannot-come-out.ts";
import { shelfSags } from "./rules/shelf-sags.ts";
import { shoulderStandsOpen } from "./rules/shoulder-stands-open.ts";
import { shutsWithoutPlay } from "./rules/shuts-without-play.ts";
import { sizeAndOutside } from "./rules/size-and-outside.ts";
import { sizeNotPositive } from "./rules/size-not-positive.ts";
import { sizeOutOfRange } from "./rules/size-out-of-range.ts";
import { slabNotFlattened } from "./rules/slab-not-flattened.ts";
import { slideLongerThanCase } from "./rules/slide-longer-than-case.ts";
import { slideNeedsPacking } from "./rules/slide-needs-packing.ts";
import { slideOverloaded } from "./rules/slide-overloaded.ts";
import { slideSideSpace } from "./rules/slide-side-space.ts";
import { slidesOnItsFace } from "./rules/slides-on-its-face.ts";
import { slidingTailTooThin } from "./rules/sliding-tail-too-thin.ts";
import { spaceAfterColon } from "./rules/space-after-colon.ts";
import { splineDoesNotFit } from "./rules/spline-does-not-fit.ts";
import { stockHasNoWidth } from "./rules/stock-has-no-width.ts";
import { stockSizeNotPositive } from "./rules/stock-size-not-positive.ts";
import { stopNotAlongHousing } from "./rules/stop-not-along-housing.ts";
import { strikesOnItsWay } from "./rules/strikes-on-its-way.ts";
import { stripNotInARow } from "./rules/strip-not-in-a-row.ts";
import { tabIndent } from "./rules/tab-indent.ts";
import { tenonTooBig } from "./rules/tenon-too-big.ts";
import { tenonsDoNotMeet } from "./rules/tenons-do-not-meet.ts";
import { textTooLong } from "./rules/text-too-long.ts";
import { textWithColon } from "./rules/text-with-colon.ts";
import { thickerThanItsStock } from "./rules/thicker-than-its-stock.ts";
import { thinWall } from "./rules/thin-wall.ts";
import { tipsOver } from "./rules/tips-over.ts";
import { tooFewHinges } from "./rules/too-few-hinges.ts";
import { tooManyFasteners } from "./rules/too-many-fasteners.ts";
import { tooMuch } from "./rules/too-much.ts";
import { turnEdge } from "./rules/turn-edge.ts";
import { unitsDoubtful } from "./rules/units-doubtful.ts";
import { unknownAnchor } from "./rules/unknown-anchor.ts";
import { unknownAssembly } from "./rules/unknown-assembly.ts";
import { unknownFunction } from "./rules/unknown-function.ts";
import { unknownHardware } from "./rules/unknown-hardware.ts";
import { unknownHardwareKind } from "./rules/unknown-hardware-kind.ts";
import { unknownKey } from "./rules/unknown-key.ts";
import { unknownName } from "./rules/unknown-name.ts";
import { unknownSpecies } from "./rules/unknown-species.ts";
import { unknownStock } from "./rules/unknown-stock.ts";
import { unknownStockWords } from "./rules/unknown-stock-words.ts";
import { unknownUnit } from "./rules/unknown-unit.ts";
import { unknownWord } from "./rules/unknown-word.ts";
import { unusableName } from "./rules/unusable-name.ts";
import { wallScrewTooShort } from "./rules/wall-screw-too-short.ts";
import { wallScrewsMissStuds } from "./rules/wall-screws-miss-studs.ts";
import { wedgesNeedThrough } from "./rules/wedges-need-through.ts";
import { wetLumber } from "./rules/wet-lumber.ts";
import { whenNotRead } from "./rules/when-not-read.ts";
import { whichWayGrain } from "./rules/which-way-grain.ts";
import { whichWayRound } from "./rules/which-way-round.ts";
import { widerThanAnyBoard } from "./rules/wider-than-any-board.ts";
import { wishImpossible } from "./rules/wish-impossible.ts";
import { wrongKind } from "./rules/wrong-kind.ts";
import { wrongValue } from "./rules/wrong-value.ts";
import { yamlProblem } from "./rules/yaml-problem.ts";
import { yamlTag } from "./rules/yaml-tag.ts";
import { yamlVersion } from "./rules/yaml-version.ts";

/** Every rule, sorted by name. */
export const catalogue: readonly Rule<never>[] = [
  alikeNotOnOneSheet,
  alikeOfTwoStocks,
  ambiguousName,
  anchorCircle,
  assemblyCircle,
  attitudeDisagrees,
  bandIsDeducted,
  bandNotOnEdge,
  bareMitre,
  bareWordInBraces,
  benchEndTips,
  betweenMarks,
  betweenWhich,
  boltTooShort,
  bracketNotClosed,
  bridleNeedsAnEnd,
  catchMissesStrike,
  characterNotInType,
  chestWithoutAir,
  choiceChangesNothing,
  choiceUnknown,
  choiceWithoutValue,
  circle,
  closingEdgeRubs,
  commaInBraces,
  controlCharacter,
  countNotWhole,
  crossDowelNeedsRoom,
  cupMeetsGroove,
  cupTooDeep,
  curveDoesNotFit,
  cutterDoesNotExist,
  dashBeforeMeasure,
  decimalComma,
  divisionByZero,
  doesNotGoThroughTheDoor,
  doorTooThick,
  doorWithoutCatch,
  doorWithoutGrip,
  dovetailDoesNotFit,
  dowelDoesNotFit,
  drawerNods,
  drawerWithoutGrip,
  drawerWithoutStop,
  duplicateKey,
  emptySource,
  emptyValue,
  errorNotAccepted,
  fastenerNeedsRoom,
  fastenersMeet,
  fillsItsFrame,
  fingersDoNotFit,
  fitsNothing,
  fittingBreaksOut,
  fittingScrewComesThrough,
  fixedAcrossGrain,
  footOffFloor,
  fractionAfterDivision,
  frontScrewsTooLong,
  glassHoldsNothing,
  gluedUp,
  hardwareOffItsPart,
  hardwareOverlaps,
  hashStartsComment,
  headNotInJoint,
  hingeBound,
  hingeLeafOffDoor,
  hingeLeafToEdge,
  hingeLeavesApart,
  hingeNotLetIn,
  hingeOverlay,
  holdStillAlongGrain,
  holeRunsIntoCut,
  holesMeet,
  housingTooDeep,
  hyphenInFormula,
  hyphenReadAsMeasure,
  includeNotFound,
  indentation,
  insetDoorWithoutStop,
  jointDoesNotTouch,
  jointWantsAFace,
  jointWantsSquare,
  jointWithItself,
  keyNotText,
  kindsDoNotMix,
  knobScrewDoesNotFit,
  lapDoesNotLap,
  largerThanAnySheet,
  legNotBraced,
  lengthIncludesTenons,
  lidNotHeld,
  lidSupportOutOfReach,
  lidWithoutGrip,
  likeCircle,
  likeOfGroup,
  likeOfMirror,
  lineWithoutColon,
  littleLeftToPlane,
  longerThanAnyBoard,
  makingSizeNotPositive,
  measureNotRead,
  measureTooLarge,
  measuredStockUnknown,
  measuresMissing,
  measuresNotItsName,
  measuresOutsideRange,
  mergeNotSettings,
  mirrorWithoutDirection,
  missingKey,
  mitreNeedsACorner,
  moreThanOneDocument,
  mortiseBreaksOut,
  mortisesMeet,
  movementHoleTooSmall,
  nailHoldsTooLittle,
  namesNoStep,
  needsQuotes,
  nestedTooDeep,
  noOwnStep,
  noPieceToMeasure,
  noPlaneToEndOn,
  noPossibleOrder,
  noRoom,
  noRoomForIt,
  noTipRestraint,
  nobodySellsThatThickness,
  notASizeOf,
  notInThisVersion,
  notMarkedExactly,
  notOneStep,
  notUtf8,
  nothingLeftToFlatten,
  nothingToAccept,
  nothingToHold,
  oneGoodFaceSeenFromBoth,
  onlyOneStud,
  openingNotHeld,
  opensTooLittle,
  outsideMissed,
  outsideMissing,
  parameterMissing,
  partFloats,
  partsOverlap,
  pinNeedsWood,
  pinsMeetInDivider,
  placeMissing,
  placesDisagree,
  planVersion,
  planedThickerThanSold,
  pocketNeedsRoom,
  precisionStep,
  pulledOver,
  quotesCloseEarly,
  quotesNotClosed,
  rangeBackwards,
  reservedName,
  roughNeedsPlaning,
  screwComesThrough,
  screwNearEdge,
  screwSizeUnknown,
  screwTooShort,
  seatBends,
  seatNotChecked,
  seatsNotWhole,
  settingUnknown,
  shapeLeavesNothing,
  shelfAtAHinge,
  shelfCannotComeOut,
  shelfSags,
  shoulderStandsOpen,
  shutsWithoutPlay,
  sizeAndOutside,
  sizeNotPositive,
  sizeOutOfRange,
  slabNotFlattened,
  slideLongerThanCase,
  slideNeedsPacking,
  slideOverloaded,
  slideSideSpace,
  slidesOnItsFace,
  slidingTailTooThin,
  spaceAfterColon,
  splineDoesNotFit,
  stockHasNoWidth,
  stockSizeNotPositive,
  stopNotAlongHousing,
  strikesOnItsWay,
  stripNotInARow,
  tabIndent,
  tenonTooBig,
  tenonsDoNotMeet,
  textTooLong,
  textWithColon,
  thickerThanItsStock,
  thinWall,
  tipsOver,
  tooFewHinges,
  tooManyFasteners,
  tooMuch,
  turnEdge,
  unitsDoubtful,
  unknownAnchor,
  unknownAssembly,
  unknownFunction,
  unknownHardware,
  unknownHardwareKind,
  unknownKey,
  unknownName,
  unknownSpecies,
  unknownStock,
  unknownStockWords,
  unknownUnit,
  unknownWord,
  unusableName,
  wallScrewTooShort,
  wallScrewsMissStuds,
  wedgesNeedThrough,
  wetLumber,
  whenNotRead,
  whichWayGrain,
  whichWayRound,
  widerThanAnyBoard,
  wishImpossible,
  wrongKind,
  wrongValue,
  yamlProblem,
  yamlTag,
  yamlVersion,
];
