package leadlight.quality;

import java.util.ArrayList;
import java.util.List;

/**
 * A report as a list of blocks, from which the page and the terminal's text are both made.
 *
 * @param title what it is
 * @param blocks from top to bottom
 */
public record Page(String title, List<Block> blocks) {

  /** Copies. */
  public Page {
    blocks = List.copyOf(blocks);
  }

  /** A part of a page. */
  public sealed interface Block {}

  /** A heading. */
  public record Heading(String text) implements Block {}

  /** A paragraph; what must not be overlooked is strong. */
  public record Text(String text, boolean strong) implements Block {}

  /** A table; every row as long as the header. */
  public record Grid(List<String> header, List<List<String>> rows) implements Block {}

  /** A plot. */
  public record Chart(Plot plot) implements Block {}

  /** Pictures with words below. */
  public record Pictures(List<Picture> pictures) implements Block {}

  /**
   * A picture.
   *
   * @param png its bytes; empty if there is none, then the words stand alone
   * @param lines words below it
   */
  public record Picture(byte[] png, List<String> lines) {}

  /** Puts blocks together. */
  public static final class Builder {
    private final List<Block> blocks = new ArrayList<>();

    public Builder heading(String text) {
      blocks.add(new Heading(text));
      return this;
    }

    /** A paragraph; an empty one is left out. */
    public Builder text(String text) {
      if (text.isEmpty()) {
        return this;
      }
      blocks.add(new Text(text, false));
      return this;
    }

    public Builder strong(String text) {
      blocks.add(new Text(text, true));
      return this;
    }

    public Builder grid(List<String> header, List<List<String>> rows) {
      if (!rows.isEmpty()) {
        blocks.add(new Grid(header, rows));
      }
      return this;
    }

    public Builder chart(Plot plot) {
      blocks.add(new Chart(plot));
      return this;
    }

    public Builder pictures(List<Picture> pictures) {
      if (!pictures.isEmpty()) {
        blocks.add(new Pictures(pictures));
      }
      return this;
    }

    public Builder add(Builder other) {
      blocks.addAll(other.blocks);
      return this;
    }

    public Page page(String title) {
      blocks.add(
          new Text(
              "Leadlight never certifies a board, a lot or a gauge; the decision is yours.",
              false));
      return new Page(title, blocks);
    }
  }
}
