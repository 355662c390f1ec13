package leadlight.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadlight.model.EveryRemark;
import leadlight.model.FindingKind;
import leadlight.model.Question;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfJoint;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.remark.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SentencesTest {

  private static final Pattern PLACE = Pattern.compile("\\{([a-z_]+)}");

  /** Follow from an argument: the settle words from the kind, the last pair from the leads. */
  private static final Map<String, Set<String>> FOLLOWING =
      Map.of("kind", Set.of("settle"), "leads", Set.of("last_pair"));

  /**
   * Arguments that choose the words, and chances that files keep but people need not read: where a
   * fillet was or was not seen, the two opinions have a table of their own.
   */
  private static final Set<String> NOT_SAID =
      Set.of(
          "soft-for-pitch closer",
          "possible neighbour_pin",
          "opinions-differ neighbour_pin",
          "not-as-enrolled why",
          "bench-differs soldered",
          "advice id",
          "advice leads",
          "lead-seen chance",
          "fillet-seen measures",
          "fillet-seen reader",
          "fillet-not-seen measures",
          "fillet-not-seen reader",
          "like-known strangeness",
          "familiar-photo unfamiliar");

  private static Messages words(String language) {
    return Messages.of(language);
  }

  private static Sentences in(String language) {
    return new Sentences(words(language), LengthUnit.MM);
  }

  private static Set<String> keys(Messages words, Class<? extends Remark> kind) {
    String key = (Doubt.class.isAssignableFrom(kind) ? "doubt." : "note.") + Remark.codeOf(kind);
    return words.keys().stream()
        .filter(it -> it.equals(key) || it.startsWith(key + "."))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> places(String text) {
    return PLACE.matcher(text).results().map(it -> it.group(1)).collect(Collectors.toSet());
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de"})
  void everyKindHasWordsWithItsArgumentsAsPlacesAndNoOther(String language) {
    Messages words = words(language);
    for (Class<? extends Remark> kind : EveryRemark.kinds()) {
      Set<String> args =
          Stream.of(kind.getRecordComponents())
              .map(component -> Remark.snake(component.getName()))
              .collect(Collectors.toSet());
      Set<String> may = new HashSet<>(args);
      args.forEach(arg -> may.addAll(FOLLOWING.getOrDefault(arg, Set.of())));
      Set<String> said = new HashSet<>();
      keys(words, kind).forEach(key -> said.addAll(places(words.get(key))));
      assertThat(keys(words, kind)).as(kind.getSimpleName()).isNotEmpty();
      assertThat(may).as(kind.getSimpleName()).containsAll(said);
      args.removeIf(arg -> NOT_SAID.contains(Remark.codeOf(kind) + " " + arg));
      assertThat(said).as(kind.getSimpleName()).containsAll(args);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de"})
  void everyRemarkIsAWholeSentenceWithoutALeftPlace(String language) {
    Sentences sentences = in(language);
    for (Remark remark : EveryRemark.samples()) {
      assertThat(sentences.of(remark)).as(remark.toString()).isNotBlank().doesNotContain("{", "}");
      assertThat(sentences.general(remark)).isNotBlank().doesNotContain("{", "}");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de"})
  void everyMessageOfARemarkBelongsToAKind(String language) {
    Messages words = words(language);
    Set<String> known =
        EveryRemark.kinds().stream()
            .flatMap(kind -> keys(words, kind).stream())
            .collect(Collectors.toSet());
    assertThat(words.keys())
        .filteredOn(key -> key.startsWith("doubt.") || key.startsWith("note."))
        .allSatisfy(key -> assertThat(known).contains(key));
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "de"})
  void everyQuestionAndEveryKindOfFindingHasWords(String language) {
    Messages words = words(language);
    for (Question question : Question.values()) {
      assertThat(words.has("question." + question.id())).as(question.id()).isTrue();
    }
    for (FindingKind kind : FindingKind.values()) {
      assertThat(words.has("settle." + kind.id())).as(kind.id()).isTrue();
      assertThat(words.has("kind." + kind.id() + ".plain")).as(kind.id()).isTrue();
    }
  }

  @Test
  void whatIsSaidOfSeveralJointsHasNoNumberOfOne() {
    for (Remark remark : EveryRemark.samples()) {
      if (remark instanceof Doubt && !(remark instanceof Doubt.TooFewPixels)) {
        assertThat(in("en").general(remark)).as(remark.toString()).doesNotContain("31 %", "0.31");
      }
    }
  }

  @Test
  void aPromiseIsRoundedUp() {
    assertThat(in("en").of(new NoteOfRow.AsEnrolled("ring", 1, 38, 2, 0.0758)))
        .contains("up to 8 %");
    assertThat(in("en").of(new NoteOfRow.AsEnrolled("ring", 1, 29, 2, 0.0982)))
        .contains("up to 10 %");
  }

  @Test
  void argumentsAreSaidInTheLanguagesOwnWay() {
    Remark limit = new Doubt.LimitUndecided(FindingKind.SIDE_OVERHANG, -0.0126, 0.04, 0.1, 0.999);
    assertThat(in("en").of(limit))
        .startsWith("lead beside its land: \u22120.013 mm (u 0.040 mm) against a limit of 0.100 mm")
        .contains("kept with 99 % probability");
    assertThat(in("de").of(limit)).contains("\u22120,013 mm (u 0,040 mm)", "0,100 mm");
    assertThat(new Sentences(words("en"), LengthUnit.MIL).of(limit)).contains("3.9 mil");
    assertThat(in("en").of(new Doubt.TooFewPixels(9.4, 14.2)))
        .as("what is needed is rounded up")
        .contains("at 9 px a pitch", "covers 15 px or more");
  }

  @Test
  void aWordOfTheUsersIsNeverTakenForAPlace() {
    assertThat(in("en").of(new Doubt.Earlier("{words} {0} 5 % {chance}")))
        .isEqualTo("{words} {0} 5 % {chance}");
  }

  @Test
  void aBridgeNamesItsOtherPinAndOneOpinionStandsAlone() {
    Remark two =
        new Doubt.Possible(
            FindingKind.BRIDGE, 6, 0.31, OptionalDouble.of(0.05), OptionalDouble.of(0.6));
    Remark one =
        new Doubt.Possible(
            FindingKind.OPEN, 0, 0.31, OptionalDouble.empty(), OptionalDouble.empty());
    assertThat(in("en").of(two))
        .startsWith(
            "possibly solder bridge to pin 6 (chance 31 %; measures 5 %, second reader 60 %): ");
    assertThat(in("en").of(one)).startsWith("possibly open joint (chance 31 %): press the lead");
    assertThat(in("en").general(two)).startsWith("possibly solder bridge: measure");
  }

  @Test
  void anotherCountSaysBothNumbers() {
    assertThat(in("en").of(new NoteOfRow.OtherCount(19, 20)))
        .startsWith("20 leads show, 19 were said; ");
  }

  private static Finding lack(FindingKind kind, double share) {
    return new Finding(
        kind,
        List.of(3),
        Verdict.DEFECT,
        0.995,
        OptionalDouble.of(share),
        Optional.empty(),
        List.of(),
        "",
        "");
  }

  @Test
  void statesThatExcludeEachOtherAreSaidAsOne() {
    List<Finding> both = List.of(lack(FindingKind.OPEN, 0.7), lack(FindingKind.INSUFFICIENT, 0.3));
    assertThat(Sentences.spoken(both)).containsExactly(both.get(0));
    assertThat(in("en").sure(both.get(0), "open")).isEqualTo("no fillet, 99 % sure; rather open");
    assertThat(in("de").sure(both.get(0), "offen"))
        .isEqualTo("keine Kehle, 99 % sicher; eher offen");
  }

  @Test
  void theUsersOwnFileMaySayHowAFindingIsSettled() {
    Finding own =
        new Finding(
            FindingKind.VOID,
            List.of(3),
            Verdict.DEFECT,
            0.9,
            OptionalDouble.empty(),
            Optional.empty(),
            List.of(),
            "",
            "x-ray it");
    assertThat(in("de").settle(own)).isEqualTo("x-ray it");
    assertThat(in("de").settle(lack(FindingKind.VOID, 1))).startsWith("schräg fotografieren");
  }

  @Test
  void groundsAreSaidInAFewWords() {
    List<Note> grounds =
        List.of(
            new NoteOfJoint.LeadSeen(0.001),
            new NoteOfJoint.FilletSeen(OptionalDouble.of(0.01), OptionalDouble.empty()),
            new NoteOfJoint.RoomForFillet(0.2));
    assertThat(in("en").seen(grounds)).isEqualTo("seen: lead, fillet at the toe, room for it");
    assertThat(in("de").seen(grounds))
        .isEqualTo("gesehen: Bein, Kehle an der Spitze, Platz für sie");
  }

  @Test
  void bothLanguagesHaveTheSameVariantsWithTheSamePlaces() {
    for (Class<? extends Remark> kind : EveryRemark.kinds()) {
      assertThat(keys(words("de"), kind)).isEqualTo(keys(words("en"), kind));
      keys(words("en"), kind)
          .forEach(
              key ->
                  assertThat(places(words("de").get(key)))
                      .as(key)
                      .isEqualTo(places(words("en").get(key))));
    }
  }
}
