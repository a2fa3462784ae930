import { figureSentence, figureText } from '../figureText.ts';
import { missLabel } from '../missWords.ts';
import { missOfFinding } from '../miss.ts';
import { apexOf, legAt } from '../parts/counterparts.ts';
import { titleOf } from '../../words/index.ts';
import { onPaper, type Pen } from '../pen.ts';
import type { Point } from '../scene.ts';
import type { Stage } from '../stage.ts';
import { hatch, mirrored } from '../strokes.ts';
import { lettering, nothing, showing, together, type Part } from './part.ts';

/** The angles of frame and receiver, written above the legs, and the wedge between them where they differ too much. */
export function angles(stage: Stage, pen: Pen): Part {
  if (stage.frame === null) return nothing;
  return together(angleTexts(stage.frame, pen), wedge(stage, stage.frame, pen));
}

type Frame = NonNullable<Stage['frame']>;

function angleTexts({ frameAngle, receiverAngle, frameWidth }: Frame, pen: Pen): Part {
  const top = apexOf(frameWidth.value, frameAngle.value);
  const { letters } = pen.sheet;
  const right = -onPaper(pen, 14);
  const write = (name: string, figure: typeof frameAngle, row: number) =>
    lettering(
      [right, top - onPaper(pen, 2 + row * letters.dimension * 1.35)],
      `${name} ${figureText(figure, pen.system, 'angle').text}`,
      letters.dimension,
      {
        anchor: 'end',
        tone: figure.standing === 'measured' ? 'ink' : 'second',
      },
    );
  return {
    items: [write('frame', frameAngle, 0), write('receiver', receiverAngle, 1)],
    says: [
      `Angle of the frame: ${figureSentence(frameAngle, pen.system, 'angle')}.`,
      `Angle of the receiver: ${figureSentence(receiverAngle, pen.system, 'angle')}.`,
    ],
  };
}

function wedge({ answer, pins }: Stage, frame: Frame, pen: Pen): Part {
  const finding = answer.findings.find(({ id }) => id === 'rear.receiverAngle');
  if (finding === undefined || missOfFinding(finding) === null) return nothing;
  const { frameWidth, frameAngle, receiverWidth, receiverAngle } = frame;
  const top =
    Math.min(apexOf(frameWidth.value, frameAngle.value), apexOf(receiverWidth.value, receiverAngle.value)) * 0.86;
  const area: Point[] = [
    [legAt(frameWidth.value, frameAngle.value, 0), 0],
    [legAt(receiverWidth.value, receiverAngle.value, 0), 0],
    [legAt(receiverWidth.value, receiverAngle.value, top), top],
    [legAt(frameWidth.value, frameAngle.value, top), top],
  ];
  const { letters } = pen.sheet;
  const label = missLabel(finding, pen.system, pins.sign === -1);
  const at: Point = [onPaper(pen, 13), apexOf(frameWidth.value, frameAngle.value) - onPaper(pen, letters.misfit * 0.7)];
  return {
    items: showing(finding.id, [
      hatch('misfit', area),
      hatch('misfit', mirrored(area), true),
      lettering(at, label.figure, letters.misfit, { tone: 'accent', weight: 700 }),
      lettering([at[0], at[1] - onPaper(pen, letters.word * 1.2)], label.word, letters.word, {
        tone: 'accent',
        weight: 500,
      }),
    ]),
    says: [`Misfit, ${titleOf(finding).toLowerCase()}: ${label.figure}, ${label.word}.`],
  };
}
