package leadlight.drill.sitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import leadlight.drill.pool.Known;
import leadlight.drill.pool.ToolSaid;
import leadlight.drill.set.PracticeSet.Mark;
import leadlight.drill.set.PracticeSet.Spot;
import leadlight.drill.skill.BesideTool;
import leadlight.drill.skill.Outcome;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.record.DrillAnswer;
import leadlight.text.Messages;
import leadlight.text.VerdictWords;
import leadlight.trial.truth.TrueClass;

/** What is told of a joint after it was judged. */
public final class Telling {

  private static final Messages WORDS = Messages.of("en");

  /**
   * A joint, told.
   *
   * @param outcome name of what the answer was worth
   * @param headline the same in words
   * @param good true if nothing is to be learnt from it
   * @param you the trainee's verdict, as id
   * @param other the truth's verdict (of own work the tool's), as id
   * @param lines name and text
   * @param marks where to look
   */
  record Told(
      int pin,
      String outcome,
      String headline,
      boolean good,
      String you,
      String other,
      List<Line> lines,
      List<Mark> marks) {}

  /** A name with what is said of it. */
  record Line(String name, String text) {}

  private Telling() {}

  static Told of(Spot spot, DrillAnswer answer) {
    List<Line> lines = new ArrayList<>();
    spot.known().ifPresent(known -> lines.add(new Line("In truth", truth(known))));
    lines.add(new Line("You said", said(answer.said(), answer.finding())));
    lines.add(new Line("Leadlight", spot.tool().map(Telling::tool).orElse("found no row here")));
    lookAt(spot).ifPresent(text -> lines.add(new Line("Look at", text)));
    named(answer).ifPresent(text -> lines.add(new Line("That would be", text)));
    spot.tool().ifPresent(tool -> reasons(tool, lines));
    boolean own = spot.known().isEmpty();
    Outcome outcome = Outcome.of(answer);
    BesideTool beside = BesideTool.of(answer);
    return new Told(
        spot.pin(),
        id(own ? beside : outcome),
        own ? beside.words() : headline(outcome, spot.known().orElseThrow()),
        own ? beside == BesideTool.AGREED : outcome.isRight() || !outcome.counts(),
        answer.said().id(),
        own
            ? spot.tool().map(ToolSaid::verdict).orElse(Verdict.UNJUDGED).id()
            : spot.known().orElseThrow().id(),
        lines,
        spot.marks());
  }

  private static String id(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static String headline(Outcome outcome, Known known) {
    String is = known.verdict() == TrueClass.DEFECT ? kinds(known.findings()) : "sound";
    return switch (outcome) {
      case NOT_COUNTED -> outcome.words();
      case FALSE_ALARM -> outcome.words() + ": this one is sound";
      default -> outcome.words() + ": " + is;
    };
  }

  private static String truth(Known known) {
    String is =
        switch (known.verdict()) {
          case ACCEPTABLE -> "sound";
          case DEFECT -> kinds(known.findings());
          case LIMIT ->
              "too close to a limit to count"
                  + (known.findings().isEmpty() ? "" : ": " + kinds(known.findings()));
        };
    String to = known.bridgeTo().isPresent() ? " to pin " + known.bridgeTo().getAsInt() : "";
    return is + to + " (" + known.how() + ")";
  }

  static String said(Verdict verdict, Optional<FindingKind> finding) {
    return switch (verdict) {
      case ACCEPTABLE, PROCESS_INDICATOR -> "sound";
      case UNJUDGED -> "not judged: the photo does not decide it";
      case DEFECT -> finding.map(Telling::kind).orElse("defect of another kind");
    };
  }

  public static String kind(FindingKind kind) {
    return WORDS.get("kind." + kind.id());
  }

  private static String kinds(List<FindingKind> kinds) {
    return kinds.isEmpty()
        ? "defect"
        : kinds.stream().map(Telling::kind).collect(Collectors.joining(" and "));
  }

  private static String tool(ToolSaid tool) {
    String verdict = VerdictWords.of(tool.verdict(), WORDS);
    if (tool.verdict() == Verdict.UNJUDGED) {
      return verdict + tool.unjudgedBecause().map(why -> ": " + why).orElse("");
    }
    String findings = tool.remarks().stream().map(Telling::sure).collect(Collectors.joining("; "));
    return findings.isEmpty() ? verdict : verdict + ": " + findings;
  }

  private static String sure(ToolSaid.Remark remark) {
    String percent = WORDS.get("number.percent", remark.percent());
    return remark.share().isPresent()
        ? WORDS.get("finding.no-fillet", percent, kind(remark.kind()))
        : WORDS.get("finding.sure", kind(remark.kind()), percent);
  }

  /** What the fault looks like: the truth's, or else the tool's. */
  private static Optional<String> lookAt(Spot spot) {
    List<FindingKind> kinds =
        spot.known()
            .map(Known::findings)
            .filter(k -> !k.isEmpty())
            .orElseGet(() -> spot.tool().map(ToolSaid::kinds).orElse(List.of()));
    return kinds.stream().findFirst().map(Telling::plain);
  }

  /** How the fault that was named would look, where there is none or another. */
  private static Optional<String> named(DrillAnswer answer) {
    Outcome outcome = Outcome.of(answer);
    boolean wrong =
        outcome == Outcome.FALSE_ALARM
            || outcome == Outcome.MISNAMED
            || (outcome == Outcome.NO_TRUTH && BesideTool.of(answer) == BesideTool.OVER_CALLED);
    return wrong ? answer.finding().map(Telling::plain) : Optional.empty();
  }

  private static String plain(FindingKind kind) {
    return WORDS.get("kind." + kind.id() + ".plain");
  }

  /** Of the first finding, the worst; the others are only named. */
  private static void reasons(ToolSaid tool, List<Line> lines) {
    tool.remarks().stream()
        .findFirst()
        .ifPresent(
            remark -> {
              add("Leadlight saw", String.join("; ", remark.because()), lines);
              add("Rule", remark.clause(), lines);
              add("Settle it by", remark.settleBy(), lines);
            });
  }

  private static void add(String name, String text, List<Line> lines) {
    if (!text.isEmpty()) {
      lines.add(new Line(name, text));
    }
  }
}
