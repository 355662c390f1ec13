package leadlight.app.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.model.Question;
import leadlight.model.joint.Chances;
import leadlight.model.joint.Joint;
import leadlight.model.joint.Reading;
import leadlight.text.Questions;

/** The two opinions of a recorded joint, as cells of a table and as a line of a terminal. */
final class RecordOpinions {

  private static final Questions WORDS = Questions.english();

  private RecordOpinions() {}

  static List<String> header() {
    List<String> header = new ArrayList<>();
    for (String whose : List.of("measures_", "reader_")) {
      for (Question question : Question.values()) {
        header.add(whose + question.id());
      }
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

  private static void add(List<String> cells, Optional<Chances> chances) {
    for (Question question : Question.values()) {
      cells.add(
          chances.map(it -> it.answers().get(question)).map(chance -> "" + chance).orElse(""));
    }
  }

  /**
   * "measures / second reader: no fillet 2 % / 50 %"; empty if one of them was not asked.
   *
   * @param leads leads of the row
   */
  static Optional<String> line(Joint joint, int leads) {
    if (joint.byMeasures().isEmpty() || joint.byReader().isEmpty()) {
      return Optional.empty();
    }
    Reading reading = joint.byReader().get();
    List<String> said =
        WORDS.spoken(joint.byMeasures().get(), reading.chances(), joint.pin(), leads).stream()
            .map(line -> line.question() + " " + line.measures() + " / " + line.reader())
            .toList();
    String all = said.isEmpty() ? "neither sees a fault" : String.join(", ", said);
    String unlike = reading.unlike() ? "; unlike known joints" : "";
    return Optional.of("measures / second reader: " + all + unlike);
  }
}
