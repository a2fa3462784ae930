import type PDFDocument from 'pdfkit';

/** Roles of content that a reader of the document tells apart. */
export type Role =
  'Sect' | 'H1' | 'H2' | 'H3' | 'P' | 'L' | 'LI' | 'Lbl' | 'LBody' | 'Figure' | 'Table' | 'TR' | 'TH' | 'TD' | 'Span';

/** What may be said of a tagged part. */
export interface TagOptions {
  /** What stands in place of a picture for whoever can't see it. */
  readonly alt?: string;
  /** Whether a heading of a table is that of its column. */
  readonly scope?: 'Column' | 'Row';
}

/** The tree of what a document says, in the order in which it is read. */
export class Tags {
  private readonly open: PDFKit.PDFStructureElement[];

  constructor(private readonly doc: typeof PDFDocument.prototype) {
    const root = doc.struct('Document');
    doc.addStructure(root);
    this.open = [root];
  }

  /** A part that holds other parts. */
  group(role: Role, fill: () => void, options: TagOptions = {}): void {
    const element = this.doc.struct(role, { ...options });
    this.innermost().add(element);
    this.open.push(element);
    fill();
    this.open.pop();
    element.end();
  }

  /** A part that is drawn or written. */
  leaf(role: Role, draw: () => void, options: TagOptions = {}): void {
    this.innermost().add(this.doc.struct(role, { ...options }, [draw]));
  }

  /** What only decorates or repeats: frames, rules, the foot of a page. */
  artifact(draw: () => void): void {
    this.doc.markContent('Artifact', { type: 'Layout' });
    draw();
    this.doc.endMarkedContent();
  }

  /** Closes the document. */
  end(): void {
    this.innermost().end();
  }

  private innermost(): PDFKit.PDFStructureElement {
    const element = this.open.at(-1);
    if (element === undefined) throw new Error('invariant: the document is closed');
    return element;
  }
}
