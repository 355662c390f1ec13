package leadlight.joint.place;

import java.util.List;
import leadlight.joint.cut.GeometryFinder;
import leadlight.joint.cut.JointPatch;
import leadlight.joint.cut.LevelledPatch;
import leadlight.joint.cut.RowGeometry;
import leadlight.joint.cut.RowLight;
import leadlight.joint.cut.Straightener;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.vision.Frame;

/**
 * A row's joints, straightened about their leads, with what they share.
 *
 * @param patches the joints, pin 1 first
 * @param geometry the widths they share
 * @param light the row's reference levels
 * @param levelled the joints as shares of the row's range of light
 */
public record StraightRow(
    List<JointPatch> patches, RowGeometry geometry, RowLight light, List<LevelledPatch> levelled) {

  /** Displaced leads are found first; only their joints are cut a second time. */
  public static StraightRow of(Frame photo, RowSpec spec, RowOutcome.Found row) {
    StraightRow asFound = of(spec, new Straightener(spec, row.leads()).patches(photo));
    DisplacedLeads placer = new DisplacedLeads(asFound.levelled, asFound.geometry);
    List<Lead> leads = LeadMover.moved(asFound.patches, placer.place());
    List<JointPatch> patches = new Straightener(spec, leads).patches(photo, asFound.patches);
    return patches.equals(asFound.patches) ? asFound : of(spec, patches);
  }

  private static StraightRow of(RowSpec spec, List<JointPatch> patches) {
    RowGeometry geometry = new GeometryFinder(spec, patches).find();
    return of(patches, geometry, RowLight.of(patches, geometry));
  }

  public static StraightRow of(List<JointPatch> patches, RowGeometry geometry, RowLight light) {
    return new StraightRow(
        patches,
        geometry,
        light,
        patches.parallelStream().map(patch -> LevelledPatch.of(patch, light)).toList());
  }
}
