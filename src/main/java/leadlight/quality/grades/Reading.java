package leadlight.quality.grades;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadlight.model.UserError;

/**
 * How verdicts are read.
 *
 * @param bad verdicts that call an item bad
 * @param good verdicts that call it good; a word that is in none of the three sets is refused, for
 *     a misspelt "defect" must not count as good
 * @param open verdicts that decide nothing; a reference that says so is not counted
 * @param asGiven true if agreement is between the verdicts as given, not between good and bad
 */
public record Reading(Set<String> bad, Set<String> good, Set<String> open, boolean asGiven) {

  public static final String BAD = "bad";
  static final String GOOD = "good";
  public static final String OPEN = "no decision";

  /** Copies the sets. */
  public Reading {
    bad = Set.copyOf(bad);
    good = Set.copyOf(good);
    open = Set.copyOf(open);
    for (String word : bad) {
      if (good.contains(word) || open.contains(word)) {
        throw new UserError(
            "\"" + word + "\" is named under two of --bad-is, --good-is and --open-is");
      }
    }
    for (String word : good) {
      if (open.contains(word)) {
        throw new UserError("\"" + word + "\" is named under both --good-is and --open-is");
      }
    }
  }

  /**
   * Good, bad or no decision.
   *
   * @throws UserError if the word is none that was named
   */
  public String side(Grade grade) {
    return side(grade.verdict())
        .orElseThrow(
            () ->
                new UserError(
                    "%s said of %s in trial %d: %s"
                        .formatted(
                            grade.grader(),
                            grade.item(),
                            grade.trial(),
                            unknown(grade.verdict()))));
  }

  /** The same of a word; empty if it is none that was named. */
  public Optional<String> side(String verdict) {
    if (open.contains(verdict)) {
      return Optional.of(OPEN);
    }
    if (bad.contains(verdict)) {
      return Optional.of(BAD);
    }
    return good.contains(verdict) ? Optional.of(GOOD) : Optional.empty();
  }

  /** What is wrong with a word that was not named, and what to do. */
  public String unknown(String verdict) {
    return "\"%s\" is no verdict that is known (%s); correct it, or name it with --bad-is, --good-is or --open-is"
        .formatted(
            verdict,
            Stream.of(bad, good, open)
                .flatMap(Set::stream)
                .sorted()
                .collect(Collectors.joining(", ")));
  }

  /** The category in which grades are compared. */
  public String category(Grade grade) {
    return asGiven ? grade.verdict() : side(grade);
  }

  /** All categories of a study. */
  public List<String> categories(Grades grades) {
    return asGiven ? grades.categories() : List.of(BAD, GOOD, OPEN);
  }
}
