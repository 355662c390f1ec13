package leadlight.joint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leadlight.model.Lead;
import leadlight.model.RowSpec;

/**
 * All signals of a row: one set a joint, one a gap.
 *
 * @param straight the straightened joints
 * @param joints signals of joint i
 * @param gaps signals of the gap between joint i and joint i + 1
 * @param placed where the leads are, beyond what the straightened joints were cut by
 */
record RowSignals(
    StraightRow straight, List<Signals> joints, List<Signals> gaps, PlacedRow placed) {

  /** What the lamp makes of the row shows in these. */
  private static final List<String> TYPICAL =
      List.of("toe_band_edges", "ahead_bands", "toe_step", "ahead_range", "flank_light_low");

  static RowSignals of(
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

  List<JointPatch> patches() {
    return straight.patches();
  }

  RowGeometry geometry() {
    return straight.geometry();
  }

  RowLight light() {
    return straight.light();
  }

  /** One flat map a joint: its own signals, then those of the gap to the next pin. */
  List<Map<String, Double>> flat() {
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
}
