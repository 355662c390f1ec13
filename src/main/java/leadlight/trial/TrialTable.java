package leadlight.trial;

import java.util.Locale;
import java.util.Map;
import leadlight.statistics.Rated;

/**
 * The figures of a trial as a table for people. "Good said of bad" are the missed: defects that
 * were called acceptable or a process indicator.
 */
public final class TrialTable {

  private static final String JOINT_LINE = "  %-16s %6s  %-26s %-26s %-26s %s%n";

  private final StringBuilder text = new StringBuilder();

  private TrialTable() {}

  /** The table; ends with a line break. */
  public static String of(TrialSummary summary) {
    TrialTable table = new TrialTable();
    table.rows(summary);
    table.positions(summary.positions());
    table.joints(summary);
    table.findings(summary);
    return table.text.toString();
  }

  private void rows(TrialSummary summary) {
    line("%d photos with truth%n", summary.photos());
    line("rows right        %s%n", rate(summary.rows().right()));
    line("rows not found    %s%n", rate(summary.rows().notFound()));
    line("rows wrong        %s%n%n", rate(summary.rows().wrong()));
  }

  private void positions(Positions at) {
    line("toe position, %d leads of right rows, error over pitch%n", at.leads());
    line(
        "  along the row   median %s, 95 %% below %s%n",
        percent(at.lateralMedian()), percent(at.lateralP95()));
    line(
        "  along the lead  median %s, 95 %% below %s%n",
        percent(at.axialMedian()), percent(at.axialP95()));
    line("truth within 2 u of the stated value%n");
    line("  along the row   %s%n", rate(at.lateralCovered()));
    line("  along the lead  %s%n", rate(at.axialCovered()));
    line("  side overhang   %s%n%n", rate(at.overhangCovered()));
  }

  private void joints(TrialSummary summary) {
    line(
        JOINT_LINE,
        "joints",
        "",
        "  good said of bad",
        "  false calls",
        "  unjudged",
        "  named right");
    joints("all", summary.all());
    eachAlone(summary.all());
    summary.byLamp().forEach((lamp, group) -> joints("lamp " + lamp, group.joints()));
    for (Map.Entry<String, TrialSummary.Group> band : summary.byPitch().entrySet()) {
      joints(band.getKey(), band.getValue().joints());
    }
    line(
        "  95 %% intervals by photo (Wilson at the effective number of joints); \"each alone\" as if"
            + " joints of a photo were not alike%n");
    if (summary.jointsInRowsNotFound() > 0) {
      line("  (and %d joints in rows not found)%n", summary.jointsInRowsNotFound());
    }
    line("%n");
  }

  /** What readers know from elsewhere: Wilson's interval as if no two joints shared a photo. */
  private void eachAlone(Tally tally) {
    line(
        JOINT_LINE,
        " each alone",
        "",
        rate(tally.missed().plain()),
        rate(tally.falseCalls().plain()),
        rate(tally.unjudged().plain()),
        rate(tally.named().plain()));
  }

  private void joints(String name, Tally tally) {
    line(
        JOINT_LINE,
        name,
        tally.joints(),
        rate(tally.missed()),
        rate(tally.falseCalls()),
        rate(tally.unjudged()),
        rate(tally.named()));
  }

  private void findings(TrialSummary summary) {
    line(
        JOINT_LINE,
        "finding",
        "",
        "  good said of bad",
        "  called in error",
        "  unjudged",
        "  named right");
    for (FindingTally tally : summary.byFinding()) {
      line(
          JOINT_LINE,
          tally.kind().id(),
          tally.missed().of(),
          rate(tally.missed()),
          rate(tally.calledInError()),
          rate(tally.unjudged()),
          rate(tally.named()));
    }
  }

  private void line(String format, Object... arguments) {
    text.append(String.format(Locale.ROOT, format, arguments).replace("\r\n", "\n"));
  }

  /** As " 3/269 1.1 % (0.4-3.2)": the share with its 95 % interval. */
  static String rate(Rated rate) {
    return rate.of() == 0
        ? "       -"
        : String.format(
            Locale.ROOT,
            "%8s %5.1f %% (%.1f-%.1f)",
            rate.count() + "/" + rate.of(),
            100 * rate.share(),
            100 * rate.lower(),
            100 * rate.upper());
  }

  /** As "3/269 1.1 % (0.4-3.2)", of lines that are no table: decimals as told. */
  public static String plain(Rated rate, int decimals) {
    String format = "%d/%d %.0f %% (%.0f-%.0f)".replace(".0f", "." + decimals + "f");
    return rate.of() == 0
        ? "none"
        : String.format(
            Locale.ROOT,
            format,
            rate.count(),
            rate.of(),
            100 * rate.share(),
            100 * rate.lower(),
            100 * rate.upper());
  }

  static String percent(double share) {
    return Double.isNaN(share) ? "-" : String.format(Locale.ROOT, "%.2f %%", 100 * share);
  }
}
