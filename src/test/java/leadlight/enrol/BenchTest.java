package leadlight.enrol;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.stream.DoubleStream;
import leadlight.enrol.learn.Enrolment;
import leadlight.enrol.learn.Enrolment.Fold;
import leadlight.enrol.learn.Enrolment.Kind;
import leadlight.enrol.learn.Enrolment.Setting;
import leadlight.enrol.learn.Enrolment.Shown;
import leadlight.model.joint.BenchOpinion.Side;
import leadlight.model.picture.RowPictures;
import org.junit.jupiter.api.Test;

/** On which side of its borders a bench sees a joint, and when it sees none. */
class BenchTest {

  private final Enrolment enrolment = Mock.twoOfEach().enrolment();
  private final Bench bench = new Bench(enrolment);

  private Side side(float[] features) {
    return bench.opinion(features, 0).side();
  }

  /** The first joint on the way from sound to unsoldered of which something holds. */
  private static float[] firstOf(DoublePredicate holds) {
    double at =
        DoubleStream.iterate(-0.3, it -> it <= 0.3, it -> it + 0.0001)
            .filter(holds)
            .findFirst()
            .orElseThrow();
    return Mock.features(at);
  }

  /** The last of them. */
  private static float[] lastOf(DoublePredicate holds) {
    return Mock.features(
        DoubleStream.iterate(0.3, it -> it >= -0.3, it -> it - 0.0001)
            .filter(holds)
            .findFirst()
            .orElseThrow());
  }

  private static double at(Fold fold, double way) {
    return fold.line().of(0, Mock.features(way));
  }

  /** Log odds of the shown joint of a kind that lies nearest to the other kind. */
  private double nearest(Fold fold, boolean soldered) {
    DoubleStream all =
        enrolment.joints().stream()
            .filter(it -> it.photo() == fold.photo() && it.soldered() == soldered)
            .mapToDouble(it -> fold.line().of(it.general(), it.features()));
    return soldered ? all.max().orElseThrow() : all.min().orElseThrow();
  }

  /** How far a border was moved, in log odds: one standard deviation of the kind's joints. */
  private double margin(boolean soldered) {
    double[] values =
        enrolment.lines().stream()
            .flatMap(
                fold ->
                    enrolment.joints().stream()
                        .filter(it -> it.photo() == fold.photo() && it.soldered() == soldered)
                        .map(it -> fold.line().of(it.general(), it.features())))
            .mapToDouble(Double::doubleValue)
            .toArray();
    double mean = DoubleStream.of(values).average().orElseThrow();
    return Math.sqrt(
        DoubleStream.of(values).map(it -> (it - mean) * (it - mean)).average().orElseThrow());
  }

  private List<Fold> folds(boolean soldered) {
    return enrolment.lines().stream()
        .filter(it -> (soldered ? it.unsolderedAbove() : it.solderedBelow()).isPresent())
        .toList();
  }

  @Test
  void clearJointsAreSolderedOrUnsoldered() {
    assertThat(side(Mock.features(-0.15))).isEqualTo(Side.SOLDERED);
    assertThat(side(Mock.features(0.15))).isEqualTo(Side.UNSOLDERED);
    assertThat(bench.opinion(Mock.features(-0.15), 0).unsoldered()).isLessThan(0.5);
    assertThat(bench.opinion(Mock.features(0.15), 0).unsoldered()).isGreaterThan(0.5);
  }

  @Test
  void halfAMarginBelowAllShownUnsolderedIsNotYetSoldered() {
    double half = margin(false) / 2;
    float[] joint =
        lastOf(
            way -> folds(false).stream().allMatch(it -> at(it, way) < nearest(it, false) - half));
    assertThat(side(joint)).isEqualTo(Side.BETWEEN);
  }

  @Test
  void halfAMarginAboveAllShownSoundIsNotYetUnsoldered() {
    double half = margin(true) / 2;
    float[] joint =
        firstOf(way -> folds(true).stream().allMatch(it -> at(it, way) > nearest(it, true) + half));
    assertThat(side(joint)).isEqualTo(Side.BETWEEN);
  }

  @Test
  void beyondTheBorderOfOnePhotoAndNotOfAnotherIsBetween() {
    float[] perhapsSoldered =
        lastOf(
            way ->
                folds(false).stream().anyMatch(it -> at(it, way) < it.solderedBelow().get())
                    && folds(true).stream()
                        .noneMatch(it -> at(it, way) > it.unsolderedAbove().get()));
    float[] perhapsUnsoldered =
        firstOf(
            way ->
                folds(true).stream().anyMatch(it -> at(it, way) > it.unsolderedAbove().get())
                    && folds(false).stream()
                        .noneMatch(it -> at(it, way) < it.solderedBelow().get()));
    assertThat(side(perhapsSoldered)).isEqualTo(Side.BETWEEN);
    assertThat(side(perhapsUnsoldered)).isEqualTo(Side.BETWEEN);
  }

  @Test
  void farFromAllShownIsUnlikeThemHoweverClearTheLineIs() {
    assertThat(side(Mock.features(-2))).isEqualTo(Side.UNLIKE_SHOWN);
    assertThat(side(Mock.features(2))).isEqualTo(Side.UNLIKE_SHOWN);
  }

  @Test
  void oneKindAloneDrawsNoBorderAndNothingIsSoldered() {
    Bench sound = new Mock().photo(Kind.SOUND, 30, -0.1).photo(Kind.SOUND, 30, -0.1).bench();
    assertThat(sound.vouches()).isFalse();
    assertThat(sound.opinion(Mock.features(-0.15), 0).side()).isEqualTo(Side.BETWEEN);
  }

  @Test
  void bareLandsProveNothingAndDrawNoLine() {
    Bench bare = bare();
    assertThat(bare.proof().unsoldered()).isZero();
    assertThat(bare.vouches()).isFalse();
    assertThat(bare.enrolment().whole()).isEmpty();
    assertThat(bare.enrolment().lines()).isEmpty();
  }

  private static Bench bare() {
    return new Mock()
        .photo(Kind.SOUND, 30, -0.1)
        .photo(Kind.SOUND, 30, -0.1)
        .photo(Kind.BARE, 30, 0.1)
        .photo(Kind.BARE, 30, 0.1)
        .bench();
  }

  @Test
  void bareLandsMoveNoBorderButWhatIsLikeThemIsNotVouchedFor() {
    Enrolment more = Mock.twoOfEach().photo(Kind.BARE, 15, -0.5).enrolment();
    assertThat(more.lines()).usingRecursiveComparison().isEqualTo(enrolment.lines());
    assertThat(more.cloud()).usingRecursiveComparison().isEqualTo(enrolment.cloud());
    Shown bare = more.joints().get(more.joints().size() - 1);
    assertThat(new Bench(more).opinion(bare.features(), 0).side()).isEqualTo(Side.UNLIKE_SHOWN);
  }

  @Test
  void aBarePhotoTakenAlikeDoesNotMakeTheOthersAlike() {
    Setting dark = new Setting(40, Optional.of(0.03), 20, 100, true);
    Bench mixed =
        new Mock()
            .photo(Kind.SOUND, 30, -0.1)
            .photo(Kind.SOUND, 30, -0.1)
            .photo(Kind.UNSOLDERED, 30, 0.1, dark)
            .photo(Kind.UNSOLDERED, 30, 0.1, dark)
            .photo(Kind.BARE, 30, 0.2)
            .bench();
    assertThat(mixed.apart()).contains("light");
    assertThat(mixed.vouches()).isFalse();
  }

  @Test
  void theGeneralOpinionCountsNoMoreInJudgingThanInLearning() {
    RowPictures row = new RowPictures(40, 60, -1, -2, 20, List.of(new byte[7200]), new byte[7200]);
    assertThat(bench.chance(look(row, 40), 1)).isEqualTo(bench.chance(look(row, 4), 1));
    assertThat(bench.chance(look(row, 4), 1)).isNotEqualTo(bench.chance(look(row, 3), 1));
  }

  private static RowLook look(RowPictures row, double general) {
    return new RowLook(row, Mock.SETTING, List.of(new RowLook.Joint(true, general)));
  }

  @Test
  void anIdentityTellsItsOwnBenchAndNoOtherThatBeginsLikeIt() {
    assertThat(Bench.isOf(bench.identity(), "ring")).isTrue();
    assertThat(Bench.isOf(bench.identity(), "rin")).isFalse();
    assertThat(Bench.isOf("ring-lamp" + bench.identity().substring(4), "ring")).isFalse();
  }
}
