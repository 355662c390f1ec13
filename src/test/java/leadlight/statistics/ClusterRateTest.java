package leadlight.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ClusterRateTest {

  private static ClusterRate rate(int of, int... counts) {
    return new ClusterRate(
        IntStream.of(counts).mapToObj(count -> new ClusterRate.Part(count, of)).toList());
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

  /**
   * Eight photos of 19 joints, all faults on two of them. R, kept beside the test: {@code
   * y<-rep(c(9,6,0,0,0,0,1,0),1); a<-anova(lm(x~g,data.frame(g=factor(rep(1:8,each=19)),
   * x=unlist(lapply(y,function(k)c(rep(1,k),rep(0,19-k))))))); m<-a[["Mean Sq"]];
   * (m[1]-m[2])/(m[1]+18*m[2])} gives 0.3093802345.
   */
  @Test
  void likenessIsThatOfVarianceAnalysis() {
    ClusterRate rate = rate(19, 9, 6, 0, 0, 0, 0, 1, 0);

    assertThat(rate.measuredLikeness()).hasValueCloseTo(0.3093802345, within(1e-9));
    assertThat(rate.likeness()).isCloseTo((0.3093802345 * 16 + 0.075 * 10) / 26, within(1e-9));
    assertThat(rate.designEffect()).isGreaterThan(4);
    assertThat(rate.upper()).isGreaterThan(rate.plain().upper());
    assertThat(rate.lower()).isLessThan(rate.plain().lower());
  }

  /** Chosen likeness .075 at 19 joints: design effect 2.35. */
  @Test
  void withoutAnEventTheChosenLikenessStands() {
    ClusterRate none = rate(19, 0, 0, 0, 0, 0);

    assertThat(none.measuredLikeness()).isEmpty();
    assertThat(none.designEffect()).isCloseTo(2.35, within(1e-12));
    assertThat(none.lower()).isZero();
    assertThat(none.upper()).isGreaterThan(none.plain().upper());
    assertThat(rate(19, 3).designEffect()).as("one photo").isCloseTo(2.35, within(1e-12));
  }

  /**
   * By hand: a unit's own cluster has (1 + 361) / 20 = 18.1 on average, though clusters have 10;
   * the chosen likeness .075 gives 1 + 17.1 x .075 = 2.2825.
   */
  @Test
  void aLargeClusterWeighsByItsUnits() {
    ClusterRate uneven =
        new ClusterRate(List.of(new ClusterRate.Part(0, 1), new ClusterRate.Part(0, 19)));

    assertThat(uneven.designEffect()).isCloseTo(2.2825, within(1e-12));
    // Wilson's upper end for 0 of n is z^2 / (n + z^2), n the effective 20 / 2.2825.
    double z2 = 1.959964 * 1.959964;
    assertThat(uneven.upper()).isCloseTo(z2 / (20 / 2.2825 + z2), within(1e-6));
  }

  /**
   * R: {@code r<-(0.3093802345*16+.75)/26; d<-1+18*r; t<-qt(.975,7/(1-1/d)^2);
   * prop.test(16*s,152*s,correct=FALSE)$conf.int} with {@code s<-(qnorm(.975)/t)^2/d}, written out:
   * {@code n<-152*s; p<-16/152; z<-qnorm(.975);
   * (p+z^2/2/n+c(-1,1)*z*sqrt(p*(1-p)/n+z^2/4/n^2))/(1+z^2/n)}.
   */
  @Test
  void fewPhotosKnowTheirSpreadBadly() {
    ClusterRate rate = rate(19, 9, 6, 0, 0, 0, 0, 1, 0);

    assertThat(rate.lower()).isCloseTo(0.0336571560294, within(1e-9));
    assertThat(rate.upper()).isCloseTo(0.2843797128418, within(1e-9));
  }

  @Test
  void photosThatAreAllAlikeAreWorthTheirJoints() {
    ClusterRate even = rate(20, Collections.nCopies(30, 2).stream().mapToInt(i -> i).toArray());
    assertThat(even.designEffect()).isEqualTo(1);
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
}
