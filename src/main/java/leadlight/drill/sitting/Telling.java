package leadlight.drill.sitting;

import java.util.ArrayList;
import java.util.List;
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

  private final Messages words;

  /** Tells in the words' language. */
  Telling(Messages words) {
    this.words = words;
  }

  Told of(Spot spot, DrillAnswer answer) {
    List<Line> lines = new ArrayList<>();
    spot.known().ifPresent(known -> lines.add(new Line(words.get("drill.truth"), truth(known))));
    lines.add(new Line(words.get("drill.you-said"), said(answer.said(), answer.finding())));
    lines.add(
        new Line(
            words.get("drill.tool"),
            spot.tool().map(this::tool).orElseGet(() -> words.get("drill.tool.no-row"))));
    lookAt(spot).ifPresent(text -> lines.add(new Line(words.get("drill.look-at"), text)));
    named(answer).ifPresent(text -> lines.add(new Line(words.get("drill.would-be"), text)));
    spot.tool().ifPresent(tool -> reasons(tool, lines));
    boolean own = spot.known().isEmpty();
    Outcome outcome = Outcome.of(answer);
    BesideTool beside = BesideTool.of(answer);
    return new Told(
        spot.pin(),
        own ? beside.id() : outcome.id(),
        own
            ? words.get("drill.beside." + beside.id())
            : headline(outcome, spot.known().orElseThrow()),
        own ? beside == BesideTool.AGREED : outcome.isRight() || !outcome.counts(),
        answer.said().id(),
        own
            ? spot.tool().map(ToolSaid::verdict).orElse(Verdict.UNJUDGED).id()
            : spot.known().orElseThrow().id(),
        lines,
        spot.marks());
  }

  private String headline(Outcome outcome, Known known) {
    String is =
        known.verdict() == TrueClass.DEFECT ? kinds(known.findings()) : words.get("drill.sound");
    String said = words.get("drill.outcome." + outcome.id());
    return switch (outcome) {
      case NOT_COUNTED -> said;
      case FALSE_ALARM -> words.get("drill.is-sound", said);
      default -> words.get("drill.is", said, is);
    };
  }

  private String truth(Known known) {
    String is =
        switch (known.verdict()) {
          case ACCEPTABLE -> words.get("drill.sound");
          case DEFECT -> kinds(known.findings());
          case LIMIT ->
              known.findings().isEmpty()
                  ? words.get("drill.limit")
                  : words.get("drill.is", words.get("drill.limit"), kinds(known.findings()));
        };
    String to =
        known.bridgeTo().isPresent()
            ? " " + words.get("drill.to-pin", known.bridgeTo().getAsInt())
            : "";
    return is + to + " (" + known.how() + ")";
  }

  private String said(Verdict verdict, Optional<FindingKind> finding) {
    return switch (verdict) {
      case ACCEPTABLE, PROCESS_INDICATOR -> words.get("drill.sound");
      case UNJUDGED -> words.get("drill.unjudged");
      case DEFECT -> finding.map(this::kind).orElseGet(() -> words.get("drill.defect.other"));
    };
  }

  private String kind(FindingKind kind) {
    return kind(kind, words);
  }

  /** What a finding of a kind is called. */
  public static String kind(FindingKind kind, Messages words) {
    return words.get("kind." + kind.id());
  }

  private String kinds(List<FindingKind> kinds) {
    return kinds.isEmpty()
        ? words.get("drill.defect")
        : kinds.stream()
            .map(this::kind)
            .collect(Collectors.joining(" " + words.get("drill.and") + " "));
  }

  private String tool(ToolSaid tool) {
    String verdict = VerdictWords.of(tool.verdict(), words);
    if (tool.verdict() == Verdict.UNJUDGED) {
      return verdict + tool.unjudgedBecause().map(why -> ": " + why).orElse("");
    }
    String findings = tool.remarks().stream().map(this::sure).collect(Collectors.joining("; "));
    return findings.isEmpty() ? verdict : verdict + ": " + findings;
  }

  private String sure(ToolSaid.Remark remark) {
    String percent = words.get("number.percent", remark.percent());
    return remark.share().isPresent()
        ? words.get("finding.no-fillet", percent, kind(remark.kind()))
        : words.get("finding.sure", kind(remark.kind()), percent);
  }

  /** What the fault looks like: the truth's, or else the tool's. */
  private Optional<String> lookAt(Spot spot) {
    List<FindingKind> kinds =
        spot.known()
            .map(Known::findings)
            .filter(k -> !k.isEmpty())
            .orElseGet(() -> spot.tool().map(ToolSaid::kinds).orElse(List.of()));
    return kinds.stream().findFirst().map(this::plain);
  }

  /** How the fault that was named would look, where there is none or another. */
  private Optional<String> named(DrillAnswer answer) {
    Outcome outcome = Outcome.of(answer);
    boolean wrong =
        outcome == Outcome.FALSE_ALARM
            || outcome == Outcome.MISNAMED
            || (outcome == Outcome.NO_TRUTH && BesideTool.of(answer) == BesideTool.OVER_CALLED);
    return wrong ? answer.finding().map(this::plain) : Optional.empty();
  }

  private String plain(FindingKind kind) {
    return words.get("kind." + kind.id() + ".plain");
  }

  /** Of the first finding, the worst; the others are only named. */
  private void reasons(ToolSaid tool, List<Line> lines) {
    tool.remarks().stream()
        .findFirst()
        .ifPresent(
            remark -> {
              add(words.get("drill.tool-saw"), String.join("; ", remark.because()), lines);
              add(words.get("drill.rule"), remark.clause(), lines);
              add(words.get("drill.settle"), remark.settleBy(), lines);
            });
  }

  private static void add(String name, String text, List<Line> lines) {
    if (!text.isEmpty()) {
      lines.add(new Line(name, text));
    }
  }
}
