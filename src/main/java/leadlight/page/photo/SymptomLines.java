package leadlight.page.photo;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.Verdict;
import leadlight.model.result.LegSet;
import leadlight.model.result.ScoredPhoto;
import leadlight.page.words.DataWords;
import leadlight.page.words.PageContext;
import leadlight.page.words.Symptoms;
import leadlight.text.Messages;

/** What a board does in use, with the pins to look at first and what was found there. */
final class SymptomLines {

  private final PageContext context;
  private final Messages words;
  private final DataWords data;

  SymptomLines(PageContext context) {
    this.context = context;
    this.words = context.words();
    this.data = context.data();
  }

  List<PageView.SymptomView> of(ScoredPhoto scored, LegSet legs) {
    List<PageView.SymptomView> views = new ArrayList<>();
    if (context.connector().isEmpty()) {
      return views;
    }
    for (Symptoms.AtRow at :
        Symptoms.builtIn().at(context.connector().orElseThrow(), scored.settings().row())) {
      List<String> order = new ArrayList<>();
      List<Integer> all = new ArrayList<>();
      if (at.symptom().legsFirst()) {
        order.add(words.get("symptoms.legs-first"));
      }
      for (List<Integer> group : at.pins()) {
        String pins =
            words.get(group.size() == 1 ? "pins.one" : "pins.many", ReworkView.runs(group));
        order.add(words.get(order.isEmpty() ? "symptoms.first" : "symptoms.then", pins));
        all.addAll(group);
      }
      List<Integer> faulty =
          all.stream()
              .filter(pin -> scored.joints().get(pin - 1).verdict() == Verdict.DEFECT)
              .sorted()
              .toList();
      String found =
          faulty.isEmpty()
              ? words.get("symptoms.not-found")
              : words.get(
                  "symptoms.found",
                  words.get(
                      faulty.size() == 1 ? "pins.one" : "pins.many", ReworkView.runs(faulty)));
      if (at.symptom().legsFirst() && legs.count(Verdict.DEFECT) > 0) {
        found = words.get("symptoms.legs-found", legs.count(Verdict.DEFECT)) + " " + found;
      }
      views.add(
          new PageView.SymptomView(
              data.text(at.symptom()),
              all.stream().map(String::valueOf).reduce((a, b) -> a + " " + b).orElse(""),
              String.join(", ", order) + ".",
              found,
              words.get("symptoms.source", data.basis(at.symptom()))));
    }
    return views;
  }
}
