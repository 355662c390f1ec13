package leadlight.drill.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import leadlight.data.JsonText;
import leadlight.drill.pool.Level;
import leadlight.drill.pool.PoolJoint;
import leadlight.drill.pool.ScenePool;
import leadlight.drill.sitting.PracticeSets;
import leadlight.drill.skill.DueAgain;
import leadlight.model.FindingKind;
import leadlight.model.UserError;
import leadlight.text.Messages;
import leadlight.trial.truth.TrueClass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SetDrawTest {

  private static final ObjectMapper JSON = new ObjectMapper();

  private static final List<PoolJoint> POOL = pool();

  /** Under each of two lamps: sound joints, two kinds of fault, joints at a limit. */
  private static List<PoolJoint> pool() {
    List<PoolJoint> pool = new ArrayList<>();
    for (String lamp : List.of("ring", "dome")) {
      for (int pin = 1; pin <= 40; pin += 4) {
        boolean near = pin % 8 == 1;
        pool.add(Pools.joint(pin, lamp, near));
        pool.add(Pools.joint(pin + 1, lamp, near, FindingKind.OPEN));
        pool.add(Pools.joint(pin + 2, lamp, near, FindingKind.BRIDGE));
        pool.add(Pools.joint(pin + 3, lamp, true, TrueClass.LIMIT));
      }
    }
    return pool;
  }

  private static SetRequest request(
      int specimens, Level level, Set<FindingKind> findings, Set<String> lamps) {
    return new SetRequest("set", specimens, false, level, findings, lamps, 2, 5, Messages.of("en"));
  }

  private static List<PoolJoint> drawn(SetRequest request) {
    return new SetDraw(request, new DueAgain(), Set.of()).joints(POOL);
  }

  @Test
  void theSameSeedGivesTheSameSetToTheByte() {
    SetRequest request = PracticeSets.request(6, false, 3);
    MadeSet one = PracticeSets.make(request);
    MadeSet other = PracticeSets.make(request);

    assertThat(JsonText.of(one.set())).isEqualTo(JsonText.of(other.set()));
    assertThat(one.pictures()).containsExactlyEntriesOf(other.pictures());
    assertThat(JsonText.of(PracticeSets.make(PracticeSets.request(6, false, 4)).set()))
        .isNotEqualTo(JsonText.of(one.set()));
  }

  @Test
  void theOrderOfThePoolDoesNotMatter() {
    List<PoolJoint> turned = new ArrayList<>(POOL);
    Collections.shuffle(turned, new Random(1));

    SetRequest request = PracticeSets.request(20, false, 3);

    assertThat(new SetDraw(request, new DueAgain(), Set.of()).joints(turned))
        .extracting(PoolJoint::item)
        .isEqualTo(drawn(request).stream().map(PoolJoint::item).toList());
  }

  @Test
  void halfOfTheJointsAreSoundAndNoneComesTwice() {
    List<PoolJoint> drawn = drawn(PracticeSets.request(20, false, 3));

    assertThat(drawn).filteredOn(j -> j.finding().isEmpty()).hasSize(10);
    assertThat(drawn).extracting(PoolJoint::item).doesNotHaveDuplicates();
    assertThat(drawn).noneMatch(joint -> joint.known().verdict() == TrueClass.LIMIT);
  }

  @Test
  void findingsAndLampsCanBeAskedFor() {
    List<PoolJoint> drawn =
        drawn(request(4, Level.MIXED, Set.of(FindingKind.OPEN), Set.of("ring")));

    assertThat(drawn).allMatch(j -> j.row().lamp().equals(Optional.of("ring")));
    assertThat(drawn.stream().map(PoolJoint::finding).flatMap(Optional::stream))
        .hasSize(2)
        .containsOnly(FindingKind.OPEN);
  }

  @Test
  void clearSetsHoldNothingNearALimitAndBorderlineSetsNothingElse() {
    assertThat(drawn(request(10, Level.CLEAR, Set.of(), Set.of())))
        .noneMatch(PoolJoint::borderline);
    assertThat(drawn(request(4, Level.BORDERLINE, Set.of(), Set.of())))
        .allMatch(PoolJoint::borderline);
  }

  @Test
  void classThreeJudgesTheOverhangByItsOwnLimit(@TempDir Path folder) throws IOException {
    Path truth = truthOf("base-station-port-good", folder);
    ObjectNode tree = (ObjectNode) JSON.readTree(truth.toFile());
    double[] overhangs = {0.35, 0.25, 0.1};
    for (int i = 0; i < overhangs.length; i++) {
      ((ObjectNode) tree.get("joints").get(i)).put("side_overhang_of_lead_width", overhangs[i]);
    }
    JSON.writeValue(truth.toFile(), tree);

    assertThat(verdicts(new ScenePool(2, Messages.of("en")).read(folder)))
        .containsExactly(TrueClass.ACCEPTABLE, TrueClass.ACCEPTABLE, TrueClass.ACCEPTABLE);
    List<PoolJoint> inThree = new ScenePool(3, Messages.of("en")).read(folder);
    assertThat(verdicts(inThree))
        .containsExactly(TrueClass.DEFECT, TrueClass.LIMIT, TrueClass.ACCEPTABLE);
    assertThat(inThree.get(0).finding()).contains(FindingKind.SIDE_OVERHANG);
  }

  @Test
  void aPhotoInWhichNobodyCanSeeTheJointsIsLeftOut(@TempDir Path folder) throws IOException {
    truthOf("base-station-port-unfit", folder);

    assertThatThrownBy(() -> new ScenePool(2, Messages.of("en")).read(folder))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("no photo");
    truthOf("base-station-port-good", folder);
    assertThat(new ScenePool(2, Messages.of("en")).read(folder))
        .isNotEmpty()
        .allMatch(joint -> joint.row().file().equals("base-station-port-good.jpg"));
  }

  /** Copies a sample with its truth. */
  private static Path truthOf(String sample, Path folder) throws IOException {
    Files.copy(PracticeSets.SAMPLES.resolve(sample + ".jpg"), folder.resolve(sample + ".jpg"));
    return Files.copy(
        PracticeSets.SAMPLES.resolve(sample + ".truth.json"),
        folder.resolve(sample + ".truth.json"));
  }

  private static List<TrueClass> verdicts(List<PoolJoint> pool) {
    return pool.stream().limit(3).map(joint -> joint.known().verdict()).toList();
  }

  @Test
  void jointsThatWereSeenComeLast() {
    SetRequest request = PracticeSets.request(10, false, 3);
    Set<String> before = drawn(request).stream().map(PoolJoint::item).collect(Collectors.toSet());

    List<PoolJoint> next = new SetDraw(request, new DueAgain(), before).joints(POOL);

    assertThat(next)
        .filteredOn(j -> j.finding().isEmpty())
        .noneMatch(j -> before.contains(j.item()));
  }

  @Test
  void aBridgeIsAskedForOnce() {
    List<PoolJoint> samples = new ScenePool(2, Messages.of("en")).read(PracticeSets.SAMPLES);
    Set<FindingKind> bridges = Set.of(FindingKind.BRIDGE);
    long ends =
        samples.stream().filter(j -> j.finding().filter(bridges::contains).isPresent()).count();
    SetRequest request = request((int) ends, Level.MIXED, bridges, Set.of());

    List<PoolJoint> drawn = new SetDraw(request, new DueAgain(), Set.of()).joints(samples);

    assertThat(ends).isGreaterThanOrEqualTo(4);
    assertThat(drawn.stream().filter(j -> j.finding().isPresent()))
        .hasSize((int) ends / 2)
        .noneMatch(
            j ->
                drawn.stream()
                    .anyMatch(
                        k ->
                            k.row().equals(j.row())
                                && k.finding().isPresent()
                                && k.pin() == j.known().bridgeTo().getAsInt()));
  }

  @Test
  void aPoolThatIsTooSmallIsNamed() {
    SetRequest tooMany = request(60, Level.MIXED, Set.of(FindingKind.BRIDGE), Set.of());

    assertThatThrownBy(() -> drawn(tooMany))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("20 faulty joints")
        .hasMessageContaining("30 are wanted");
  }
}
