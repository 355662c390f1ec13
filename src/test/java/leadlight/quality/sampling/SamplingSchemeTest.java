package leadlight.quality.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import leadlight.model.UserError;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** ISO 2859-1:1999, Tables 1 (code letters) and 2-A (normal single sampling). */
class SamplingSchemeTest {

  private static final SamplingScheme SCHEME = SamplingScheme.builtIn();

  @ParameterizedTest
  @CsvSource({
    "2,II,A",
    "8,II,A",
    "9,II,B",
    "25,II,C",
    "26,II,D",
    "50,II,D",
    "90,II,E",
    "150,II,F",
    "280,II,G",
    "281,II,H",
    "500,II,H",
    "501,II,J",
    "1200,II,J",
    "3200,II,K",
    "10000,II,L",
    "35000,II,M",
    "150000,II,N",
    "500000,II,P",
    "500001,II,Q",
    "8,I,A",
    "15,I,A",
    "25,I,B",
    "50,I,C",
    "90,I,C",
    "150,I,D",
    "500001,I,N",
    "8,III,B",
    "500,III,J",
    "500001,III,R"
  })
  void aLotHasItsCodeLetter(int lot, String level, String letter) {
    assertThat(SCHEME.letter(lot, level)).isEqualTo(letter);
  }

  /** A lot for each letter at level II; the table's acceptance number where there is no arrow. */
  @ParameterizedTest
  @CsvSource({
    "8,6.5,2,0",
    "15,4.0,3,0",
    "25,2.5,5,0",
    "50,1.5,8,0",
    "90,1.0,13,0",
    "150,0.65,20,0",
    "280,0.40,32,0",
    "500,0.25,50,0",
    "1200,0.15,80,0",
    "3200,0.10,125,0",
    "10000,0.065,200,0",
    "50,6.5,8,1",
    "25,10,5,1",
    "90,4.0,13,1",
    "150,2.5,20,1",
    "280,1.5,32,1",
    "500,1.0,50,1",
    "1200,0.65,80,1",
    "3200,0.40,125,1",
    "10000,0.25,200,1",
    "35000,0.15,315,1",
    "150000,0.10,500,1",
    "500000,0.065,800,1",
    "1200,1.0,80,2",
    "3200,1.0,125,3",
    "10000,1.0,200,5",
    "35000,1.0,315,7",
    "1200,2.5,80,5",
    "1200,4.0,80,7",
    "1200,6.5,80,10",
    "1200,10,80,14",
    "3200,10,125,21"
  })
  void aPlanIsTheTables(int lot, double aql, int size, int accept) {
    Plan plan = SCHEME.plan(lot, "II", aql, Severity.NORMAL);

    assertThat(plan.size()).isEqualTo(size);
    assertThat(plan.accept()).isEqualTo(accept);
    assertThat(plan.refuse()).isEqualTo(accept + 1);
  }

  /** An arrow means the next plan with its own sample size (ISO 2859-1, 10.3). */
  @ParameterizedTest
  @CsvSource({"150,1.0,13,0", "280,1.0,50,1", "50,0.65,20,0", "10000,10,125,21", "8,10,5,1"})
  void anArrowTakesTheNextPlanWithItsSize(int lot, double aql, int size, int accept) {
    Plan plan = SCHEME.plan(lot, "II", aql, Severity.NORMAL);

    assertThat(plan.size()).isEqualTo(size);
    assertThat(plan.accept()).isEqualTo(accept);
    assertThat(plan.why()).contains("arrow to");
  }

  @Test
  void aSampleNoSmallerThanTheLotIsTheLot() {
    Plan plan = SCHEME.plan(16, "II", 0.10, Severity.NORMAL);

    assertThat(plan.size()).isEqualTo(16);
    assertThat(plan.accept()).isZero();
    assertThat(plan.why()).contains("inspect all");
  }

  /** Tables 2-B and ANSI/ASQ Z1.4 II-C for code letter J, from memory. */
  @Test
  void tightenedAsksMoreAndReducedLess() {
    Plan normal = SCHEME.plan(1000, "II", 2.5, Severity.NORMAL);
    Plan tightened = SCHEME.plan(1000, "II", 2.5, Severity.TIGHTENED);
    Plan reduced = SCHEME.plan(1000, "II", 2.5, Severity.REDUCED);

    assertThat(normal.accept()).isEqualTo(5);
    assertThat(tightened.size()).isEqualTo(80);
    assertThat(tightened.accept()).isEqualTo(3);
    assertThat(tightened.why()).contains("from memory");
    assertThat(reduced.size()).isEqualTo(32);
    assertThat(reduced.accept()).isEqualTo(2);
    assertThat(reduced.refuse()).isEqualTo(5);
  }

  @Test
  void everyCellOfEveryTableEndsInAPlanAndTightenedIsNeverKinder() {
    for (String level : new String[] {"I", "II", "III"}) {
      for (int lot : new int[] {8, 15, 25, 50, 90, 150, 280, 500, 1200, 3200, 10000, 600000}) {
        for (double aql : SCHEME.aqlPercent()) {
          Plan normal = SCHEME.plan(lot, level, aql, Severity.NORMAL);
          Plan tightened = SCHEME.plan(lot, level, aql, Severity.TIGHTENED);
          SCHEME.plan(lot, level, aql, Severity.REDUCED);
          assertThat(Operating.ofProcess(tightened, aql / 100))
              .as("lot %d, level %s, AQL %s", lot, level, aql)
              .isLessThanOrEqualTo(Operating.ofProcess(normal, aql / 100) + 1e-12);
        }
      }
    }
  }

  @Test
  void whatTheTableLacksIsOneLine() {
    assertThatThrownBy(() -> SCHEME.plan(500, "II", 1.2, Severity.NORMAL))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("0.65 1 1.5");
    assertThatThrownBy(() -> SCHEME.plan(500, "IV", 1.0, Severity.NORMAL))
        .isInstanceOf(UserError.class);
    assertThatThrownBy(() -> SCHEME.plan(1, "II", 1.0, Severity.NORMAL))
        .isInstanceOf(UserError.class);
  }
}
