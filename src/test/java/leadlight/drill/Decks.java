package leadlight.drill;

import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Set;
import leadlight.grade.AcceptanceSet;

/** Decks of the sample pictures. */
final class Decks {

  static final Path SAMPLES = Path.of("sample-images");
  static final ZonedDateTime NOON =
      ZonedDateTime.of(2026, 3, 1, 12, 0, 0, 0, ZoneId.of("Europe/London"));

  private Decks() {}

  static DeckRequest request(int cards, boolean rows, long seed) {
    return new DeckRequest("samples", cards, rows, Level.MIXED, Set.of(), Set.of(), 2, seed);
  }

  static MadeDeck make(DeckRequest request) {
    return DeckMaker.make(
        new ScenePool(2).read(SAMPLES),
        new DeckDraw(request, new Boxes(), Set.of()),
        request,
        AcceptanceSet.load(AcceptanceSet.DEFAULT_ID),
        done -> {});
  }

  /** The key that is right for a joint. */
  static String rightKey(Deck.Spot spot) {
    Known known = spot.known().orElseThrow();
    return known.findings().isEmpty()
        ? "s"
        : "" + (Offered.KINDS.indexOf(known.findings().get(0)) + 1);
  }
}
