/**
 * Text that setup documents share, from the rarest to the commonest; links of version 1 are deflated against it, so it must
 * never change.
 */
export const dictionary1 =
  ',"category":"1N","category":"2N","category":"0","category":"3","category":"2","setting":"perPosition","floatSi' +
  'ts":"atPin","lowerPinPlates":"double","alteration":"rented","receiver":"triangle","receiver":"jaws","mounting"' +
  ':"twoPointsAndWheels","mounting":"armMower","mounting":"swingingDrive","mounting":"floatingTopLink","mounting"' +
  ':"boomOnTopLinkBracket","pinsPoint":"in","pinFixing":"welded","pinFixing":"reversible","kind":"clawEnds","kind' +
  '":"triangle","kind":"bar","kind":"hookEnds","method":"tape","method":"caliper","method":"plumb line","from":"b' +
  'allCentre","from":"unsaid","from":"innerFaces","tool":"","source":"","plusMinus":"1/16 in","plusMinus":"1/8 in' +
  '","between":[,"adjustable":{"at":[,"unknown":true,"default":""pinBallDiameter":"pinBallWidth":"pinBallBore":"r' +
  'eceiverWidth":"receiverAngle":"jawOpening":"jawSpan":"doublePlateGap":"plateThickness":"lowerBushingInside":"l' +
  'owerBushingOutside":"lowerBushingLength":"upperBushingInside":"upperBushingOutside":"clawSize":"frameWidth":"f' +
  'rameAngle":"barDiameter":"barLength":"topHookCheekGap":"topHookPlay":"secondRow":"rise":"behind":"outlines":{"' +
  'hitchwright":1,"units":"us","tractor":{"name":"Ostrey 35","category":"1","enginePower":"35 hp","ptoPower":"28.' +
  '5 hp","note":"dimensions that are not in the story are added, invented","lowerBallBore":22.4,"lowerBallWidth":' +
  '35,"ballSpan":{"adjustable":{"between":[640,760]}},"upperBallBore":19.3,"upperBallWidth":42,"lowerLinkLength":' +
  '760,"lowerLinkPivotSpan":440,"lowerLinkPivotBehindAxle":120,"lowerLinkPivotHeight":420,"topLinkPivotBehindAxle' +
  '":270,"topLinkPivotHeight":800,"topLinkLength":{"adjustable":{"between":[500,720]}}},"coupler":{"name":"Pellin' +
  ' U-28","kind":"uFrame","category":"1","note":"dimensions that are not in the story are added, invented","hookS' +
  'pan":712,"hookWidth":25,"hookSeat":22.8,"hookBehind":115,"hookRise":0,"topHookHeight":{"adjustable":{"between"' +
  ':[356,470]}},"topHookBehind":0,"topHookThroat":19.8,"topHookThickness":25,"retainingPin":"notNeeded","roomNeed' +
  'edLower":80,"roomNeededUpper":80,"front":{"lowerPinDiameter":22.2,"shoulderSpan":683,"standOut":75,"shoulderTo' +
  'Hole":56,"washer":2,"upperPinDiameter":19,"clevisGap":52,"clevisOuterWidth":72,"mastHeight":460,"mastSetback":' +
  '0}},"implement":{"name":"Wickset 60-in box blade","category":"1","mounting":"threePoint","pinFixing":"bolted",' +
  '"note":"195 kg; dimensions that are not in the story are added, invented","lowerPinDiameter":{"value":22.2,"pl' +
  'usMinus":0.1,"method":"caliper","who":"yard","when":"2026-09-14"},"upperPinDiameter":19,"clevisGap":{"value":4' +
  '8,"plusMinus":1,"method":"tape","who":"yard","when":"2026-09-14"},"clevisOuterWidth":72,"freeRoomLower":110,"f' +
  'reeRoomUpper":110,"washer":2,"shoulderSpan":{"value":661,"plusMinus":1.5,"method":"tape","who":"yard","when":"' +
  '2026-09-14"},"standOut":{"value":58,"plusMinus":1.5,"method":"tape","who":"yard","when":"2026-09-14"},"shoulde' +
  'rToHole":{"value":52,"plusMinus":1,"method":"tape","who":"yard","when":"2026-09-14"},"mastHeight":{"value":521' +
  ',"plusMinus":1.5,"method":"tape","who":"yard","when":"2026-09-14"},"mastSetback":{"value":0,"plusMinus":3,"met' +
  'hod":"tape","who":"yard","when":"2026-09-14"}},"parts":[{"kind":"lowerBushings","name":"pair of bushings, 7/8 ' +
  'to 1 1/8 in, 1 3/8 in long","inside":22.3,"outside":28.55,"length":34.9},{"kind":"upperBushing","name":"top bu' +
  'shing, 3/4 to 1 in","inside":19.1,"outside":25.4},{"kind":"upperPinPlate","name":"upper-pin plate with a hole ' +
  'at 18 in","fits":["Wickset 60-in box blade"],"mastHeight":457,"mastSetback":0},{"kind":"lowerPins","name":"pai' +
  'r of pins with 26 1/2-in shoulders","fits":["Harl 72-in landscape rake"],"diameter":22.2,"shoulderSpan":673.1,' +
  '"standOut":78,"shoulderToHole":62}]}';
