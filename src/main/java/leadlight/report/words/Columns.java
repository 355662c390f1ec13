package leadlight.report.words;

import java.util.ArrayList;
import java.util.List;

/** Text for a terminal of 80 columns. */
public final class Columns {

  private static final int COLUMNS = 80;

  private Columns() {}

  /** Text behind a lead-in, wrapped at words; later lines start with an indent of their own. */
  public static List<String> wrapped(String leadIn, String text, String indent) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(leadIn);
    boolean empty = true;
    for (String word : text.split(" ")) {
      if (!empty && line.length() + 1 + word.length() > COLUMNS) {
        lines.add(line.toString());
        line = new StringBuilder(indent);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    lines.add(line.toString());
    return lines;
  }
}
