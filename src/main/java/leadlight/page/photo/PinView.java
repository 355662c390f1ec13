package leadlight.page.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.connector.BridgeHarm;
import leadlight.connector.SignalGroup;
import leadlight.model.Measure;
import leadlight.model.Quantity;
import leadlight.model.Unit;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.row.RowSpec;
import leadlight.page.look.Bar;
import leadlight.page.look.Plot;
import leadlight.page.words.DataWords;
import leadlight.page.words.PageContext;
import leadlight.page.words.PhotoEnds;
import leadlight.page.words.SafeText;
import leadlight.text.Messages;
import leadlight.text.Sentences;
import leadlight.text.VerdictWords;

/**
 * One joint as the page tells it.
 *
 * @param pin 1 to N
 * @param title "Pin 3 · D2-"
 * @param ends where it is in the photo, counted from both ends
 * @param verdict id of the verdict
 * @param verdictWords verdict in full
 * @param label for the row's button
 * @param needsHands true for what a person must look at
 * @param findings what was found
 * @param doubts why it is not judged
 * @param grounds what the verdict rests on; empty if it is a defect or not judged
 * @param opinions what measures and second reader say, if both were asked
 * @param bars measures against limits
 * @param others the other measures, name and value
 * @param signal what the pin carries
 * @param effects what its faults do in use
 * @param picture the close-up and the plot, if the row was kept to look at
 */
public record PinView(
    int pin,
    String title,
    String ends,
    String verdict,
    String verdictWords,
    String label,
    boolean needsHands,
    List<FindingView> findings,
    List<String> doubts,
    String grounds,
    Optional<OpinionsView> opinions,
    List<Bar> bars,
    List<Line> others,
    Optional<String> signal,
    List<Line> effects,
    Optional<CloseUp> picture) {

  /** A name with what is said of it. */
  public record Line(String name, String text) {}

  /** A finding in words. */
  public record FindingView(
      String verdict,
      String name,
      String plain,
      String sure,
      List<String> because,
      String rule,
      String settle) {}

  /** Where the close-up lies in its strip, and the plot beside it. */
  public record CloseUp(
      String strip,
      String viewBox,
      Plot plot,
      String plotLabel,
      String bandWords,
      Optional<Box> moved) {}

  /** Part of a close-up, in its own units: what the second reader's call rests on. */
  public record Box(double x, double y, double width, double height) {}

  /** Makes the views of one page. */
  static final class Maker {

    private final PageContext context;
    private final Messages words;
    private final Sentences sentences;
    private final DataWords data;
    private final RowSpec row;

    Maker(PageContext context, DataWords data, RowSpec row) {
      this.context = context;
      this.words = context.words();
      this.sentences = context.sentences();
      this.data = data;
      this.row = row;
    }

    PinView of(GradedJoint joint, PhotoEnds ends, Optional<CloseUp> picture) {
      int pin = joint.pin();
      int leads = row.leads();
      String landName = landName(pin);
      Optional<SignalGroup> group =
          context.connector().flatMap(connector -> connector.signalOf(landName));
      Optional<String> signal = group.map(g -> data.signal(g, landName));
      String name = String.valueOf(pin).equals(landName) ? "" : SafeText.of(landName);
      return new PinView(
          pin,
          title(pin, name, signal),
          ends.words(pin, words),
          joint.verdict().id(),
          words.get("verdict." + joint.verdict().id() + ".long"),
          label(joint),
          joint.verdict() == Verdict.DEFECT || joint.verdict() == Verdict.UNJUDGED,
          Sentences.spoken(joint.findings()).stream().map(this::finding).toList(),
          sentences.of(joint.doubts()),
          joint.grounds().isEmpty() ? "" : sentences.seen(joint.grounds()),
          OpinionsView.of(joint.joint(), leads, words),
          joint.checks().stream().map(check -> Bar.of(check, context)).toList(),
          others(joint),
          signal.map(
              s -> group.orElseThrow().name().equals(s) ? s : s + " (" + groupName(group) + ")"),
          effects(joint, landName, group),
          picture);
    }

    private String groupName(Optional<SignalGroup> group) {
      return data.name(group.orElseThrow());
    }

    private String title(int pin, String name, Optional<String> signal) {
      List<String> parts = new ArrayList<>();
      if (!name.isEmpty()) {
        parts.add(name);
      }
      signal.ifPresent(parts::add);
      return parts.isEmpty()
          ? words.get("page.pin", pin)
          : words.get("page.pin.named", pin, String.join(" \u00b7 ", parts));
    }

    private String label(GradedJoint joint) {
      List<String> parts = new ArrayList<>();
      parts.add(VerdictWords.of(joint.verdict(), words));
      Sentences.spoken(joint.findings()).forEach(f -> parts.add(name(f)));
      return words.get("page.pin.label", joint.pin(), String.join(", ", parts));
    }

    private FindingView finding(Finding finding) {
      String kind = finding.share().isPresent() ? "no-fillet" : finding.kind().id();
      return new FindingView(
          finding.verdict().id(),
          name(finding),
          words.get("kind." + kind + ".plain"),
          words.get("page.sure", words.percent(finding.probability())),
          sentences.because(finding),
          context.limits().rule(finding, words),
          sentences.settle(finding));
    }

    private String name(Finding finding) {
      String kind = words.get("kind." + finding.kind().id());
      if (finding.share().isPresent()) {
        return words.get("kind.no-fillet", kind);
      }
      return finding.pins().size() > 1
          ? words.get("finding.pair", kind, finding.pins().get(0), finding.pins().get(1))
          : kind;
    }

    private List<Line> others(GradedJoint joint) {
      List<Line> lines = new ArrayList<>();
      for (Measure measure : Measure.values()) {
        Quantity quantity = joint.joint().measures().get(measure);
        boolean drawn = joint.checks().stream().anyMatch(check -> check.measure() == measure);
        if (quantity != null && !drawn) {
          lines.add(new Line(words.get("measure." + measure.id()), quantity(quantity)));
        }
      }
      return lines;
    }

    private String quantity(Quantity quantity) {
      if (quantity.unit() == Unit.SHARE) {
        return words.number(100 * quantity.value(), 1) + " %";
      }
      boolean length = quantity.unit() == Unit.MM;
      String unit =
          length ? context.unit().symbol() : words.get("unit." + quantity.unit().symbol());
      String value = number(quantity.value(), length);
      return quantity.u() == 0
          ? value + " " + unit
          : words.get("measure.doubt", value, number(Bar.COVERAGE * quantity.u(), length), unit);
    }

    private String number(double value, boolean length) {
      return length ? words.length(value, context.unit()) : words.number(value, 1);
    }

    private List<Line> effects(GradedJoint joint, String landName, Optional<SignalGroup> group) {
      List<Line> lines = new ArrayList<>();
      group.ifPresent(
          g -> {
            lines.add(new Line(words.get("page.if-open"), data.open(g)));
            lines.add(new Line(words.get("page.if-shorted"), data.shorted(g)));
            lines.add(new Line(words.get("page.basis.name"), data.basis(g)));
          });
      for (Finding finding : joint.findings()) {
        if (finding.pins().size() == 2) {
          harm(landName, finding.pins().get(1)).ifPresent(lines::add);
        }
      }
      return lines;
    }

    private Optional<Line> harm(String landName, int other) {
      Optional<BridgeHarm> harm =
          context.connector().flatMap(c -> c.bridgeHarm(landName, landName(other)));
      return harm.map(h -> new Line(words.get("page.if-bridged", other), data.harm(h)));
    }

    private String landName(int pin) {
      return row.lands().get(pin - 1).name();
    }
  }
}
