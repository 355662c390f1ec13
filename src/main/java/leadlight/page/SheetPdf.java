package leadlight.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import leadlight.page.photo.PageView;
import leadlight.page.photo.PinView;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;

/**
 * The customer's sheet as one A4 page. Text that would not fit is set smaller, down to a size that
 * can still be read; a character that the typeface lacks is shown as a question mark.
 */
final class SheetPdf {

  private static final float MARGIN = 50;
  private static final float WIDTH = PDRectangle.A4.getWidth() - 2 * MARGIN;
  private static final float HEIGHT = PDRectangle.A4.getHeight() - 2 * MARGIN;
  private static final float[] SIZES = {11, 10, 9, 8, 7, 6};
  private static final float LEADING = 1.38f;
  private static final float MOST_PICTURE = 150;
  private static final String LACKING = "?";
  private static final String FONTS = "/leadlight/report/";

  private final SheetView view;

  /** A line of text, or a picture below the line before it. */
  private sealed interface Piece {}

  private record Text(String text, float size, boolean bold, float indent) implements Piece {}

  private record Image(PDImageXObject image, float width, float height) implements Piece {}

  private record Space(float points) implements Piece {}

  SheetPdf(SheetView view) {
    this.view = view;
  }

  byte[] bytes() {
    try (PDDocument document = new PDDocument()) {
      // Set by hand, else it is made from the clock and the same sheet would differ.
      document.setDocumentId(1L);
      document.getDocumentInformation().setTitle(view.title());
      document.getDocumentCatalog().setLanguage(view.language());
      PDFont regular = font(document, "DejaVuSansCondensed.ttf");
      PDFont bold = font(document, "DejaVuSansCondensed-Bold.ttf");
      PDPage page = new PDPage(PDRectangle.A4);
      document.addPage(page);
      List<Piece> pieces = fitting(document, regular, bold);
      try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
        draw(stream, pieces, regular, bold);
      }
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static PDFont font(PDDocument document, String name) throws IOException {
    try (InputStream in = SheetPdf.class.getResourceAsStream(FONTS + name)) {
      return PDType0Font.load(document, in, true);
    }
  }

  private List<Piece> fitting(PDDocument document, PDFont regular, PDFont bold) throws IOException {
    List<Piece> pieces = List.of();
    List<PDImageXObject> images = new ArrayList<>();
    for (SheetView.Picture picture : view.pictures()) {
      images.add(JPEGFactory.createFromByteArray(document, picture.jpeg()));
    }
    for (float size : SIZES) {
      pieces = pieces(size, images, regular, bold);
      if (height(pieces) <= HEIGHT) {
        break;
      }
    }
    return pieces;
  }

  private List<Piece> pieces(float size, List<PDImageXObject> images, PDFont regular, PDFont bold)
      throws IOException {
    List<Piece> pieces = new ArrayList<>();
    add(pieces, view.title(), 1.8f * size, true, 0, bold);
    for (PinView.Line fact : view.facts()) {
      add(pieces, fact.name() + ": " + fact.text(), size, false, 0, regular);
    }
    for (String sentence : view.summary()) {
      pieces.add(new Space(0.5f * size));
      add(pieces, sentence, 1.1f * size, false, 0, regular);
    }
    float most = Math.min(MOST_PICTURE, 0.42f * HEIGHT / Math.max(1, images.size()));
    for (int i = 0; i < images.size(); i++) {
      String caption = view.pictures().get(i).caption();
      if (!caption.isEmpty()) {
        pieces.add(new Space(0.5f * size));
        add(pieces, caption, size, true, 0, bold);
      }
      PDImageXObject image = images.get(i);
      float scale = Math.min(WIDTH / image.getWidth(), most / image.getHeight());
      pieces.add(new Image(image, scale * image.getWidth(), scale * image.getHeight()));
    }
    for (PageView.TitledList list : view.lists()) {
      pieces.add(new Space(0.7f * size));
      add(pieces, list.title(), 1.1f * size, true, 0, bold);
      for (String sentence : list.sentences()) {
        add(pieces, "\u2022 " + sentence, size, false, size, regular);
      }
    }
    pieces.add(new Space(2 * size));
    add(
        pieces,
        view.signed() + " " + view.signedName(),
        size,
        !view.signedName().isEmpty(),
        0,
        bold);
    add(pieces, view.sealed(), 0.85f * size, false, 0, regular);
    add(pieces, view.small(), 0.85f * size, false, 0, regular);
    return pieces;
  }

  private static void add(
      List<Piece> pieces, String text, float size, boolean bold, float indent, PDFont font)
      throws IOException {
    StringBuilder line = new StringBuilder();
    for (String word : drawable(text, font).split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && width(longer, font, size) > WIDTH - indent) {
        pieces.add(new Text(line.toString(), size, bold, indent));
        line.setLength(0);
        line.append(word);
      } else {
        line.setLength(0);
        line.append(longer);
      }
      while (width(line.toString(), font, size) > WIDTH - indent) {
        int cut = line.length() - 1;
        while (width(line.substring(0, cut), font, size) > WIDTH - indent) {
          cut--;
        }
        pieces.add(new Text(line.substring(0, cut), size, bold, indent));
        line.delete(0, cut);
      }
    }
    pieces.add(new Text(line.toString(), size, bold, indent));
  }

  private static float width(String text, PDFont font, float size) throws IOException {
    return font.getStringWidth(text) * size / 1000;
  }

  private static String drawable(String text, PDFont font) {
    StringBuilder drawable = new StringBuilder();
    text.codePoints().forEach(c -> drawable.append(drawable(Character.toString(c), font, LACKING)));
    return drawable.toString();
  }

  private static String drawable(String character, PDFont font, String instead) {
    try {
      font.encode(character);
      return character;
    } catch (IOException | IllegalArgumentException missing) {
      return instead;
    }
  }

  private static float height(List<Piece> pieces) {
    float height = 0;
    for (Piece piece : pieces) {
      height += height(piece);
    }
    return height;
  }

  private static float height(Piece piece) {
    if (piece instanceof Text text) {
      return LEADING * text.size();
    }
    return piece instanceof Image image ? image.height() + 2 : ((Space) piece).points();
  }

  private static void draw(
      PDPageContentStream stream, List<Piece> pieces, PDFont regular, PDFont bold)
      throws IOException {
    float y = PDRectangle.A4.getHeight() - MARGIN;
    for (Piece piece : pieces) {
      y -= height(piece);
      if (piece instanceof Text text) {
        stream.beginText();
        stream.setFont(text.bold() ? bold : regular, text.size());
        stream.setTextMatrix(
            Matrix.getTranslateInstance(MARGIN + text.indent(), y + 0.3f * text.size()));
        stream.showText(text.text());
        stream.endText();
      } else if (piece instanceof Image image) {
        stream.drawImage(image.image(), MARGIN, y, image.width(), image.height());
      }
    }
  }
}
