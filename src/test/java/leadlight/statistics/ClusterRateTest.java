package leadlight.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import leadlight.quality.OutsideR;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class ClusterRateTest {

  private static ClusterRate rate(int of, Integer... counts) {
    return rate(of, List.of(counts));
  }

  private static ClusterRate rate(int of, List<Integer> counts) {
    return new ClusterRate(counts.stream().map(count -> part(count, of)).toList());
  }

  private static ClusterRate.Part part(int count, int of) {
    return new ClusterRate.Part(count, of);
  }

  private static List<Integer> many() {
    List<Integer> counts = new ArrayList<>(Collections.nCopies(100, 0));
    counts.addAll(List.of(1, 2, 3));
    return counts;
  }

  private static List<Integer> nearlyWhole() {
    List<Integer> counts = new ArrayList<>(Collections.nCopies(95, 0));
    counts.addAll(List.of(19, 19, 18, 19, 17));
    return counts;
  }

  private static List<Integer> whole() {
    List<Integer> counts = new ArrayList<>(Collections.nCopies(190, 0));
    counts.addAll(Collections.nCopies(10, 19));
    return counts;
  }

  @Test
  void unitsThatStandAloneGiveWilsonsInterval() {
    ClusterRate.Builder each = new ClusterRate.Builder();
    IntStream.range(0, 148).forEach(i -> each.add(i, i < 15));
    ClusterRate rate = each.rate();

    assertThat(rate.designEffect()).isEqualTo(1);
    assertThat(rate.lower()).isCloseTo(new Rate(15, 148).lower(), within(1e-12));
    assertThat(rate.upper()).isCloseTo(new Rate(15, 148).upper(), within(1e-12));
  }

  /** R, the grid of {@code outside.R} ("clusters"): a photo's counts, then its joints. */
  static Stream<Arguments> studies() {
    return Stream.of(
        Arguments.of("faults on two photos", rate(19, 9, 6, 0, 0, 0, 0, 1, 0)),
        Arguments.of("no fault", rate(19, 0, 0, 0, 0, 0)),
        Arguments.of("uneven photos", new ClusterRate(List.of(part(0, 1), part(0, 19)))),
        Arguments.of("even photos", rate(20, Collections.nCopies(30, 2))),
        Arguments.of("many photos", rate(19, many())),
        Arguments.of("nearly whole photos", rate(19, nearlyWhole())));
  }

  @ParameterizedTest
  @MethodSource("studies")
  void intervalAndLikenessAreThoseOfAFinerGridInR(String name, ClusterRate rate) {
    double[] r =
        IntStream.range(0, 3).mapToDouble(i -> OutsideR.figure("clusters, " + name, i)).toArray();
    Rate alone = rate.plain();
    double lower = rate.count() == 0 ? 0 : Math.min(r[0], alone.lower());
    assertThat(rate.lower()).isCloseTo(lower, withinPercentage(1));
    assertThat(rate.upper()).isCloseTo(Math.max(r[1], alone.upper()), withinPercentage(1));
    double size = rate.designEffect() - 1;
    double own = name.startsWith("uneven") ? 17.1 : name.startsWith("even") ? 19 : 18;
    assertThat(size / own).isCloseTo(r[2], within(0.005));
  }

  @Test
  void faultsThatGatherInFewPhotosTellLess() {
    ClusterRate gathered = rate(19, 9, 6, 0, 0, 0, 0, 1, 0);
    ClusterRate spread = rate(19, 2, 2, 2, 2, 2, 2, 2, 2);

    assertThat(gathered.upper() - gathered.lower()).isGreaterThan(spread.upper() - spread.lower());
    assertThat(gathered.designEffect()).isGreaterThan(4);
    assertThat(spread.designEffect()).isLessThan(2);
  }

  @Test
  void theOrderOfPhotosChangesNoBit() {
    ClusterRate one = rate(19, 9, 6, 0, 0, 0, 0, 1, 0);
    ClusterRate other = rate(19, 0, 1, 0, 0, 6, 0, 9, 0);

    assertThat(other.lower()).isEqualTo(one.lower());
    assertThat(other.upper()).isEqualTo(one.upper());
  }

  /** What no photo shows and what every joint shows: the ends are the share itself. */
  @Test
  void nothingAndAllEndAtTheShare() {
    assertThat(rate(19, 0, 0, 0).lower()).isZero();
    assertThat(rate(19, 19, 19, 19).upper()).isEqualTo(1);
    assertThat(rate(19, 19, 19, 19).lower()).isCloseTo(1 - rate(19, 0, 0, 0).upper(), within(1e-9));
    assertThat(rate(19, 3).upper()).as("one photo").isGreaterThan(0.5);
  }

  /** A hundred thousand units leave a peak that the first pass hardly meets. */
  @Test
  void manyUnitsAreKnownWell() {
    ClusterRate rate = rate(100, Collections.nCopies(1000, 40));

    assertThat(rate.lower()).isCloseTo(rate.plain().lower(), within(2e-3));
    assertThat(rate.upper()).isCloseTo(rate.plain().upper(), within(2e-3));
  }

  @Test
  void nothingToRateIsNoInterval() {
    ClusterRate none = new ClusterRate(List.of(new ClusterRate.Part(0, 0)));

    assertThat(none.clusters()).isZero();
    assertThat(none.share()).isNaN();
    assertThat(none.lower()).isZero();
    assertThat(none.upper()).isEqualTo(1);
    assertThatThrownBy(() -> new ClusterRate.Part(2, 1)).hasMessageContaining("2 of 1");
  }

  /**
   * Wilson over photos, by hand: 10 of 200 photos wholly bad tell no more than 10 of 200 joints.
   */
  @Test
  void photosThatAreBadAsAWholeTellNoMoreThanSoManyUnits() {
    ClusterRate rate = rate(19, whole());
    assertThat(rate.upper()).isGreaterThanOrEqualTo(new Rate(10, 200).upper());
    assertThat(rate.lower()).isLessThanOrEqualTo(new Rate(10, 200).lower());
    assertThat(new Rate(10, 200).upper()).isCloseTo(0.0896, within(0.0005));
  }

  /**
   * R, {@code outside.R}: likeness next to 1, and more than a plain grid up to 0.67 let through.
   */
  @Test
  void wholePhotosAreFoundToBeAsAlikeAsTheyAre() {
    ClusterRate rate = rate(19, whole());
    ClusterFit fit = ClusterFit.of(whole().stream().map(count -> part(count, 19)).toList());

    assertThat(fit.lower()).isCloseTo(wholeInR(0), withinPercentage(1));
    assertThat(fit.upper()).isCloseTo(wholeInR(1), withinPercentage(1));
    assertThat(fit.likeness()).isCloseTo(wholeInR(2), within(0.005)).isGreaterThan(0.9);
    assertThat(rate.designEffect()).isGreaterThan(0.9 * 19);
  }

  private static double wholeInR(int figure) {
    return OutsideR.figure("clusters, whole photos", figure);
  }

  @Test
  void aPhotoThatIsHitInPartLeavesWholePhotosAlike() {
    List<Integer> counts = new ArrayList<>(whole());
    counts.set(counts.size() - 1, 18);

    ClusterRate rate = rate(19, counts);

    assertThat(rate.designEffect()).isGreaterThan(0.85 * 19);
    assertThat(rate.upper() - rate.lower())
        .isGreaterThan(3 * (rate.plain().upper() - rate.plain().lower()));
  }
}
