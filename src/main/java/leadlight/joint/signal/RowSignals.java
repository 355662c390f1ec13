package leadlight.joint.signal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leadlight.joint.cut.JointPatch;
import leadlight.joint.cut.LevelledPatch;
import leadlight.joint.cut.RowGeometry;
import leadlight.joint.cut.RowLight;
import leadlight.joint.cut.Signals;
import leadlight.joint.cut.Stats;
import leadlight.joint.cut.TypicalJoint;
import leadlight.joint.place.LeadMeter;
import leadlight.joint.place.PlacedRow;
import leadlight.joint.place.PlacementModel;
import leadlight.joint.place.StraightRow;
import leadlight.model.row.Lead;
import leadlight.model.row.RowSpec;
import leadlight.numeric.Quantiles;

/**
 * All signals of a row: one set a joint, one a gap.
 *
 * @param straight the straightened joints
 * @param joints signals of joint i
 * @param gaps signals of the gap between joint i and joint i + 1
 * @param placed where the leads are, beyond what the straightened joints were cut by
 */
public record RowSignals(
    StraightRow straight, List<Signals> joints, List<Signals> gaps, PlacedRow placed) {

  /** What the lamp makes of the row shows in these. */
  private static final List<String> TYPICAL =
      List.of("toe_band_edges", "ahead_bands", "toe_step", "ahead_range", "flank_light_low");

  public static RowSignals of(
      StraightRow straight,
      TypicalJoint typical,
      RowSpec spec,
      List<Lead> asFound,
      PlacementModel placement) {
    RowGeometry geometry = straight.geometry();
    List<LevelledPatch> levelled = straight.levelled();
    List<Signals> joints =
        levelled.parallelStream().map(joint -> signals(joint, geometry)).toList();
    new PatternSignals(levelled, geometry).measure(joints);
    RowRelative.add(joints, TYPICAL);
    List<Signals> gaps = new GapSignals(spec, levelled, geometry).measure();
    RowRelative.add(gaps, List.of());
    PlacedRow placed = new LeadMeter(spec, placement, levelled, geometry).measure(asFound, typical);
    return new RowSignals(straight, joints, gaps, placed);
  }

  private static Signals signals(LevelledPatch joint, RowGeometry geometry) {
    Signals signals = new Signals();
    ToeSignals.measure(joint, geometry, signals);
    FlankSignals.measure(joint, geometry, signals);
    return signals;
  }

  public List<JointPatch> patches() {
    return straight.patches();
  }

  public RowGeometry geometry() {
    return straight.geometry();
  }

  public RowLight light() {
    return straight.light();
  }

  /** One flat map a joint: its own signals, then those of the gap to the next pin. */
  public List<Map<String, Double>> flat() {
    List<Map<String, Double>> maps = new ArrayList<>();
    for (int i = 0; i < joints.size(); i++) {
      Map<String, Double> map = new LinkedHashMap<>(joints.get(i).asMap());
      map.put("lead_half", geometry().leadHalf());
      map.put("land_half", geometry().landHalf());
      map.put("ahead", patches().get(i).ahead());
      map.put("offset", patches().get(i).offset());
      map.put("heel_offset", patches().get(i).heelOffset());
      map.put("match", patches().get(i).lead().match());
      map.putAll(placed.leads().get(i).signals().asMap());
      if (i < gaps.size()) {
        map.putAll(gaps.get(i).asMap());
      }
      maps.add(map);
    }
    return maps;
  }

  /**
   * Adds to each signal how far it stands from the row's median, in the row's own spread, under the
   * name {@code row_NAME}. "Unlike its neighbours" is evidence, never the criterion: the absolute
   * signals stay. Some medians are given as well, {@code typical_NAME}: they tell what the lamp
   * makes of this row.
   */
  private static final class RowRelative {

    /** Added to the spread: below this share of the row's light a difference means nothing. */
    private static final double FLOOR = 0.03;

    /** Beyond this many spreads farther is no stronger. */
    private static final double MOST = 12;

    private RowRelative() {}

    static void add(List<Signals> row, List<String> typical) {
      if (row.isEmpty()) {
        return;
      }
      typical.forEach(name -> addTypical(row, name));
      for (String name : names(row)) {
        double[] values = row.stream().mapToDouble(signals -> signals.get(name)).toArray();
        double middle = Quantiles.middle(values);
        double spread = Stats.spread(values) + FLOOR;
        for (int i = 0; i < values.length; i++) {
          double distance = (values[i] - middle) / spread;
          row.get(i).put("row_" + name, Math.max(-MOST, Math.min(MOST, distance)));
        }
      }
    }

    /** What a row typically shows is no signal of one joint: it is not compared with itself. */
    private static List<String> names(List<Signals> row) {
      return row.get(0).asMap().keySet().stream()
          .filter(name -> !name.startsWith("typical_"))
          .toList();
    }

    private static void addTypical(List<Signals> row, String name) {
      double median =
          Quantiles.middle(row.stream().mapToDouble(signals -> signals.get(name)).toArray());
      row.forEach(signals -> signals.put("typical_" + name, median));
    }
  }
}
