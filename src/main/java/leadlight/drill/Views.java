package leadlight.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlight.drill.Deck.Card;
import leadlight.drill.Deck.Spot;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.record.DrillAnswer;

/** What the page is told, as trees that become JSON. Nothing of the truth before its time. */
final class Views {

  /** A fault to choose, with its key. */
  record Choice(String key, String id, String words) {}

  /** Where the whole taking stands; next is 0 when all cards are closed. */
  record State(
      String deck,
      String about,
      String person,
      int cards,
      int next,
      List<Integer> closed,
      boolean ownWork,
      boolean tellAtEnd,
      List<Choice> choices) {}

  /** A joint to be asked for. */
  record Asked(int pin, double x, double half) {}

  /** A verdict that was given. */
  record Given(int pin, String verdict, Optional<String> finding) {}

  /** A card; {@code told} is empty until it may be told. */
  record CardView(
      int card,
      int width,
      int height,
      boolean closed,
      List<Asked> spots,
      List<Given> given,
      List<Telling.Told> told) {}

  /** A card in the list of the result. */
  record Done(int card, String outcome, String headline, boolean good) {}

  /** A figure in the result. */
  record Figure(String name, String value, String range) {}

  /** The result of all cards. */
  record Result(String headline, List<Figure> figures, List<Done> cards, String summary) {}

  private final Taking taking;

  Views(Taking taking) {
    this.taking = taking;
  }

  State state() {
    Deck deck = taking.deck().deck();
    return new State(
        deck.name(),
        deck.about(),
        taking.sitting().person(),
        taking.cards(),
        taking.next().orElse(0),
        List.copyOf(taking.closed()),
        taking.sitting().deck().ownWork(),
        taking.tellsAtEnd(),
        choices());
  }

  static List<Choice> choices() {
    List<Choice> choices = new ArrayList<>();
    for (FindingKind kind : Offered.KINDS) {
      choices.add(new Choice("" + (choices.size() + 1), kind.id(), Telling.kind(kind)));
    }
    choices.add(new Choice("" + (choices.size() + 1), Offered.OTHER, "something else"));
    return choices;
  }

  CardView card(int number) {
    Card card = taking.deck().card(number);
    List<DrillAnswer> answers = taking.answers(number);
    return new CardView(
        number,
        card.widthPx(),
        card.heightPx(),
        taking.closed().contains(number),
        card.spots().stream().map(s -> new Asked(s.pin(), s.xPx(), s.halfPx())).toList(),
        answers.stream().map(Views::given).toList(),
        taking.isTold(number) ? told(card, answers) : List.of());
  }

  private static Given given(DrillAnswer answer) {
    boolean other = answer.said() == Verdict.DEFECT && answer.finding().isEmpty();
    return new Given(
        answer.pin(),
        answer.said().id(),
        other ? Optional.of(Offered.OTHER) : answer.finding().map(FindingKind::id));
  }

  private static List<Telling.Told> told(Card card, List<DrillAnswer> answers) {
    Map<Integer, DrillAnswer> byPin = new TreeMap<>();
    answers.forEach(a -> byPin.put(a.pin(), a));
    List<Telling.Told> told = new ArrayList<>();
    for (Spot spot : card.spots()) {
      told.add(Telling.of(spot, byPin.get(spot.pin())));
    }
    return told;
  }

  Result result() {
    List<DrillAnswer> answers = taking.answers();
    List<Done> cards = new ArrayList<>();
    for (int number = 1; number <= taking.cards(); number++) {
      cards.add(done(number, card(number).told()));
    }
    return new ResultWords(taking.sitting(), answers).result(cards);
  }

  /** A card by its joint; of a row by its number of joints that are right, or alike. */
  private Done done(int number, List<Telling.Told> told) {
    if (told.size() == 1) {
      Telling.Told one = told.get(0);
      return new Done(number, one.outcome(), one.headline(), one.good());
    }
    long good = told.stream().filter(Telling.Told::good).count();
    String word = taking.sitting().deck().ownWork() ? "alike" : "not wrong";
    boolean all = good == told.size();
    return new Done(
        number, all ? "right" : "row", good + " of " + told.size() + " joints " + word, all);
  }
}
