package leadlight.report.paint;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/**
 * A bundled TrueType font: widths and outlines by the OpenType specification 1.9 (tables cmap
 * format 4, head, hhea, hmtx, loca, glyf). Read here and not by Java 2D, because Java 2D asks the
 * machine for its fonts first and fails on one that has none, and because the picture must be the
 * same on every machine. Characters that the font lacks get its empty box. Immutable but for a
 * cache that is guarded; safe for threads.
 */
public final class Typeface {

  static final Typeface REGULAR = new Typeface("DejaVuSansCondensed.ttf");
  public static final Typeface BOLD = new Typeface("DejaVuSansCondensed-Bold.ttf");

  private final ByteBuffer file;
  private final Map<String, Integer> tables = new HashMap<>();
  private final Map<Integer, Glyph> glyphs = new HashMap<>();
  private final boolean longOffsets;
  private final int wideMetrics;

  /** Units of the font in one em. */
  private final int unitsPerEm;

  private Typeface(String resource) {
    try (InputStream in = Typeface.class.getResourceAsStream("/leadlight/report/" + resource)) {
      file = ByteBuffer.wrap(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    int count = file.getShort(4);
    for (int i = 0; i < count; i++) {
      int record = 12 + 16 * i;
      byte[] tag = new byte[4];
      file.get(record, tag);
      tables.put(new String(tag, StandardCharsets.ISO_8859_1), file.getInt(record + 8));
    }
    unitsPerEm = unsigned(tables.get("head") + 18);
    longOffsets = file.getShort(tables.get("head") + 50) != 0;
    wideMetrics = unsigned(tables.get("hhea") + 34);
  }

  /** The glyph of a character, sizes in ems. */
  synchronized Glyph glyph(int codePoint) {
    return glyphs.computeIfAbsent(codePoint, this::read);
  }

  /** Width of a text in ems. */
  double width(String text) {
    return text.codePoints().mapToDouble(c -> glyph(c).advance()).sum();
  }

  private Glyph read(int codePoint) {
    int index = index(codePoint);
    int metric = Math.min(index, wideMetrics - 1);
    double advance = unsigned(tables.get("hmtx") + 4 * metric) / (double) unitsPerEm;
    GlyphReader reader = new GlyphReader(file, unitsPerEm, this::glyphStart);
    return new Glyph(advance, reader.outlines(index));
  }

  /** Where a glyph's description starts in the file; -1 if it is blank. */
  private int glyphStart(int index) {
    int loca = tables.get("loca");
    int from = longOffsets ? file.getInt(loca + 4 * index) : 2 * unsigned(loca + 2 * index);
    int to = longOffsets ? file.getInt(loca + 4 * index + 4) : 2 * unsigned(loca + 2 * index + 2);
    return from == to ? -1 : tables.get("glyf") + from;
  }

  private int index(int codePoint) {
    int cmap = format4();
    int segments = unsigned(cmap + 6) / 2;
    int ends = cmap + 14;
    int starts = ends + 2 * segments + 2;
    int deltas = starts + 2 * segments;
    int offsets = deltas + 2 * segments;
    for (int i = 0; i < segments && codePoint <= 0xffff; i++) {
      if (codePoint <= unsigned(ends + 2 * i)) {
        if (codePoint < unsigned(starts + 2 * i)) {
          return 0;
        }
        int offset = unsigned(offsets + 2 * i);
        int base = codePoint;
        if (offset != 0) {
          base = unsigned(offsets + 2 * i + offset + 2 * (codePoint - unsigned(starts + 2 * i)));
        }
        return base == 0 ? 0 : (base + unsigned(deltas + 2 * i)) & 0xffff;
      }
    }
    return 0;
  }

  private int format4() {
    int cmap = tables.get("cmap");
    int count = unsigned(cmap + 2);
    for (int i = 0; i < count; i++) {
      int table = cmap + file.getInt(cmap + 8 + 8 * i);
      if (unsigned(table) == 4) {
        return table;
      }
    }
    throw new IllegalStateException("the font has no character map of format 4");
  }

  private int unsigned(int at) {
    return file.getShort(at) & 0xffff;
  }
}
