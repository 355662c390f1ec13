package leadlight.drill.sitting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlight.drill.set.PracticeSet;
import leadlight.drill.set.PracticeSet.Specimen;
import leadlight.drill.set.PracticeSet.Spot;
import leadlight.drill.skill.Offered;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.record.DrillAnswer;
import leadlight.text.Messages;

/** What the page is told, as trees that become JSON. Nothing of the truth before its time. */
final class Views {

  /** A fault to choose, with its key. */
  record Choice(String key, String id, String words) {}

  /** Where the whole judging stands; next is 0 when all specimens are closed. */
  record State(
      String set,
      String about,
      String person,
      String word,
      int specimens,
      int next,
      List<Integer> closed,
      boolean ownWork,
      boolean tellAtEnd,
      List<Choice> choices) {}

  /** A joint to be asked for. */
  record Asked(int pin, double x, double half) {}

  /** A verdict that was given. */
  record Given(int pin, String verdict, Optional<String> finding) {}

  /** A specimen; {@code told} is empty until it may be told. */
  record SpecimenView(
      int specimen,
      int width,
      int height,
      boolean closed,
      List<Asked> spots,
      List<Given> given,
      List<Telling.Told> told) {}

  /** A specimen in the list of the result. */
  record Done(int specimen, String outcome, String headline, boolean good) {}

  /** A figure in the result. */
  record Figure(String name, String value, String range) {}

  /** The result of all specimens. */
  record Result(String headline, List<Figure> figures, List<Done> specimens, String summary) {}

  private final Judging judging;

  Views(Judging judging) {
    this.judging = judging;
  }

  State state() {
    PracticeSet set = judging.set().set();
    return new State(
        set.name(),
        set.about(),
        judging.sitting().person(),
        set.word(),
        judging.specimens(),
        judging.next().orElse(0),
        List.copyOf(judging.closed()),
        judging.sitting().set().ownWork(),
        judging.tellsAtEnd(),
        choices());
  }

  List<Choice> choices() {
    Messages words = judging.words();
    List<Choice> choices = new ArrayList<>();
    for (FindingKind kind : Offered.KINDS) {
      choices.add(new Choice("" + (choices.size() + 1), kind.id(), Telling.kind(kind, words)));
    }
    choices.add(
        new Choice("" + (choices.size() + 1), Offered.OTHER, words.get("drill.something-else")));
    return choices;
  }

  SpecimenView specimen(int number) {
    Specimen specimen = judging.set().specimen(number);
    List<DrillAnswer> answers = judging.answers(number);
    return new SpecimenView(
        number,
        specimen.widthPx(),
        specimen.heightPx(),
        judging.closed().contains(number),
        specimen.spots().stream().map(s -> new Asked(s.pin(), s.xPx(), s.halfPx())).toList(),
        answers.stream().map(Views::given).toList(),
        judging.isTold(number) ? told(specimen, answers) : List.of());
  }

  private static Given given(DrillAnswer answer) {
    boolean other = answer.said() == Verdict.DEFECT && answer.finding().isEmpty();
    return new Given(
        answer.pin(),
        answer.said().id(),
        other ? Optional.of(Offered.OTHER) : answer.finding().map(FindingKind::id));
  }

  private List<Telling.Told> told(Specimen specimen, List<DrillAnswer> answers) {
    Map<Integer, DrillAnswer> byPin = new TreeMap<>();
    answers.forEach(a -> byPin.put(a.pin(), a));
    List<Telling.Told> told = new ArrayList<>();
    Telling telling = new Telling(judging.words());
    for (Spot spot : specimen.spots()) {
      told.add(telling.of(spot, byPin.get(spot.pin())));
    }
    return told;
  }

  Result result() {
    List<DrillAnswer> answers = judging.answers();
    List<Done> specimens = new ArrayList<>();
    for (int number = 1; number <= judging.specimens(); number++) {
      specimens.add(done(number, specimen(number).told()));
    }
    return new ResultWords(judging.sitting(), answers, judging.words()).result(specimens);
  }

  /** A specimen by its joint; of a row by its number of joints that are right, or alike. */
  private Done done(int number, List<Telling.Told> told) {
    if (told.size() == 1) {
      Telling.Told one = told.get(0);
      return new Done(number, one.outcome(), one.headline(), one.good());
    }
    long good = told.stream().filter(Telling.Told::good).count();
    String so = judging.sitting().set().ownWork() ? "alike" : "not-wrong";
    boolean all = good == told.size();
    return new Done(
        number,
        all ? "right" : "row",
        judging.words().get("drill.joints-" + so, good, told.size()),
        all);
  }
}
