package leadlight.connector.footprint;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A parsed S-expression with the place where it stands, for messages. */
sealed interface SExpression {

  /** Line and column of its first character, from 1. */
  Place place();

  /** A word, number or quoted string. */
  record Atom(String text, Place place) implements SExpression {}

  /** A bracketed list. */
  record Branch(List<SExpression> items, Place place) implements SExpression {

    public Branch {
      items = List.copyOf(items);
    }

    /** Its first word; empty if it has none. */
    String head() {
      return items.isEmpty() || !(items.get(0) instanceof Atom atom) ? "" : atom.text();
    }

    /** The lists in it that begin with a word. */
    Stream<Branch> branches(String head) {
      return items.stream()
          .filter(Branch.class::isInstance)
          .map(Branch.class::cast)
          .filter(branch -> branch.head().equals(head));
    }

    /** The first list in it that begins with a word. */
    Optional<Branch> branch(String head) {
      return branches(head).findFirst();
    }

    /** The words in it after the first, lists left out. */
    List<String> words() {
      return items.stream()
          .skip(1)
          .filter(Atom.class::isInstance)
          .map(item -> ((Atom) item).text())
          .toList();
    }

    /** The word at a place, 0 for the head. */
    String word(int index) {
      if (index >= items.size() || !(items.get(index) instanceof Atom atom)) {
        throw new FootprintError(place, head() + " lacks its value number " + index);
      }
      return atom.text();
    }

    /** The number at a place, 0 for the head. */
    double number(int index) {
      String word = word(index);
      try {
        double value = Double.parseDouble(word);
        if (Double.isFinite(value) && Math.abs(value) < 1e6) {
          return value;
        }
      } catch (NumberFormatException e) {
        // told below, with the place
      }
      throw new FootprintError(
          items.get(index).place(), "\"" + word + "\" is not a length or angle");
    }

    /** The number at a place, or another value if nothing stands there. */
    double number(int index, double otherwise) {
      return index < items.size() && items.get(index) instanceof Atom ? number(index) : otherwise;
    }
  }

  /** Where something stands. */
  record Place(int line, int column) {}
}
