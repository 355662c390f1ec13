package leadlight.enrol.learn;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;

/**
 * A version of a bench's enrolment: a file that can be shown, compared, lent and taken back
 * (models/schema/enrolment.schema.json). It holds what was shown, and all that follows from it.
 *
 * @param schema name and number of the format
 * @param bench its name
 * @param version from 1
 * @param reader the reader whose pictures and opinions it was learned by
 * @param opinions whose opinion counted as the general one: "both" or "measures"
 * @param photos the photos shown, in the order of their hashes
 * @param joints the joints shown, in the order of photos and pins
 * @param lines one line a photo, learned from all others; empty if too little was shown for that
 * @param whole the line learned from all photos; empty if only one kind was shown
 * @param cloud how far joints and photos shown lie from each other
 */
public record Enrolment(
    @JsonProperty(required = true) String schema,
    @JsonProperty(required = true) String bench,
    @JsonProperty(required = true) int version,
    @JsonProperty(required = true) String reader,
    @JsonProperty(required = true) String opinions,
    @JsonProperty(required = true) List<Photo> photos,
    @JsonProperty(required = true) List<Shown> joints,
    List<Fold> lines,
    Optional<Line> whole,
    @JsonProperty(required = true) Cloud cloud) {

  /** The format. */
  public static final String SCHEMA = "leadlight/enrolment/2";

  /** Copies the lists, files leave empty ones out; refuses another format and what does not fit. */
  public Enrolment {
    if (!SCHEMA.equals(schema)) {
      throw new IllegalArgumentException("schema must be " + SCHEMA + ", is " + schema);
    }
    photos = List.copyOf(photos);
    joints = List.copyOf(joints);
    lines = lines == null ? List.of() : List.copyOf(lines);
    if (version < 1 || bench.isBlank()) {
      throw new IllegalArgumentException("a bench has a name, and a version from 1");
    }
    new EnrolmentCheck(photos, joints).check(lines, whole, cloud);
  }

  /** The joints shown that have leads: bare lands prove nothing of leads that were set down. */
  public List<Shown> leads() {
    return leads(photos, joints);
  }

  /**
   * The leads that were shown on purpose: what counts as proof, and as what the bench looks like.
   */
  public List<Shown> proof() {
    return leads().stream().filter(it -> photos.get(it.photo()).kind() != Kind.RECORDED).toList();
  }

  public static List<Shown> leads(List<Photo> photos, List<Shown> joints) {
    return joints.stream().filter(it -> photos.get(it.photo()).kind() != Kind.BARE).toList();
  }

  /** What a photo was shown as. */
  public enum Kind {
    SOUND,
    UNSOLDERED,
    /** Lands without leads: what looks most like one of them is not vouched for, no more. */
    BARE,
    /** Single joints of it are known, sound or not. */
    KNOWN,
    /**
     * Single joints of it are known out of the job record. They teach line and borders, and prove
     * nothing: who chose them to be prodded had a reason.
     */
    RECORDED;

    /** Whether joints of both kinds may be of one such photo. */
    boolean mixed() {
      return this == KNOWN || this == RECORDED;
    }
  }

  /**
   * A photo that was shown.
   *
   * @param file its name
   * @param sha256 of its bytes
   * @param kind what it was shown as
   * @param setting how it was taken
   * @param row mean numbers of its row's joints, shown or not: by them a copy is known
   */
  public record Photo(
      @JsonProperty(required = true) String file,
      @JsonProperty(required = true) String sha256,
      @JsonProperty(required = true) Kind kind,
      @JsonProperty(required = true) Setting setting,
      @JsonProperty(required = true) float[] row) {}

  /**
   * How a photo was taken, as far as its row tells.
   *
   * @param pitchPx pixels a pitch
   * @param blurPitch middle edge sigma of its joints, pitches; absent if no edge tells
   * @param dark the row's dark level, 0 to 255
   * @param bright the row's bright level, 0 to 255
   * @param general whether the general opinion counts on this make of photo
   */
  public record Setting(
      @JsonProperty(required = true) double pitchPx,
      Optional<Double> blurPitch,
      @JsonProperty(required = true) double dark,
      @JsonProperty(required = true) double bright,
      @JsonProperty(required = true) boolean general) {}

  /**
   * A joint that was shown.
   *
   * @param photo which of the photos, from 0
   * @param pin its pin
   * @param soldered whether solder holds it, as the person who showed it says
   * @param general log odds of the general opinion that nothing holds it; 0 where that was never
   *     shown to be right on such photos
   * @param features its numbers
   */
  public record Shown(
      @JsonProperty(required = true) int photo,
      @JsonProperty(required = true) int pin,
      @JsonProperty(required = true) boolean soldered,
      @JsonProperty(required = true) double general,
      @JsonProperty(required = true) float[] features) {}

  /**
   * From a joint's numbers to the log odds that nothing holds it.
   *
   * @param shift added
   * @param general weight of the general opinion
   * @param weights of the numbers
   */
  public record Line(
      @JsonProperty(required = true) double shift,
      @JsonProperty(required = true) double general,
      @JsonProperty(required = true) double[] weights) {

    public double of(double generalLogOdds, float[] features) {
      double sum = shift + general * generalLogOdds;
      for (int i = 0; i < weights.length; i++) {
        sum += weights[i] * features[i];
      }
      return sum;
    }
  }

  /**
   * The line that one photo was left out of, and the borders that the photo's joints draw on it.
   *
   * @param photo which of the photos, from 0
   * @param line learned from the others
   * @param solderedBelow log odds below each of its unsoldered joints, by the margin; absent if it
   *     has none
   * @param unsolderedAbove log odds above each of its sound joints, by the margin; absent if it has
   *     none
   */
  public record Fold(
      @JsonProperty(required = true) int photo,
      @JsonProperty(required = true) Line line,
      Optional<Double> solderedBelow,
      Optional<Double> unsolderedAbove) {}

  /**
   * How far joints and photos shown lie from their like; distances in spreads of each block.
   *
   * @param spreads of the blocks of numbers
   * @param joint greatest distance of a joint to the nearest of its kind in another photo
   * @param row greatest middle distance of a photo's joints; 0 if each kind was shown in one photo
   */
  public record Cloud(
      @JsonProperty(required = true) double[] spreads,
      @JsonProperty(required = true) double joint,
      @JsonProperty(required = true) double row) {}
}
