package leadlight.joint.judge;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Arrays;
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
 * @param gapFromPx least width of a gap, pixels
 * @param acrossFrom share, 0 the board, 1 the leads' metal, from which one gap is crossed
 * @param floodFrom the same for so many gaps side by side as {@code floodGaps} says
 * @param floodGaps how many make a flood
 * @param joinsFrom the same for a gap beside a crossed one
 * @param chance that metal joins the leads if so
 */
public record MetalAcrossRule(
    @JsonProperty(required = true) Figure apartFrom,
    @JsonProperty(required = true) Figure lightFrom,
    @JsonProperty(required = true) Figure gapFromPx,
    @JsonProperty(required = true) Figure acrossFrom,
    @JsonProperty(required = true) Figure floodFrom,
    @JsonProperty(required = true) Figure floodGaps,
    @JsonProperty(required = true) Figure joinsFrom,
    @JsonProperty(required = true) Figure chance) {

  public static MetalAcrossRule builtIn() {
    return DataFile.builtIn("joint/metal.json").read(MetalAcrossRule.class);
  }

  /** The share of each gap that is crossed, nothing for the others. */
  List<OptionalDouble> crossed(List<Signals> gaps) {
    double[] shares = gaps.stream().mapToDouble(this::share).toArray();
    boolean[] crossed = new boolean[shares.length];
    for (int i = 0; i < shares.length; i++) {
      if (shares[i] >= acrossFrom.value() || flooded(shares, i)) {
        runsOn(shares, crossed, i, -1);
        runsOn(shares, crossed, i, 1);
      }
    }
    return IntStream.range(0, shares.length)
        .mapToObj(i -> crossed[i] ? OptionalDouble.of(shares[i]) : OptionalDouble.empty())
        .toList();
  }

  /** Whether a flood begins at this gap. */
  private boolean flooded(double[] shares, int gap) {
    int beyond = gap + (int) floodGaps.value();
    return beyond <= shares.length
        && Arrays.stream(shares, gap, beyond).allMatch(share -> share >= floodFrom.value());
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
            && gap.get("gap_metal_light") >= lightFrom.value()
            && gap.get("gap_width_px") >= gapFromPx.value();
    return told ? gap.get("gap_metal_across") : 0;
  }
}
