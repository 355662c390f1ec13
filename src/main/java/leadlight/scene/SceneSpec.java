package leadlight.scene;

import java.util.List;

/**
 * Everything a scene is made of; the same spec gives the same bytes. Lengths in millimetres, angles
 * in radians unless the name says degrees, row frame: u along the row from pin 1, v from the body
 * (negative) to the open end, v = 0 at the nominal toe, z up from the board.
 *
 * @param name file stem of the picture
 * @param seed drives every texture and the sensor's noise
 * @param part leads and lands
 * @param body what stands behind the leads
 * @param board mask, finish, traces, print
 * @param metal surfaces of leads and solder
 * @param lamps at least one
 * @param camera size, pose and sensor
 * @param joints one per land, in pin order
 * @param bridges metal between neighbours
 * @param dirt residue, fibres and balls
 */
public record SceneSpec(
    String name,
    long seed,
    Part part,
    Body body,
    Board board,
    Metal metal,
    List<Lamp> lamps,
    Camera camera,
    List<JointPlan> joints,
    List<Bridge> bridges,
    List<Dirt> dirt) {

  /** Copies the lists and refuses a scene that contradicts itself. */
  public SceneSpec {
    lamps = listOf(lamps);
    joints = listOf(joints);
    bridges = listOf(bridges);
    dirt = listOf(dirt);
    require(part != null && body != null && board != null, "a scene needs part, body and board");
    require(metal != null && camera != null, "a scene needs metal and camera");
    require(name != null && name.matches("[A-Za-z0-9._-]+"), "name must do as a file name");
    require(!lamps.isEmpty(), "a scene needs at least one lamp");
    require(
        joints.size() == part.landsAtMm().length,
        "a scene needs one joint per land: " + part.landsAtMm().length + ", has " + joints.size());
    for (Bridge bridge : bridges) {
      require(
          bridge.pin() >= 1 && bridge.pin() < joints.size(),
          "a bridge starts at a pin that has a neighbour, not at " + bridge.pin());
    }
  }

  private static <T> List<T> listOf(List<T> given) {
    return given == null ? List.of() : List.copyOf(given);
  }

  private static void require(boolean holds, String what) {
    if (!holds) {
      throw new IllegalArgumentException(what);
    }
  }

  /**
   * The row as built.
   *
   * @param pitchMm nominal pitch
   * @param landsAtMm middle of each land along the row, pin 1 at 0
   * @param landWidthMm width of each land
   * @param landLengthMm length of every land
   * @param landAheadMm how far the land runs ahead of the nominal toe
   * @param landCornerMm radius of the land's corners
   * @param leadWidthMm width of every lead
   * @param leadThicknessMm thickness of every lead
   * @param footLengthMm flat part of the lead, toe to heel
   * @param edgeRadiusMm rounding of the lead's upper edges
   */
  public record Part(
      double pitchMm,
      double[] landsAtMm,
      double[] landWidthMm,
      double landLengthMm,
      double landAheadMm,
      double landCornerMm,
      double leadWidthMm,
      double leadThicknessMm,
      double footLengthMm,
      double edgeRadiusMm) {}

  /**
   * A box behind the leads, and a second, higher one behind it (a metal shell).
   *
   * @param gapMm from the heel to the body's face
   * @param heightMm top of the body
   * @param exitMm height of the lead's upper side where it leaves the body
   * @param overEndMm how far the body runs past the end leads' middles
   * @param material plastic or metal
   * @param shellBackMm from the body's face back to the shell's; negative for none
   * @param shellHeightMm top of the shell
   */
  public record Body(
      double gapMm,
      double heightMm,
      double exitMm,
      double overEndMm,
      Material material,
      double shellBackMm,
      double shellHeightMm) {}

  /**
   * The board.
   *
   * @param mask colour of the solder mask
   * @param finish what a bare land shows
   * @param openingMm mask clearance round a land
   * @param gang one opening for the whole row
   * @param traces share of lands that a trace leaves
   * @param traceWidthMm width of a trace
   * @param pour copper under the mask beside the row
   * @param print white print near the row
   */
  public record Board(
      Mask mask,
      Material finish,
      double openingMm,
      boolean gang,
      double traces,
      double traceWidthMm,
      boolean pour,
      boolean print) {}

  /**
   * Metal surfaces; roughness is the microfacet slope (alpha) of Walter et al. 2007.
   *
   * @param lead plating of the leads
   * @param leadRoughness of their tops
   * @param solderRoughness 0.06 mirror-like to 0.45 dull
   * @param solderGrain slope of the grain on the solder, 0 for none
   * @param landRoughness of bare lands
   */
  public record Metal(
      Material lead,
      double leadRoughness,
      double solderRoughness,
      double solderGrain,
      double landRoughness) {}

  /**
   * One lamp, in the camera's frame (it tilts with the microscope).
   *
   * @param kind shape
   * @param elevationDeg above the focal plane; 90 is along the view
   * @param spreadDeg full width in elevation (ring) or diameter (patch, coaxial)
   * @param azimuthDeg picture direction the light comes from (patch): 0 right, 90 down
   * @param count single light-emitting diodes in a ring, 0 for an even ring
   * @param power irradiance on a level plane, relative
   * @param red colour
   * @param green colour
   * @param blue colour
   */
  public record Lamp(
      LampKind kind,
      double elevationDeg,
      double spreadDeg,
      double azimuthDeg,
      int count,
      double power,
      double red,
      double green,
      double blue) {}

  /** The shapes of light. */
  public enum LampKind {
    /** A circle of light round the lens. */
    RING,
    /** Light through the lens. */
    COAXIAL,
    /** Light from everywhere. */
    DOME,
    /** A patch of light to one side: bench lamp, window or a phone's torch. */
    PATCH
  }

  /**
   * Camera and sensor.
   *
   * @param widthPx picture width
   * @param heightPx picture height
   * @param pxPerMm scale at the aimed point
   * @param aimAlongRowMm aimed point along the row
   * @param aimAlongLeadMm aimed point along the leads
   * @param rotationRad turn of the picture; 0 has the body above
   * @param tiltRad tilt about the picture's x axis, then its y axis
   * @param distanceMm lens to aimed point
   * @param k1 radial distortion at half the picture's diagonal
   * @param blurPx defocus, standard deviation
   * @param blurSlope change of the defocus from the left to the right edge, share of blurPx
   * @param vignette loss of light in the corner, 0 to 1
   * @param noise noise at full white, standard deviation as a share of white
   * @param redGain error of the white balance
   * @param blueGain error of the white balance
   * @param exposure mean level wanted, 0 to 1 linear
   * @param sharpen the camera's own sharpening, 0 for none
   * @param jpegQuality 0 to 1
   */
  public record Camera(
      int widthPx,
      int heightPx,
      double pxPerMm,
      double aimAlongRowMm,
      double aimAlongLeadMm,
      double rotationRad,
      double[] tiltRad,
      double distanceMm,
      double k1,
      double blurPx,
      double blurSlope,
      double vignette,
      double noise,
      double redGain,
      double blueGain,
      double exposure,
      double sharpen,
      double jpegQuality) {}

  /** What became of a joint. */
  public enum Condition {
    WETTED("wetted"),
    OPEN("open"),
    STARVED("insufficient"),
    EXCESS("excess"),
    MISSING("missing-lead");

    private final String id;

    Condition(String id) {
      this.id = id;
    }

    /** The name in truth files. */
    public String id() {
      return id;
    }
  }

  /**
   * One joint.
   *
   * @param condition what became of it
   * @param solder false leaves the land's finish bare
   * @param pressurePerMm mean curvature times two: below 0 hollow, above 0 domed
   * @param climb height of the solder on the lead's walls, share of its upper side's height
   * @param filmMm least solder thickness on wetted land
   * @param spreadMm how far solder bulges over the land's edge
   * @param gapMm solder between land and lead
   * @param shiftMm lead off the land's middle
   * @param skewRad turn of the foot about its heel
   * @param liftMm lead above its seat
   * @param toeUpRad foot rising towards the toe
   * @param wettedFrom start of the wetted part, share of the foot from its toe
   * @param wettedTo end of the wetted part
   * @param sideBare -1 or 1: that side of the lead is bare; 0 none
   * @param voids radius of a pit in the toe fillet, 0 for none
   */
  public record JointPlan(
      Condition condition,
      boolean solder,
      double pressurePerMm,
      double climb,
      double filmMm,
      double spreadMm,
      double gapMm,
      double shiftMm,
      double skewRad,
      double liftMm,
      double toeUpRad,
      double wettedFrom,
      double wettedTo,
      int sideBare,
      double voids) {

    JointPlan with(Condition newCondition, double newPressurePerMm, double newClimb) {
      return new JointPlan(
          newCondition,
          solder,
          newPressurePerMm,
          newClimb,
          filmMm,
          spreadMm,
          gapMm,
          shiftMm,
          skewRad,
          liftMm,
          toeUpRad,
          wettedFrom,
          wettedTo,
          sideBare,
          voids);
    }

    JointPlan withSolder(boolean newSolder, double newSpreadMm) {
      return new JointPlan(
          condition,
          newSolder,
          pressurePerMm,
          climb,
          filmMm,
          newSpreadMm,
          gapMm,
          shiftMm,
          skewRad,
          liftMm,
          toeUpRad,
          wettedFrom,
          wettedTo,
          sideBare,
          voids);
    }

    JointPlan withPlace(double newShiftMm, double newSkewRad) {
      return new JointPlan(
          condition,
          solder,
          pressurePerMm,
          climb,
          filmMm,
          spreadMm,
          gapMm,
          newShiftMm,
          newSkewRad,
          liftMm,
          toeUpRad,
          wettedFrom,
          wettedTo,
          sideBare,
          voids);
    }

    JointPlan withLift(double newLiftMm, double newToeUpRad) {
      return new JointPlan(
          condition,
          solder,
          pressurePerMm,
          climb,
          filmMm,
          spreadMm,
          gapMm,
          shiftMm,
          skewRad,
          newLiftMm,
          newToeUpRad,
          wettedFrom,
          wettedTo,
          sideBare,
          voids);
    }

    JointPlan withWetted(double newFrom, double newTo, int newSideBare) {
      return new JointPlan(
          condition,
          solder,
          pressurePerMm,
          climb,
          filmMm,
          spreadMm,
          gapMm,
          shiftMm,
          skewRad,
          liftMm,
          toeUpRad,
          newFrom,
          newTo,
          newSideBare,
          voids);
    }

    JointPlan withVoids(double newVoids) {
      return new JointPlan(
          condition,
          solder,
          pressurePerMm,
          climb,
          filmMm,
          spreadMm,
          gapMm,
          shiftMm,
          skewRad,
          liftMm,
          toeUpRad,
          wettedFrom,
          wettedTo,
          sideBare,
          newVoids);
    }
  }

  /**
   * Solder from one joint to the next.
   *
   * @param pin the first of the two
   * @param vMm middle of the bridge along the leads
   * @param widthMm at its ends
   * @param waist how much narrower in its middle, 0 to 1
   * @param pressurePerMm as a joint's
   */
  public record Bridge(int pin, double vMm, double widthMm, double waist, double pressurePerMm) {}

  /** What lies about. */
  public enum DirtKind {
    RESIDUE,
    FIBRE,
    BALL,
    SCORCH
  }

  /**
   * One speck.
   *
   * @param kind what it is
   * @param uMm middle
   * @param vMm middle
   * @param sizeMm radius; half the length of a fibre
   * @param strength 0 to 1
   */
  public record Dirt(DirtKind kind, double uMm, double vMm, double sizeMm, double strength) {}
}
