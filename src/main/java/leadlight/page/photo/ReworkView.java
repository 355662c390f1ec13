package leadlight.page.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import leadlight.model.Verdict;
import leadlight.model.result.LegSet;
import leadlight.page.words.DataWords;
import leadlight.page.words.LegNames;
import leadlight.page.words.PhotoEnds;
import leadlight.text.Messages;

/**
 * The list of what to touch up, in words.
 *
 * @param legs what to do at anchor legs, before the row; empty if nothing
 * @param tools the work, by tool, in the order in which it is done
 * @param settle pins to settle first; empty if none
 * @param settleLegs anchor legs to settle first; empty if none
 * @param leave pins to leave alone; empty if none
 * @param meter pairs to meter, with what a bridge there does
 * @param meterTouched further pairs; empty if none
 * @param meterAll all pairs
 */
public record ReworkView(
    String legs,
    List<ToolView> tools,
    String settle,
    String settleLegs,
    String leave,
    List<PinView.Line> meter,
    String meterTouched,
    String meterAll) {

  /** All that is done with one tool before it is laid down. */
  public record ToolView(String id, String title, List<StepView> steps) {}

  /** One kind of work: what, how, and its passes. */
  public record StepView(String task, String title, String how, List<PassView> passes) {}

  /** One pass of the iron: its pins and what to know. */
  public record PassView(List<Integer> pins, String text, String note) {}

  static ReworkView of(Rework rework, LegSet legs, PhotoEnds ends, Messages words, DataWords data) {
    Maker maker = new Maker(ends, words, data);
    int leads = ends.leads();
    return new ReworkView(
        LegNames.todo(legs, words),
        maker.tools(rework.steps()),
        runs(rework.settle()),
        LegNames.of(legs, Verdict.UNJUDGED, words),
        runs(rework.leave()),
        rework.meter().stream().map(p -> new PinView.Line(pair(p), maker.harm(p))).toList(),
        rework.meterTouched().stream().map(ReworkView::pair).collect(Collectors.joining(", ")),
        words.get("rework.meter.all", leads - 1, leads));
  }

  /** "1-3, 7" of 1, 2, 3, 7. */
  public static String runs(List<Integer> pins) {
    List<String> runs = new ArrayList<>();
    for (int i = 0; i < pins.size(); ) {
      int end = i;
      while (end + 1 < pins.size() && pins.get(end + 1) == pins.get(end) + 1) {
        end++;
      }
      runs.add(end == i ? "" + pins.get(i) : pins.get(i) + "\u2013" + pins.get(end));
      i = end + 1;
    }
    return String.join(", ", runs);
  }

  private static String pair(Rework.Pair pair) {
    return pair.pin() + "\u2013" + pair.other();
  }

  private record Maker(PhotoEnds ends, Messages words, DataWords data) {

    String harm(Rework.Pair pair) {
      return pair.harm().map(data::harm).orElse("");
    }

    /** Steps that follow each other with one tool are one turn of it. */
    List<ToolView> tools(List<Rework.Step> steps) {
      List<ToolView> tools = new ArrayList<>();
      for (int i = 0; i < steps.size(); ) {
        String tool = steps.get(i).task().tool();
        List<StepView> turn = new ArrayList<>();
        while (i < steps.size() && steps.get(i).task().tool().equals(tool)) {
          turn.add(step(steps.get(i++)));
        }
        tools.add(new ToolView(tool, words.get("tool." + tool), turn));
      }
      return tools;
    }

    StepView step(Rework.Step step) {
      String key = "rework." + step.task().id();
      List<PassView> passes =
          step.pairs().isEmpty()
              ? step.passes().stream().map(this::pass).toList()
              : step.pairs().stream().map(this::pass).toList();
      return new StepView(step.task().id(), words.get(key), words.get(key + ".how"), passes);
    }

    private PassView pass(List<Integer> pins) {
      return new PassView(pins, pins.stream().map(this::pin).collect(Collectors.joining(", ")), "");
    }

    private PassView pass(Rework.Pair pair) {
      return new PassView(
          List.of(pair.pin(), pair.other()),
          words.get("rework.bridge.pair", pair.pin(), pair.other())
              + " ("
              + ends.words(pair.pin(), words)
              + ")",
          harm(pair));
    }

    private String pin(int pin) {
      return words.get("rework.pins.both", pin, ends.words(pin, words));
    }
  }
}
