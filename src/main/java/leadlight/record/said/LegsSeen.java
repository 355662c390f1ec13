package leadlight.record.said;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import leadlight.data.JsonText;
import leadlight.model.Verdict;

/**
 * What a photo of one side of the board showed of the connector's anchor legs.
 *
 * @param photo the photo's file name
 * @param sha256 hash of the photo
 * @param side "solder" or "component"
 * @param legs the legs that were found
 * @param port which of several equal connectors; empty if it was not named
 * @param picture the marked picture as it is kept beside the record, "HASH/NAME"; empty if none is
 * @param work at which stage and attempt, and by what it was judged; empty where nobody said
 */
public record LegsSeen(
    @JsonProperty(required = true) String photo,
    @JsonProperty(required = true) String sha256,
    @JsonProperty(required = true) String side,
    List<Leg> legs,
    Optional<String> port,
    Optional<String> picture,
    Optional<Work> work) {

  /**
   * When a photo was taken, and what it was judged by.
   *
   * @param stage id of the stage
   * @param attempt from 1
   * @param how all that its verdicts follow from but the photo
   */
  public record Work(
      @JsonProperty(required = true) String stage,
      @JsonProperty(required = true) int attempt,
      @JsonProperty(required = true) String how) {

    /** Whether another photo shows the same work, so that neither is the later word. */
    public boolean isOf(Work other) {
      return stage.equals(other.stage) && attempt == other.attempt;
    }
  }

  /** A leg; a number that the photo does not tell is missing. */
  public record Leg(OptionalInt leg, @JsonProperty(required = true) Verdict verdict) {}

  /** Fills in what is left out because it is empty. */
  public LegsSeen {
    legs = legs == null ? List.of() : List.copyOf(legs);
    port = port == null ? Optional.empty() : port;
    work = work == null ? Optional.empty() : work;
  }

  /** The same of a connector of several. */
  public LegsSeen at(Optional<String> connector) {
    return new LegsSeen(photo, sha256, side, legs, connector, picture, work);
  }

  /** The same of known work. */
  public LegsSeen of(Work known) {
    return new LegsSeen(photo, sha256, side, legs, port, picture, Optional.of(known));
  }

  /** Whether both are known to show the same work. */
  public boolean isOfSameWork(LegsSeen other) {
    return work.isPresent() && other.work.filter(it -> it.isOf(work.get())).isPresent();
  }

  /**
   * Whether another is the same photo of the same work, looked at once more: then it stands alone,
   * whatever this one said. Where nobody said of which work a photo is, the photo itself tells.
   */
  public boolean isJudgedAnewBy(LegsSeen other) {
    boolean otherWork = work.isPresent() && other.work.isPresent() && !isOfSameWork(other);
    return sha256.equals(other.sha256)
        && side.equals(other.side)
        && port.equals(other.port)
        && !otherWork;
  }

  /** As the words of a life's event. */
  public String words() {
    return JsonText.of(this);
  }

  /** What an event of that kind says. */
  public static LegsSeen of(LifeEvent event) {
    return JsonText.read(event.words(), LegsSeen.class);
  }

  /** Numbers of the legs of a verdict; a number that is not known is "?". */
  public List<String> numbers(Verdict verdict) {
    return legs.stream()
        .filter(leg -> leg.verdict() == verdict)
        .map(leg -> leg.leg().isPresent() ? "" + leg.leg().getAsInt() : "?")
        .toList();
  }
}
