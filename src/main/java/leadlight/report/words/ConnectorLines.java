package leadlight.report.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leadlight.model.Verdict;
import leadlight.model.result.LegSet;
import leadlight.text.VerdictWords;

/** The anchor legs of a connector in lines for the terminal, of at most 80 characters. */
public final class ConnectorLines {

  private ConnectorLines() {}

  /** "Anchor legs: 1 defect, 1 not judged, 2 acceptable". */
  public static String counts(LegSet set) {
    return String.format(
        Locale.ROOT,
        "Anchor legs: %s, %d not judged, %d acceptable",
        Words.counted(set.count(Verdict.DEFECT), Verdict.DEFECT),
        set.count(Verdict.UNJUDGED),
        set.count(Verdict.ACCEPTABLE));
  }

  /** How many legs have which verdict, and what is said of each that is not sound. */
  public static List<String> of(LegSet set) {
    List<String> lines = new ArrayList<>();
    lines.add("  " + counts(set).toLowerCase(Locale.ROOT));
    for (LegSet.Joined leg : set.legs()) {
      if (leg.verdict() != Verdict.ACCEPTABLE) {
        String said = VerdictWords.plain(leg.verdict()) + ": " + LegWords.said(leg);
        lines.addAll(Columns.wrapped("  " + LegWords.name(leg) + "  ", said, "    "));
      }
    }
    for (LegSet.Shown photo : set.photos()) {
      if (photo.legs().isEmpty()) {
        lines.add("  no leg found in " + photo.photo().file());
      }
    }
    return lines;
  }
}
