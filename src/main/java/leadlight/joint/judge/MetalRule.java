package leadlight.joint.judge;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import leadlight.data.DataFile;
import leadlight.data.Figure;
import leadlight.joint.cut.Signals;

/**
 * From which share on a gap counts as crossed by metal, whatever the other gaps are like: {@code
 * models/joint/metal.json}.
 *
 * @param apartFrom least difference between metal and board that tells them apart, share of the
 *     row's range of light
 * @param lightFrom least light of the leads' tops, share of that range
 * @param acrossFrom share, 0 the board, 1 the leads' metal, from which a gap is crossed
 * @param joinsFrom the same for a gap beside a crossed one
 * @param chance that metal joins the leads if so
 */
public record MetalRule(
    @JsonProperty(required = true) Figure apartFrom,
    @JsonProperty(required = true) Figure lightFrom,
    @JsonProperty(required = true) Figure acrossFrom,
    @JsonProperty(required = true) Figure joinsFrom,
    @JsonProperty(required = true) Figure chance) {

  public static MetalRule builtIn() {
    return DataFile.builtIn("joint/metal.json").read(MetalRule.class);
  }

  /** The share of each gap that is crossed, nothing for the others. */
  List<OptionalDouble> crossed(List<Signals> gaps) {
    double[] shares = gaps.stream().mapToDouble(this::share).toArray();
    boolean[] crossed = new boolean[shares.length];
    for (int i = 0; i < shares.length; i++) {
      if (shares[i] >= acrossFrom.value()) {
        runsOn(shares, crossed, i, -1);
        runsOn(shares, crossed, i, 1);
      }
    }
    return IntStream.range(0, shares.length)
        .mapToObj(i -> crossed[i] ? OptionalDouble.of(shares[i]) : OptionalDouble.empty())
        .toList();
  }

  private void runsOn(double[] shares, boolean[] crossed, int from, int step) {
    for (int i = from; i >= 0 && i < shares.length && shares[i] >= joinsFrom.value(); i += step) {
      crossed[i] = true;
    }
  }

  /** Where metal cannot be told from board no gap shows any. */
  private double share(Signals gap) {
    boolean told =
        gap.get("gap_metal_apart") >= apartFrom.value()
            && gap.get("gap_metal_light") >= lightFrom.value();
    return told ? gap.get("gap_metal_across") : 0;
  }
}
