package org.relegend.demo.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.relegend.demo.design.Design;
import org.relegend.demo.draw.Mask;
import org.relegend.demo.photo.Jpeg;

/** The two pages of the leveller's schematic: their plans, and the PDF that holds them. */
public final class Schematic {
  private static final long DOCUMENT_ID = 40_1978;
  private static final double INK_SCALE = 4;
  private static final long SCAN_SEED = 4002;

  private final Design design;

  public Schematic(Design design) {
    this.design = design;
  }

  /** Width and height of page 1 or 2 in points. */
  public static Dot size(int page) {
    return page == 1
        ? new Dot(ChannelSheet.WIDTH, ChannelSheet.HEIGHT)
        : new Dot(SupplySheet.WIDTH, SupplySheet.HEIGHT);
  }

  /** What stands where on page 1 or 2, as the page shows it. */
  public List<Mark> marks(int page) {
    Plan plan = plan(page, NOWHERE);
    return page == 1 ? plan.marks() : plan.marks().stream().map(Schematic::scanned).toList();
  }

  /** The plan of page 1 or 2, as it was drawn, before any scan. */
  public Plan plan(int page) {
    return plan(page, NOWHERE);
  }

  /** The PDF's bytes: always the same. */
  public byte[] pdf() throws IOException {
    try (PDDocument document = new PDDocument()) {
      document.setDocumentId(DOCUMENT_ID);
      vector(document);
      scan(document);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out, CompressParameters.NO_COMPRESSION);
      return out.toByteArray();
    }
  }

  private Plan plan(int page, Canvas canvas) {
    Plan plan = new Plan(canvas);
    if (page == 1) {
      new ChannelSheet(plan, design).draw();
    } else {
      new SupplySheet(plan, design).draw();
    }
    return plan;
  }

  private void vector(PDDocument document) throws IOException {
    PDPage page = page(document, 1);
    try (PDPageContentStream out =
        new PDPageContentStream(document, page, AppendMode.OVERWRITE, false)) {
      PDType1Font font = new PDType1Font(FontName.HELVETICA);
      plan(1, new PdfCanvas(out, font, ChannelSheet.HEIGHT));
    }
  }

  private void scan(PDDocument document) throws IOException {
    PDPage page = page(document, 2);
    Mask ink = new Mask(SupplySheet.WIDTH, SupplySheet.HEIGHT, INK_SCALE);
    plan(2, new InkCanvas(ink));
    Scan scan = new Scan(ink, SupplySheet.WIDTH, SupplySheet.HEIGHT, SCAN_SEED);
    byte[] jpeg = Jpeg.bytes(scan.image(), 0.6f);
    PDImageXObject image = PDImageXObject.createFromByteArray(document, jpeg, "scan");
    try (PDPageContentStream out =
        new PDPageContentStream(document, page, AppendMode.OVERWRITE, false)) {
      out.drawImage(image, 0, 0, (float) SupplySheet.WIDTH, (float) SupplySheet.HEIGHT);
    }
  }

  private static PDPage page(PDDocument document, int number) {
    Dot size = size(number);
    PDPage page = new PDPage(new PDRectangle((float) size.x(), (float) size.y()));
    document.addPage(page);
    return page;
  }

  private static Mark scanned(Mark mark) {
    List<Dot> outline = new ArrayList<>();
    for (Dot corner : mark.outline()) {
      outline.add(Scan.placed(corner, SupplySheet.WIDTH, SupplySheet.HEIGHT));
    }
    Dot at = Scan.placed(mark.at(), SupplySheet.WIDTH, SupplySheet.HEIGHT);
    return new Mark(mark.kind(), mark.subject(), at, outline);
  }

  /** For when only the places are wanted. */
  private static final Canvas NOWHERE =
      new Canvas() {
        @Override
        public void line(List<Dot> run, double width) {}

        @Override
        public void fill(List<Dot> outline) {}

        @Override
        public void circle(Dot middle, double radius, double width) {}

        @Override
        public void text(String text, Dot at, double size, Align align) {}
      };
}
