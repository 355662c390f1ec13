package leadlight.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import leadlight.model.FaultChances;
import leadlight.model.Joint;
import leadlight.model.Reading;

/** The two opinions of a recorded joint, as cells of a table and as a line of a terminal. */
final class RecordOpinions {

  /** Below this chance an opinion is not worth a word; from it on a joint can be in doubt. */
  private static final double SPEAKS_FROM = 0.02;

  /** Which questions both answer, by their names in the JSON report. */
  private record Question(String id, ToDoubleFunction<FaultChances> chance) {}

  private static final Question OPEN =
      new Question("open_rather_than_insufficient", FaultChances::open);

  private static final List<Question> QUESTIONS =
      List.of(
          new Question("missing_lead", FaultChances::missing),
          new Question("no_fillet", FaultChances::unwetted),
          OPEN,
          new Question("excess", FaultChances::excess),
          new Question("bridge_to_pin_before", FaultChances::bridgeBefore),
          new Question("bridge_to_next_pin", FaultChances::bridgeAfter),
          new Question("solder_ball", FaultChances::ball),
          new Question("overhang_above_quarter", FaultChances::overQuarter),
          new Question("overhang_above_half", FaultChances::overHalf));

  private RecordOpinions() {}

  static List<String> header() {
    List<String> header = new ArrayList<>();
    for (String whose : List.of("measures_", "reader_")) {
      QUESTIONS.forEach(question -> header.add(whose + question.id()));
    }
    header.add("reader_strangeness");
    header.add("reader_unlike");
    return header;
  }

  /** One cell for each name of the header; empty where nothing was kept. */
  static List<String> cells(Joint joint) {
    List<String> cells = new ArrayList<>();
    add(cells, joint.byMeasures());
    add(cells, joint.byReader().map(Reading::chances));
    cells.add(joint.byReader().map(reading -> "" + reading.strangeness()).orElse(""));
    cells.add(joint.byReader().map(reading -> "" + reading.unlike()).orElse(""));
    return cells;
  }

  private static void add(List<String> cells, Optional<FaultChances> chances) {
    for (Question question : QUESTIONS) {
      cells.add(
          chances
              .map(question.chance()::applyAsDouble)
              .filter(chance -> !chance.isNaN())
              .map(chance -> "" + chance)
              .orElse(""));
    }
  }

  /** Rounded down, so that 99.9 % never reads as certain. */
  private static int percent(double chance) {
    return (int) Math.floor(100 * chance);
  }

  /** "measures / second reader: no fillet 2 % / 50 %"; empty if one of them was not asked. */
  static Optional<String> line(Joint joint) {
    if (joint.byMeasures().isEmpty() || joint.byReader().isEmpty()) {
      return Optional.empty();
    }
    FaultChances measures = joint.byMeasures().get();
    Reading reading = joint.byReader().get();
    List<String> said = new ArrayList<>();
    for (Question question : QUESTIONS) {
      double byMeasures = question.chance().applyAsDouble(measures);
      double byReader = question.chance().applyAsDouble(reading.chances());
      if (question != OPEN && Math.max(byMeasures, byReader) >= SPEAKS_FROM) {
        String name = question.id().replace('_', ' ');
        said.add(
            String.format(
                Locale.ROOT, "%s %d %% / %d %%", name, percent(byMeasures), percent(byReader)));
      }
    }
    String all = said.isEmpty() ? "neither sees a fault" : String.join(", ", said);
    String unlike = reading.unlike() ? "; unlike known joints" : "";
    return Optional.of("measures / second reader: " + all + unlike);
  }
}
