package leadlight.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.RowOutcome;
import leadlight.page.photo.PageView;
import leadlight.page.photo.PinView;
import leadlight.page.photo.ReworkView;
import leadlight.page.words.DataWords;
import leadlight.page.words.PageContext;
import leadlight.page.words.SafeText;
import leadlight.page.words.Symptoms;
import leadlight.page.words.Verdicts;
import leadlight.report.strip.MarkedRow;
import leadlight.report.strip.ShownRow;
import leadlight.text.Messages;
import leadlight.text.Sentences;

/** From scored photos to what the customer is told: no jargon, no number that needs a lesson. */
final class SheetMaker {

  private static final int STRIP_WIDTH_PX = 1600;

  private final PageContext context;
  private final Messages words;

  SheetMaker(PageContext context) {
    this.context = context;
    this.words = context.words();
  }

  SheetView view(SheetRequest asked, Optional<CustomerSheet.Shot> before, CustomerSheet.Shot now) {
    List<SheetView.Picture> pictures = new ArrayList<>();
    before.ifPresent(shot -> pictures.addAll(pictures(shot, words.get("sheet.before"))));
    pictures.addAll(pictures(now, words.get(before.isPresent() ? "sheet.after" : "sheet.now")));
    Optional<String> signer = asked.signedBy().map(SafeText::of);
    return new SheetView(
        words.language(),
        words.get("sheet.title"),
        facts(asked),
        summary(asked, before, now.scored()),
        pictures,
        lists(before, now.scored()),
        words.get(signer.isPresent() ? "sheet.signed" : "sheet.unsigned"),
        signer.orElse(""),
        words.get("sheet.seal", asked.seal()),
        words.get("sheet.no-certificate"));
  }

  private List<PinView.Line> facts(SheetRequest asked) {
    List<PinView.Line> facts = new ArrayList<>();
    asked.shop().ifPresent(shop -> facts.add(fact("sheet.shop", shop)));
    facts.add(fact("sheet.job", asked.job()));
    facts.add(fact("sheet.board", asked.board()));
    asked.serial().ifPresent(serial -> facts.add(fact("life.serial", serial)));
    context.connector().ifPresent(c -> facts.add(fact("page.connector", context.data().name(c))));
    facts.add(new PinView.Line(words.get("sheet.legs"), legs(asked)));
    facts.add(fact("sheet.date", asked.date()));
    return facts;
  }

  private String legs(SheetRequest asked) {
    boolean good =
        asked.legs().stream()
            .allMatch(
                seen ->
                    !seen.legs().isEmpty()
                        && seen.legs().stream()
                            .allMatch(l -> l.verdict().compareTo(Verdict.UNJUDGED) < 0));
    boolean bad = asked.legs().stream().anyMatch(seen -> !seen.numbers(Verdict.DEFECT).isEmpty());
    String key = asked.legs().isEmpty() ? "no" : bad ? "bad" : good ? "yes" : "some";
    return words.get("sheet.legs." + key);
  }

  private PinView.Line fact(String key, String value) {
    return new PinView.Line(words.get(key), SafeText.of(value));
  }

  private List<String> summary(
      SheetRequest asked, Optional<CustomerSheet.Shot> before, ScoredPhoto now) {
    List<String> sentences = new ArrayList<>();
    before
        .map(CustomerSheet.Shot::scored)
        .filter(scored -> !scored.joints().isEmpty())
        .ifPresent(
            scored ->
                sentences.add(
                    words.get(
                        "sheet.summary.before",
                        Verdicts.count(scored, Verdict.DEFECT),
                        scored.joints().size())));
    sentences.add(now(now));
    if (asked.looked().isPresent() && asked.lookedBy().isPresent()) {
      sentences.add(
          words.get(
              "sheet.looked",
              SafeText.of(asked.lookedBy().get()),
              SafeText.of(asked.looked().get())));
    }
    asked
        .decision()
        .ifPresent(
            yes ->
                sentences.add(
                    words.get(yes ? "sheet.handed-back" : "sheet.not-handed-back")
                        + (asked.because().isEmpty() ? "" : " " + SafeText.of(asked.because()))));
    return sentences;
  }

  /** Good news of joints that were seen alone: what was not is said to be not inspected. */
  private String now(ScoredPhoto now) {
    int leads = now.joints().size();
    int faulty = Verdicts.count(now, Verdict.DEFECT);
    int unseen = Verdicts.count(now, Verdict.UNJUDGED);
    if (now.row() instanceof RowOutcome.NotFound) {
      return words.get("sheet.summary.no-row");
    }
    return faulty == 0 && unseen == 0
        ? words.get("sheet.summary.good", leads)
        : words.get("sheet.summary.mixed", leads, leads - faulty - unseen, unseen, faulty);
  }

  private List<SheetView.Picture> pictures(CustomerSheet.Shot shot, String caption) {
    if (!(shot.scored().row() instanceof RowOutcome.Found found)) {
      return List.of();
    }
    MarkedRow.Picture row =
        MarkedRow.jpeg(
            new ShownRow(
                "", shot.scored().settings().row(), found, shot.scored().joints(), shot.picture()),
            STRIP_WIDTH_PX);
    return List.of(
        new SheetView.Picture(
            caption,
            words.get("sheet.picture", caption),
            row.jpeg(),
            row.widthPx(),
            row.heightPx()));
  }

  private List<PageView.TitledList> lists(Optional<CustomerSheet.Shot> before, ScoredPhoto now) {
    List<PageView.TitledList> lists = new ArrayList<>();
    before.ifPresent(
        shot -> add(lists, "faults", words.get("sheet.faults"), faults(shot.scored())));
    List<String> remain = new ArrayList<>(faults(now));
    remain.addAll(notInspected(now));
    if (!remain.isEmpty()) {
      add(lists, "remains", words.get("sheet.remains"), remain);
    }
    add(
        lists,
        "not-visible",
        words.get("sheet.not-visible"),
        List.of(words.get("sheet.not-visible.text")));
    return lists;
  }

  private List<String> notInspected(ScoredPhoto now) {
    List<Integer> pins =
        now.joints().stream()
            .filter(joint -> joint.verdict() == Verdict.UNJUDGED)
            .map(GradedJoint::pin)
            .toList();
    if (now.row() instanceof RowOutcome.NotFound) {
      return List.of(words.get("sheet.summary.no-row"));
    }
    return pins.isEmpty()
        ? List.of()
        : List.of(
            words.get(
                "sheet.not-inspected",
                words.get(
                    pins.size() == 1 ? "sheet.contact" : "sheet.contacts", ReworkView.runs(pins))));
  }

  private void add(
      List<PageView.TitledList> lists, String id, String title, List<String> sentences) {
    lists.add(
        new PageView.TitledList(
            id, title, sentences.isEmpty() ? List.of(words.get("sheet.none")) : sentences));
  }

  /** One line for each kind of fault, with what it can mean in use. */
  private List<String> faults(ScoredPhoto scored) {
    Map<FindingKind, Set<Integer>> pins = new LinkedHashMap<>();
    for (GradedJoint joint : scored.joints()) {
      for (Finding finding : Sentences.spoken(joint.findings())) {
        if (finding.verdict() == Verdict.DEFECT) {
          pins.computeIfAbsent(finding.kind(), kind -> new LinkedHashSet<>()).add(joint.pin());
        }
      }
    }
    List<String> lines = new ArrayList<>();
    pins.forEach(
        (kind, at) -> {
          String which =
              words.get(
                  at.size() == 1 ? "sheet.contact" : "sheet.contacts",
                  ReworkView.runs(at.stream().sorted().toList()));
          lines.add(words.get("sheet.fault." + kind.id(), which) + "." + effect(scored, at));
        });
    return lines;
  }

  /** What such faults look like in use, in the words of the symptoms: plainer than the signals'. */
  private String effect(ScoredPhoto scored, Set<Integer> pins) {
    if (context.connector().isEmpty()) {
      return "";
    }
    List<Symptoms.AtRow> symptoms =
        Symptoms.builtIn().at(context.connector().get(), scored.settings().row());
    DataWords data = context.data();
    Set<String> effects = new LinkedHashSet<>();
    for (int pin : pins) {
      symptoms.stream()
          .filter(at -> at.pins().stream().anyMatch(group -> group.contains(pin)))
          .findFirst()
          .ifPresent(at -> effects.add(data.text(at.symptom())));
    }
    return effects.isEmpty() ? "" : " " + words.get("sheet.effect", String.join("; ", effects));
  }
}
