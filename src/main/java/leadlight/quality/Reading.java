package leadlight.quality;

import java.util.List;
import java.util.Set;

/**
 * How verdicts are read.
 *
 * @param bad verdicts that call an item bad
 * @param open verdicts that decide nothing; a reference that says so is not counted
 * @param asGiven true if agreement is between the verdicts as given, not between good and bad
 */
public record Reading(Set<String> bad, Set<String> open, boolean asGiven) {

  static final String BAD = "bad";
  static final String GOOD = "good";
  static final String OPEN = "no decision";

  /** Copies the sets. */
  public Reading {
    bad = Set.copyOf(bad);
    open = Set.copyOf(open);
  }

  /** Good, bad or no decision. */
  String side(Grade grade) {
    if (open.contains(grade.verdict())) {
      return OPEN;
    }
    return bad.contains(grade.verdict()) ? BAD : GOOD;
  }

  /** The category in which grades are compared. */
  String category(Grade grade) {
    return asGiven ? grade.verdict() : side(grade);
  }

  /** All categories of a study. */
  List<String> categories(Grades grades) {
    return asGiven ? grades.categories() : List.of(BAD, GOOD, OPEN);
  }
}
