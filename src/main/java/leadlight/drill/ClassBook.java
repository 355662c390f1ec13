package leadlight.drill;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadlight.drill.pool.Known;
import leadlight.drill.set.OpenSet;
import leadlight.drill.set.PracticeSet;
import leadlight.drill.sitting.ResultWords;
import leadlight.drill.sitting.Telling;
import leadlight.drill.skill.DrillRules;
import leadlight.drill.skill.DueAgain;
import leadlight.drill.skill.Figures;
import leadlight.drill.skill.History;
import leadlight.model.FindingKind;
import leadlight.quality.Page;
import leadlight.quality.Page.Grid;
import leadlight.quality.Page.Heading;
import leadlight.quality.Page.Text;
import leadlight.quality.agreement.AgreePages;
import leadlight.quality.agreement.AgreementStudy;
import leadlight.quality.grades.Grade;
import leadlight.quality.grades.Grades;
import leadlight.record.DrillAnswer;
import leadlight.record.DrillRecord;
import leadlight.text.Messages;

/**
 * All trainees of a record, for their instructor.
 *
 * @param people by name
 */
public record ClassBook(List<History> people) {

  private static final String PICTURE = "picture ";
  private static final String TRUTH = "truth";

  /** Copies the list. */
  public ClassBook {
    people = List.copyOf(people);
  }

  /** Everybody in the record. */
  public static ClassBook of(DrillRecord record) {
    return new ClassBook(record.people().stream().map(name -> History.of(record, name)).toList());
  }

  /** The class table and the findings that are weakest in the whole class. */
  public Page page(Messages words) {
    List<Page.Block> blocks = new ArrayList<>();
    List<List<String>> rows = people.stream().map(person -> row(person, words)).toList();
    blocks.add(
        new Grid(
            List.of(
                words.get("drill.class.who"),
                words.get("drill.history.sittings"),
                words.get("drill.history.joints"),
                words.get("drill.history.missed"),
                words.get("drill.history.false-alarms"),
                words.get("drill.history.kappa"),
                words.get("drill.class.weakest")),
            rows));
    blocks.add(
        new Text(
            words.get("drill.class.last", DrillRules.builtIn().recentSittings().value()), false));
    weakest(blocks, words);
    blocks.add(new Text(words.get("drill.certifies-nothing"), true));
    return new Page(words.get("drill.class.title"), blocks);
  }

  private static List<String> row(History history, Messages words) {
    DrillWords said = new DrillWords(words);
    Optional<Figures> f = history.recent();
    String weakest =
        history.findings().stream()
            .filter(finding -> finding.notRight().count() > 0)
            .findFirst()
            .map(
                w ->
                    words.get(
                        "drill.class.not-right",
                        Telling.kind(w.finding(), words),
                        said.rate(w.notRight())))
            .orElse("");
    return List.of(
        history.person(),
        "" + history.drills().size(),
        f.map(x -> "" + x.judged()).orElse("0"),
        f.map(x -> said.rate(x.missed())).orElse(""),
        f.map(x -> said.rate(x.falseAlarm())).orElse(""),
        f.map(x -> ResultWords.value(x.kappa(), words)).orElse(""),
        weakest);
  }

  private void weakest(List<Page.Block> blocks, Messages words) {
    DrillWords said = new DrillWords(words);
    List<DrillAnswer> all = people.stream().flatMap(h -> h.answers().stream()).toList();
    List<List<String>> rows = new ArrayList<>();
    for (History.ByFinding finding : History.findings(all, new DueAgain())) {
      rows.add(
          List.of(
              Telling.kind(finding.finding(), words),
              said.rate(finding.missed()),
              said.rate(finding.notRight())));
    }
    if (!rows.isEmpty()) {
      blocks.add(new Heading(words.get("drill.class.findings")));
      blocks.add(
          new Grid(
              List.of(
                  words.get("drill.history.defect"),
                  words.get("drill.history.called-sound"),
                  words.get("drill.history.not-right")),
              rows));
    }
  }

  /**
   * How all who judged a set agree, with each other and with the truth.
   *
   * @return empty if nobody has finished it
   */
  public Optional<Page> agreement(OpenSet set) {
    List<Grade> grades = new ArrayList<>();
    for (History history : people) {
      lastAt(history, set).ifPresent(sat -> add(history.person(), sat, grades));
    }
    if (grades.isEmpty()) {
      return Optional.empty();
    }
    truth(set, grades);
    AgreementStudy study =
        new AgreementStudy(Grades.of(grades), Figures.READING, Optional.of(TRUTH));
    return Optional.of(AgreePages.page(study, item -> picture(set, item)));
  }

  private static Optional<History.Sat> lastAt(History history, OpenSet set) {
    return history.drills().stream()
        .filter(sat -> sat.sitting().set().key().equals(set.id().key()))
        .filter(sat -> sat.sitting().endedAt().isPresent())
        .max(Comparator.comparingLong(sat -> sat.sitting().id()));
  }

  private static void add(String person, History.Sat sat, List<Grade> grades) {
    sat.answers()
        .forEach(
            a ->
                grades.add(
                    new Grade(
                        item(a.specimen(), a.item()),
                        person,
                        1,
                        a.said().id(),
                        a.finding().map(FindingKind::id))));
  }

  private static void truth(OpenSet set, List<Grade> grades) {
    Set<String> asked = new HashSet<>(grades.stream().map(Grade::item).toList());
    for (int number = 1; number <= set.set().specimens().size(); number++) {
      for (PracticeSet.Spot spot : set.specimen(number).spots()) {
        String item = item(number, spot.item());
        Known known = spot.known().orElseThrow();
        if (asked.contains(item)) {
          List<String> kinds = known.findings().stream().map(FindingKind::id).toList();
          Optional<String> finding =
              kinds.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", kinds));
          grades.add(new Grade(item, TRUTH, 1, known.id(), finding));
        }
      }
    }
  }

  private static String item(int specimen, String item) {
    return PICTURE + specimen + ": " + item;
  }

  private static byte[] picture(OpenSet set, String item) {
    int number = Integer.parseInt(item.substring(PICTURE.length(), item.indexOf(':')));
    return set.specimen(number).spots().size() == 1 ? set.picture(number) : new byte[0];
  }
}
