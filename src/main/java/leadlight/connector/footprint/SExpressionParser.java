package leadlight.connector.footprint;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Reads one S-expression: lists in round brackets, bare words, strings in double quotes with
 * backslash escapes, and comment lines that begin with {@code #}.
 */
final class SExpressionParser {

  /** Footprints nest about ten deep; far beyond that the file is something else. */
  private static final int DEEPEST = 200;

  private final String text;
  private int at;
  private int line = 1;
  private int lineStart;

  private SExpressionParser(String text) {
    this.text = text;
  }

  /**
   * The one list that a text holds.
   *
   * @throws FootprintError with line and column
   */
  static SExpression.Branch parse(String text) {
    return new SExpressionParser(text).whole();
  }

  private SExpression.Branch whole() {
    Deque<Open> open = new ArrayDeque<>();
    for (skipBlank(); at < text.length(); skipBlank()) {
      SExpression.Place place = place();
      char c = text.charAt(at);
      if (c == '(') {
        at++;
        open.push(new Open(new ArrayList<>(), place));
        if (open.size() > DEEPEST) {
          throw new FootprintError(place, "brackets nest more than " + DEEPEST + " deep");
        }
      } else if (open.isEmpty()) {
        throw new FootprintError(place, "\"(\" is needed here");
      } else if (c == ')') {
        at++;
        Open closed = open.pop();
        SExpression.Branch branch = new SExpression.Branch(closed.items, closed.place);
        if (open.isEmpty()) {
          return last(branch);
        }
        open.peek().items.add(branch);
      } else {
        open.peek().items.add(new SExpression.Atom(c == '"' ? quoted(place) : bare(), place));
      }
    }
    throw open.isEmpty()
        ? new FootprintError(place(), "the file is empty")
        : new FootprintError(open.peek().place, "this bracket is never closed");
  }

  private SExpression.Branch last(SExpression.Branch branch) {
    skipBlank();
    if (at < text.length()) {
      throw new FootprintError(place(), "something follows the end of the footprint");
    }
    return branch;
  }

  private void skipBlank() {
    while (at < text.length()) {
      char c = text.charAt(at);
      if (c == '#' && text.substring(lineStart, at).isBlank()) {
        while (at < text.length() && text.charAt(at) != '\n') {
          at++;
        }
      } else if (Character.isWhitespace(c)) {
        step(c);
      } else {
        return;
      }
    }
  }

  private void step(char c) {
    at++;
    if (c == '\n') {
      line++;
      lineStart = at;
    }
  }

  private String bare() {
    int start = at;
    while (at < text.length() && !endsWord(text.charAt(at))) {
      at++;
    }
    return text.substring(start, at);
  }

  private static boolean endsWord(char c) {
    return c == '(' || c == ')' || c == '"' || Character.isWhitespace(c);
  }

  private String quoted(SExpression.Place start) {
    StringBuilder out = new StringBuilder();
    for (at++; at < text.length(); ) {
      char c = text.charAt(at);
      step(c);
      if (c == '"') {
        return out.toString();
      }
      if (c == '\\' && at < text.length()) {
        char escaped = text.charAt(at);
        step(escaped);
        out.append(escaped == 'n' ? '\n' : escaped == 't' ? '\t' : escaped);
      } else {
        out.append(c);
      }
    }
    throw new FootprintError(start, "this string is never closed");
  }

  private SExpression.Place place() {
    return new SExpression.Place(line, at - lineStart + 1);
  }

  private record Open(List<SExpression> items, SExpression.Place place) {}
}
