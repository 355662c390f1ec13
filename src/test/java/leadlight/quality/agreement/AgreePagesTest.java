package leadlight.quality.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leadlight.model.UserError;
import leadlight.quality.Outside;
import leadlight.quality.Page;
import leadlight.quality.grades.Grade;
import leadlight.quality.grades.Grades;
import leadlight.quality.grades.Reading;
import leadlight.statistics.ClusterRate;
import leadlight.statistics.Rate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The page of AIAG's attribute study (MSA, 4th edition), and of small studies by hand. */
class AgreePagesTest {

  private static final Reading PASS_FAIL = new Reading(Set.of("0"), Set.of("1"), Set.of(), false);
  private static final Reading WORDS =
      new Reading(
          Set.of("defect"), Set.of("acceptable", "process-indicator"), Set.of("unjudged"), false);

  private static AgreementStudy aiag() {
    Grades grades = Grades.of(Grades.read(Outside.FOLDER.resolve("aiag-attribute.csv"), PASS_FAIL));
    return new AgreementStudy(grades, PASS_FAIL, Optional.of("reference"));
  }

  private static final Page AIAG = AgreePages.page(aiag(), item -> new byte[0]);

  private static Grade grade(String item, String grader, int trial, String verdict) {
    return new Grade(item, grader, trial, verdict, Optional.empty());
  }

  private static Grade found(String item, String grader, String verdict, String finding) {
    return new Grade(item, grader, 1, verdict, Optional.of(finding));
  }

  private static AgreementStudy study(Optional<String> reference, Grade... grades) {
    return new AgreementStudy(Grades.of(List.of(grades)), WORDS, reference);
  }

  /** Published: effectiveness 84, 90, 80 %; misses 6.3, 6.3, 12.5 %; false alarms 4.9, 2.0, 8.8. */
  @ParameterizedTest
  @CsvSource({
    "A,judged right every time,marginal,84.0 %",
    "B,judged right every time,acceptable,90.0 %",
    "C,judged right every time,marginal,80.0 %",
    "A,missed,unacceptable,6.3 %",
    "B,missed,unacceptable,6.3 %",
    "C,missed,unacceptable,12.5 %",
    "A,false alarm,acceptable,4.9 %",
    "B,false alarm,acceptable,2.0 %",
    "C,false alarm,marginal,8.8 %",
    "A,kappa,acceptable,0.88",
    "B,kappa,acceptable,0.92",
    "C,kappa,acceptable,0.77"
  })
  void againstTheReference(String grader, String figure, String verdict, String value) {
    List<String> line = against(AIAG, grader, figure);
    assertThat(line.get(2)).isEqualTo(verdict);
    assertThat(line.get(3)).contains(value);
  }

  /** The line of a figure in the table against the reference, whose lines have four cells. */
  private static List<String> against(Page page, String grader, String figure) {
    return page.blocks().stream()
        .filter(Page.Grid.class::isInstance)
        .flatMap(block -> ((Page.Grid) block).rows().stream())
        .filter(row -> row.size() == 4 && row.subList(0, 2).equals(List.of(grader, figure)))
        .findFirst()
        .orElseThrow();
  }

  /** Published: .86, .78, .79, all above 0.75. */
  @ParameterizedTest
  @CsvSource({"A and B,0.86", "A and C,0.78", "B and C,0.79"})
  void againstEachOther(String pair, String kappa) {
    List<String> line = Pages.line(AIAG, "pair", pair);
    assertThat(line.get(1)).isEqualTo("150");
    assertThat(line.get(3)).startsWith(kappa);
    assertThat(line.get(4)).isEqualTo("acceptable");
    assertThat(Pages.grid(AIAG, "pair")).as("each pair once").hasSize(3);
  }

  /** Counted in AIAG's table: A answers alike thrice in 42 of 50, B in 45, C in 40. */
  @ParameterizedTest
  @CsvSource({"A,42", "B,45", "C,40"})
  void withItself(String grader, int alike) {
    assertThat(aiag().repeated(grader).map(ClusterRate::plain)).contains(new Rate(alike, 50));
    assertThat(Pages.line(AIAG, "grader", grader)).contains("3");
  }

  @Test
  void thePageSaysWhoGradedWhat() {
    assertThat(Pages.words(AIAG))
        .contains("50 items")
        .contains("3 graders")
        .contains("A, B, C")
        .contains("reference")
        .contains("bad is 0");
    assertThat(Pages.strong(AIAG))
        .as("all items are complete")
        .startsWith(
            "A: right every time 84.0 % (marginal), missed 6.3 % (unacceptable), false alarm 4.9 %"
                + " (acceptable). B: ")
        .doesNotContain("graded by everybody");
    assertThat(Pages.plots(AIAG)).hasSize(1);
  }

  @Test
  void whoMissesMoreThanHeCriesWolfIsTooLenient() {
    Grade[] grades = new Grade[40];
    for (int i = 0; i < 20; i++) {
      grades[2 * i] = grade("i" + i, "truth", 1, i < 12 ? "defect" : "acceptable");
      grades[2 * i + 1] = grade("i" + i, "eye", 1, "acceptable");
    }
    Page page = AgreePages.page(study(Optional.of("truth"), grades), item -> new byte[0]);
    assertThat(against(page, "eye", "bias").get(3)).contains("lenient");
    assertThat(Pages.words(page)).contains("Nobody graded twice");

    for (int i = 0; i < 20; i++) {
      grades[2 * i + 1] = grade("i" + i, "eye", 1, "defect");
      grades[2 * i] = grade("i" + i, "truth", 1, i < 12 ? "acceptable" : "defect");
    }
    Page other = AgreePages.page(study(Optional.of("truth"), grades), item -> new byte[0]);
    assertThat(against(other, "eye", "bias").get(3)).contains("strict");
  }

  @Test
  void aGraderWithoutAWrongGradeHasNoBias() {
    Page page =
        AgreePages.page(
            study(
                Optional.of("truth"),
                grade("1", "truth", 1, "defect"),
                grade("1", "eye", 1, "defect"),
                grade("2", "truth", 1, "acceptable"),
                grade("2", "eye", 1, "acceptable")),
            item -> new byte[0]);
    assertThat(against(page, "eye", "bias").get(3)).contains("no wrong grade");
    assertThat(Pages.words(page)).contains("None.");
  }

  @Test
  void withoutAReferenceNobodyIsRightOrWrong() {
    AgreementStudy study =
        study(Optional.empty(), grade("1", "a", 1, "defect"), grade("1", "b", 1, "acceptable"));
    Page page = AgreePages.page(study, item -> new byte[0]);

    assertThat(Pages.words(page)).contains("no reference").contains("Without a reference");
    assertThat(Pages.headings(page)).doesNotContain("Against the reference");
    assertThat(study.appraisals()).isEmpty();
    assertThat(study.againstReference("a")).isEmpty();
    assertThat(study.appraisers()).containsExactly("a", "b");
  }

  @Test
  void whatWasNotGradedByEverybodyIsSaid() {
    AgreementStudy study =
        study(
            Optional.empty(),
            grade("1", "a", 1, "defect"),
            grade("1", "b", 1, "acceptable"),
            grade("2", "a", 1, "defect"));

    assertThat(study.complete()).isEqualTo(1);
    assertThat(Pages.strong(AgreePages.page(study, item -> new byte[0])))
        .startsWith("1 of 2 items");
  }

  @Test
  void whatEachFindingWasCalledIsCounted() {
    AgreementStudy study =
        study(
            Optional.of("truth"),
            found("1", "truth", "defect", "open"),
            found("1", "eye", "defect", "open"),
            found("2", "truth", "defect", "open"),
            found("2", "eye", "defect", "bridge; open"),
            grade("3", "truth", 1, "acceptable"),
            grade("3", "eye", 1, "acceptable"),
            found("4", "eye", "defect", "bridge"));

    assertThat(study.confusion("eye"))
        .as("what the reference did not see counts nowhere")
        .isEqualTo(
            Map.of(
                "open", Map.of("open", 1, "bridge + open", 1),
                "acceptable", Map.of("acceptable", 1)));
    Page page = AgreePages.page(study, item -> new byte[0]);
    assertThat(Pages.line(page, "reference", "open").get(1))
        .contains("bridge + open 1")
        .contains("open 1");
  }

  @Test
  void itemsThatDivideTheGradersComeMostDividedFirstWithTheirPicture() {
    AgreementStudy study =
        study(
            Optional.empty(),
            grade("alike", "a", 1, "defect"),
            grade("alike", "b", 1, "defect"),
            grade("alike", "c", 1, "defect"),
            grade("one", "a", 1, "defect"),
            grade("one", "b", 1, "defect"),
            grade("one", "c", 1, "acceptable"),
            grade("three", "a", 1, "defect"),
            grade("three", "b", 1, "acceptable"),
            grade("three", "c", 1, "unjudged"));

    assertThat(study.divided())
        .extracting(AgreementStudy.Divided::item)
        .containsExactly("three", "one");
    assertThat(study.divided().get(0).dissent()).isEqualTo(new Rate(2, 3));
    assertThat(study.divided().get(1).dissent()).isEqualTo(new Rate(1, 3));
    assertThat(study.divided().get(1).said()).containsEntry("c", "acceptable");
    Page page = AgreePages.page(study, item -> new byte[] {7});
    assertThat(Pages.pictures(page)).hasSize(2);
    assertThat(Pages.pictures(page).get(0).png()).containsExactly(7);
    assertThat(Pages.pictures(page).get(0).lines()).startsWith("three").contains("b: acceptable");
  }

  /** Where the truth is known, the majority is not asked. */
  @Test
  void againstAReferenceDissentIsFromTheReference() {
    AgreementStudy study =
        study(
            Optional.of("truth"),
            grade("1", "truth", 1, "defect"),
            grade("1", "a", 1, "acceptable"),
            grade("1", "b", 1, "acceptable"),
            grade("2", "truth", 1, "unjudged"),
            grade("2", "a", 1, "acceptable"),
            grade("2", "b", 1, "acceptable"));

    assertThat(study.divided()).extracting(AgreementStudy.Divided::item).containsExactly("1");
    assertThat(study.divided().get(0).dissent()).isEqualTo(new Rate(2, 2));
    assertThat(study.divided().get(0).said()).containsEntry("truth", "defect");
  }

  @Test
  void fleissNeedsTwoGradesOfAnItem() {
    AgreementStudy one =
        study(Optional.of("truth"), grade("1", "truth", 1, "defect"), grade("1", "a", 1, "defect"));
    assertThat(one.together()).isEmpty();
    assertThat(aiag().together()).isPresent();
    assertThat(Pages.words(AIAG)).contains("Fleiss");
  }

  @Test
  void oneGraderWithOneTrialHasNothingToBeComparedWith() {
    assertThatThrownBy(() -> study(Optional.empty(), grade("1", "a", 1, "defect")))
        .isInstanceOf(UserError.class);
    AgreementStudy twice =
        study(Optional.empty(), grade("1", "a", 1, "defect"), grade("1", "a", 2, "acceptable"));
    assertThat(twice.repeated("a").map(ClusterRate::plain)).contains(new Rate(0, 1));
    assertThat(twice.pairs()).isEmpty();
  }

  /** As given, "acceptable" and "process-indicator" differ; as good and bad they do not. */
  @Test
  void agreementAsGivenIsStricterThanGoodAndBad() {
    List<Grade> grades =
        List.of(grade("1", "a", 1, "acceptable"), grade("1", "b", 1, "process-indicator"));
    AgreementStudy sides = new AgreementStudy(Grades.of(grades), WORDS, Optional.empty());
    AgreementStudy given =
        new AgreementStudy(
            Grades.of(grades),
            new Reading(Set.of("defect"), Set.of(), Set.of(), true),
            Optional.empty());

    assertThat(sides.divided()).isEmpty();
    assertThat(given.divided()).hasSize(1);
    assertThat(Pages.words(AgreePages.page(given, item -> new byte[0]))).contains("as given");
  }
}
