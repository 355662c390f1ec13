package leadlight.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.model.FaultChances;
import leadlight.model.Joint;
import leadlight.model.Reading;
import leadlight.text.Messages;

/**
 * What measures and second reader say of a joint, each by itself.
 *
 * @param lines questions of which at least one of them speaks
 * @param differ true if on a question one of them says rather yes, the other rather no
 * @param unlike true if the reader knows nothing like the joint
 */
record OpinionsView(List<Line> lines, boolean differ, boolean unlike) {

  /** Below this chance an opinion is not worth a line; from it on a joint can be in doubt. */
  private static final double SPEAKS_FROM = 0.02;

  private static final double RATHER_YES = 0.5;

  /**
   * One question.
   *
   * @param question in words
   * @param measures chance by measures
   * @param reader chance by the second reader
   * @param differ true if one says rather yes, the other rather no
   */
  record Line(String question, String measures, String reader, boolean differ) {}

  /** Empty if there is one opinion only, or if neither speaks of a joint that is unfit to judge. */
  static Optional<OpinionsView> of(Joint joint, int leads, Messages words) {
    if (joint.byMeasures().isEmpty() || joint.byReader().isEmpty()) {
      return Optional.empty();
    }
    FaultChances measures = joint.byMeasures().get();
    Reading reading = joint.byReader().get();
    FaultChances reader = reading.chances();
    int pin = joint.pin();
    List<Line> lines = new ArrayList<>();
    Maker maker = new Maker(words, lines);
    maker.add(words.get("opinion.missing"), measures.missing(), reader.missing());
    maker.add(words.get("opinion.no-fillet"), measures.unwetted(), reader.unwetted());
    maker.add(words.get("opinion.excess"), measures.excess(), reader.excess());
    if (pin > 1) {
      maker.add(
          words.get("opinion.bridge", pin - 1), measures.bridgeBefore(), reader.bridgeBefore());
    }
    if (pin < leads) {
      maker.add(words.get("opinion.bridge", pin + 1), measures.bridgeAfter(), reader.bridgeAfter());
    }
    maker.add(words.get("opinion.ball"), measures.ball(), reader.ball());
    maker.add(words.get("opinion.overhang"), measures.overHalf(), reader.overHalf());
    maker.add(words.get("opinion.overhang-quarter"), measures.overQuarter(), reader.overQuarter());
    if (lines.isEmpty() && joint.unfitBecause().isPresent()) {
      return Optional.empty();
    }
    return Optional.of(
        new OpinionsView(lines, lines.stream().anyMatch(Line::differ), reading.unlike()));
  }

  private record Maker(Messages words, List<Line> lines) {

    void add(String question, double measures, double reader) {
      if (Math.max(measures, reader) >= SPEAKS_FROM) {
        boolean differ = (measures >= RATHER_YES) != (reader >= RATHER_YES);
        lines.add(new Line(question, words.percent(measures), words.percent(reader), differ));
      }
    }
  }
}
