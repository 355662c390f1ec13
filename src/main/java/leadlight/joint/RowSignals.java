package leadlight.joint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leadlight.model.RowOutcome;
import leadlight.model.RowPictures;
import leadlight.model.RowSpec;
import leadlight.vision.Frame;

/**
 * All signals of a row: one set a joint, one a gap.
 *
 * @param patches the straightened joints
 * @param geometry the widths they share
 * @param light the row's reference levels
 * @param joints signals of joint i
 * @param gaps signals of the gap between joint i and joint i + 1
 * @param placed where the leads are, beyond what the straightened joints were cut by
 */
record RowSignals(
    List<JointPatch> patches,
    RowGeometry geometry,
    RowLight light,
    List<Signals> joints,
    List<Signals> gaps,
    PlacedRow placed) {

  /** What the lamp makes of the row shows in these. */
  private static final List<String> TYPICAL =
      List.of("toe_band_edges", "ahead_bands", "toe_step", "ahead_range", "flank_light_low");

  static RowSignals of(Frame photo, RowSpec spec, RowOutcome.Found row, PlacementModel placement) {
    List<JointPatch> patches = placed(photo, spec, row);
    RowGeometry geometry = new GeometryFinder(spec, patches).find();
    RowLight light = RowLight.of(patches, geometry);
    List<LevelledPatch> levelled = levelled(patches, light);
    List<Signals> joints = new ArrayList<>();
    for (LevelledPatch joint : levelled) {
      Signals signals = new Signals();
      ToeSignals.measure(joint, geometry, signals);
      FlankSignals.measure(joint, geometry, signals);
      joints.add(signals);
    }
    new PatternSignals(levelled, geometry).measure(joints);
    RowRelative.add(joints, TYPICAL);
    List<Signals> gaps = new GapSignals(spec, levelled, geometry).measure();
    RowRelative.add(gaps, List.of());
    PlacedRow placed = new LeadMeter(spec, placement, levelled, geometry).measure(row.leads());
    return new RowSignals(patches, geometry, light, joints, gaps, placed);
  }

  /** The joints' pictures alone. */
  static RowPictures pictures(Frame photo, RowSpec spec, RowOutcome.Found row) {
    List<JointPatch> patches = placed(photo, spec, row);
    RowGeometry geometry = new GeometryFinder(spec, patches).find();
    return RowPicturesMaker.of(patches, RowLight.of(patches, geometry));
  }

  /** Joints straightened about their leads, displaced leads found first. */
  private static List<JointPatch> placed(Frame photo, RowSpec spec, RowOutcome.Found row) {
    List<JointPatch> patches = new Straightener(spec, row.leads()).patches(photo);
    RowGeometry geometry = new GeometryFinder(spec, patches).find();
    RowLight light = RowLight.of(patches, geometry);
    LeadPlacer placer = new LeadPlacer(levelled(patches, light), geometry);
    return new Straightener(spec, LeadMover.moved(patches, placer.place())).patches(photo);
  }

  private static List<LevelledPatch> levelled(List<JointPatch> patches, RowLight light) {
    return patches.stream().map(patch -> LevelledPatch.of(patch, light)).toList();
  }

  /** One flat map a joint: its own signals, then those of the gap to the next pin. */
  List<Map<String, Double>> flat() {
    List<Map<String, Double>> maps = new ArrayList<>();
    for (int i = 0; i < joints.size(); i++) {
      Map<String, Double> map = new LinkedHashMap<>(joints.get(i).asMap());
      map.put("lead_half", geometry.leadHalf());
      map.put("land_half", geometry.landHalf());
      map.put("ahead", patches.get(i).ahead());
      map.put("offset", patches.get(i).offset());
      map.put("heel_offset", patches.get(i).heelOffset());
      map.put("match", patches.get(i).lead().match());
      map.putAll(placed.leads().get(i).signals().asMap());
      if (i < gaps.size()) {
        map.putAll(gaps.get(i).asMap());
      }
      maps.add(map);
    }
    return maps;
  }
}
