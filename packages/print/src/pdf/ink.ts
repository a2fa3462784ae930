import type PDFDocument from 'pdfkit';
import type { Faces } from '../fonts/faces.ts';
import { drawnSigns } from '../text/signs.ts';
import type { Line } from '../text/lines.ts';
import { pieceWidth, type Fraction, type Glyphs, type Sign } from '../text/pieces.ts';

/** A point of the page: right and down from its upper left corner [mm]. */
export type Spot = readonly [number, number];

/** How a line or an area is drawn; what is left out is not drawn. */
export interface Look {
  readonly stroke?: string;
  readonly fill?: string;
  /** Width of the line [mm]. */
  readonly width?: number;
  readonly dash?: readonly number[];
  readonly closed?: boolean;
}

/** Black, the grey of what is only there for place, and paper. */
export const inks = { black: '#000000', ghost: '#8a8a8a', paper: '#ffffff' } as const;

const pointsPerMm = 72 / 25.4;

/** Draws on the page of a document that is open, in millimetres of paper. */
export class Ink {
  constructor(
    private readonly doc: typeof PDFDocument.prototype,
    readonly faces: Faces,
  ) {}

  /** Lines through points. */
  path(runs: readonly (readonly Spot[])[], look: Look): void {
    if (runs.length === 0) return;
    for (const run of runs) this.trace(run, look.closed === true);
    this.finish(look);
  }

  circle([x, y]: Spot, radius: number, look: Look): void {
    this.doc.circle(x * pointsPerMm, y * pointsPerMm, radius * pointsPerMm);
    this.finish(look);
  }

  rect([x, y]: Spot, width: number, height: number, look: Look): void {
    this.doc.rect(x * pointsPerMm, y * pointsPerMm, width * pointsPerMm, height * pointsPerMm);
    this.finish(look);
  }

  /** Squares of one colour, such as those of a code. */
  squares(corners: readonly Spot[], side: number, fill: string): void {
    for (const [x, y] of corners)
      this.doc.rect(x * pointsPerMm, y * pointsPerMm, side * pointsPerMm, side * pointsPerMm);
    this.finish({ fill });
  }

  /** Writes a line from a point on its baseline. */
  line(line: Line, [x, y]: Spot, colour: string = inks.black): void {
    let at = x;
    for (const piece of line.pieces) {
      if (piece.kind === 'glyphs') this.glyphs(piece, [at, y], colour);
      else if (piece.kind === 'sign') this.sign(piece, [at, y], colour);
      else this.fraction(piece, [at, y], colour);
      at += pieceWidth(this.faces, piece);
    }
  }

  /** Whatever is drawn inside reads upward from a point. */
  upward([x, y]: Spot, draw: () => void): void {
    this.doc.save().rotate(-90, { origin: [x * pointsPerMm, y * pointsPerMm] });
    draw();
    this.doc.restore();
  }

  private trace(run: readonly Spot[], closed: boolean): void {
    run.forEach(([x, y], i) => {
      if (i === 0) this.doc.moveTo(x * pointsPerMm, y * pointsPerMm);
      else this.doc.lineTo(x * pointsPerMm, y * pointsPerMm);
    });
    if (closed) this.doc.closePath();
  }

  private finish({ stroke, fill, width = 0.25, dash }: Look): void {
    if (dash === undefined) this.doc.undash();
    else {
      // pdfkit repeats a single pair only: the operator itself takes any row of dashes.
      const lengths = dash.map((length) => (length * pointsPerMm).toFixed(3));
      (this.doc as unknown as { addContent: (text: string) => void }).addContent(`[${lengths.join(' ')}] 0 d`);
    }
    this.doc
      .lineWidth(width * pointsPerMm)
      .lineCap('butt')
      .lineJoin('round');
    if (fill !== undefined && stroke !== undefined) this.doc.fillAndStroke(fill, stroke);
    else if (fill !== undefined) this.doc.fill(fill);
    else this.doc.stroke(stroke ?? inks.black);
  }

  private glyphs({ text, face, size, rise }: Glyphs, [x, y]: Spot, colour: string): void {
    this.faces.use(face, size);
    this.doc.fillColor(colour).text(text, x * pointsPerMm, (y - rise) * pointsPerMm, {
      lineBreak: false,
      baseline: 'alphabetic',
      features: face.features,
    });
  }

  /** To whoever listens or copies, a fraction reads as plain text. */
  private fraction({ parts, said }: Fraction, [x, y]: Spot, colour: string): void {
    this.said(said, () => {
      let at = x;
      for (const part of parts) {
        this.glyphs(part, [at, y], colour);
        at += pieceWidth(this.faces, part);
      }
    });
  }

  private sign({ sign, size }: Sign, [x, y]: Spot, colour: string): void {
    const { lines, circle } = drawnSigns[sign];
    const at = ([right, up]: Spot): Spot => [x + right * size, y - up * size];
    const look: Look = { stroke: colour, width: size * 0.075 };
    this.said(sign, () => {
      this.path(
        lines.map((line) => line.map(at)),
        look,
      );
      if (circle !== undefined) this.circle(at(circle.centre), circle.radius * size, look);
    });
  }

  private said(text: string, draw: () => void): void {
    this.doc.markContent('Span', { actual: text });
    draw();
    this.doc.endMarkedContent();
  }
}
